#include "platform/cli/commands.h"

#include "core/base/text.h"
#include "core/role/classifier.h"
#include "platform/cli/answer.h"
#include "platform/cli/sheet_text.h"
#include "platform/cli/student_choice.h"
#include "platform/cli/vault_access.h"
<<<<<<< HEAD
#include "platform/session/repudiations.h"
=======
>>>>>>> main
#include "sync/merge/bounds.h"

#include <algorithm>

namespace peelpack::cli {
namespace {

<<<<<<< HEAD
/// Why an instructor should look at a sheet before initialing it; empty: nothing stands out.
std::vector<std::string> questionsOf(const record::SheetRecord& sheet, bool repudiated)
{
    std::vector<std::string> questions;
    if (repudiated) {
        questions.emplace_back("The preceptor says that a signature on it is not theirs.");
    }
=======
constexpr std::size_t shortDigits = 8;

/// Why an instructor should look at a sheet before initialing it; empty: nothing stands out.
std::vector<std::string> questionsOf(const record::SheetRecord& sheet)
{
    std::vector<std::string> questions;
>>>>>>> main
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
        questions.emplace_back("The student asks to take it back.");
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
<<<<<<< HEAD
    for (const record::HandOverEnded& ended : sheet.handOversEnded) {
        if (ended.wrongTries > 0) {
            questions.emplace_back("A wrong PIN was tried for it.");
        }
=======
    std::size_t wrongTries = 0;
    for (const record::HandOverEnded& ended : sheet.handOversEnded) {
        wrongTries += ended.wrongTries;
    }
    if (wrongTries > 0) {
        questions.push_back("A wrong PIN was tried for it, " + base::counted(wrongTries, "time", "times") + ".");
>>>>>>> main
    }
    const bool beside = std::any_of(sheet.history.begin(), sheet.history.end(), [](const record::HistoryLine& line) {
        return line.weight == record::Weight::Beside;
    });
    if (beside) {
        questions.emplace_back(
            "Two instructors acted on it apart; one action is in force, the other stands beside it.");
    }
    for (const role::Question& question :
         role::questions(sheet.content.marks.marks, sheet.content.head.canceled, false)) {
        questions.push_back(question.sentence);
    }
    return questions;
}

<<<<<<< HEAD
=======
/// Something about the sheet waits for an instructor's answer.
bool isAsked(const record::SheetRecord& sheet)
{
    const bool review = std::any_of(sheet.reviews.begin(), sheet.reviews.end(), [](const record::Review& asked) {
        return asked.answer == record::Review::Answer::Pending;
    });
    const bool withdrawal = sheet.withdrawal && !sheet.withdrawal->stands && !sheet.withdrawal->answered;
    return review || withdrawal || sheet.changedAfterInitial || (sheet.initial && sheet.initial->onlyByAttester);
}

>>>>>>> main
/// What an instructor still has to do with a sheet.
bool waits(const record::SheetRecord& sheet)
{
    switch (sheet.standing) {
    case record::SheetStanding::Signed:
    case record::SheetStanding::Amended:
        return true;
<<<<<<< HEAD
    case record::SheetStanding::Initialed:
        return sheet.changedAfterInitial || (sheet.initial && sheet.initial->onlyByAttester);
    default:
        return std::any_of(sheet.reviews.begin(), sheet.reviews.end(), [](const record::Review& review) {
            return review.answer == record::Review::Answer::Pending;
        });
    }
}

bool isRepudiated(const record::SheetRecord& sheet, const std::set<base::EntryHash>& repudiations)
{
    return std::any_of(sheet.signers.begin(), sheet.signers.end(),
                       [&](const record::Signer& signer) { return repudiations.contains(signer.entry); });
}

std::string receiver(const session::Session& session, const trust::ReceiptRecord& receipt)
{
    const trust::Holder* holder = session.authority().holder(receipt.receipt.feed.device);
    return holder == nullptr ? std::string("somebody unknown") : holder->name;
}

std::string timeOf(const trust::ReceiptRecord& receipt)
{
    return timeInWords({receipt.time.seconds, receipt.time.zone});
}

nlohmann::ordered_json boundJson(const session::Session& session, const std::optional<trust::ReceiptRecord>& receipt)
{
    return receipt ? nlohmann::ordered_json{{"by", receiver(session, *receipt)}, {"time", timeOf(*receipt)}}
                   : nlohmann::ordered_json();
}

/// Between which receipts an entry came to be, whatever its phone's clock said.
std::string boundsInWords(const session::Session& session, const merge::Bounds& bounds)
{
    std::string text;
    if (bounds.after) {
        text += ", written after the receipt of " + timeOf(*bounds.after) + " by " + receiver(session, *bounds.after);
    }
    if (bounds.before) {
        text += ", received by " + receiver(session, *bounds.before) + " at " + timeOf(*bounds.before);
    }
    return text;
=======
    case record::SheetStanding::Void:
    case record::SheetStanding::Withdrawn:
        return false;
    case record::SheetStanding::Open:
    case record::SheetStanding::Returned:
    case record::SheetStanding::Initialed:
        break;
    }
    return isAsked(sheet);
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
    return timeInWords({time.seconds, time.zone});
}

/// What clocks and receipts say that does not fit together, about one student's records.
void askAboutTimes(const session::Session& session, const keys::Id& student, nlohmann::ordered_json& list,
                   std::string& lines)
{
    for (const auto& [id, feed] : session.ledger().feeds()) {
        if (id.stream != student) {
            continue;
        }
        for (const merge::TimeQuestion& question : merge::timeQuestions(session.authority(), session.ledger(), id)) {
            const auto sheet = sheetOf(session, question.entry);
            const std::string name = sheet ? keys::hex(sheet->view()).substr(0, shortDigits) : std::string();
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
>>>>>>> main
}

base::Result<Answer> queue(const Arguments& arguments)
{
    base::Result<OpenedVault> opened = openVault(arguments);
    if (!opened) {
        return opened.error();
    }
    const session::Session& session = *opened.value().session;
    const base::Result<std::vector<keys::Id>> students = chosenStudents(session, arguments);
    if (!students) {
        return students.error();
    }
    Answer answer;
    answer.json["students"] = nlohmann::ordered_json::array();
    std::size_t count = 0;
    for (const keys::Id& id : students.value()) {
<<<<<<< HEAD
        const std::set<base::EntryHash> repudiations = session::repudiatedIn(session, id);
=======
>>>>>>> main
        const record::StudentRecord student = session.recordOf(id);
        const record::ShortNames names = record::shortNames(student);
        nlohmann::ordered_json list = nlohmann::ordered_json::array();
        std::string lines;
        for (const record::SheetRecord& sheet : student.sheets) {
<<<<<<< HEAD
            const bool repudiated = sheet.standing != record::SheetStanding::Void && isRepudiated(sheet, repudiations);
            if (!repudiated && !waits(sheet)) {
                continue;
            }
            ++count;
            const std::vector<std::string> questions = questionsOf(sheet, repudiated);
=======
            if (!waits(sheet)) {
                continue;
            }
            ++count;
            const std::vector<std::string> questions = questionsOf(sheet);
>>>>>>> main
            const std::string& name = names.sheets.at(sheet.id);
            lines += sheetLine(sheet, name);
            for (const std::string& question : questions) {
                lines += "      to check: " + question + "\n";
            }
            nlohmann::ordered_json json = sheetJson(sheet, name, false);
            json["questions"] = questions;
            list.push_back(std::move(json));
        }
        nlohmann::ordered_json times = nlohmann::ordered_json::array();
<<<<<<< HEAD
        for (const auto& [feedId, feed] : session.ledger().feeds()) {
            if (feedId.stream != id) {
                continue;
            }
            for (const merge::TimeQuestion& question :
                 merge::timeQuestions(session.authority(), session.ledger(), feedId)) {
                const std::string when = timeInWords({question.claimed.seconds, question.claimed.zone});
                times.push_back({{"entry", question.entry.seq},
                                 {"claimed", when},
                                 {"question", merge::sentence(question.sort)},
                                 {"after", boundJson(session, question.bounds.after)},
                                 {"before", boundJson(session, question.bounds.before)}});
                lines += "  entry " + std::to_string(question.entry.seq) + ", said to be of " + when +
                         boundsInWords(session, question.bounds) +
                         "\n      to check: " + std::string(merge::sentence(question.sort)) + "\n";
            }
        }
=======
        askAboutTimes(session, id, times, lines);
>>>>>>> main
        if (!lines.empty()) {
            answer.text += nameOf(session, student) + "\n" + lines;
            answer.json["students"].push_back(
                {{"student", nameOf(session, student)}, {"sheets", list}, {"times", times}});
        }
    }
    answer.text += count == 0 ? "No sheet waits.\n" : base::counted(count, "sheet waits", "sheets wait") + ".\n";
    return answer;
}

} // namespace

Command queueCommand()
{
    return {{"queue",
             "What waits for an instructor, with what to check about each sheet.",
             {},
             withVaultOptions(studentOptions()),
             "peelpack queue --class \"Spring class\"\n  sheets to check, questions below each"},
            [](const Arguments& arguments) { return give(arguments, queue(arguments)); }};
}

} // namespace peelpack::cli
