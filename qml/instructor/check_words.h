#pragma once

#include "core/questions/sheet_questions.h"
#include "core/questions/signer_questions.h"
#include "platform/session/checks.h"
#include "qml/instructor/checks.h"

#include <QStringList>

namespace peelpack::session {
struct CompletionDecision;
}

namespace peelpack::instructor {

/// How what there is to check is said, in the language of the app.
QString inWords(const questions::SheetQuestion& question);
/// Nothing of this may be passed over: a signature that is denied, a sheet that changed.
bool isGrave(questions::SheetQuestionKind kind);
QString inWords(merge::TimeQuestion::Sort sort);
/// With the sheets it is about, at most ten of them.
QString inWords(const questions::SignerQuestion& question, base::Date today);
/// "Mar 12: complete under cap15, decided by Adela Winther."; by exception it says so first, with its reason.
QString inWords(const session::CompletionDecision& decision, base::Date today);
/// "Mar 12 · Dr Okafor · North Campus · Room 4"
QString headInWords(const record::Head& head, base::Date today);
/// "signed by L. Brandt, CST" and the like.
QString standingInWords(const record::SheetRecord& sheet);
/// "General surgery"; "not filed"
QString filedInWords(const catalogue::Catalogue& catalogue, const record::Content& content, std::size_t procedure);
/// What the log says otherwise than what was signed, a sentence each.
QStringList differencesOf(const catalogue::Catalogue& catalogue, const record::SheetRecord& sheet, base::Date today);

} // namespace peelpack::instructor
