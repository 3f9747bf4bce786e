#include "platform/demo/journal_cases.h"

#include "platform/demo/invented_people.h"

#include <algorithm>

namespace peelpack::demo {
namespace {

using sheet::CaseRow;

constexpr std::size_t weeksAtSite = 4;

/// "07:30"
journal::MinuteOfDay minuteOf(const std::string& time)
{
    const auto digit = [&](std::size_t i) { return static_cast<unsigned>(time[i] - '0'); };
    return static_cast<journal::MinuteOfDay>((digit(0) * 10 + digit(1)) * 60 + digit(3) * 10 + digit(4));
}

std::vector<journal::SkillMark> marksOf(const CaseRow& row)
{
    std::vector<journal::SkillMark> marks;
    for (const sheet::Skill skill : sheet::allSkills) {
        const sheet::Mark mark = row.marks.of(skill);
        const bool noCounts = skill == sheet::Skill::Counts && mark == sheet::Mark::NotApplicable;
        if (mark != sheet::Mark::Unmarked && !row.canceled) {
            marks.push_back({skill, mark, noCounts ? "The policy here calls for no counts on this case." : ""});
        }
    }
    return marks;
}

void addProcedure(DemoCase& made, const CaseRow& row)
{
    const auto index = static_cast<std::uint8_t>(made.draft.procedures.size());
    const auto joined = static_cast<std::uint8_t>(row.onePathology.value_or(0));
    made.draft.procedures.push_back(row.procedure);
    made.choices.push_back({index, std::string(catalogue::id(row.categories.front())), joined});
    if (index == 0 && row.categories.size() > 1 && joined == 0) {
        made.otherChoices = {{0, std::string(catalogue::id(*(row.categories.begin() + 1))), 0}};
    }
}

Ending endingOf(Dice& dice, std::size_t site)
{
    const std::size_t roll = dice.below(100);
    const bool noPhones = site == 2; // there a pen-signed stub is usual
    if (roll < 5) {
        return Ending::Drawn;
    }
    if (roll < (noPhones ? 17U : 6U)) {
        return Ending::Paper;
    }
    if (roll < 90) {
        return Ending::Signed;
    }
    return roll < 92 ? Ending::Declined : (roll < 98 ? Ending::Unsigned : Ending::Withdrawn);
}

} // namespace

std::vector<DemoCase> casesOf(std::span<const CaseRow> rows, base::Date firstDay, std::size_t number,
                              std::size_t fewest, std::size_t most)
{
    Dice dice(static_cast<std::uint32_t>(71'000 + number));
    std::size_t total = 0;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        total += i == 0 || rows[i].sheet != rows[i - 1].sheet ? 1U : 0U;
    }
    const std::size_t wanted = std::min(total, fewest + dice.below(most - fewest + 1));
    std::vector<DemoCase> cases;
    std::size_t sheet = 0;
    std::size_t lastWeek = SIZE_MAX;
    std::size_t ofWeek = 0;
    for (std::size_t i = 0; i < rows.size(); ++sheet) {
        std::size_t end = i + 1;
        while (end < rows.size() && rows[end].sheet == rows[i].sheet) {
            ++end;
        }
        const CaseRow& row = rows[i];
        const bool taken = (sheet + 1) * wanted / total != sheet * wanted / total;
        if (taken) {
            const auto week = static_cast<std::size_t>((row.date.days() - firstDay.days()) / 7);
            const std::size_t site = (week / weeksAtSite + number) % sites.size();
            if (week != lastWeek) {
                ofWeek = dice.below(preceptorsPerSite);
                lastWeek = week;
            }
            DemoCase made;
            made.openOn = row.date;
            made.draft.head = {row.date,          row.surgeon, std::string(sites[site]), row.room, minuteOf(row.start),
                               minuteOf(row.end), row.canceled};
            for (std::size_t part = i; part < end; ++part) {
                addProcedure(made, rows[part]);
            }
            made.marks = marksOf(row);
            made.feedback = row.feedback;
            made.preceptor = site * preceptorsPerSite + (dice.chance(80) ? ofWeek : dice.below(preceptorsPerSite));
            made.ending = endingOf(dice, site);
            cases.push_back(made);
            if (dice.chance(1)) {
                made.ending = Ending::OpenedTwice;
                cases.push_back(std::move(made));
            }
        }
        i = end;
    }
    return cases;
}

void arrangeDays(std::vector<DemoCase>& cases, PreceptorDays<std::size_t>& days)
{
    for (DemoCase& one : cases) {
        journal::Head& head = one.draft.head;
        PreceptorDay& day =
            days.try_emplace({one.preceptor, head.date}, PreceptorDay{head.site, head.room}).first->second;
        day.operations += one.ending == Ending::OpenedTwice ? 0U : 1U; // that is the case before it again
        const OperationTime time = operationTime(day.operations - 1);
        head.room = day.room;
        head.start = static_cast<journal::MinuteOfDay>(time.start);
        head.end = static_cast<journal::MinuteOfDay>(time.end);
    }
}

} // namespace peelpack::demo
