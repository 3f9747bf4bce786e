#pragma once

#include "core/tally/tally.h"
#include "platform/session/program_rules.h"

#include <nlohmann/json.hpp>

namespace peelpack::cli {

/// One student of `tally --json`; a count that was not wanted is left out.
nlohmann::ordered_json studentJson(const sheet::SheetBook& book, const sheet::BookStudent& student,
                                   const requirement::RequirementSet& set, const tally::StudentTally& tally,
                                   const tally::Wanted& wanted);

/// Says of a student in a vault which set is in force: "set", "setFrom" (null: the policy names it) and "otherSets",
/// which addOtherSet() fills: {"set", "coming", "change": its day, "reason", and the counts as studentJson() gives
/// them, left out where `set` is null because it is not at hand}.
void addSets(nlohmann::ordered_json& json, const session::SetByName& named);
void addOtherSet(nlohmann::ordered_json& json, const session::OtherSet& other, const sheet::SheetBook& book,
                 const requirement::RequirementSet* set, const tally::StudentTally& tally, const tally::Wanted& wanted);

} // namespace peelpack::cli
