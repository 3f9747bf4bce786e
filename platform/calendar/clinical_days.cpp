#include "platform/calendar/clinical_days.h"

#include "core/base/text.h"
#include "platform/calendar/occurrences.h"
#include "sync/keys/hash.h"

#include <algorithm>

namespace peelpack::calendar {
namespace {

constexpr std::size_t mostBytes = std::size_t{16} * 1024 * 1024;
constexpr int minutesInDay = 1440;
constexpr int minutesInHour = 60;
constexpr int longestDays = 366;

std::optional<base::Date> dayOf(const icaltimetype& time)
{
    return base::Date::fromYearMonthDay(time.year, time.month, time.day);
}

int wholeNumber(const base::Date& date)
{
    std::string digits = date.iso();
    std::erase(digits, '-');
    return std::stoi(digits);
}

/// Days and minutes that an event takes on its own clock.
struct Length {
    int days = 0;
    int minutes = 0; ///< of an event with times; 0: only a start is known
};

Length lengthOf(icalcomponent* event, const icaltimetype& start)
{
    const icaltimetype end = icalcomponent_get_dtend(event); // from DTEND, or DTSTART and DURATION
    const auto first = dayOf(start);
    const auto last = dayOf(end);
    if (icaltime_is_null_time(end) || !first || !last) {
        return {start.is_date ? 1 : 0, 0};
    }
    const int days = last->days() - first->days();
    if (start.is_date) {
        return {std::max(days, 1), 0};
    }
    return {0, days * minutesInDay + (end.hour - start.hour) * minutesInHour + end.minute - start.minute};
}

class DayReader {
public:
    DayReader(const base::Date& first, const base::Date& last, icaltimezone* zone)
        : m_first(first), m_last(last), m_zone(zone)
    {
    }

    void read(icalcomponent* calendar)
    {
        const Moved moved = movedIn(calendar);
        eachEvent(calendar, [&](icalcomponent* event) { readEvent(event, moved); });
    }

    Reading take()
    {
        std::sort(m_reading.days.begin(), m_reading.days.end());
        m_reading.days.erase(std::unique(m_reading.days.begin(), m_reading.days.end()), m_reading.days.end());
        return std::move(m_reading);
    }

private:
    void readEvent(icalcomponent* event, const Moved& moved)
    {
        const auto refuse = [&](const char* why) {
            const std::string summary = textOf(icalcomponent_get_summary(event));
            m_reading.notTaken.push_back({summary.empty() ? textOf(icalcomponent_get_uid(event)) : summary, why});
        };
        if (icalcomponent_get_status(event) == ICAL_STATUS_CANCELLED) {
            return;
        }
        const icaltimetype start = icalcomponent_get_dtstart(event);
        if (icaltime_is_null_time(start) || !icaltime_is_valid_time(start)) {
            refuse("It has no day on which it starts.");
            return;
        }
        if (!start.is_date && icaltime_is_utc(start) != 0 && m_zone == nullptr) {
            refuse("Its time is in UTC; say in which time zone the site is.");
            return;
        }
        const Length length = lengthOf(event, start);
        if (length.minutes < 0 || length.minutes > minutesInDay || length.days > longestDays) {
            refuse("It ends before it starts, or lasts longer than a day; make an event of each day.");
            return;
        }
        const std::string site = textOf(icalcomponent_get_location(event));
        eachStart(event, moved, wholeNumber(m_last) + 1, [&](icaltimetype one) {
            if (!one.is_date && icaltime_is_utc(one) != 0 && m_zone != nullptr) {
                one = icaltime_convert_to_zone(one, m_zone);
            }
            add(one, length, site);
        });
    }

    void add(const icaltimetype& start, const Length& length, const std::string& site)
    {
        const auto date = dayOf(start);
        if (!date) {
            return;
        }
        if (start.is_date) {
            for (int i = 0; i < std::max(length.days, 1); ++i) {
                addDay({base::Date::fromDays(date->days() + i), record::notSaid, record::notSaid, site});
            }
            return;
        }
        const int from = start.hour * minutesInHour + start.minute;
        ClinicalDay day{*date, static_cast<record::MinuteOfDay>(from), record::notSaid, site};
        if (length.minutes > 0) {
            day.end = static_cast<record::MinuteOfDay>((from + length.minutes) % minutesInDay);
        }
        addDay(std::move(day));
    }

    void addDay(ClinicalDay day)
    {
        if (day.date >= m_first && day.date <= m_last) {
            m_reading.days.push_back(std::move(day));
        }
    }

    base::Date m_first;
    base::Date m_last;
    icaltimezone* m_zone; ///< null: none was named
    Reading m_reading;
};

icaltimetype timeOf(const base::Date& date, record::MinuteOfDay minute)
{
    icaltimetype time = icaltime_from_string(std::to_string(wholeNumber(date)).c_str());
    if (minute != record::notSaid) {
        time.is_date = 0;
        time.hour = minute / minutesInHour;
        time.minute = minute % minutesInHour;
    }
    return time;
}

std::string uidOf(const ClinicalDay& day)
{
    const std::string said =
        day.date.iso() + " " + std::to_string(day.start) + " " + std::to_string(day.end) + " " + day.site;
    return keys::hex(keys::shortHash("peelpack.clinday", {keys::bytesOf(said)}).view());
}

icalcomponent* eventOf(const ClinicalDay& day, const icaltimetype& stamp)
{
    icalcomponent* event = icalcomponent_new(ICAL_VEVENT_COMPONENT);
    icalcomponent_add_property(event, icalproperty_new_uid(uidOf(day).c_str()));
    icalcomponent_add_property(event, icalproperty_new_dtstamp(stamp));
    icalcomponent_add_property(event, icalproperty_new_dtstart(timeOf(day.date, day.start)));
    if (day.start != record::notSaid && day.end != record::notSaid) {
        const base::Date ends = day.end > day.start ? day.date : base::Date::fromDays(day.date.days() + 1);
        icalcomponent_add_property(event, icalproperty_new_dtend(timeOf(ends, day.end)));
    }
    icalcomponent_add_property(event, icalproperty_new_summary("Clinical day"));
    if (!day.site.empty()) {
        icalcomponent_add_property(event, icalproperty_new_location(day.site.c_str()));
    }
    return event;
}

} // namespace

base::Result<Reading> readDays(std::string_view text, const base::Date& first, const base::Date& last,
                               const std::string& zone)
{
    const auto unusable = [](const char* why) { return base::Error{base::ErrorCode::BadInput, why}; };
    if (text.size() > mostBytes) {
        return unusable("The calendar is larger than 16 MiB.");
    }
    if (text.find('\0') != std::string_view::npos || base::firstInvalidUtf8(text) != std::string_view::npos) {
        return unusable("The calendar is not UTF-8 text; export it as iCalendar (.ics).");
    }
    icaltimezone* named = zone.empty() ? nullptr : icaltimezone_get_builtin_timezone(zone.c_str());
    if (!zone.empty() && named == nullptr) {
        return base::Error{base::ErrorCode::BadUsage,
                           "There is no time zone \"" + zone + "\"; name one like America/Chicago."};
    }
    icalerror_set_errors_are_fatal(0);
    const Component calendar(icalparser_parse_string(std::string(text).c_str()));
    const icalcomponent_kind kind = calendar ? icalcomponent_isa(calendar.get()) : ICAL_NO_COMPONENT;
    if (kind != ICAL_VCALENDAR_COMPONENT && kind != ICAL_XROOT_COMPONENT) {
        return unusable("That is no calendar; export it as iCalendar (.ics).");
    }
    DayReader reader(first, last, named);
    reader.read(calendar.get());
    return reader.take();
}

base::Result<std::string> writeDays(std::span<const ClinicalDay> days, std::int64_t stamp)
{
    icalerror_set_errors_are_fatal(0);
    const Component calendar(icalcomponent_new(ICAL_VCALENDAR_COMPONENT));
    icalcomponent_add_property(calendar.get(), icalproperty_new_version("2.0"));
    icalcomponent_add_property(calendar.get(), icalproperty_new_prodid("-//Peelpack//Clinical days 1//EN"));
    const icaltimetype written = icaltime_from_timet_with_zone(stamp, 0, icaltimezone_get_utc_timezone());
    for (const ClinicalDay& day : days) {
        if (base::firstInvalidUtf8(day.site) != std::string_view::npos || day.site.find('\0') != std::string::npos) {
            return base::Error{base::ErrorCode::BadValue, "The name of a site is not well-formed text."};
        }
        icalcomponent_add_component(calendar.get(), eventOf(day, written));
    }
    char* text = icalcomponent_as_ical_string_r(calendar.get());
    std::string result = textOf(text);
    icalmemory_free_buffer(text);
    return result;
}

} // namespace peelpack::calendar
