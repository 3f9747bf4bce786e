#pragma once

#include "core/questions/signer_questions.h"
#include "platform/session/session.h"

#include <nlohmann/json.hpp>

#include <string>
#include <vector>

namespace peelpack::cli {

/// The signatures by card or phone on the sheets of these students, with the names and short ids that lists show.
std::vector<questions::Signing> signingsIn(const session::Session& session, const std::vector<keys::Id>& students);

/// The questions over the signatures of all students of the program, of which those stay that concern one of these
/// students. None in the vault of somebody who is not staff: it holds one student's sheets, and what is asked about a
/// preceptor is for instructors.
std::vector<questions::SignerQuestion> signerQuestionsOf(const session::Session& session,
                                                         const std::vector<keys::Id>& students,
                                                         const questions::Plausible& plausible);

/// [{"kind", "preceptor", "sheets": [{"student", "sheet", "date", "site", "room"}], "question"}, ...]
nlohmann::ordered_json signerQuestionsJson(const std::vector<questions::SignerQuestion>& asked);
/// The same as lines; of many sheets the first ten. Empty when nothing is asked.
std::string signerQuestionsText(const std::vector<questions::SignerQuestion>& asked);

} // namespace peelpack::cli
