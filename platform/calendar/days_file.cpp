#include "platform/calendar/days_file.h"

#include "platform/calendar/clinical_days.h"
#include "platform/files/table_file.h"
#include "platform/files/text_file.h"
#include "platform/files/time_of_day.h"

namespace peelpack::calendar {
namespace {

constexpr std::int32_t dayBack = 366;
constexpr std::int32_t daysAhead = 731;

using Days = std::vector<journal::ClinicalDay>;

base::Result<Days> readCalendar(const std::string& file, const std::string& text, const DaysWanted& wanted)
{
    const base::Result<Reading> reading = readDays(text, wanted.first, wanted.last, wanted.zone);
    if (!reading) {
        return base::Error{reading.error().code, file + ": " + reading.error().sentence};
    }
    if (!reading.value().notTaken.empty()) {
        const NotTaken& event = reading.value().notTaken.front();
        return base::Error{base::ErrorCode::BadInput, file + ", event \"" + event.event + "\": " + event.why};
    }
    Days days;
    for (const ClinicalDay& day : reading.value().days) {
        const std::string site = files::normalized(day.site.empty() ? wanted.site : day.site);
        if (site.empty()) {
            return base::Error{base::ErrorCode::BadInput,
                               file + ": the day " + day.date.iso() +
                                   " names no place; fill it in, or say the site of such days."};
        }
        days.push_back({day.date, site, day.start, day.end});
    }
    return days;
}

base::Result<Days> readRows(const std::string& file, const std::string& text, const DaysWanted& wanted)
{
    const auto rows = files::readTable(file, text, {{"date", true}, {"site", false}, {"start", false}, {"end", false}});
    if (!rows) {
        return rows.error();
    }
    Days days;
    for (const files::TableRow& row : rows.value()) {
        const auto date = base::Date::fromIso(row.cells[0]);
        const std::string& site = row.cells[1].empty() ? wanted.site : row.cells[1];
        const auto start = files::minuteOf(row.cells[2]);
        const auto end = files::minuteOf(row.cells[3]);
        if (!date) {
            return row.error(file, "the date is none; write it like 2026-03-12.");
        }
        if (site.empty()) {
            return row.error(file, "the site is missing; fill it in, or say the site of such days.");
        }
        if ((!start && !row.cells[2].empty()) || (!end && !row.cells[3].empty())) {
            return row.error(file, "a time is none; write it like 07:30.");
        }
        if (end && !start) {
            return row.error(file, "the end stands without a start; fill the start in.");
        }
        days.push_back({*date, site, start.value_or(journal::notSaid), end.value_or(journal::notSaid)});
    }
    return days;
}

} // namespace

DaysWanted usualDays(const base::Date& today)
{
    return {base::Date::fromDays(today.days() - dayBack), base::Date::fromDays(today.days() + daysAhead), {}, {}};
}

base::Result<Days> daysFrom(const std::string& file, const std::string& text, const DaysWanted& wanted)
{
    const bool isCalendar = text.find("BEGIN:VCALENDAR") != std::string::npos;
    return isCalendar ? readCalendar(file, text, wanted) : readRows(file, text, wanted);
}

base::Result<std::string> daysAsCalendar(const Days& days, std::int64_t stamp)
{
    std::vector<ClinicalDay> said;
    said.reserve(days.size());
    for (const journal::ClinicalDay& day : days) {
        said.push_back({day.date, day.start, day.end, day.site});
    }
    return writeDays(said, stamp);
}

} // namespace peelpack::calendar
