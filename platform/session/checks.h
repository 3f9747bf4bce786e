#pragma once

#include "core/catalogue/catalogue.h"
#include "core/questions/rule_questions.h"
#include "core/questions/signer_questions.h"
#include "platform/session/session.h"
#include "sync/merge/bounds.h"

#include <string>
#include <vector>

/// What an instructor has to look into, worked out from the journal. Values only: how it is said is for who shows it.
namespace peelpack::session {

/// All students of the program by name, or those of one class. In a student's journal: the student.
std::vector<keys::Id> studentsOf(const Session& session, const std::optional<std::string>& className = std::nullopt);

/// The granted name, else what the student calls themself on this device, else the first digits of the id.
std::string nameOf(const Session& session, const record::StudentRecord& student);

/// As the catalogue says of every procedure.
bool countsOftenNotNeeded(const std::vector<std::string>& procedures, const catalogue::Catalogue& catalogue);

/// Why an instructor should look at a sheet of this student before initialing it, also for what does not fit the
/// program's rules, as sheetRules() gives them for the student.
std::vector<questions::SheetQuestion> sheetQuestions(const record::StudentRecord& student,
                                                     const record::SheetRecord& sheet, bool repudiated,
                                                     const catalogue::Catalogue& catalogue,
                                                     const questions::SheetRules& rules);

/// What clocks and receipts say that does not fit together about one entry.
struct TimeQuestion {
    merge::TimeQuestion asked;
    std::optional<keys::Id> sheet; ///< that the entry is about; empty when it is about none
};
/// About one student's records.
std::vector<TimeQuestion> timeQuestions(const Session& session, const keys::Id& student);

/// The signatures by card or phone on the sheets of these students, with the names and short ids that lists show.
std::vector<questions::Signing> signingsIn(const Session& session, const std::vector<keys::Id>& students);

/// The questions over the signatures of all students of the program, of which those stay that concern one of these
/// students. None in the vault of somebody who is not staff: it holds one student's sheets, and what is asked about a
/// preceptor is for instructors.
std::vector<questions::SignerQuestion> signerQuestionsOf(const Session& session, const std::vector<keys::Id>& students,
                                                         const questions::Plausible& plausible);

} // namespace peelpack::session
