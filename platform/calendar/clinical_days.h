#pragma once

#include "core/base/date.h"
#include "core/base/result.h"
#include "core/record/sheet_content.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

/// Clinical days in and out of calendars (iCalendar, RFC 5545), read and written by libical.
namespace peelpack::calendar {

/// A day at a site, in the site's own time.
struct ClinicalDay {
    base::Date date;
    record::MinuteOfDay start = record::notSaid; ///< the whole day
    record::MinuteOfDay end = record::notSaid;   ///< not after the start: on the next day
    std::string site;                            ///< as LOCATION says it; may be empty

    auto operator<=>(const ClinicalDay&) const = default;
};

/// An event of which no clinical day was made.
struct NotTaken {
    std::string event; ///< its summary, else its UID, else empty
    std::string why;   ///< a sentence that says the mend
    bool operator==(const NotTaken&) const = default;
};

struct Reading {
    std::vector<ClinicalDay> days; ///< ascending, each once
    std::vector<NotTaken> notTaken;
};

/// The days from `first` to `last` of every event that is not canceled, repeated ones with their exceptions and moved
/// occurrences. Times stand as they are written with the event's zone, which is taken to be the site's; times in UTC
/// are those of `zone` ("America/Chicago"), and an event with such times is not taken where that is empty. BadInput:
/// the text is no calendar, or larger than 16 MiB. BadUsage: nobody knows that zone.
base::Result<Reading> readDays(std::string_view text, const base::Date& first, const base::Date& last,
                               const std::string& zone = {});

/// A calendar with an event a day, times without zone (those of the site). `stamp` is when it was written, in seconds
/// since 1970-01-01T00:00:00Z. The same day has the same UID whenever it is written, so that taking it in again makes
/// no second event. BadValue: a site is not well-formed text.
base::Result<std::string> writeDays(std::span<const ClinicalDay> days, std::int64_t stamp);

} // namespace peelpack::calendar
