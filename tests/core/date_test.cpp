#include "tests/support/catch.h"

#include "core/base/date.h"

using peelpack::base::Date;

TEST_CASE("Every day of the range reads back as it is written", "[date]")
{
    const std::int32_t first = Date::fromYearMonthDay(1900, 1, 1)->days();
    const std::int32_t last = Date::fromYearMonthDay(2199, 12, 31)->days();
    CHECK(last - first + 1 == 109'573); // 300 years, 73 leap days
    for (std::int32_t days = first; days <= last; ++days) {
        const Date date = Date::fromDays(days);
        REQUIRE(Date::fromIso(date.iso()) == date);
    }
    CHECK(Date::fromYearMonthDay(1970, 1, 1)->days() == 0);
    CHECK(Date::fromYearMonthDay(2026, 3, 12)->iso() == "2026-03-12");
}

TEST_CASE("Days that do not exist are refused", "[date]")
{
    for (const char* text : {"2026-02-30", "2026-02-29", "1900-02-29", "2026-13-01", "2026-00-10", "2026-04-31",
                             "2026-01-00", "2026-3-12", "03/12/2026", "2026-03-12 ", " 2026-03-12", "2026/03/12",
                             "20260312", "", "1899-12-31", "2200-01-01", "-026-03-12", "2026-03-1x", "٢٠٢٦-٠٣-١٢"}) {
        CAPTURE(text);
        CHECK_FALSE(Date::fromIso(text).has_value());
    }
    CHECK(Date::fromIso("2024-02-29").has_value());
    CHECK(Date::fromIso("2000-02-29").has_value());
}
