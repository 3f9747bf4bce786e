#pragma once

#include "core/tally/tally.h"

#include <string>

namespace peelpack::cli {

/// Tally strokes in fives, "||||/" where the stroke that crosses closes a five; '|' for first-scrub seats, ':' for
/// others,
/// '.' for what is still needed.
std::string strokes(std::uint32_t placed, std::uint32_t required, bool firstScrub);

/// The tally of one student as text that needs no help: what counts, what is short, what to ask for next, what does not
/// count and why.
std::string studentText(const sheet::SheetBook& book, const sheet::BookStudent& student,
                        const requirement::RequirementSet& set, const tally::StudentTally& tally,
                        const tally::Wanted& wanted);

/// A table with a line a student, and its heading.
std::string briefHeader(const requirement::RequirementSet& set);
std::string briefLine(const sheet::BookStudent& student, const requirement::RequirementSet& set,
                      const tally::StudentTally& tally, const tally::Wanted& wanted);

/// Said once below all students: whose decision it is, and where the numbers come from.
std::string tallyFooter(const requirement::RequirementSet& set, tally::Level level);

} // namespace peelpack::cli
