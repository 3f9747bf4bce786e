#include "core/record/event.h"

#include <algorithm>

namespace peelpack::record {

base::Date Time::day() const
{
    constexpr std::int64_t secondsInDay = 86'400;
    constexpr std::int64_t firstDay = -25'567; // 1900-01-01
    constexpr std::int64_t lastDay = 84'005;   // 2199-12-31
    const std::int64_t there =
        std::clamp(seconds, (firstDay - 1) * secondsInDay, (lastDay + 2) * secondsInDay) + zone * std::int64_t{60};
    const std::int64_t before = there % secondsInDay < 0 ? 1 : 0;
    return base::Date::fromDays(
        static_cast<std::int32_t>(std::clamp(there / secondsInDay - before, firstDay, lastDay)));
}

} // namespace peelpack::record
