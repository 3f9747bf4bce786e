#include "core/tally/placement.h"

#include <cassert>
#include <utility>

// The second half of placing: of all optimal placements the one with the smallest vector of seats, settled item by
// item.

namespace peelpack::tally {
namespace {

using catalogue::categoryAt;
using catalogue::categoryCount;
using sheet::Role;

constexpr std::size_t seatKinds = requirement::mostTargets * categoryCount;

} // namespace

Placement Placer::best(std::span<const Item> items)
{
    m_model.build(m_set, items);
    Placement placement;
    placement.value = m_optimum = solveBest();
    placement.seats.assign(items.size(), Seat{});
    m_settledLogged = 0;
    m_closed.assign(m_model.classes().size() * seatKinds, 0);
    m_checkedAt = -1;
    m_gateReady = m_mayBeElsewhere && m_relaxed.has_value();
    if (m_gateReady) {
        m_model.solve(m_trial, *m_relaxed, m_settled);
        m_gate = m_trial;
    }
    settleInOrder(items, placement);
    return placement;
}

void Placer::settleInOrder(std::span<const Item> items, Placement& placement)
{
    for (std::size_t i = 0; i < items.size(); ++i) {
        const std::int32_t classIndex = m_model.classOfItem()[i];
        if (classIndex < 0) {
            continue;
        }
        SeatAt seat{static_cast<std::size_t>(classIndex), 0, 0};
        const PlacementModel::ItemClass& itemClass = m_model.classes()[seat.classIndex];
        bool seated = false;
        for (seat.target = 0; seat.target < m_set.targets.size() && !seated; ++seat.target) {
            for (seat.category = 0; seat.category < categoryCount && !seated; ++seat.category) {
                std::uint8_t& closed =
                    m_closed[seat.classIndex * seatKinds + seat.target * categoryCount + seat.category];
                if (itemClass.toCategory[seat.category] < 0 || closed != 0) {
                    continue;
                }
                seated = settle(seat);
                closed = seated ? 0 : 1;
                if (seated) {
                    placement.seats[i] = {static_cast<std::int8_t>(seat.target),
                                          static_cast<std::int8_t>(seat.category)};
                }
            }
        }
        if (!seated) {
            leaveOut(seat.classIndex);
        }
    }
}

/// Cheap reasons why nothing more can sit there.
bool Placer::seatIsOpen(const SeatAt& seat) const
{
    const requirement::Target& rule = m_set.targets[seat.target];
    const PlacementModel::ItemClass& itemClass = m_model.classes()[seat.classIndex];
    const std::optional<Role> role = itemClass.item.roleIn(categoryAt(seat.category));
    if (!role || m_model.toTarget(*role, seat.category, seat.target) < 0 ||
        m_settled.inTarget[seat.target] >= static_cast<std::int32_t>(rule.required) ||
        (rule.cap && m_settled.seats[seat.target][seat.category] >= static_cast<std::int32_t>(*rule.cap))) {
        return false;
    }
    if (const std::int32_t place = itemClass.place[seat.category];
        place >= 0 && m_settled.placeTaken[static_cast<std::size_t>(place)] != 0) {
        return false;
    }
    if (m_model.spreadTarget() == static_cast<std::int32_t>(seat.target)) {
        std::array<std::int32_t, categoryCount> inSpread = m_settled.seats[seat.target];
        ++inSpread[seat.category];
        return m_model.spreadHolds(inSpread);
    }
    return true;
}

/// Settles one item of the class there if some optimal placement that keeps all that is settled has it there.
bool Placer::settle(const SeatAt& seat)
{
    if (!seatIsOpen(seat)) {
        return false;
    }
    if (settleInLeaves(seat)) {
        note(seat, 1);
        return true;
    }
    return m_mayBeElsewhere && settleElsewhere(seat);
}

/// Leaves that cannot follow are dropped once one can.
bool Placer::settleInLeaves(const SeatAt& seat)
{
    std::size_t kept = 0;
    for (std::size_t i = 0; i < m_leafCount; ++i) {
        if (settleInLeaf(m_leaves[i], seat)) {
            std::swap(m_leaves[kept++], m_leaves[i]);
        }
    }
    if (kept == 0) {
        return false;
    }
    m_leafCount = kept;
    if (m_gateReady && !tryLock(m_gate, seat)) {
        closeGate();
    }
    return true;
}

/// Where rules are relaxed in the leaf, what re-routing gives must still keep them.
bool Placer::settleInLeaf(Leaf& leaf, const SeatAt& seat)
{
    if (m_model.neverBranches()) {
        return tryLock(leaf.network, seat);
    }
    m_trial = leaf.network;
    if (!tryLock(m_trial, seat) || !m_model.isValid(m_trial, leaf.choices, leaf.settledBefore)) {
        return false;
    }
    std::swap(leaf.network, m_trial);
    return true;
}

/// Nothing outside of the leaves can follow.
void Placer::closeGate()
{
    m_gateReady = false;
    m_mayBeElsewhere = false;
    m_untried.clear();
}

bool Placer::tryLock(FlowNetwork& network, const SeatAt& seat) const
{
    const PlacementModel::ItemClass& itemClass = m_model.classes()[seat.classIndex];
    const FlowNetwork::Arc toCategory = itemClass.toCategory[seat.category];
    const FlowNetwork::Arc toTarget =
        m_model.toTarget(*itemClass.item.roleIn(categoryAt(seat.category)), seat.category, seat.target);
    if (network.movable(toCategory) == 0 && !network.tryCycle(toCategory)) {
        return false;
    }
    network.lock(toCategory);
    if (network.movable(toTarget) == 0 && !network.tryCycle(toTarget)) {
        network.unlock(toCategory);
        return false;
    }
    network.lock(toTarget);
    network.lock(itemClass.supply);
    return true;
}

void Placer::note(const SeatAt& seat, std::int32_t sign)
{
    const PlacementModel::ItemClass& itemClass = m_model.classes()[seat.classIndex];
    const std::optional<Role> role = itemClass.item.roleIn(categoryAt(seat.category));
    m_settled.left[seat.classIndex] -= sign;
    m_settled.seats[seat.target][seat.category] += sign;
    m_settled.inTarget[seat.target] += sign;
    m_settled.byRole[static_cast<std::size_t>(*role)][seat.category] += sign;
    m_settled.total += sign;
    m_settledLogged += indexOf(itemClass.item.logged) == seat.category ? sign : 0;
    if (const std::int32_t place = itemClass.place[seat.category]; place >= 0) {
        m_settled.placeTaken[static_cast<std::size_t>(place)] = sign > 0 ? 1 : 0;
    }
}

/// No leaf can follow; a solution outside of all leaves may.
bool Placer::settleElsewhere(const SeatAt& seat)
{
    if (m_gateReady && !tryLock(m_gate, seat)) {
        return false;
    }
    if (m_model.neverBranches() ? settleInUntried(seat) : settleByBranching(seat)) {
        return true;
    }
    if (m_gateReady) {
        // The gate holds the seat now; take it back by beginning anew from what is settled.
        m_model.solve(m_gate, *m_relaxed, m_settled);
    }
    return false;
}

Value Placer::goal() const
{
    Value value = m_optimum;
    value.underLogged -= m_settledLogged;
    return value;
}

/// Each untried choice of specialties is solved once, from what is settled: it becomes a leaf or is done with.
bool Placer::settleInUntried(const SeatAt& seat)
{
    const auto target = static_cast<std::size_t>(m_model.spreadTarget());
    while (!m_untried.empty()) {
        Choices choices = m_model.freshChoices();
        choices.specialties = m_untried.front().specialties;
        m_untried.pop_front();
        if (!m_model.spreadHolds(m_settled.seats[target], choices.specialties)) {
            continue;
        }
        const PlacementModel::Solution solution = m_model.solve(m_trial, choices, m_settled);
        if (!solution.feasible || solution.value != goal()) {
            continue;
        }
        addLeaf(choices);
        if (tryLock(m_leaves[m_leafCount - 1].network, seat)) {
            std::swap(m_leaves[0], m_leaves[m_leafCount - 1]); // the others cannot follow
            m_leafCount = 1;
            note(seat, 1);
            return true;
        }
    }
    m_mayBeElsewhere = false;
    return false;
}

bool Placer::settleByBranching(const SeatAt& seat)
{
    Found found;
    if (!m_model.spreadNeedsChoice()) {
        note(seat, 1);
        explore(m_model.freshChoices(), goal(), found);
    } else {
        dropUntriedThatFellBehind();
        note(seat, 1);
        for (std::size_t i = 0; i < m_untried.size() && !found.any; ++i) {
            Choices choices = m_model.freshChoices();
            choices.specialties = m_untried[i].specialties;
            if (m_model.spreadHolds(m_settled.seats[static_cast<std::size_t>(m_model.spreadTarget())],
                                    choices.specialties)) {
                explore(choices, goal(), found);
            }
        }
    }
    if (!found.any) {
        note(seat, -1);
        return false;
    }
    m_leafCount = 0;
    solveAndAddLeaf(found.choices);
    return true;
}

/// A choice of specialties that, relaxed, cannot reach the optimum with what is settled never will again.
void Placer::dropUntriedThatFellBehind()
{
    if (m_settled.total == m_checkedAt) {
        return;
    }
    m_checkedAt = m_settled.total;
    std::erase_if(m_untried, [&](const PlacementModel::SpreadChoice& choice) {
        Choices choices = m_model.freshChoices();
        choices.specialties = choice.specialties;
        const PlacementModel::Solution solution = m_model.solve(m_trial, choices, m_settled);
        return !solution.feasible || solution.value < goal();
    });
}

/// Every optimal placement leaves one item of the class out.
void Placer::leaveOut(std::size_t classIndex)
{
    const FlowNetwork::Arc supply = m_model.classes()[classIndex].supply;
    for (std::size_t i = 0; i < m_leafCount; ++i) {
        assert(m_leaves[i].network.room(supply) > 0);
        m_leaves[i].network.block(supply);
    }
    if (m_gateReady) {
        if (m_gate.room(supply) > 0 || m_gate.tryCycle(supply ^ 1)) {
            m_gate.block(supply);
        } else {
            closeGate();
        }
    }
    --m_settled.left[classIndex];
}

} // namespace peelpack::tally
