#pragma once

#include "core/tally/placement_model.h"

#include <cstdint>
#include <deque>
#include <optional>
#include <span>
#include <vector>

namespace peelpack::tally {

/// Where one item counts: a target of the set and a category, or nowhere.
struct Seat {
    static constexpr std::int8_t nowhere = -1;
    std::int8_t target = nowhere;
    std::int8_t category = nowhere;
    [[nodiscard]] bool counts() const { return target != nowhere; }
    bool operator==(const Seat&) const = default;
};

/// The best valid placement of one student's items (counting rules, section 4).
struct Placement {
    std::vector<Seat> seats; ///< by item
    Value value;
};

/// How many further cases of a category and role, each an operation of its own, raise the count; 0: none does.
struct Need {
    catalogue::Category category = catalogue::Category::General;
    sheet::Role role = sheet::Role::First;
    std::uint32_t needed = 0;
    std::uint32_t seatsShort = 0; ///< empty seats in the targets that accept it
};

/// Places items exactly: the lexicographically largest (counted, in first-scrub targets, under the logged category),
/// and of those the smallest vector of seats in the order of the items, a seat ordered by target as in the set, then
/// category, nowhere last. Keeps its memory between calls; one thread at a time.
class Placer {
public:
    /// The set must be valid and must outlive the placer.
    explicit Placer(const requirement::RequirementSet& set) : m_set(set) {}

    Placement best(std::span<const Item> items);
    /// Only the numbers of best(), quicker.
    Value bestValue(std::span<const Item> items);
    /// For every category and role; first scrub in the two categories apart, which counts as second, is left out.
    /// `placement` is best() of the same items. In the order of the counting rules: least needed, first before second,
    /// most seats short, category; those that nothing raises last.
    std::vector<Need> needs(std::span<const Item> items, const Placement& placement);

private:
    /// An optimal solution that keeps every rule, and the choices under which it was found. Where nothing branches,
    /// whatever re-routes it keeps them too.
    struct Leaf {
        FlowNetwork network;
        Choices choices;
        Settled settledBefore; ///< what was settled when it was solved; only where something branches
    };
    struct Found {
        bool any = false;
        Value value;
        Choices choices;
    };
    struct SeatAt {
        std::size_t classIndex;
        std::size_t target;
        std::size_t category;
    };

    Value solveBest();
    Value solveOverSpread();
    Value boundFor(std::int32_t openSeats, Choices& open);
    std::int32_t seatsToReach(const Value& top, std::int32_t most);
    void addLeaf(const Choices& choices);
    void solveAndAddLeaf(const Choices& choices);
    void explore(Choices choices, const Value& atLeast, Found& found);

    void settleInOrder(std::span<const Item> items, Placement& placement);
    bool settle(const SeatAt& seat);
    bool settleInLeaves(const SeatAt& seat);
    bool settleInLeaf(Leaf& leaf, const SeatAt& seat);
    bool settleElsewhere(const SeatAt& seat);
    bool settleInUntried(const SeatAt& seat);
    bool settleByBranching(const SeatAt& seat);
    [[nodiscard]] Value goal() const;
    void dropUntriedThatFellBehind();
    void closeGate();
    void leaveOut(std::size_t classIndex);
    [[nodiscard]] bool seatIsOpen(const SeatAt& seat) const;
    [[nodiscard]] bool tryLock(FlowNetwork& network, const SeatAt& seat) const;
    void note(const SeatAt& seat, std::int32_t sign);

    bool oneMoreFits(sheet::Role role, std::size_t category);
    std::uint32_t neededOverSpread(catalogue::Category category, sheet::Role role, std::int32_t counted);
    std::uint32_t neededByBranching(catalogue::Category category, sheet::Role role, std::int32_t counted);
    bool exploreCounted(Choices choices, const Extra& extra, std::int32_t toBeat);

    const requirement::RequirementSet& m_set;
    PlacementModel m_model;
    FlowNetwork m_trial; // where choices are tried
    std::vector<PlacementModel::SpreadChoice> m_spreadChoices;

    std::vector<Leaf> m_leaves; // at least one after solveBest(); the first leafCount are in use
    std::size_t m_leafCount = 0;
    bool m_mayBeElsewhere = false;                      // optimal solutions may exist that no leaf contains
    std::deque<PlacementModel::SpreadChoice> m_untried; // may be optimal; in no leaf; the most promising first
    std::int32_t m_checkedAt = -1;                      // how much was settled when m_untried was last looked through
    std::optional<Choices> m_relaxed;                   // its optimum is the optimum: no solution exists but within it
    FlowNetwork m_gate;                                 // its flow, kept along with the leaves
    bool m_gateReady = false;

    Settled m_settled;
    Value m_optimum;
    std::int32_t m_settledLogged = 0;
    std::vector<std::uint8_t> m_closed; // [class][target][category]: found to be impossible, and it stays so
};

} // namespace peelpack::tally
