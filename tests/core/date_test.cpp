#include "tests/support/catch.h"

#include "core/base/date.h"

#include <string>

using peelpack::base::Date;

namespace {

/// The Gregorian leap year rule and month lengths, written once more.
int lengthOfMonth(int year, int month)
{
    const bool leap = year % 400 == 0 || (year % 4 == 0 && year % 100 != 0);
    const bool shortMonth = month == 4 || month == 6 || month == 9 || month == 11;
    return month == 2 ? (leap ? 29 : 28) : (shortMonth ? 30 : 31);
}

std::string padded(int number, std::size_t width)
{
    std::string digits = std::to_string(number);
    return digits.insert(0, width - digits.size(), '0');
}

} // namespace

TEST_CASE("Every day of the range follows the one before and reads back as it is written", "[date]")
{
    std::int32_t expected = Date::fromYearMonthDay(1900, 1, 1)->days();
    CHECK(expected == -25'567);
    std::size_t count = 0;
    for (int year = 1900; year <= 2199; ++year) {
        for (int month = 1; month <= 12; ++month) {
            for (int day = 1; day <= lengthOfMonth(year, month); ++day) {
                const std::string iso = padded(year, 4) + "-" + padded(month, 2) + "-" + padded(day, 2);
                const std::optional<Date> date = Date::fromYearMonthDay(year, month, day);
                if (!date || date->days() != expected || date->iso() != iso || Date::fromIso(iso) != date) {
                    FAIL(iso);
                }
                ++expected;
                ++count;
            }
        }
    }
    CHECK(count == 109'573); // 300 years, 73 leap days
    CHECK(Date() == Date::fromYearMonthDay(1970, 1, 1));
    CHECK(Date::fromDays(expected - 1).iso() == "2199-12-31");
    CHECK(*Date::fromIso("2026-03-12") < *Date::fromIso("2026-03-13"));
    CHECK(*Date::fromIso("2026-03-12") > *Date::fromIso("2025-12-31"));
}

TEST_CASE("Every other year, month and day is refused", "[date]")
{
    for (int year = 1898; year <= 2201; ++year) {
        for (int month = -1; month <= 14; ++month) {
            for (int day = -1; day <= 33; ++day) {
                const bool exists = year >= 1900 && year <= 2199 && month >= 1 && month <= 12 && day >= 1 &&
                                    day <= lengthOfMonth(year, month);
                if (Date::fromYearMonthDay(year, month, day).has_value() != exists) {
                    FAIL(year << " " << month << " " << day);
                }
            }
        }
    }
    for (const int far : {-2'147'483'647 - 1, 65'536 + 2026, 2'147'483'647}) {
        CAPTURE(far);
        CHECK_FALSE(Date::fromYearMonthDay(far, 1, 1).has_value());
        CHECK_FALSE(Date::fromYearMonthDay(2026, far, 1).has_value());
        CHECK_FALSE(Date::fromYearMonthDay(2026, 1, far).has_value());
    }
    CHECK_FALSE(Date::fromYearMonthDay(2026, 2, 30).has_value());
    CHECK_FALSE(Date::fromYearMonthDay(1900, 2, 29).has_value()); // divisible by 100
    CHECK(Date::fromYearMonthDay(2000, 2, 29).has_value());       // divisible by 400
    CHECK_FALSE(Date::fromYearMonthDay(2100, 2, 29).has_value());
    CHECK(Date::fromYearMonthDay(2024, 2, 29).has_value());
}

TEST_CASE("Days that do not exist and other ways of writing are refused", "[date]")
{
    using namespace std::string_view_literals;
    for (const std::string_view text :
         {"2026-02-30"sv,  "2026-02-29"sv, "1900-02-29"sv, "2026-13-01"sv,   "2026-00-10"sv,  "2026-04-31"sv,
          "2026-01-00"sv,  "2026-3-12"sv,  "03/12/2026"sv, "2026-03-12 "sv,  " 2026-03-12"sv, "2026/03/12"sv,
          "20260312"sv,    ""sv,           "1899-12-31"sv, "2200-01-01"sv,   "-026-03-12"sv,  "2026-03-1x"sv,
          "+026-03-12"sv,  "2026-+3-12"sv, "2026-03- 1"sv, "2026-03-12\n"sv, "2026-03-1\0"sv, "12-03-2026"sv,
          "02026-03-12"sv, "2026-071-1"sv, "2026-W11-4"sv, "2026-071"sv,     "02/30"sv,       "2026-03-12T07:30"sv,
          "2026-03_12"sv,  "٢٠٢٦-٠٣-١٢"sv}) {
        CAPTURE(text);
        CHECK_FALSE(Date::fromIso(text).has_value());
    }
    CHECK(Date::fromIso("2024-02-29").has_value());
    CHECK(Date::fromIso("2000-02-29").has_value());
}
