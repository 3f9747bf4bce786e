#include "platform/demo/demo_program.h"

#include "platform/demo/demo_days.h"
#include "platform/demo/dice.h"
#include "platform/demo/invented_people.h"

#include <algorithm>
#include <array>

namespace peelpack::demo {
namespace {

using catalogue::Category;
using catalogue::categoryAt;
using catalogue::categoryCount;
using catalogue::Procedure;
using sheet::CaseRow;
using sheet::Mark;
using sheet::Skill;

/// How often a category's rooms run, of 100; general surgery fills what is left.
constexpr std::array<std::uint8_t, categoryCount> frequency{0, 5, 7, 5, 8, 5, 8, 3, 12, 4, 5, 1, 4, 3};

class Program {
public:
    explicit Program(const catalogue::Catalogue& catalogue)
    {
        for (const Procedure& procedure : catalogue.procedures()) {
            m_byCategory[indexOf(procedure.categories.front())].push_back(&procedure);
        }
        for (std::vector<const Procedure*>& procedures : m_byCategory) {
            // What has many names is done often.
            std::stable_sort(procedures.begin(), procedures.end(), [](const Procedure* a, const Procedure* b) {
                const auto names = [](const Procedure* p) { return p->synonyms.size() + 2 * p->shorthand.size(); };
                return names(a) > names(b);
            });
            procedures.resize(std::min<std::size_t>(procedures.size(), 24));
        }
    }

    DemoClass makeClass(std::string name, std::span<const std::string_view> students, base::Date start, int days,
                        std::uint32_t seed) const
    {
        DemoClass made{std::move(name), {}};
        Dice dice(seed);
        for (const std::string_view student : students) {
            addStudent(made, dice, student, start, days);
        }
        arrangeDays(made.rows);
        return made;
    }

private:
    static std::string timeOfDay(unsigned minutes)
    {
        const auto digits = [](unsigned number) { return (number < 10 ? "0" : "") + std::to_string(number); };
        return digits(minutes / 60) + ":" + digits(minutes % 60);
    }

    /// The rows of a sheet stand together.
    static void arrangeDays(std::vector<CaseRow>& rows)
    {
        PreceptorDays<std::string> days;
        for (std::size_t i = 0; i < rows.size(); ++i) {
            CaseRow& row = rows[i];
            if (row.preceptor.empty()) {
                continue;
            }
            PreceptorDay& day =
                days.try_emplace({row.preceptor, row.date}, PreceptorDay{row.site, row.room}).first->second;
            const bool another = i == 0 || rows[i - 1].sheet != row.sheet || rows[i - 1].student != row.student;
            day.operations += another ? 1U : 0U;
            const OperationTime time = operationTime(day.operations - 1);
            row.site = day.site;
            row.room = day.room;
            row.start = timeOfDay(time.start);
            row.end = timeOfDay(time.end);
        }
    }

    void addStudent(DemoClass& made, Dice& dice, std::string_view student, base::Date start, int days) const
    {
        const std::size_t pace = 45 + dice.below(55);   // percent of clinical days with a case or two
        const std::size_t talent = 25 + dice.below(45); // percent of first scrubs at the start
        const Category favorite = categoryAt(1 + dice.below(11));
        int number = 0;
        for (int day = 0; day < days; ++day) {
            const bool clinicalDay = day % 7 < 4;
            for (int turn = 0; clinicalDay && turn < 2; ++turn) {
                if (dice.chance(pace)) {
                    const std::size_t firstShare = std::min<std::size_t>(
                        90, talent + 45U * static_cast<std::size_t>(day) / static_cast<std::size_t>(days));
                    addSheet(made, dice, student, base::Date::fromDays(start.days() + day), ++number, firstShare,
                             favorite, day * 100 / days);
                }
            }
        }
    }

    const Procedure& procedureFor(Dice& dice, Category favorite) const
    {
        std::size_t roll = dice.below(100);
        Category category = Category::General;
        for (std::size_t i = 1; i < categoryCount; ++i) {
            if (roll < frequency[i]) {
                category = categoryAt(i);
                break;
            }
            roll -= frequency[i];
        }
        if (category == Category::General && dice.chance(30)) {
            category = favorite;
        }
        const std::vector<const Procedure*>& procedures = m_byCategory[indexOf(category)];
        return *procedures[std::min(dice.below(procedures.size()), dice.below(procedures.size()))];
    }

    static sheet::Marks marksFor(Dice& dice, std::size_t firstShare, bool countsOftenNotNeeded, bool complete)
    {
        sheet::Marks marks;
        const bool first = dice.chance(firstShare);
        const bool assists = dice.chance(90);
        const Skill missed = sheet::allSkills[dice.below(5)];
        for (const Skill skill : sheet::allSkills) {
            Mark mark = dice.chance(70) ? Mark::Yes : (dice.chance(50) ? Mark::No : Mark::NotApplicable);
            if (sheet::isFirstScrubSkill(skill)) {
                mark = first || skill != missed ? Mark::Yes : Mark::No;
                if (skill == Skill::Counts && countsOftenNotNeeded) {
                    mark = Mark::NotApplicable;
                }
            } else if (!assists && !first) {
                mark = Mark::No;
            }
            marks.set(skill, mark);
        }
        if (!complete) {
            marks.set(sheet::allSkills[dice.below(sheet::skillCount)], Mark::Unmarked);
        }
        return marks;
    }

    void addSheet(DemoClass& made, Dice& dice, std::string_view student, base::Date date, int number,
                  std::size_t firstShare, Category favorite, int percentOfTerm) const
    {
        const Procedure& procedure = procedureFor(dice, favorite);
        CaseRow row;
        const std::string digits = std::to_string(number);
        row.sheet = "s" + std::string(4 - std::min<std::size_t>(4, digits.size()), '0') + digits;
        row.date = date;
        row.student = student;
        row.procedure = procedure.name;
        row.categories = logged(dice, procedure);
        row.canceled = dice.chance(2);
        row.marks = marksFor(dice, firstShare, procedure.countsOftenNotNeeded, !dice.chance(3));
        row.surgeon = dice.pick(surgeons);
        row.site = dice.pick(sites);
        row.room = "Room " + std::to_string(1 + dice.below(9));
        row.start = dice.chance(50) ? "07:30" : "10:15";
        row.end = row.start == "07:30" ? "09:20" : "12:05";
        if (dice.chance(92)) {
            row.preceptor = dice.pick(preceptors);
            row.credential = "CST";
            row.attested = dice.chance(70) ? sheet::Strength::Card
                                           : (dice.chance(70) ? sheet::Strength::OwnPhone : sheet::Strength::Drawn);
            row.feedback = dice.chance(40) ? dice.pick(remarks) : std::string_view();
            if (percentOfTerm < 85 && dice.chance(94)) {
                row.initialed = base::Date::fromDays(date.days() + 7 - date.days() % 7);
            }
        }
        if (dice.chance(5)) { // a biopsy, then the excision of the same tumor: one case
            row.onePathology = 1;
            made.rows.push_back(row);
            row.procedure = "Frozen section biopsy";
            row.categories = {row.categories.front()};
            made.rows.push_back(row);
            return;
        }
        made.rows.push_back(row);
        if (dice.chance(8)) { // a second procedure in the same operation
            const Procedure& second = procedureFor(dice, favorite);
            row.procedure = second.name;
            row.categories = logged(dice, second);
            made.rows.push_back(row);
        }
    }

    /// Usually as the catalogue lists it; a two-specialty procedure is sometimes logged the other way round.
    static catalogue::CategoryList logged(Dice& dice, const Procedure& procedure)
    {
        if (procedure.categories.size() < 2 || dice.chance(65)) {
            return procedure.categories;
        }
        catalogue::CategoryList turned{*(procedure.categories.begin() + 1)};
        for (const Category category : procedure.categories) {
            turned.add(category);
        }
        return turned;
    }

    std::array<std::vector<const Procedure*>, categoryCount> m_byCategory;
};

} // namespace

DemoClass demoClass(const catalogue::Catalogue& catalogue, std::string name, std::span<const std::string_view> students,
                    base::Date start, int days, std::uint32_t seed)
{
    return Program(catalogue).makeClass(std::move(name), students, start, days, seed);
}

std::vector<DemoClass> demoProgram(const catalogue::Catalogue& catalogue)
{
    const Program program(catalogue);
    const base::Date spring = *base::Date::fromYearMonthDay(2026, 1, 12);
    const base::Date fall = *base::Date::fromYearMonthDay(2025, 8, 25);
    std::vector<DemoClass> classes;
    classes.push_back(program.makeClass("spring-class", springStudents, spring, 117, 20260112));
    classes.push_back(program.makeClass("fall-class", fallStudents, fall, 110, 20250825));
    return classes;
}

} // namespace peelpack::demo
