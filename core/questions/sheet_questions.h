#pragma once

#include "core/record/sheet_record.h"

#include <cstddef>
#include <optional>
#include <set>
#include <string>
#include <vector>

/// What an instructor still has to do with a sheet, and what to look at before initialing it.
namespace peelpack::questions {

/// What is asked about one sheet.
enum class SheetQuestionKind : std::uint8_t {
    NotTheirs,          ///< the preceptor says that a signature is not theirs
    ReviewAsked,        ///< of `skill`
    SignersDiffer,      ///< on `skill`
    ChangedAfterSigned, ///< the student wrote something else after it was signed
    AfterInitial,       ///< something came after it was initialed
    WithdrawalAsked,
    OnlyByAttester, ///< it is initialed only by who attested it
    WeakSignature,
    WrongPin, ///< `count` times
    ActedApart,
    NotApplicableSkill,  ///< `skill`
    NotApplicableCounts, ///< where counts are usual
    SameCase,            ///< an import and another sheet, `sheets`, have the same date and procedure
    // held against the program's rules: ruleQuestions()
    CredentialNotListed, ///< of `name`, for the role of the sheet
    NotOriented,         ///< `name`, by the day of the case
    NotActive,           ///< `name`
    NoClinicalDay,       ///< on that day
    OtherSite,           ///< on that day the class was at `name`
};

struct SheetQuestion {
    SheetQuestionKind kind = SheetQuestionKind::NotTheirs;
    std::optional<sheet::Skill> skill; ///< where one is meant
    std::size_t count = 0;             ///< of wrong tries
    std::vector<std::string> sheets;   ///< short ids, of the same case
    std::string sentence;              ///< to the instructor
    std::string name;                  ///< of the preceptor or sites that are meant

    bool operator==(const SheetQuestion&) const = default;
};

/// A signature in effect of which the preceptor says that it is not theirs; `notTheirs`: entries of the student's.
bool isRepudiated(const record::SheetRecord& sheet, const std::set<base::EntryHash>& notTheirs);

/// A review that waits for its answer.
bool isReviewAsked(const record::SheetRecord& sheet);

/// Sheets of the student, neither withdrawn nor void, with the same date and one of the same procedures as this one,
/// where one of the two was imported: perhaps one case twice. By id.
std::vector<base::Id> sameCases(const record::StudentRecord& student, const record::SheetRecord& sheet);

/// The sheet waits for an instructor: signed, imported or changed and not initialed since, or something about it is
/// asked.
bool waits(const record::SheetRecord& sheet, bool repudiated);

/// Why an instructor should look at a sheet before initialing it; empty: nothing stands out. `repudiated`: as
/// isRepudiated() says. `countsOftenNotNeeded`: every procedure of it has that flag in the catalogue. `sameCases`:
/// short ids of what sameCases() says.
std::vector<SheetQuestion> sheetQuestions(const record::SheetRecord& sheet, bool repudiated, bool countsOftenNotNeeded,
                                          const std::vector<std::string>& sameCases = {});

/// Everybody whose signature is in effect on it is this person: their initials alone would not count (the journal's
/// rules, section 3).
bool attestedOnlyBy(const record::SheetRecord& sheet, const base::Id& person);

} // namespace peelpack::questions
