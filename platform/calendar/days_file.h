#pragma once

#include "core/base/result.h"
#include "sync/journal/rule_payloads.h"

#include <string>
#include <vector>

/// Clinical days in and out of files, as the journal has them.
namespace peelpack::calendar {

/// What a file of clinical days does not say itself.
struct DaysWanted {
    base::Date first;
    base::Date last;
    std::string site; ///< of a day that names none; may be empty
    std::string zone; ///< of the site, for times in UTC ("America/Chicago"); may be empty
};
/// From a year before today to two years after it, nothing else said.
DaysWanted usualDays(const base::Date& today);

/// The days of a calendar (iCalendar, RFC 5545) from `first` to `last`, or all of a CSV file (RFC 4180, UTF-8) with a
/// header row that names the columns date, site, start and end, the last two also left out or empty. Nothing is left
/// out: BadInput names the file with the line or the event, and the mend.
base::Result<std::vector<journal::ClinicalDay>> daysFrom(const std::string& file, const std::string& text,
                                                         const DaysWanted& wanted);

/// As a calendar; `stamp` in seconds since 1970-01-01T00:00:00Z.
base::Result<std::string> daysAsCalendar(const std::vector<journal::ClinicalDay>& days, std::int64_t stamp);

} // namespace peelpack::calendar
