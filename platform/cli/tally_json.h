#pragma once

#include "core/tally/tally.h"

#include <nlohmann/json.hpp>

namespace peelpack::cli {

/// One student of `tally --json`; a count that was not wanted is left out.
nlohmann::ordered_json studentJson(const sheet::SheetBook& book, const sheet::BookStudent& student,
                                   const requirement::RequirementSet& set, const tally::StudentTally& tally,
                                   const tally::Wanted& wanted);

} // namespace peelpack::cli
