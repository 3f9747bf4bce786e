#pragma once

#include "core/tally/candidate.h"
#include "core/tally/placement.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace peelpack::tally {

/// What is placed in one target.
struct TargetCount {
    std::uint32_t placed = 0;
    std::array<std::uint32_t, catalogue::categoryCount> byCategory{};
};

/// One way of counting a student's candidates: placed as best, or each held to its logged category.
struct Count {
    Value value;
    std::vector<Seat> seats;          ///< by candidate
    std::vector<TargetCount> targets; ///< by target of the set
};

/// The tally of one student (counting rules, section 4).
struct StudentTally {
    Level level = Level::Recorded;
    std::uint32_t sheets = 0;   ///< all that were taken
    std::uint32_t observed = 0; ///< sheets, not candidates; also the next two
    std::uint32_t unmarked = 0;
    std::uint32_t canceled = 0;
    std::vector<Candidate> candidates;
    Count best;
    Count asLogged;
    std::vector<Need> next; ///< for the best count
};

/// What of a tally is wanted: the rest is left empty, which saves time.
struct Wanted {
    bool best = true;
    bool asLogged = true;
    bool next = true; ///< needs best
};

/// Tallies student after student under one requirement set. Keeps its memory between students; one thread at a time.
class Tallier {
public:
    /// The set must be valid; set and book must outlive what is tallied.
    Tallier(const requirement::RequirementSet& set, Level level, const AcceptedStrengths& accepted = usualStrengths)
        : m_set(set), m_level(level), m_accepted(accepted), m_placer(set)
    {
    }

    StudentTally tally(const sheet::SheetBook& book, const sheet::BookStudent& student, const Wanted& wanted);

private:
    Count count(std::span<const Item> items);

    const requirement::RequirementSet& m_set;
    Level m_level;
    AcceptedStrengths m_accepted;
    Placer m_placer;
};

/// The role in which the candidate counts under a category; without one, the role it would have under its logged
/// category. Unmarked and canceled candidates have none, and the outcome says which.
role::Outcome countedOutcome(const Candidate& candidate, std::optional<catalogue::Category> category);

} // namespace peelpack::tally
