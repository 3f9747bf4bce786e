#include "platform/cli/sheet_questions.h"

#include "core/base/text.h"
#include "core/role/classifier.h"
#include "platform/cli/short_id.h"
#include "platform/english/english.h"
#include "sync/merge/bounds.h"

#include <algorithm>

namespace peelpack::cli {
namespace {

/// As the catalogue says of every procedure.
bool countsOftenNotNeeded(const std::vector<std::string>& procedures, const catalogue::Catalogue& catalogue)
{
    return std::all_of(procedures.begin(), procedures.end(), [&](const std::string& procedure) {
        const std::vector<const catalogue::Procedure*> found = catalogue.byExactName(procedure);
        return found.size() == 1 && found.front()->countsOftenNotNeeded;
    });
}

/// The sheet that an entry is about; empty when it is about none.
std::optional<keys::Id> sheetOf(const session::Session& session, const journal::Position& position)
{
    const journal::Feed* feed = session.ledger().feed(position.feed);
    const journal::KeptEntry* kept = feed == nullptr ? nullptr : feed->find(position.seq, position.hash);
    if (kept == nullptr) {
        return std::nullopt;
    }
    return std::visit(
        [](const auto& value) -> std::optional<keys::Id> {
            if constexpr (requires { value.sheet; }) {
                return value.sheet;
            } else {
                return std::nullopt;
            }
        },
        journal::decode(position.feed, position.seq, *kept).payload);
}

std::string timeOf(const journal::Time& time)
{
    return english::timeInWords({time.seconds, time.zone});
}

} // namespace

std::vector<std::string> sheetQuestions(const record::SheetRecord& sheet, bool repudiated,
                                        const catalogue::Catalogue& catalogue)
{
    std::vector<std::string> questions;
    if (repudiated) {
        questions.emplace_back("The preceptor says that a signature on it is not theirs.");
    }
    for (const record::Review& review : sheet.reviews) {
        if (review.answer == record::Review::Answer::Pending) {
            questions.push_back("The student asks for a review of \"" + std::string(sheet::label(review.asked.skill)) +
                                "\".");
        }
    }
    for (const record::DisputedMark& mark : sheet.disputed) {
        if (!mark.settled) {
            questions.push_back("Two signers differ on \"" + std::string(sheet::label(mark.skill)) + "\".");
        }
    }
    if (sheet.unsignedVersion) {
        questions.emplace_back("The student changed the sheet after it was signed.");
    }
    if (sheet.changedAfterInitial) {
        questions.emplace_back("Something came after it was initialed.");
    }
    if (sheet.withdrawal && !sheet.withdrawal->stands && !sheet.withdrawal->answered) {
        questions.emplace_back("The student asks to withdraw it.");
    }
    if (sheet.initial && sheet.initial->onlyByAttester) {
        questions.emplace_back("It is initialed only by who attested it.");
    }
    const bool weak = sheet.strength == sheet::Strength::CardNew || sheet.strength == sheet::Strength::Drawn ||
                      sheet.strength == sheet::Strength::Paper;
    if (weak) {
        questions.push_back("The signature is weak (" + std::string(sheet::id(sheet.strength)) +
                            "): confirm it with the preceptor.");
    }
    std::size_t wrongTries = 0;
    for (const record::HandOverEnded& ended : sheet.handOversEnded) {
        wrongTries += ended.wrongTries;
    }
    if (wrongTries > 0) {
        questions.push_back("A wrong PIN was tried for it, " + base::counted(wrongTries, "time", "times") + ".");
    }
    const bool beside = std::any_of(sheet.history.begin(), sheet.history.end(), [](const record::HistoryLine& line) {
        return line.weight == record::Weight::Beside;
    });
    if (beside) {
        questions.emplace_back(
            "Two instructors acted on it apart; one action is in force, the other stands beside it.");
    }
    for (const role::Question& question : role::questions(sheet.content.marks.marks, sheet.content.head.canceled,
                                                          countsOftenNotNeeded(sheet.content.procedures, catalogue))) {
        questions.push_back(question.sentence);
    }
    return questions;
}

bool isRepudiated(const record::SheetRecord& sheet, const std::set<base::EntryHash>& repudiated)
{
    return std::any_of(sheet.signers.begin(), sheet.signers.end(),
                       [&](const record::Signer& signer) { return repudiated.contains(signer.entry); });
}

void askAboutTimes(const session::Session& session, const keys::Id& student, nlohmann::ordered_json& list,
                   std::string& lines)
{
    for (const auto& [id, feed] : session.ledger().feeds()) {
        if (id.stream != student) {
            continue;
        }
        for (const merge::TimeQuestion& question : merge::timeQuestions(session.authority(), session.ledger(), id)) {
            const auto sheet = sheetOf(session, question.entry);
            const std::string name = sheet ? shortId(*sheet) : std::string();
            const auto bound = [](const std::optional<trust::ReceiptRecord>& receipt) {
                return receipt ? timeOf(receipt->time) : std::string();
            };
            const std::string after = bound(question.bounds.after);
            const std::string before = bound(question.bounds.before);
            list.push_back({{"sheet", name},
                            {"entry", keys::hex(question.entry.hash.view())},
                            {"claimed", timeOf(question.claimed)},
                            {"after", after},
                            {"before", before},
                            {"question", merge::sentence(question.sort)}});
            lines += "  " + (name.empty() ? "entry " + std::to_string(question.entry.seq) : "sheet " + name) +
                     ", said to be written " + timeOf(question.claimed) +
                     "\n      to check: " + std::string(merge::sentence(question.sort));
            lines += after.empty() ? "" : " It came after a receipt of " + after + ".";
            lines += before.empty() ? "\n" : " It was received by " + before + ".\n";
        }
    }
}

} // namespace peelpack::cli
