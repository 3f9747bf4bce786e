#include "core/tally/placement_model.h"

#include "core/tally/placement_terms.h"

#include <algorithm>

namespace peelpack::tally {

using catalogue::categoryAt;
using catalogue::categoryCount;
using sheet::Role;
using Arc = FlowNetwork::Arc;

Choices PlacementModel::freshChoices() const
{
    Choices choices;
    choices.places.resize(m_places.size());
    for (std::size_t category = 0; category < categoryCount; ++category) {
        choices.limits[category].mostFirst = choices.limits[category].mostSecond = std::max(m_limit[category], 0);
    }
    choices.openSeats = m_spreadTarget >= 0 && !spreadNeedsChoice() ? m_spreadMost : 0;
    return choices;
}

void PlacementModel::applyCapacities(FlowNetwork& network, const Choices& choices, const Settled& settled,
                                     const Extra& extra) const
{
    for (std::size_t i = 0; i < m_classes.size(); ++i) {
        network.setCapacity(m_classes[i].supply, settled.left[i]);
    }
    applyPlaces(network, choices, settled);
    for (std::size_t category = 0; category < categoryCount; ++category) {
        for (const Role role : countedRoles) {
            if (const Arc arc = m_extraArc[at(role)][category]; arc >= 0) {
                const bool here = extra.role == role && indexOf(extra.category) == category;
                network.setCapacity(arc, here ? extra.count : 0);
            }
        }
    }
    applyLimits(network, choices, settled, extra);
    for (std::size_t target = 0; target < m_set->targets.size(); ++target) {
        for (std::size_t category = 0; category < categoryCount; ++category) {
            if (const Arc arc = m_settledArc[target][category]; arc >= 0) {
                network.setCapacity(arc, settled.seats[target][category]);
            }
        }
    }
    if (m_spreadTarget >= 0) {
        for (std::size_t category = 0; category < categoryCount; ++category) {
            if (m_openArc[category] >= 0) {
                const bool chosen = choices.specialties.contains(categoryAt(category));
                network.setCapacity(m_chosenArc[category], chosen ? m_spreadEach : 0);
                network.setCapacity(m_openArc[category], !chosen && choices.openSeats > 0 ? m_spreadEach : 0);
            }
        }
        network.setCapacity(m_openTotalArc, choices.openSeats);
    }
}

void PlacementModel::applyPlaces(FlowNetwork& network, const Choices& choices, const Settled& settled) const
{
    for (std::size_t i = 0; i < m_places.size(); ++i) {
        const Place& place = m_places[i];
        const Choices::PlaceChoice& choice = choices.places[i];
        const std::int32_t room = settled.placeTaken[i] != 0 ? 0 : 1;
        const bool pooled = place.contested() && choice.owner == Choices::Owner::Anyone && isPooled(choice.relaxation);
        for (const Role role : countedRoles) {
            if (!place.entered[at(role)]) {
                continue;
            }
            const Choices::Owner other = role == Role::First ? Choices::Owner::SecondOnly : Choices::Owner::FirstOnly;
            network.setCapacity(place.apart[at(role)], pooled || choice.owner == other ? 0 : room);
            if (place.contested()) {
                network.setCapacity(place.toPool[at(role)], pooled ? room : 0);
                network.setCapacity(place.fromPool[at(role)], pooled ? room : 0);
            }
        }
        if (place.contested()) {
            network.setCapacity(place.pool, pooled ? room : 0);
        }
    }
}

void PlacementModel::applyLimits(FlowNetwork& network, const Choices& choices, const Settled& settled,
                                 const Extra& extra) const
{
    for (std::size_t category = 0; category < categoryCount; ++category) {
        const Choices::LimitChoice& choice = choices.limits[category];
        const bool pooled = m_poolArc[category] >= 0 && isPooled(choice.relaxation);
        if (m_poolArc[category] >= 0) {
            network.setCapacity(m_poolArc[category],
                                pooled ? std::max(0, m_limit[category] - settled.inCategory(category)) : 0);
        }
        for (const Role role : countedRoles) {
            const Arc arc = m_limitArc[at(role)][category];
            if (arc < 0) {
                continue;
            }
            const std::int32_t share = role == Role::First ? choice.mostFirst : choice.mostSecond;
            const std::int32_t most =
                std::max(0, std::min(share, m_limit[category] - settled.byRole[1 - at(role)][category]) -
                                settled.byRole[at(role)][category]);
            network.setCapacity(arc, pooled ? 0 : most);
            if (m_poolArc[category] >= 0) {
                const bool more = extra.role == role && indexOf(extra.category) == category;
                const std::int32_t reach = m_reach[at(role)][category] + (more ? extra.count : 0);
                network.setCapacity(m_poolIn[at(role)][category], pooled ? most : 0);
                network.setCapacity(m_poolOut[at(role)][category], pooled ? std::min(most, reach) : 0);
            }
        }
    }
}

bool PlacementModel::limitsFit(const Choices& choices, const Settled& settled) const
{
    for (std::size_t category = 0; category < categoryCount; ++category) {
        if (m_limit[category] >= 0 &&
            (settled.byRole[at(Role::First)][category] > choices.limits[category].mostFirst ||
             settled.byRole[at(Role::Second)][category] > choices.limits[category].mostSecond ||
             settled.inCategory(category) > m_limit[category])) {
            return false;
        }
    }
    return true;
}

PlacementModel::Solution PlacementModel::solve(FlowNetwork& network, const Choices& choices,
                                               const Settled& settled) const
{
    Solution solution;
    if (!limitsFit(choices, settled)) {
        return solution;
    }
    applyCapacities(network, choices, settled, {});
    const FlowNetwork::Outcome outcome = network.run();
    FlowNetwork::Cost worth = -outcome.cost;
    solution.feasible = worth / settledWorth == settled.total;
    worth %= settledWorth;
    solution.value.counted = outcome.flow;
    solution.value.firstScrub = static_cast<std::int32_t>(worth / firstScrubWorth);
    solution.value.underLogged = static_cast<std::int32_t>(worth % firstScrubWorth);
    return solution;
}

std::int32_t PlacementModel::mostCounted(FlowNetwork& network, const Choices& choices, const Extra& extra) const
{
    applyCapacities(network, choices, m_freshSettled, extra);
    return network.runFlowOnly();
}

} // namespace peelpack::tally
