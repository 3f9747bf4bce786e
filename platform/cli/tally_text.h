#pragma once

#include "core/tally/tally.h"
#include "platform/session/program_rules.h"

#include <string>
#include <vector>

namespace peelpack::cli {

/// Tally strokes in fives, "||||/" where the stroke that crosses closes a five; '|' for first-scrub seats, ':' for
/// others,
/// '.' for what is still needed.
std::string strokes(std::uint32_t placed, std::uint32_t required, bool firstScrub);

/// The tally of one student as text that needs no help: what counts, what is short, what to ask for next, what does not
/// count and why. `under`: the set, where it has to be said of each student.
std::string studentText(const sheet::SheetBook& book, const sheet::BookStudent& student,
                        const requirement::RequirementSet& set, const tally::StudentTally& tally,
                        const tally::Wanted& wanted, const std::string& under = {});

/// "Set in force: spread10, for Spring class since 2026-11-02 (reason).", and of a set that was or will be in force
/// "cap15, until 2026-11-02".
std::string setInForceText(const session::SetByName& named);
std::string otherSetText(const session::OtherSet& other);
/// The tally of a student under such a set, to be read below studentText(); `set` null: it is not at hand.
std::string otherTallyText(const session::OtherSet& other, const requirement::RequirementSet* set,
                           const tally::StudentTally& tally, const tally::Wanted& wanted);

/// A table with a line a student, and its heading.
std::string briefHeader(const requirement::RequirementSet& set);
std::string briefLine(const sheet::BookStudent& student, const requirement::RequirementSet& set,
                      const tally::StudentTally& tally, const tally::Wanted& wanted);
/// Below it the count under a set that was or will be in force; `set` null: it is not at hand.
std::string briefOtherLine(const session::OtherSet& other, const requirement::RequirementSet* set,
                           const tally::StudentTally& tally, const tally::Wanted& wanted);

/// Said once below all students: whose decision it is, and where the numbers come from.
std::string tallyFooter(const std::vector<const requirement::RequirementSet*>& sets, tally::Level level);

} // namespace peelpack::cli
