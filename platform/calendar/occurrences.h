#pragma once

#include <libical/ical.h>

#include <functional>
#include <memory>
#include <set>
#include <string>
#include <tuple>

/// When the events of a calendar happen, on the clock of each event's own zone.
namespace peelpack::calendar {

struct Release {
    void operator()(icalcomponent* component) const { icalcomponent_free(component); }
    void operator()(icalrecur_iterator* iterator) const { icalrecur_iterator_free(iterator); }
};
using Component = std::unique_ptr<icalcomponent, Release>;

/// A moment on a wall clock: day as YYYYMMDD, minute of the day; -1: the whole day.
using Wall = std::pair<int, int>;
Wall wallOf(const icaltimetype& time);

/// Occurrences that another event of the same UID moves, by its RECURRENCE-ID.
using Moved = std::set<std::pair<std::string, Wall>>;
Moved movedIn(icalcomponent* calendar);

/// Calls for the start of every occurrence of an event up to the day `last` (YYYYMMDD), each once: its DTSTART, RRULE
/// and RDATE without EXDATE and without those that another event moves. In no order.
void eachStart(icalcomponent* event, const Moved& moved, int last,
               const std::function<void(const icaltimetype&)>& take);

/// Calls for every VEVENT, also inside several calendars in one text.
void eachEvent(icalcomponent* root, const std::function<void(icalcomponent*)>& take);

std::string textOf(const char* text);

} // namespace peelpack::calendar
