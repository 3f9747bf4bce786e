#include "sync/trust/policy.h"

namespace peelpack::trust {

std::vector<PolicyInForce> policies(const Authority& authority, const Feeds& feeds)
{
    struct Candidate {
        PolicyInForce inForce;
        std::uint32_t epoch;
    };
    std::map<keys::Hash, Candidate> afterPolicy; // by what it stands on: the one that the walk takes
    const auto isPolicy = journal::ofKind({journal::Kind::Policy});
    for (const auto& [id, feed] : feeds) {
        const Holder* writer = authority.holder(id.device);
        journal::eachTrunkEntry(feed, authority.limit(id), isPolicy, [&](const journal::Decoded& entry) {
            if (authority.judge(entry).standing != Judgment::Standing::Counts) {
                return;
            }
            const auto& policy = std::get<journal::Policy>(entry.payload);
            const Candidate candidate{{policy, entry.position}, writer->epoch};
            const auto [place, added] = afterPolicy.try_emplace(policy.standsOn, candidate);
            Candidate& held = place->second;
            if (!added && (candidate.epoch > held.epoch ||
                           (candidate.epoch == held.epoch && entry.position.hash < held.inForce.entry.hash))) {
                held = candidate;
            }
        });
    }
    std::vector<PolicyInForce> walk;
    for (auto at = afterPolicy.find(keys::Hash{}); at != afterPolicy.end();
         at = afterPolicy.find(walk.back().entry.hash)) {
        walk.push_back(at->second.inForce);
    }
    return walk;
}

std::optional<PolicyInForce> policyInForce(const Authority& authority, const Feeds& feeds)
{
    const std::vector<PolicyInForce> walk = policies(authority, feeds);
    return walk.empty() ? std::nullopt : std::optional(walk.back());
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
