#pragma once

#include "core/requirement/requirement_set.h"
#include "core/tally/item.h"
#include "core/tally/placement_model.h"

#include <span>

namespace peelpack::support {

/// The value of the best placement by an integer program over single items (one variable for each item, category and
/// target), maximized in turn for the three counts with GLPK's branch and bound. It shares nothing with the placer but
/// the types of its input. GLPK: GNU Linear Programming Kit, https://www.gnu.org/software/glpk/.
tally::Value bestByIntegerProgram(const requirement::RequirementSet& set, std::span<const tally::Item> items);

/// Whether GLPK says that these seats are a valid placement is not asked of it; this checks the five conditions one by
/// one.
bool isValidPlacement(const requirement::RequirementSet& set, std::span<const tally::Item> items,
                      std::span<const std::pair<int, int>> targetAndCategory);

} // namespace peelpack::support
