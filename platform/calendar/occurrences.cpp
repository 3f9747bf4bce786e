#include "platform/calendar/occurrences.h"

#include <map>

namespace peelpack::calendar {
namespace {

constexpr int mostOccurrences = 20'000; ///< of one rule: a day each for fifty years

/// A time of a property, on the clock of the event that it belongs to.
icaltimetype onClockOf(const icaltimetype& start, icalproperty* property, icalcomponent* event)
{
    icaltimetype time = icalproperty_get_datetime_with_component(property, event);
    if (!time.is_date && time.zone != nullptr && start.zone != nullptr && time.zone != start.zone) {
        time = icaltime_convert_to_zone(time, const_cast<icaltimezone*>(start.zone));
    }
    return time;
}

template <class Take>
void eachProperty(icalcomponent* event, icalproperty_kind kind, const Take& take)
{
    for (icalproperty* property = icalcomponent_get_first_property(event, kind); property != nullptr;
         property = icalcomponent_get_next_property(event, kind)) {
        take(property);
    }
}

} // namespace

std::string textOf(const char* text)
{
    return text == nullptr ? std::string() : std::string(text);
}

Wall wallOf(const icaltimetype& time)
{
    constexpr int inYear = 10'000;
    constexpr int inMonth = 100;
    constexpr int inHour = 60;
    return {time.year * inYear + time.month * inMonth + time.day, time.is_date ? -1 : time.hour * inHour + time.minute};
}

void eachEvent(icalcomponent* root, const std::function<void(icalcomponent*)>& take)
{
    if (icalcomponent_isa(root) == ICAL_VEVENT_COMPONENT) {
        take(root);
        return;
    }
    const icalcompiter start = icalcomponent_begin_component(root, ICAL_ANY_COMPONENT);
    for (icalcompiter at = start; icalcompiter_deref(&at) != nullptr; icalcompiter_next(&at)) {
        icalcomponent* part = icalcompiter_deref(&at);
        const icalcomponent_kind kind = icalcomponent_isa(part);
        if (kind == ICAL_VEVENT_COMPONENT) {
            take(part);
        } else if (kind == ICAL_VCALENDAR_COMPONENT) {
            eachEvent(part, take);
        }
    }
}

Moved movedIn(icalcomponent* calendar)
{
    std::map<std::string, icaltimetype> masters;
    eachEvent(calendar, [&](icalcomponent* event) {
        if (icalcomponent_get_first_property(event, ICAL_RECURRENCEID_PROPERTY) == nullptr) {
            masters.emplace(textOf(icalcomponent_get_uid(event)), icalcomponent_get_dtstart(event));
        }
    });
    Moved moved;
    eachEvent(calendar, [&](icalcomponent* event) {
        icalproperty* property = icalcomponent_get_first_property(event, ICAL_RECURRENCEID_PROPERTY);
        const auto master = masters.find(textOf(icalcomponent_get_uid(event)));
        if (property != nullptr && master != masters.end()) {
            moved.emplace(master->first, wallOf(onClockOf(master->second, property, event)));
        }
    });
    return moved;
}

void eachStart(icalcomponent* event, const Moved& moved, int last, const std::function<void(const icaltimetype&)>& take)
{
    const icaltimetype start = icalcomponent_get_dtstart(event);
    std::map<Wall, icaltimetype> starts{{wallOf(start), start}};
    const bool isMoved = icalcomponent_get_first_property(event, ICAL_RECURRENCEID_PROPERTY) != nullptr;
    if (!isMoved) {
        eachProperty(event, ICAL_RRULE_PROPERTY, [&](icalproperty* property) {
            const std::unique_ptr<icalrecur_iterator, Release> iterator(
                icalrecur_iterator_new(icalproperty_get_rrule(property), start));
            for (int count = 0; iterator && count < mostOccurrences; ++count) {
                const icaltimetype next = icalrecur_iterator_next(iterator.get());
                if (icaltime_is_null_time(next) || wallOf(next).first > last) {
                    break;
                }
                starts.emplace(wallOf(next), next);
            }
        });
        eachProperty(event, ICAL_RDATE_PROPERTY, [&](icalproperty* property) {
            const icaldatetimeperiodtype added = icalproperty_get_rdate(property);
            const icaltimetype time =
                icaltime_is_null_time(added.time) ? added.period.start : onClockOf(start, property, event);
            starts.emplace(wallOf(time), time);
        });
        eachProperty(event, ICAL_EXDATE_PROPERTY, [&](icalproperty* property) {
            const Wall except = wallOf(onClockOf(start, property, event));
            std::erase_if(starts, [&](const auto& one) {
                return one.first == except || (except.second < 0 && one.first.first == except.first);
            });
        });
    }
    const std::string uid = textOf(icalcomponent_get_uid(event));
    for (const auto& [wall, time] : starts) {
        if (wall.first <= last && (isMoved || !moved.contains({uid, wall}))) {
            take(time);
        }
    }
}

} // namespace peelpack::calendar
