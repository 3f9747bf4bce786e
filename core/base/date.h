#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace peelpack::base {

/// A calendar day (proleptic Gregorian), no time, no zone. Days are counted from 1970-01-01; default is that day.
/// Range: years 1900 to 2199, which is every day a program of today can name.
class Date {
public:
    constexpr Date() = default;

    /// Empty for a day that does not exist (Feb 30) or lies outside the range.
    static std::optional<Date> fromYearMonthDay(int year, int month, int day);

    /// Strict ISO 8601 calendar date, "2026-03-12", nothing before or after; else empty.
    static std::optional<Date> fromIso(std::string_view text);

    static constexpr Date fromDays(std::int32_t days)
    {
        Date date;
        date.m_days = days;
        return date;
    }

    [[nodiscard]] constexpr std::int32_t days() const { return m_days; }

    /// "2026-03-12"
    [[nodiscard]] std::string iso() const;

    constexpr auto operator<=>(const Date&) const = default;

private:
    std::int32_t m_days = 0;
};

} // namespace peelpack::base
