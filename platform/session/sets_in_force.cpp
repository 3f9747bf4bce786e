#include "platform/session/sets_in_force.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace peelpack::session {

base::Result<SetsInForce> setsInForce(const Session& session, std::span<const keys::Id> students)
{
    const base::Date day = today(session);
    SetsInForce found;
    std::vector<SetByName> names;
    for (const keys::Id& student : students) {
        const SetByName named = namedSet(session, student, day);
        const auto known =
            std::find_if(names.begin(), names.end(), [&](const SetByName& one) { return one.isSameSet(named); });
        found.ofStudent.push_back(static_cast<std::size_t>(known - names.begin()));
        if (known == names.end()) {
            base::Result<requirement::RequirementSet> set = setNamed(session, named);
            if (!set) {
                return set.error();
            }
            names.push_back(named);
            found.sets.push_back(std::move(set).value());
        }
    }
    if (students.empty()) {
        base::Result<requirement::RequirementSet> set = setOfPolicy(session);
        if (!set) {
            return set.error();
        }
        found.sets.push_back(std::move(set).value());
    }
    return found;
}

std::vector<role::RoleRules> roleRulesInForce(const Session& session, std::span<const keys::Id> students)
{
    const base::Date day = today(session);
    std::vector<std::pair<SetByName, role::RoleRules>> known;
    std::vector<role::RoleRules> rules;
    rules.reserve(students.size());
    for (const keys::Id& student : students) {
        const SetByName named = namedSet(session, student, day);
        auto found =
            std::find_if(known.begin(), known.end(), [&](const auto& one) { return one.first.isSameSet(named); });
        if (found == known.end()) {
            const base::Result<requirement::RequirementSet> set = setNamed(session, named);
            known.emplace_back(named, set ? role::RoleRules{set.value().notApplicable} : role::RoleRules{});
            found = std::prev(known.end());
        }
        rules.push_back(found->second);
    }
    return rules;
}

role::RoleRules roleRulesInForce(const Session& session, const keys::Id& student)
{
    return roleRulesInForce(session, std::span(&student, 1)).front();
}

} // namespace peelpack::session
