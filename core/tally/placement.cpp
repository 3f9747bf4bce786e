#include "core/tally/placement.h"

#include "core/tally/placement_terms.h"

#include <algorithm>
#include <cassert>
#include <utility>

namespace peelpack::tally {

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
    return leastThat(0, most - 1, reaches);
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
    for (const PlacementModel::SpreadChoice& choice : m_spreadChoices) {
        if (choice.reservedSeats != seats) {
            seats = choice.reservedSeats;
            bound = boundFor(seats, open);
            top = m_leafCount == 0 ? bound : top;
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
            if (!m_relaxed) {
                m_relaxed = open; // holds all that is untried from here on
            }
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

} // namespace peelpack::tally
