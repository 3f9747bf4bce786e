#pragma once

#include "core/questions/signer_questions.h"

#include <nlohmann/json.hpp>

#include <string>
#include <vector>

namespace peelpack::cli {

/// [{"kind", "preceptor", "sheets": [{"student", "sheet", "date", "site", "room"}], "question"}, ...]
nlohmann::ordered_json signerQuestionsJson(const std::vector<questions::SignerQuestion>& asked);
/// The same as lines; of many sheets the first ten. Empty when nothing is asked.
std::string signerQuestionsText(const std::vector<questions::SignerQuestion>& asked);

} // namespace peelpack::cli
