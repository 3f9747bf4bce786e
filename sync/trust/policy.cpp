#include "sync/trust/policy.h"

#include "sync/trust/program_rules.h"

namespace peelpack::trust {

std::optional<PolicyInForce> policyInForce(const Authority& authority, const Feeds& feeds)
{
    const ProgramRules rules = rulesInForce(authority, feeds);
    const InForce<journal::Policy>* last = rules.policy();
    return last == nullptr ? std::nullopt : std::optional(PolicyInForce{last->rule, last->entry});
}

bool counts(const journal::Policy& policy, sheet::Strength strength)
{
    if (strength == sheet::Strength::None) {
        return false;
    }
    const auto bit = static_cast<unsigned>(strength) - static_cast<unsigned>(sheet::Strength::OwnPhone);
    return ((policy.counted >> bit) & 1U) != 0;
}

} // namespace peelpack::trust
