#include "platform/files/time_of_day.h"

#include <algorithm>

namespace peelpack::files {

std::optional<record::MinuteOfDay> minuteOf(const std::string& text)
{
    const bool shaped = text.size() == 5 && text[2] == ':' && std::all_of(text.begin(), text.end(), [](char c) {
                            return c == ':' || (c >= '0' && c <= '9');
                        });
    if (!shaped || text[0] == ':' || text[1] == ':' || text[3] == ':' || text[4] == ':') {
        return std::nullopt;
    }
    const int hours = (text[0] - '0') * 10 + (text[1] - '0');
    const int minutes = (text[3] - '0') * 10 + (text[4] - '0');
    constexpr int minutesInHour = 60;
    if (hours > 23 || minutes >= minutesInHour) {
        return std::nullopt;
    }
    return static_cast<record::MinuteOfDay>(hours * minutesInHour + minutes);
}

} // namespace peelpack::files
