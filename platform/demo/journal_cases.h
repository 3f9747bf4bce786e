#pragma once

#include "core/sheet/case_row.h"
#include "platform/demo/demo_days.h"
#include "platform/demo/dice.h"
#include "sync/journal/sheet_payloads.h"

#include <span>
#include <string>
#include <vector>

namespace peelpack::demo {

/// What becomes of a case sheet at the bedside.
enum class Ending : std::uint8_t {
    Signed, ///< with the preceptor's card, or on their own phone
    Drawn,
    Paper,
    Declined,
    Unsigned,
    Withdrawn,
    OpenedTwice, ///< a second sheet of the case before it, by mistake
    Told,        ///< the story says it
};

/// One case of a student: what is written, what is marked, and how it ends.
struct DemoCase {
    base::Date openOn; ///< usually the day of the case
    journal::Draft draft;
    std::vector<journal::SkillMark> marks;
    std::vector<journal::Choice> choices;
    std::vector<journal::Choice> otherChoices; ///< under the other specialty; empty: there is only one
    std::string feedback;
    std::size_t preceptor = 0; ///< index
    Ending ending = Ending::Signed;
    keys::Id sheet; ///< zero: not opened yet
};

/// Preceptors at each site stand together, in the order of the sites.
inline constexpr std::size_t preceptorsPerSite = 3;

/// About `fewest` to `most` of one student's cases, spread over the term. The student goes from site to site every four
/// weeks, and one preceptor has most of a week. `rows`: of this student, by day; `number`: of the student.
std::vector<DemoCase> casesOf(std::span<const sheet::CaseRow> rows, base::Date firstDay, std::size_t number,
                              std::size_t fewest, std::size_t most);

/// Puts each preceptor into one room a day, with one operation after another, over the cases of all students.
void arrangeDays(std::vector<DemoCase>& cases, PreceptorDays<std::size_t>& days);

} // namespace peelpack::demo
