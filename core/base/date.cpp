#include "core/base/date.h"

#include <chrono>

namespace peelpack::base {
namespace {

constexpr int firstYear = 1900;
constexpr int lastYear = 2199;

int number(std::string_view digits)
{
    int value = 0;
    for (const char c : digits) {
        if (c < '0' || c > '9') {
            return -1;
        }
        value = value * 10 + (c - '0');
    }
    return value;
}

void appendPadded(std::string& out, unsigned value, std::size_t width)
{
    const std::string digits = std::to_string(value);
    out.append(width > digits.size() ? width - digits.size() : 0, '0');
    out += digits;
}

} // namespace

std::optional<Date> Date::fromYearMonthDay(int year, int month, int day)
{
    if (year < firstYear || year > lastYear || month < 1 || month > 12 || day < 1 || day > 31) {
        return std::nullopt;
    }
    const std::chrono::year_month_day ymd{std::chrono::year{year}, std::chrono::month{static_cast<unsigned>(month)},
                                          std::chrono::day{static_cast<unsigned>(day)}};
    if (!ymd.ok()) {
        return std::nullopt;
    }
    return fromDays(static_cast<std::int32_t>(std::chrono::sys_days{ymd}.time_since_epoch().count()));
}

std::optional<Date> Date::fromIso(std::string_view text)
{
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') {
        return std::nullopt;
    }
    return fromYearMonthDay(number(text.substr(0, 4)), number(text.substr(5, 2)), number(text.substr(8, 2)));
}

std::string Date::iso() const
{
    const std::chrono::year_month_day ymd{std::chrono::sys_days{std::chrono::days{m_days}}};
    std::string out;
    appendPadded(out, static_cast<unsigned>(static_cast<int>(ymd.year())), 4);
    out += '-';
    appendPadded(out, static_cast<unsigned>(ymd.month()), 2);
    out += '-';
    appendPadded(out, static_cast<unsigned>(ymd.day()), 2);
    return out;
}

} // namespace peelpack::base
