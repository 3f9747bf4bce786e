#include "core/tally/placement.h"

#include "core/tally/placement_terms.h"

#include <algorithm>
#include <tuple>
#include <utility>

namespace peelpack::tally {

using catalogue::Category;
using catalogue::categoryAt;
using catalogue::categoryCount;
using sheet::Role;

std::vector<Need> Placer::needs(std::span<const Item> items, const Placement& placement)
{
    m_model.build(m_set, items);
    const Value value = solveBest();
    const std::vector<std::uint8_t> reaching = m_leaves.front().network.nodesReachingSink();
    std::vector<std::uint32_t> seatsShort;
    for (const requirement::Target& target : m_set.targets) {
        seatsShort.push_back(target.required);
    }
    for (const Seat& seat : placement.seats) {
        if (seat.counts()) {
            --seatsShort[static_cast<std::size_t>(seat.target)];
        }
    }
    std::vector<Need> needs;
    for (const Role role : {Role::First, Role::Second}) {
        for (std::size_t index = 0; index < categoryCount; ++index) {
            const Category category = categoryAt(index);
            if (role == Role::First && isApart(category)) {
                continue; // first scrub counts as second there
            }
            Need need{category, role, 0, 0};
            bool accepted = false;
            for (std::size_t target = 0; target < m_set.targets.size(); ++target) {
                if (m_set.targets[target].accepts(role) && m_set.targets[target].categories.contains(category)) {
                    accepted = true;
                    need.seatsShort += seatsShort[target];
                }
            }
            if (accepted && m_model.reachesSink(reaching, role, index) && oneMoreFits(role, index)) {
                need.needed = 1;
            } else if (accepted && m_model.spreadNeedsChoice()) {
                need.needed = neededOverSpread(category, role, value.counted);
            } else if (accepted && !m_model.neverBranches()) {
                need.needed = neededByBranching(category, role, value.counted);
            }
            needs.push_back(need);
        }
    }
    std::stable_sort(needs.begin(), needs.end(), [](const Need& a, const Need& b) {
        const auto key = [](const Need& need) {
            return std::tuple(need.needed == 0 ? UINT32_MAX : need.needed, need.role, UINT32_MAX - need.seatsShort);
        };
        return key(a) < key(b); // categories are in their order already
    });
    return needs;
}

/// In the leaf at hand, which has a way to the sink. Where a rule is relaxed, what comes out must still keep it.
bool Placer::oneMoreFits(Role role, std::size_t category)
{
    if (m_model.neverBranches()) {
        return true;
    }
    const Leaf& leaf = m_leaves.front();
    m_trial = leaf.network;
    return m_trial.trySend(m_model.categoryNode(role, category)) &&
           m_model.isValid(m_trial, leaf.choices, leaf.settledBefore);
}

/// With the specialties chosen, k further cases add min(k, g) to the count: a flow grows by one or not at all with
/// each.
std::uint32_t Placer::neededOverSpread(Category category, Role role, std::int32_t counted)
{
    const auto most = static_cast<std::int32_t>(m_set.required());
    const Extra all{category, role, most};
    Choices open = m_model.freshChoices();
    const std::int32_t withoutReserved = m_model.mostCounted(m_trial, open, all);
    open.openSeats = most;
    const std::int32_t withAllReserved = m_model.mostCounted(m_trial, open, all);
    if (withAllReserved <= counted) {
        return 0;
    }
    const std::int32_t seatsToFill = std::max(0, counted + 1 - withoutReserved);
    const requirement::Target& spread = m_set.targets[static_cast<std::size_t>(m_model.spreadTarget())];
    const bool inSpread = spread.accepts(role) && spread.categories.contains(category);
    struct Candidate {
        std::int32_t atLeast;
        catalogue::CategorySet specialties;
    };
    std::vector<Candidate> candidates;
    for (const PlacementModel::SpreadChoice& choice : m_spreadChoices) {
        const std::int32_t ceiling = inSpread ? choice.ceiling[indexOf(category)] : choice.reservedSeats;
        if (ceiling >= seatsToFill) {
            candidates.push_back({std::max(1, seatsToFill - choice.reservedSeats), choice.specialties});
        }
    }
    std::stable_sort(candidates.begin(), candidates.end(),
                     [](const Candidate& a, const Candidate& b) { return a.atLeast < b.atLeast; });
    std::int32_t needed = most + 1;
    for (const Candidate& candidate : candidates) {
        if (candidate.atLeast >= needed) {
            break;
        }
        Choices choices = m_model.freshChoices();
        choices.specialties = candidate.specialties;
        const std::int32_t now = m_model.mostCounted(m_trial, choices, {category, role, 0});
        const std::int32_t bound = std::max(1, counted + 1 - now);
        if (bound >= needed || m_model.mostCounted(m_trial, choices, all) <= counted) {
            continue;
        }
        const auto raises = [&](std::uint32_t count) {
            return m_model.neverBranches() ||
                   exploreCounted(choices, {category, role, static_cast<std::int32_t>(count)}, counted);
        };
        // The bound is seldom wrong: try its answer first.
        const auto from = static_cast<std::uint32_t>(bound);
        const auto to = static_cast<std::uint32_t>(needed - 1);
        if (raises(from)) {
            needed = bound;
        } else if (from < to && raises(to)) {
            needed = static_cast<std::int32_t>(leastThat(from + 1, to, raises));
        }
    }
    return needed > most ? 0 : static_cast<std::uint32_t>(needed);
}

/// Whether some choice lets more than `toBeat` count.
bool Placer::exploreCounted(Choices choices, const Extra& extra, std::int32_t toBeat)
{
    while (m_model.mostCounted(m_trial, choices, extra) > toBeat) {
        PlacementModel::Step step = m_model.nextStep(m_trial, choices, m_model.freshSettled());
        switch (step.kind) {
        case PlacementModel::Step::Kind::Valid:
            return true;
        case PlacementModel::Step::Kind::Relax:
            choices = std::move(step.first);
            break;
        case PlacementModel::Step::Kind::Branch:
            if (exploreCounted(std::move(step.first), extra, toBeat)) {
                return true;
            }
            choices = std::move(step.second);
            break;
        }
    }
    return false;
}

std::uint32_t Placer::neededByBranching(Category category, Role role, std::int32_t counted)
{
    const Choices fresh = m_model.freshChoices();
    const auto extra = [&](std::uint32_t count) { return Extra{category, role, static_cast<std::int32_t>(count)}; };
    const auto mightRaise = [&](std::uint32_t count) {
        return m_model.mostCounted(m_trial, fresh, extra(count)) > counted;
    };
    const auto raises = [&](std::uint32_t count) { return exploreCounted(fresh, extra(count), counted); };
    const std::uint32_t most = m_set.required();
    if (!mightRaise(most)) {
        return 0;
    }
    const std::uint32_t bound = leastThat(std::uint32_t{1}, most, mightRaise);
    if (raises(bound)) {
        return bound;
    }
    return bound < most && raises(most) ? leastThat(bound + 1, most, raises) : 0;
}

} // namespace peelpack::tally
