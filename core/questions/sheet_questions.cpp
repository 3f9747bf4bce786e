#include "core/questions/sheet_questions.h"

#include "core/base/text.h"
#include "core/role/classifier.h"

#include <algorithm>

namespace peelpack::questions {
namespace {

using Kind = SheetQuestionKind;

std::string quoted(sheet::Skill skill)
{
    return "\"" + std::string(sheet::label(skill)) + "\"";
}

bool isWithdrawalAsked(const record::SheetRecord& sheet)
{
    return sheet.withdrawal && !sheet.withdrawal->stands && !sheet.withdrawal->answered;
}

bool isOnlyByAttester(const record::SheetRecord& sheet)
{
    return sheet.initial && sheet.initial->onlyByAttester;
}

std::size_t wrongTries(const record::SheetRecord& sheet)
{
    std::size_t tries = 0;
    for (const record::HandOverEnded& ended : sheet.handOversEnded) {
        tries += ended.wrongTries;
    }
    return tries;
}

} // namespace

bool isRepudiated(const record::SheetRecord& sheet, const std::set<base::EntryHash>& notTheirs)
{
    return std::any_of(sheet.signers.begin(), sheet.signers.end(),
                       [&](const record::Signer& signer) { return notTheirs.contains(signer.entry); });
}

bool isReviewAsked(const record::SheetRecord& sheet)
{
    return std::any_of(sheet.reviews.begin(), sheet.reviews.end(),
                       [](const record::Review& review) { return review.answer == record::Review::Answer::Pending; });
}

std::vector<base::Id> sameCases(const record::StudentRecord& student, const record::SheetRecord& sheet)
{
    const auto inPlay = [](const record::SheetRecord& one) {
        return one.standing != record::SheetStanding::Withdrawn && one.standing != record::SheetStanding::Void;
    };
    const auto shareProcedure = [&](const record::SheetRecord& other) {
        return std::any_of(sheet.content.procedures.begin(), sheet.content.procedures.end(),
                           [&](const std::string& mine) {
                               return std::any_of(other.content.procedures.begin(), other.content.procedures.end(),
                                                  [folded = base::foldCaseAndSpaces(mine)](const std::string& theirs) {
                                                      return base::foldCaseAndSpaces(theirs) == folded;
                                                  });
                           });
    };
    std::vector<base::Id> found;
    for (const record::SheetRecord& other : student.sheets) {
        const bool near = other.id != sheet.id && (other.imported || sheet.imported) &&
                          other.content.head.date == sheet.content.head.date;
        if (near && inPlay(sheet) && inPlay(other) && shareProcedure(other)) {
            found.push_back(other.id);
        }
    }
    return found;
}

bool waits(const record::SheetRecord& sheet, bool repudiated)
{
    switch (sheet.standing) {
    case record::SheetStanding::Imported:
    case record::SheetStanding::Signed:
    case record::SheetStanding::Amended:
        return true;
    case record::SheetStanding::Void:
    case record::SheetStanding::Withdrawn:
        return false;
    case record::SheetStanding::Open:
    case record::SheetStanding::Returned:
    case record::SheetStanding::Initialed:
        break;
    }
    return repudiated || isReviewAsked(sheet) || isWithdrawalAsked(sheet) || sheet.changedAfterInitial ||
           isOnlyByAttester(sheet);
}

std::vector<SheetQuestion> sheetQuestions(const record::SheetRecord& sheet, bool repudiated, bool countsOftenNotNeeded,
                                          const std::vector<std::string>& sameCases)
{
    std::vector<SheetQuestion> asked;
    const auto ask = [&](Kind kind, std::string sentence, std::optional<sheet::Skill> skill = std::nullopt,
                         std::size_t count = 0) {
        asked.push_back({kind, skill, count, {}, std::move(sentence), {}});
    };
    if (repudiated) {
        ask(Kind::NotTheirs, "The preceptor says that a signature on it is not theirs.");
    }
    for (const record::Review& review : sheet.reviews) {
        if (review.answer == record::Review::Answer::Pending) {
            ask(Kind::ReviewAsked, "The student asks for a review of " + quoted(review.asked.skill) + ".",
                review.asked.skill);
        }
    }
    for (const record::DisputedMark& mark : sheet.disputed) {
        if (!mark.settled) {
            ask(Kind::SignersDiffer, "Two signers differ on " + quoted(mark.skill) + ".", mark.skill);
        }
    }
    if (sheet.unsignedVersion) {
        ask(Kind::ChangedAfterSigned, "The student changed the sheet after it was signed.");
    }
    if (sheet.changedAfterInitial) {
        ask(Kind::AfterInitial, "Something came after it was initialed.");
    }
    if (isWithdrawalAsked(sheet)) {
        ask(Kind::WithdrawalAsked, "The student asks to take it back.");
    }
    if (isOnlyByAttester(sheet)) {
        ask(Kind::OnlyByAttester, "It is initialed only by who attested it.");
    }
    const bool weak = sheet.strength == sheet::Strength::CardNew || sheet.strength == sheet::Strength::Drawn ||
                      sheet.strength == sheet::Strength::Paper;
    if (weak) {
        ask(Kind::WeakSignature,
            "The signature is weak (" + std::string(sheet::id(sheet.strength)) + "): confirm it with the preceptor.");
    }
    if (const std::size_t tries = wrongTries(sheet); tries > 0) {
        ask(Kind::WrongPin, "A wrong PIN was tried for it, " + base::counted(tries, "time", "times") + ".",
            std::nullopt, tries);
    }
    const bool beside = std::any_of(sheet.history.begin(), sheet.history.end(), [](const record::HistoryLine& line) {
        return line.weight == record::Weight::Beside;
    });
    if (beside) {
        ask(Kind::ActedApart, "Two instructors acted on it apart; one action is in force, the other stands beside it.");
    }
    if (!sameCases.empty()) {
        ask(Kind::SameCase, "It may be entered twice: " + base::listed(sameCases, "and") +
                                (sameCases.size() == 1 ? " has" : " have") + " the same date and procedure.");
        asked.back().sheets = sameCases;
    }
    for (role::Question& question :
         role::questions(sheet.content.marks.marks, sheet.content.head.canceled, countsOftenNotNeeded)) {
        ask(question.kind == role::QuestionKind::NotApplicableSkill ? Kind::NotApplicableSkill
                                                                    : Kind::NotApplicableCounts,
            std::move(question.sentence), question.skill);
    }
    return asked;
}

bool attestedOnlyBy(const record::SheetRecord& sheet, const base::Id& person)
{
    return sheet.isSigned() &&
           std::all_of(sheet.signers.begin(), sheet.signers.end(), [&](const record::Signer& signer) {
               return signer.afterInitial || signer.statement.person == person;
           });
}

} // namespace peelpack::questions
