#include "platform/english/history.h"

#include "core/base/text.h"

namespace peelpack::english {
namespace {

using record::Happened;
using record::Happening;

std::string filing(std::string_view verb, const Happening& happening)
{
    std::vector<std::string_view> labels;
    for (const auto& category : happening.categories) {
        labels.push_back(category ? catalogue::label(*category) : "a category of a newer version");
    }
    return std::string(verb) + " under " + base::listed(labels, "and") + ".";
}

std::string markIs(const record::SkillMark& mark, std::string_view verb)
{
    return std::string(sheet::label(mark.skill)) + " " + std::string(verb) + " " +
           std::string(sheet::inWords(mark.mark));
}

std::string ofMarks(const Happening& happening, std::string_view verb)
{
    std::vector<std::string> marks;
    for (const record::SkillMark& mark : happening.marks) {
        marks.push_back(markIs(mark, verb));
    }
    return base::listed(marks, "and");
}

std::string_view inWords(record::HandOverCause cause)
{
    switch (cause) {
    case record::HandOverCause::Canceled:
        return "it was canceled";
    case record::HandOverCause::WrongPin:
        return "the PIN was wrong";
    case record::HandOverCause::WrongCard:
        return "it was not the right card";
    case record::HandOverCause::TimedOut:
        return "it took too long";
    }
    return {};
}

std::string signedBy(const Happening& happening)
{
    const std::string_view strength =
        happening.strength == sheet::Strength::None ? "unknown signer" : sheet::id(happening.strength);
    return "Signed by " + happening.signer + (happening.credential.empty() ? "" : ", ") + happening.credential + " (" +
           std::string(strength) + "): " + base::counted(happening.count, "mark", "marks") + ".";
}

std::string handOverEnded(const Happening& happening)
{
    const std::string tries =
        happening.count == 0 ? std::string() : ", " + base::counted(happening.count, "wrong try", "wrong tries");
    return "The hand-over ended unsigned: " + std::string(inWords(happening.cause)) + tries + ".";
}

std::string amended(const Happening& happening)
{
    std::vector<std::string> changes;
    for (const record::SkillMark& mark : happening.marks) {
        changes.push_back(markIs(mark, "is"));
    }
    if (happening.amendedHead) {
        changes.emplace_back("the head");
    }
    if (happening.amendedProcedures) {
        changes.emplace_back("the procedures");
    }
    return "Amended: " + base::listed(changes, "and") + ".";
}

} // namespace

std::string inWords(const Happening& happening)
{
    switch (happening.what) {
    case Happened::Opened:
        return "Opened the sheet: " + base::listed(happening.procedures, "and") + ".";
    case Happened::HeadChanged:
        return "Changed the sheet: " + base::listed(happening.procedures, "and") + ".";
    case Happened::Withdrawn:
        return "Withdrew the sheet.";
    case Happened::WithdrawalAsked:
        return "Asked to withdraw the sheet.";
    case Happened::Signed:
        return signedBy(happening);
    case Happened::Logged:
        return filing("Logged", happening);
    case Happened::ReviewAsked:
        return "Asked for a mark review: " + ofMarks(happening, "should be") + ".";
    case Happened::HandOverEnded:
        return handOverEnded(happening);
    case Happened::Declined:
        return "The preceptor declined to sign.";
    case Happened::Initialed:
        return "Initialed.";
    case Happened::InitialedConfirmed:
        return "Initialed, and confirmed the signature with the preceptor.";
    case Happened::Returned:
        return "Returned the sheet.";
    case Happened::ReviewAccepted:
        return "Accepted a mark review: " + ofMarks(happening, "is") + ".";
    case Happened::Amended:
        return amended(happening);
    case Happened::Refiled:
        return filing("Re-filed", happening);
    case Happened::Voided:
        return "Made the sheet void.";
    case Happened::Imported:
        return "Imported from " + happening.source + ": " + base::listed(happening.procedures, "and") + ", " +
               std::string(sheet::inWords(happening.role)) + ".";
    }
    return {};
}

} // namespace peelpack::english
