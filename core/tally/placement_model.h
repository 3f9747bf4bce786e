#pragma once

#include "core/requirement/requirement_set.h"
#include "core/tally/flow_network.h"
#include "core/tally/item.h"
#include "core/tally/placement_choices.h"

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace peelpack::tally {

/// The placing problem of one student as a flow network: source → classes of equal items → (place within an operation)
/// → (category, role) → (target, category) → target → sink.
///
/// Three rules do not fit a flow network. The specialties of a spread are chosen from outside (spreadChoices()). The
/// two others are relaxed (Choices): a solution is then an upper bound, and where it breaks one of them, nextStep()
/// says how to relax it in the other way, or how to split the problem so that both halves exclude the solution and
/// together lose nothing.
///
/// The model holds the arcs; flows live in networks, of which there may be several with the same arcs.
class PlacementModel {
public:
    struct ItemClass {
        Item item;
        std::int32_t count = 0;
        FlowNetwork::Arc supply = -1;
        std::array<FlowNetwork::Arc, catalogue::categoryCount> toCategory{}; ///< -1: cannot count there
        std::array<std::int32_t, catalogue::categoryCount> place{};          ///< -1: none
    };

    /// The set must be valid and must outlive the model.
    void build(const requirement::RequirementSet& set, std::span<const Item> items);

    [[nodiscard]] const std::vector<ItemClass>& classes() const { return m_classes; }
    /// By item; -1 for one that no target accepts.
    [[nodiscard]] const std::vector<std::int32_t>& classOfItem() const { return m_classOfItem; }
    /// Nothing is settled yet.
    [[nodiscard]] const Settled& freshSettled() const { return m_freshSettled; }
    [[nodiscard]] Choices freshChoices() const;
    /// There is nothing to branch on: with the specialties chosen, every solution of a network is one of the problem.
    [[nodiscard]] bool neverBranches() const { return !m_branches; }

    /// A choice of specialties, and the most cases that could sit on its reserved seats (exact but for clashes within
    /// an operation; Hall's condition over the subsets of the choice).
    struct SpreadChoice {
        catalogue::CategorySet specialties;
        std::int32_t reservedSeats = 0;
        std::int32_t underLogged = 0; ///< of these, the most that could sit there under their logged category
        /// By category: what reservedSeats grows to, one by one, with further cases of that category only.
        std::array<std::int32_t, catalogue::categoryCount> ceiling{};
    };
    /// All choices, most reserved seats first, then most of them under the logged category; empty when no target has a
    /// spread.
    [[nodiscard]] std::vector<SpreadChoice> spreadChoices() const;
    /// Whether a choice must be made. Where a chosen specialty has but one reserved seat (each = 1), any flow over as
    /// many open seats as there are specialties to choose keeps the rule.
    [[nodiscard]] bool spreadNeedsChoice() const { return m_spreadTarget >= 0 && m_spreadEach > 1; }
    [[nodiscard]] std::int32_t spreadTarget() const { return m_spreadTarget; }
    /// Condition 4 of the counting rules, for these numbers in the spread target and these specialties.
    [[nodiscard]] bool spreadHolds(const std::array<std::int32_t, catalogue::categoryCount>& inSpread,
                                   catalogue::CategorySet specialties) const;
    /// The same for the best choice of specialties.
    [[nodiscard]] bool spreadHolds(const std::array<std::int32_t, catalogue::categoryCount>& inSpread) const;

    /// Arc from (category, role) towards a target, -1 where it does not accept it.
    [[nodiscard]] FlowNetwork::Arc toTarget(sheet::Role role, std::size_t category, std::size_t target) const
    {
        return m_toTarget[static_cast<std::size_t>(role)][category][target];
    }
    /// A network with the model's arcs and no flow.
    [[nodiscard]] const FlowNetwork& blankNetwork() const { return m_network; }

    struct Solution {
        bool feasible = false; ///< the settled items fit
        Value value;           ///< settled ones included, except their part of underLogged
    };
    /// Best solution of the network under these choices.
    Solution solve(FlowNetwork& network, const Choices& choices, const Settled& settled) const;
    /// Only how many count, under these choices, with cases that are imagined.
    std::int32_t mostCounted(FlowNetwork& network, const Choices& choices, const Extra& extra) const;

    struct Step {
        enum class Kind : std::uint8_t {
            Valid,  ///< the solution keeps every rule
            Relax,  ///< solve again under `first`, which relaxes in another way
            Branch, ///< solve under `first` and under `second`
        };
        Kind kind = Kind::Valid;
        Choices first;
        Choices second;
    };
    /// Looks at the solution in the network. `settled` as when it was solved.
    Step nextStep(const FlowNetwork& network, const Choices& choices, const Settled& settled) const;
    [[nodiscard]] bool isValid(const FlowNetwork& network, const Choices& choices, const Settled& settled) const;
    /// Where cases of a category and role come together, -1 when no target accepts them.
    [[nodiscard]] FlowNetwork::Node categoryNode(sheet::Role role, std::size_t category) const
    {
        return m_categoryNode[static_cast<std::size_t>(role)][category];
    }
    /// Whether (category, role) could send one more case to the sink; `nodes` from FlowNetwork::nodesReachingSink().
    [[nodiscard]] bool reachesSink(const std::vector<std::uint8_t>& nodes, sheet::Role role,
                                   std::size_t category) const;

private:
    using CategoryArcs = std::array<FlowNetwork::Arc, catalogue::categoryCount>;

    /// One category within one operation that more than one item could take. Items enter by role; from there the way is
    /// over the pool (which holds one) or, by role, apart.
    struct Place {
        std::size_t category = 0;
        std::array<bool, 2> entered{}; ///< by role: some item could enter
        std::array<FlowNetwork::Node, 2> in{};
        std::array<FlowNetwork::Arc, 2> apart{-1, -1};
        std::array<FlowNetwork::Arc, 2> toPool{-1, -1};
        std::array<FlowNetwork::Arc, 2> fromPool{-1, -1};
        FlowNetwork::Arc pool = -1;
        FlowNetwork::Node poolOut = -1;
        [[nodiscard]] bool contested() const { return entered[0] && entered[1]; }
    };

    void findUsable();
    void groupItems(std::span<const Item> items);
    void addClass(const Item& item, std::int32_t count);
    void buildNetwork();
    void addPlaceNodes();
    void addCategoryNodes();
    void connectClasses();
    void connectTarget(std::size_t target);
    void applyCapacities(FlowNetwork& network, const Choices& choices, const Settled& settled,
                         const Extra& extra) const;
    [[nodiscard]] bool limitsFit(const Choices& choices, const Settled& settled) const;
    void applyPlaces(FlowNetwork& network, const Choices& choices, const Settled& settled) const;
    void applyLimits(FlowNetwork& network, const Choices& choices, const Settled& settled, const Extra& extra) const;
    [[nodiscard]] bool limitIsShared(std::size_t category) const;
    [[nodiscard]] bool placeIsBroken(const FlowNetwork& network, const Choices& choices, std::size_t place) const;
    [[nodiscard]] bool limitIsBroken(const FlowNetwork& network, const Choices& choices, std::size_t category,
                                     const Settled& settled) const;
    [[nodiscard]] Step splitPlace(const Choices& choices, std::size_t place) const;
    [[nodiscard]] Step splitLimit(const FlowNetwork& network, const Choices& choices, std::size_t category,
                                  const Settled& settled) const;
    [[nodiscard]] std::int32_t casesIn(const FlowNetwork& network, sheet::Role role, std::size_t category,
                                       const Settled& settled) const;

    const requirement::RequirementSet* m_set = nullptr;
    std::array<catalogue::CategorySet, 2> m_usable; // by role: some target accepts it
    std::vector<ItemClass> m_classes;
    std::vector<std::int32_t> m_classOfItem;
    std::vector<Place> m_places;
    std::array<std::int32_t, catalogue::categoryCount> m_limit{};                // -1: none
    std::array<std::array<std::int32_t, catalogue::categoryCount>, 2> m_reach{}; // by role: items that could be there
    std::int32_t m_spreadTarget = -1;
    std::int32_t m_spreadEach = 0;
    std::int32_t m_spreadMost = 0;
    std::int32_t m_spreadFree = 0;
    bool m_branches = false;
    Settled m_freshSettled;

    FlowNetwork m_network;
    std::array<CategoryArcs, 2> m_limitArc{}; // through (category, role), each to its share
    std::array<CategoryArcs, 2> m_poolIn{};   // the way over the pool of a shared limit
    std::array<CategoryArcs, 2> m_poolOut{};
    CategoryArcs m_poolArc{};
    std::array<CategoryArcs, 2> m_extraArc{};
    std::array<std::array<FlowNetwork::Node, catalogue::categoryCount>, 2> m_categoryNode{};
    std::array<std::array<FlowNetwork::Node, catalogue::categoryCount>, 2> m_outNode{}; // after its limit
    std::array<std::array<std::array<FlowNetwork::Arc, requirement::mostTargets>, catalogue::categoryCount>, 2>
        m_toTarget{};
    std::array<CategoryArcs, requirement::mostTargets> m_settledArc{};
    CategoryArcs m_chosenArc{};
    CategoryArcs m_openArc{};
    FlowNetwork::Arc m_openTotalArc = -1;

    std::vector<std::uint32_t> m_order;    // scratch
    std::vector<std::size_t> m_classIndex; // scratch: open addressing over class keys
};

} // namespace peelpack::tally
