#pragma once

#include "sync/trust/authority.h"

#include <map>
#include <vector>

namespace peelpack::trust {

/// A rule of the program with the entry that says it.
template <class Rule>
struct InForce {
    Rule rule;
    journal::Position entry;
};

/// The entries with authority of one chain of rules, and the walk over them from zero by "stands on" (FORMAT.md section
/// 7): latest by chain, whatever the clocks said. Rule has a member `standsOn`.
template <class Rule>
class Chain {
public:
    /// `writer`: who wrote the entry; it counts.
    void add(InForce<Rule> made, const Holder& writer)
    {
        Candidate candidate{std::move(made), writer.role != journal::Role::Director, writer.epoch};
        const auto [place, added] = m_after.try_emplace(candidate.made.rule.standsOn, candidate);
        if (!added && candidate.goesBefore(place->second)) {
            place->second = std::move(candidate);
        }
    }

    /// The entries of the walk in their order; empty when nothing stands on zero.
    [[nodiscard]] std::vector<InForce<Rule>> walk() const
    {
        std::vector<InForce<Rule>> steps;
        for (auto at = m_after.find(keys::Hash{}); at != m_after.end(); at = m_after.find(steps.back().entry.hash)) {
            steps.push_back(at->second.made);
        }
        return steps;
    }

private:
    struct Candidate {
        InForce<Rule> made;
        bool byStaff = false; ///< not by a director
        std::uint32_t epoch = 0;

        /// The director first, of directors the one with the higher epoch, then the smaller entry hash.
        [[nodiscard]] bool goesBefore(const Candidate& other) const
        {
            if (byStaff != other.byStaff) {
                return !byStaff;
            }
            return epoch != other.epoch ? epoch > other.epoch : made.entry.hash < other.made.entry.hash;
        }
    };

    std::map<keys::Hash, Candidate> m_after; ///< by what it stands on: the one that the walk takes
};

} // namespace peelpack::trust
