#pragma once

#include "core/requirement/requirement_set.h"
#include "core/tally/placement.h"

#include <span>
#include <vector>

namespace peelpack::support {

/// The best placement of a few items by trying every placement there is: seats in their order (target, category,
/// nowhere last), conditions checked one by one. Only for a handful of items.
tally::Placement placementByTryingAll(const requirement::RequirementSet& set, std::span<const tally::Item> items);

/// Target and category of every seat, -1 where there is none.
std::vector<std::pair<int, int>> pairsOf(const std::vector<tally::Seat>& seats);

/// The three numbers of seats that are given.
tally::Value valueOf(const requirement::RequirementSet& set, std::span<const tally::Item> items,
                     const std::vector<tally::Seat>& seats);

} // namespace peelpack::support
