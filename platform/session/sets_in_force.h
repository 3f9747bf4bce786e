#pragma once

#include "core/role/classifier.h"
#include "platform/session/program_rules.h"

#include <span>
#include <vector>

namespace peelpack::session {

/// The requirement sets in force for students today, each read once.
struct SetsInForce {
    /// In the order of the first student under it; without students the policy's.
    std::vector<requirement::RequirementSet> sets;
    std::vector<std::size_t> ofStudent; ///< index into sets, by the place in the order given

    [[nodiscard]] const requirement::RequirementSet& of(std::size_t student) const
    {
        return sets.at(ofStudent.at(student));
    }
};

/// BadValue, NotFound: one of them is not at hand.
base::Result<SetsInForce> setsInForce(const Session& session, std::span<const keys::Id> students);

/// How marks become a role under the set in force for each of these students, in their order; as usual where it is not
/// at hand. Each set is read once.
std::vector<role::RoleRules> roleRulesInForce(const Session& session, std::span<const keys::Id> students);
role::RoleRules roleRulesInForce(const Session& session, const keys::Id& student);

} // namespace peelpack::session
