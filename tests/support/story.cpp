#include "tests/support/story.h"

#include "tests/support/catch.h"

#include <algorithm>

namespace peelpack::support {

using namespace record;
using sheet::Mark;
using sheet::Skill;

base::EntryHash entry(std::uint8_t byte)
{
    return named<base::EntryHash>(byte);
}

ReasonedMarks marksOf(std::initializer_list<std::pair<Skill, Mark>> list)
{
    ReasonedMarks marks;
    for (const auto& [skill, mark] : list) {
        marks.set(skill, mark);
    }
    return marks;
}

ReasonedMarks allYes()
{
    ReasonedMarks marks;
    for (const Skill skill : sheet::allSkills) {
        marks.set(skill, Mark::Yes);
    }
    return marks;
}

Head head(std::string room)
{
    Head head;
    head.date = *base::Date::fromIso("2026-03-01");
    head.room = std::move(room);
    return head;
}

Draft draft(std::vector<std::string> procedures, const ReasonedMarks& marks, const Head& where)
{
    return {named<base::Id>(0x50), std::move(procedures), where, marks};
}

Attested attested(const ReasonedMarks& marks, sheet::Strength strength, std::string name, std::uint8_t person)
{
    Attested result;
    result.operation = named<base::Id>(0x50);
    result.procedures = {"Appendectomy"};
    result.head = head();
    result.marks = marks;
    result.name = std::move(name);
    result.credential = "CST";
    result.person = named<base::Id>(person);
    result.strength = strength;
    return result;
}

Imported imported(sheet::Role role)
{
    return {named<base::Id>(0x50),
            {"Appendectomy"},
            head(),
            {{0, catalogue::Category::General, 0}},
            role,
            "Invented Preceptor",
            "CST",
            "paper log of spring, page 3",
            false};
}

base::EntryHash Story::imported(Imported what, Standing standing)
{
    return add({Part::Instructor, named<base::Id>(0x20), "Invented Instructor"}, std::move(what), std::move(standing));
}

base::EntryHash Story::student(What what, Standing standing)
{
    return add({Part::Student, named<base::Id>(0x30), "Invented Student"}, std::move(what), std::move(standing));
}

base::EntryHash Story::act(Decision decision, const base::EntryHash& about, std::string reason, std::uint8_t person)
{
    const base::EntryHash on = m_last;
    m_last = add({Part::Instructor, named<base::Id>(person), "Invented Instructor"},
                 Act{on, about, std::move(reason), true, std::move(decision)}, {});
    return m_last;
}

base::EntryHash Story::beside(Decision decision, const base::EntryHash& standsOn, const base::EntryHash& about,
                              Standing standing)
{
    return add({Part::Instructor, named<base::Id>(0x24), "Second Instructor"},
               Act{standsOn, about, "Another view.", false, std::move(decision)}, std::move(standing));
}

SheetRecord Story::record() const
{
    const StudentRecord all = recordOf(events);
    const auto found =
        std::find_if(all.sheets.begin(), all.sheets.end(), [&](const SheetRecord& one) { return one.id == sheet; });
    REQUIRE(found != all.sheets.end());
    return *found;
}

base::EntryHash Story::add(Writer writer, What what, Standing standing)
{
    Event event;
    event.entry = entry(m_next++);
    event.sheet = sheet;
    event.writer = std::move(writer);
    event.claimed = {1'772'366'400, -300}; // 2026-03-01 12:00 UTC
    event.standing = std::move(standing);
    event.what = std::move(what);
    events.events.push_back(event);
    return event.entry;
}

const HistoryLine& lineOf(const SheetRecord& record, const base::EntryHash& entry)
{
    const auto found = std::find_if(record.history.begin(), record.history.end(),
                                    [&](const HistoryLine& line) { return line.entry == entry; });
    REQUIRE(found != record.history.end());
    return *found;
}

std::vector<std::uint8_t> orderOf(const SheetRecord& record)
{
    std::vector<std::uint8_t> order;
    for (const HistoryLine& line : record.history) {
        order.push_back(line.entry.bytes[0]);
    }
    return order;
}

} // namespace peelpack::support
