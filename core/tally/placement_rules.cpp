#include "core/tally/placement_model.h"

#include "core/tally/placement_terms.h"

#include <algorithm>
#include <functional>
#include <limits>
#include <utility>

namespace peelpack::tally {

using catalogue::Category;
using catalogue::categoryAt;
using catalogue::categoryCount;
using catalogue::CategorySet;
using sheet::Role;
using Arc = FlowNetwork::Arc;
using Node = FlowNetwork::Node;

std::vector<PlacementModel::SpreadChoice> PlacementModel::spreadChoices() const
{
    std::vector<SpreadChoice> choices;
    if (m_spreadTarget < 0) {
        return choices;
    }
    const requirement::Target& target = m_set->targets[static_cast<std::size_t>(m_spreadTarget)];
    std::vector<Category> specialties;
    for (std::size_t category = 0; category < categoryCount; ++category) {
        if (target.categories.contains(categoryAt(category))) {
            specialties.push_back(categoryAt(category));
        }
    }
    const auto packed = [&](CategorySet set) {
        std::size_t bits = 0;
        for (std::size_t i = 0; i < specialties.size(); ++i) {
            bits |= set.contains(specialties[i]) ? std::size_t{1} << i : 0;
        }
        return bits;
    };
    // inside[X]: items that can sit in no specialty but those of X; by summing over subsets.
    const std::size_t subsets = std::size_t{1} << specialties.size();
    std::vector<std::int32_t> inside(subsets, 0);
    std::int32_t total = 0;
    const auto add = [&](CategorySet set, std::int32_t count) {
        if (const std::size_t bits = packed(set); bits != 0) {
            inside[bits] += count;
            total += count;
        }
    };
    std::array<std::int32_t, categoryCount> logged{};
    for (const ItemClass& itemClass : m_classes) {
        const std::optional<Role> role = itemClass.item.roleIn(itemClass.item.logged);
        logged[indexOf(itemClass.item.logged)] += role && target.accepts(*role) ? itemClass.count : 0;
        add((target.acceptsFirst ? itemClass.item.asFirst : CategorySet()) |
                (target.acceptsSecond ? itemClass.item.asSecond : CategorySet()),
            itemClass.count);
    }
    for (std::size_t i = 0; i < specialties.size(); ++i) {
        for (std::size_t set = 0; set < subsets; ++set) {
            inside[set] += (set >> i & 1U) != 0 ? inside[set ^ (std::size_t{1} << i)] : 0;
        }
    }
    std::vector<std::uint8_t> sizeOf(subsets, 0);
    for (std::size_t set = 1; set < subsets; ++set) {
        sizeOf[set] = static_cast<std::uint8_t>(sizeOf[set >> 1U] + (set & 1U));
    }
    const std::size_t size = std::min<std::size_t>(specialties.size(), static_cast<std::size_t>(m_spreadMost));
    for (std::size_t set = 0; set < subsets; ++set) {
        if (sizeOf[set] != size) {
            continue;
        }
        SpreadChoice choice;
        choice.reservedSeats = std::numeric_limits<std::int32_t>::max();
        choice.ceiling.fill(choice.reservedSeats);
        for (std::size_t i = 0; i < specialties.size(); ++i) {
            if ((set >> i & 1U) != 0) {
                choice.specialties.add(specialties[i]);
                choice.underLogged += std::min(m_spreadEach, logged[indexOf(specialties[i])]);
            }
        }
        // Hall: each subset of the choice offers its seats, the rest is bounded by the items that touch it.
        for (std::size_t full = set;; full = (full - 1) & set) {
            const std::int32_t touching = total - inside[(subsets - 1) ^ (set ^ full)];
            const std::int32_t bound = m_spreadEach * sizeOf[full] + touching;
            choice.reservedSeats = std::min(choice.reservedSeats, bound);
            for (std::size_t i = 0; i < specialties.size(); ++i) {
                if (((set ^ full) >> i & 1U) == 0) {
                    std::int32_t& ceiling = choice.ceiling[indexOf(specialties[i])];
                    ceiling = std::min(ceiling, bound);
                }
            }
            if (full == 0) {
                break;
            }
        }
        choices.push_back(choice);
    }
    std::stable_sort(choices.begin(), choices.end(), [](const SpreadChoice& a, const SpreadChoice& b) {
        return std::pair(a.reservedSeats, a.underLogged) > std::pair(b.reservedSeats, b.underLogged);
    });
    return choices;
}

bool PlacementModel::spreadHolds(const std::array<std::int32_t, categoryCount>& inSpread, CategorySet specialties) const
{
    std::int32_t free = 0;
    for (std::size_t category = 0; category < categoryCount; ++category) {
        const bool chosen = specialties.contains(categoryAt(category));
        free += std::max(0, inSpread[category] - (chosen ? m_spreadEach : 0));
    }
    return free <= m_spreadFree;
}

bool PlacementModel::spreadHolds(const std::array<std::int32_t, categoryCount>& inSpread) const
{
    std::array<std::int32_t, categoryCount> reserved{};
    std::int32_t total = 0;
    for (std::size_t category = 0; category < categoryCount; ++category) {
        reserved[category] = std::min(inSpread[category], m_spreadEach);
        total += inSpread[category];
    }
    std::sort(reserved.begin(), reserved.end(), std::greater<>());
    for (std::size_t i = 0; i < reserved.size() && static_cast<std::int32_t>(i) < m_spreadMost; ++i) {
        total -= reserved[i];
    }
    return total <= m_spreadFree;
}

std::int32_t PlacementModel::casesIn(const FlowNetwork& network, Role role, std::size_t category,
                                     const Settled& settled) const
{
    std::int32_t cases = settled.byRole[at(role)][category];
    for (const Arc arc : {m_limitArc[at(role)][category], m_poolIn[at(role)][category]}) {
        cases += arc >= 0 ? network.flow(arc) : 0;
    }
    return cases;
}

bool PlacementModel::placeIsBroken(const FlowNetwork& network, const Choices& choices, std::size_t index) const
{
    const Place& place = m_places[index];
    if (!place.contested() || choices.places[index].owner != Choices::Owner::Anyone) {
        return false;
    }
    if (isPooled(choices.places[index].relaxation)) {
        return network.flow(place.toPool[at(Role::First)]) != network.flow(place.fromPool[at(Role::First)]);
    }
    return network.flow(place.apart[at(Role::First)]) + network.flow(place.apart[at(Role::Second)]) > 1;
}

bool PlacementModel::limitIsBroken(const FlowNetwork& network, const Choices& choices, std::size_t category,
                                   const Settled& settled) const
{
    if (m_poolArc[category] < 0) {
        return false;
    }
    if (isPooled(choices.limits[category].relaxation)) {
        return network.flow(m_poolIn[at(Role::First)][category]) != network.flow(m_poolOut[at(Role::First)][category]);
    }
    return casesIn(network, Role::First, category, settled) + casesIn(network, Role::Second, category, settled) >
           m_limit[category];
}

bool PlacementModel::isValid(const FlowNetwork& network, const Choices& choices, const Settled& settled) const
{
    for (std::size_t place = 0; place < m_places.size(); ++place) {
        if (placeIsBroken(network, choices, place)) {
            return false;
        }
    }
    for (std::size_t category = 0; category < categoryCount; ++category) {
        if (limitIsBroken(network, choices, category, settled)) {
            return false;
        }
    }
    return true;
}

/// First every broken rule is relaxed in the other way, all at once; what stays broken is split, one at a time.
PlacementModel::Step PlacementModel::nextStep(const FlowNetwork& network, const Choices& choices,
                                              const Settled& settled) const
{
    using Relaxation = Choices::Relaxation;
    Step step;
    if (!m_branches) {
        return step;
    }
    step.first = choices;
    std::size_t brokenPlace = m_places.size();
    std::size_t brokenLimit = categoryCount;
    for (std::size_t place = 0; place < m_places.size(); ++place) {
        if (!placeIsBroken(network, choices, place)) {
            continue;
        }
        if (choices.places[place].relaxation == Relaxation::PooledFirst) {
            step.first.places[place].relaxation = Relaxation::ApartAgain;
            step.kind = Step::Kind::Relax;
        } else {
            brokenPlace = std::min(brokenPlace, place);
        }
    }
    for (std::size_t category = 0; category < categoryCount; ++category) {
        if (!limitIsBroken(network, choices, category, settled)) {
            continue;
        }
        Relaxation& relaxation = step.first.limits[category].relaxation;
        if (relaxation == Relaxation::Apart || relaxation == Relaxation::Pooled) {
            // A split must exclude the solution at hand, which only one of a limit relaxed apart is sure to do.
            relaxation = relaxation == Relaxation::Apart ? Relaxation::Pooled : Relaxation::ApartAgain;
            step.kind = Step::Kind::Relax;
        } else {
            brokenLimit = std::min(brokenLimit, category);
        }
    }
    if (step.kind == Step::Kind::Relax) {
        return step;
    }
    if (brokenPlace < m_places.size()) {
        return splitPlace(choices, brokenPlace);
    }
    return brokenLimit < categoryCount ? splitLimit(network, choices, brokenLimit, settled) : step;
}

/// Gives the place to the one role or to the other.
PlacementModel::Step PlacementModel::splitPlace(const Choices& choices, std::size_t place) const
{
    Step step{Step::Kind::Branch, choices, choices};
    step.first.places[place].owner = Choices::Owner::FirstOnly;
    step.second.places[place].owner = Choices::Owner::SecondOnly;
    return step;
}

/// Splits the limit at a point between what each role uses: either first scrubs stay below it or second scrubs do.
PlacementModel::Step PlacementModel::splitLimit(const FlowNetwork& network, const Choices& choices,
                                                std::size_t category, const Settled& settled) const
{
    const std::int32_t first = casesIn(network, Role::First, category, settled);
    const std::int32_t second = casesIn(network, Role::Second, category, settled);
    const std::int32_t limit = m_limit[category];
    const std::int32_t split = std::clamp(first * limit / (first + second), limit - second, first - 1);
    Step step{Step::Kind::Branch, choices, choices};
    Choices::LimitChoice& below = step.first.limits[category];
    Choices::LimitChoice& above = step.second.limits[category];
    below.mostFirst = std::min(below.mostFirst, split);
    above.mostSecond = std::min(above.mostSecond, limit - split - 1);
    below.relaxation = above.relaxation = Choices::Relaxation::Apart;
    return step;
}

bool PlacementModel::reachesSink(const std::vector<std::uint8_t>& nodes, Role role, std::size_t category) const
{
    const Node node = m_categoryNode[at(role)][category];
    return node >= 0 && nodes[static_cast<std::size_t>(node)] != 0;
}

} // namespace peelpack::tally
