#include "platform/session/sets_in_force.h"

#include <algorithm>

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
            base::Result<requirement::RequirementSet> set = setNamed(named);
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

role::RoleRules roleRulesInForce(const Session& session, const keys::Id& student)
{
    const base::Result<requirement::RequirementSet> set = setInForce(session, student, today(session));
    return set ? role::RoleRules{set.value().notApplicable} : role::RoleRules{};
}

} // namespace peelpack::session
