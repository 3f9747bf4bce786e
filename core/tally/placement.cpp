#include "core/tally/placement.h"

#include <algorithm>
#include <cassert>
#include <utility>

namespace peelpack::tally {
namespace {

using catalogue::Category;
using catalogue::categoryAt;
using catalogue::categoryCount;
using sheet::Role;

constexpr std::size_t seatKinds = requirement::mostTargets * categoryCount;

} // namespace

/// Makes the solution under these choices, which keeps every rule, a leaf.
void Placer::addLeaf(const Choices& choices)
{
    if (m_leafCount == m_leaves.size()) {
        m_leaves.emplace_back();
    }
    Leaf& leaf = m_leaves[m_leafCount++];
    leaf.network = m_trial;
    leaf.choices = choices;
    if (!m_model.neverBranches()) {
        leaf.settledBefore = m_settled;
    }
}

void Placer::solveAndAddLeaf(const Choices& choices)
{
    m_model.solve(m_trial, choices, m_settled);
    addLeaf(choices);
}

/// Depth first, the promising half first. `atLeast`: only values that reach it are of interest; with something found,
/// only better ones. Where nothing branches, m_trial holds the solution found.
void Placer::explore(Choices choices, const Value& atLeast, Found& found)
{
    while (true) {
        const PlacementModel::Solution solution = m_model.solve(m_trial, choices, m_settled);
        if (!solution.feasible || solution.value < atLeast || (found.any && solution.value <= found.value)) {
            return;
        }
        PlacementModel::Step step = m_model.nextStep(m_trial, choices, m_settled);
        switch (step.kind) {
        case PlacementModel::Step::Kind::Valid:
            found = {true, solution.value, std::move(choices)};
            return;
        case PlacementModel::Step::Kind::Relax:
            choices = std::move(step.first);
            break;
        case PlacementModel::Step::Kind::Branch:
            explore(std::move(step.first), atLeast, found);
            choices = std::move(step.second);
            break;
        }
    }
}

/// The optimum, with one leaf or more that reach it.
Value Placer::solveBest()
{
    m_trial = m_model.blankNetwork();
    m_settled = m_model.freshSettled();
    m_leafCount = 0;
    m_untried.clear();
    m_relaxed.reset();
    m_spreadChoices.clear();
    if (m_model.spreadNeedsChoice()) {
        return solveOverSpread();
    }
    m_mayBeElsewhere = !m_model.neverBranches();
    const Choices fresh = m_model.freshChoices();
    const PlacementModel::Solution relaxed = m_model.solve(m_trial, fresh, m_settled);
    if (m_model.neverBranches()) {
        addLeaf(fresh);
        return relaxed.value;
    }
    Found found;
    explore(fresh, Value{}, found);
    assert(found.any);
    if (found.value == relaxed.value) {
        m_relaxed = fresh;
    }
    solveAndAddLeaf(found.choices);
    return found.value;
}

/// What no choice with these reserved seats can beat, whichever specialties they belong to.
Value Placer::boundFor(std::int32_t openSeats, Choices& open)
{
    open = m_model.freshChoices();
    open.openSeats = openSeats;
    return m_model.solve(m_trial, open, m_settled).value;
}

/// The fewest reserved seats that must be filled to reach the counts of `top`, the bound for `most` of them.
std::int32_t Placer::seatsToReach(const Value& top, std::int32_t most)
{
    Choices open;
    const auto reaches = [&](std::int32_t seats) {
        const Value value = boundFor(seats, open);
        return std::pair(value.counted, value.firstScrub) == std::pair(top.counted, top.firstScrub);
    };
    if (most == 0 || !reaches(most - 1)) {
        return most; // usually all of them are needed
    }
    std::int32_t low = 0;
    std::int32_t high = most - 1;
    while (low < high) {
        const std::int32_t middle = low + (high - low) / 2;
        if (reaches(middle)) {
            high = middle;
        } else {
            low = middle + 1;
        }
    }
    return high;
}

/// Over the choices of specialties, the most promising first. Where nothing branches, all that reach the optimum become
/// leaves, unless the bound itself is reached: then the rest is left untried.
Value Placer::solveOverSpread()
{
    m_spreadChoices = m_model.spreadChoices();
    const bool branches = !m_model.neverBranches();
    Value best;
    Value top;
    Value bound;
    Choices open;
    Choices bestChoices;
    std::int32_t seats = -1;
    std::int32_t mustFill = -1; // not yet known
    bool boundReached = false;
    for (const PlacementModel::SpreadChoice& choice : m_spreadChoices) {
        if (choice.reservedSeats != seats) {
            seats = choice.reservedSeats;
            bound = boundFor(seats, open);
            top = m_leafCount == 0 ? bound : top;
            boundReached = false;
        }
        if (m_leafCount > 0 && bound < best) {
            break;
        }
        if (m_leafCount > 0 && std::pair(best.counted, best.firstScrub) == std::pair(top.counted, top.firstScrub)) {
            // Reserved seats that must be filled and cannot be under the logged category are lost to the third count.
            mustFill = mustFill < 0 ? seatsToReach(top, m_spreadChoices.front().reservedSeats) : mustFill;
            if (best.counted - std::max(0, mustFill - choice.underLogged) < best.underLogged) {
                continue;
            }
        }
        if (m_leafCount > 0 && bound == best) {
            if (!boundReached && !m_relaxed) {
                m_relaxed = open; // holds all that is untried from here on
            }
            boundReached = true;
            m_untried.push_back(choice);
            continue;
        }
        Choices choices = m_model.freshChoices();
        choices.specialties = choice.specialties;
        Found found;
        explore(choices, best, found);
        if (!found.any) {
            continue;
        }
        if (found.value > best) {
            m_leafCount = 0;
            m_untried.clear();
        }
        best = found.value;
        if (branches) {
            m_untried.push_back(choice); // other branches of it may reach the optimum too
            bestChoices = m_leafCount == 0 ? found.choices : bestChoices;
            m_leafCount = 1;
        } else {
            addLeaf(found.choices);
        }
    }
    if (branches) {
        m_leafCount = 0;
        solveAndAddLeaf(bestChoices);
        if (top != best) {
            m_relaxed.reset(); // it would not hold what was tried
        }
    }
    m_mayBeElsewhere = !m_untried.empty();
    return best;
}

Value Placer::bestValue(std::span<const Item> items)
{
    m_model.build(m_set, items);
    return solveBest();
}

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
