#pragma once

#include "core/questions/sheet_questions.h"
#include "platform/session/session.h"

#include <nlohmann/json.hpp>

#include <string>
#include <vector>

namespace peelpack::cli {

/// The sentences alone.
std::vector<std::string> sentencesOf(const std::vector<questions::SheetQuestion>& asked);

/// What clocks and receipts say that does not fit together, about one student's records: adds to both.
void askAboutTimes(const session::Session& session, const keys::Id& student, nlohmann::ordered_json& list,
                   std::string& lines);

} // namespace peelpack::cli
