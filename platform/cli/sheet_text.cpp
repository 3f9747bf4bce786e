#include "platform/cli/sheet_text.h"

#include "core/base/text.h"
#include "core/record/sheet_role.h"
#include "platform/cli/sheet_options.h"
#include "platform/english/english.h"
#include "platform/english/history.h"

namespace peelpack::cli {
namespace {

using record::SheetRecord;

std::string_view idOf(record::Weight weight)
{
    switch (weight) {
    case record::Weight::Counts:
        return "counts";
    case record::Weight::NoEffect:
        return "no-effect";
    case record::Weight::Beside:
        return "beside";
    case record::Weight::Aside:
        return "aside";
    case record::Weight::Refused:
        return "refused";
    }
    return "";
}

std::string historyText(const SheetRecord& sheet)
{
    std::string text = "  History:\n";
    for (const record::HistoryLine& line : sheet.history) {
        text += "    " + english::timeInWords(line.claimed) + "  " + english::writerName(line.who) + "  " +
                english::inWords(line.what);
        if (!line.why.empty()) {
            text += " Reason: " + line.why;
        }
        if (line.weight != record::Weight::Counts) {
            text += " [" + std::string(english::inWords(line.weight)) +
                    (line.whyNot.empty() ? "" : ": " + line.whyNot) + "]";
        }
        text += "\n";
    }
    return text;
}

std::string marksText(const record::ReasonedMarks& marks)
{
    std::string text;
    for (const sheet::Skill skill : sheet::allSkills) {
        const std::string& why = marks.reason(skill);
        text += "    " + std::string(sheet::label(skill)) + ": " + std::string(sheet::inWords(marks.marks.of(skill))) +
                (why.empty() ? "" : " (" + why + ")") + "\n";
    }
    return text;
}

std::string_view idOf(record::Review::Answer answer)
{
    switch (answer) {
    case record::Review::Answer::Pending:
        return "pending";
    case record::Review::Answer::Accepted:
        return "accepted";
    case record::Review::Answer::Declined:
        return "declined";
    }
    return "";
}

} // namespace

std::string sheetLine(const SheetRecord& sheet, const std::string& shortName)
{
    return "  " + shortName + "  " + sheet.content.head.date.iso() + "  " + english::standingInWords(sheet) + "  " +
           std::string(role::label(record::outcomeOf(sheet, {}))) + "  " +
           base::listed(sheet.content.procedures, "and") + "\n";
}

std::string sheetText(const SheetRecord& sheet, const std::string& shortName)
{
    const record::Content& content = sheet.content;
    std::string text = "Sheet " + shortName + ": " + english::standingInWords(sheet) + "\n  " +
                       base::listed(content.procedures, "and") + "\n  " + english::headInWords(content.head) + "\n  " +
                       std::string(role::label(record::outcomeOf(sheet, {}))) + ". " + record::whyOf(sheet, {}) + "\n";
    text += sheet.imported ? "  " + english::importInWords(*sheet.imported) + "\n" : marksText(content.marks);
    text += "  Counts under: " + english::choicesInWords(content) + "\n";
    for (const record::Signer& signer : sheet.signers) {
        text += "  Signed by " + signer.statement.name +
                (signer.statement.credential.empty() ? "" : ", " + signer.statement.credential) + " (" +
                std::string(sheet::id(signer.statement.strength)) + ")" +
                (signer.afterInitial ? ", after it was initialed: without effect" : "") +
                (signer.otherContent ? ", for other procedures or another head" : "") + "\n";
    }
    for (const record::DisputedMark& mark : sheet.disputed) {
        text += "  Two signers differ on \"" + std::string(sheet::label(mark.skill)) + "\"" +
                (mark.settled ? "; an instructor has ruled.\n" : "; No stands until an instructor rules.\n");
    }
    for (const record::FeedbackText& feedback : sheet.feedback) {
        text += "  Feedback of " + feedback.from + ": " + feedback.text + "\n";
    }
    if (sheet.original) {
        text += std::string(sheet.imported ? "  As it was imported: " : "  As it was signed: ") +
                base::listed(sheet.original->procedures, "and") + "; " + english::headInWords(sheet.original->head) +
                (sheet.imported ? "" : "; marks " + marksInLetters(sheet.original->marks.marks)) + "\n";
    }
    if (sheet.unsignedVersion) {
        text += "  A later version that nobody has signed: " +
                base::listed(sheet.unsignedVersion->draft.procedures, "and") + "; " +
                english::headInWords(sheet.unsignedVersion->draft.head) + "; marks " +
                marksInLetters(sheet.unsignedVersion->draft.marks.marks) + "\n";
    }
    for (const record::Review& review : sheet.reviews) {
        text += "  Review asked: \"" + std::string(sheet::label(review.asked.skill)) + "\" should be " +
                std::string(sheet::inWords(review.asked.wanted)) + " (" + review.asked.reason +
                "): " + std::string(idOf(review.answer)) + (review.reason.empty() ? "" : ", " + review.reason) + "\n";
    }
    if (sheet.initial && sheet.initial->onlyByAttester) {
        text += "  Initialed only by who attested it: that does not count alone.\n";
    }
    if (sheet.changedAfterInitial) {
        text += "  Something came after it was initialed, without effect until an instructor acts.\n";
    }
    return text + historyText(sheet);
}

nlohmann::ordered_json sheetJson(const SheetRecord& sheet, const std::string& shortName, bool withHistory)
{
    nlohmann::ordered_json json{{"sheet", shortName},
                                {"id", sheet.id.hex()},
                                {"operation", sheet.operation.hex()},
                                {"standing", record::id(sheet.standing)},
                                {"strength", sheet::id(sheet.strength)},
                                {"date", sheet.content.head.date.iso()},
                                {"procedures", sheet.content.procedures},
                                {"surgeon", sheet.content.head.surgeon},
                                {"site", sheet.content.head.site},
                                {"room", sheet.content.head.room},
                                {"canceled", sheet.content.head.canceled},
                                {"role", role::id(record::outcomeOf(sheet, {}))},
                                {"marks", marksInLetters(sheet.content.marks.marks)}};
    json["categories"] = nlohmann::ordered_json::array();
    for (const record::Choice& choice : sheet.content.choices) {
        json["categories"].push_back(choice.category ? nlohmann::ordered_json(catalogue::id(*choice.category))
                                                     : nlohmann::ordered_json());
    }
    json["signers"] = nlohmann::ordered_json::array();
    for (const record::Signer& signer : sheet.signers) {
        json["signers"].push_back({{"name", signer.statement.name},
                                   {"credential", signer.statement.credential},
                                   {"strength", sheet::id(signer.statement.strength)},
                                   {"marks", marksInLetters(signer.statement.marks.marks)},
                                   {"afterInitial", signer.afterInitial}});
    }
    json["imported"] = sheet.imported ? nlohmann::ordered_json{{"source", sheet.imported->said.source},
                                                               {"by", sheet.imported->by.name},
                                                               {"preceptor", sheet.imported->said.preceptor},
                                                               {"credential", sheet.imported->said.credential}}
                                      : nlohmann::ordered_json();
    json["reviews"] = nlohmann::ordered_json::array();
    for (const record::Review& review : sheet.reviews) {
        json["reviews"].push_back({{"skill", sheet::column(review.asked.skill)},
                                   {"wanted", sheet::cell(review.asked.wanted)},
                                   {"reason", review.asked.reason},
                                   {"answer", idOf(review.answer)},
                                   {"answerReason", review.reason}});
    }
    json["disputed"] = nlohmann::ordered_json::array();
    for (const record::DisputedMark& mark : sheet.disputed) {
        json["disputed"].push_back({{"skill", sheet::column(mark.skill)}, {"settled", mark.settled}});
    }
    json["original"] = sheet.original ? nlohmann::ordered_json{{"procedures", sheet.original->procedures},
                                                               {"marks", marksInLetters(sheet.original->marks.marks)}}
                                      : nlohmann::ordered_json();
    json["unsignedVersion"] =
        sheet.unsignedVersion
            ? nlohmann::ordered_json{{"procedures", sheet.unsignedVersion->draft.procedures},
                                     {"marks", marksInLetters(sheet.unsignedVersion->draft.marks.marks)}}
            : nlohmann::ordered_json();
    json["onlyByAttester"] = sheet.initial && sheet.initial->onlyByAttester;
    json["changedAfterInitial"] = sheet.changedAfterInitial;
    if (withHistory) {
        json["history"] = nlohmann::ordered_json::array();
        for (const record::HistoryLine& line : sheet.history) {
            json["history"].push_back({{"entry", line.entry.hex()},
                                       {"who", line.who.name},
                                       {"what", english::inWords(line.what)},
                                       {"when", english::timeInWords(line.claimed)},
                                       {"why", line.why},
                                       {"weight", idOf(line.weight)},
                                       {"whyNot", line.whyNot}});
        }
    }
    return json;
}

} // namespace peelpack::cli
