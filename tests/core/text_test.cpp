#include "tests/support/catch.h"

#include "core/base/string_pool.h"
#include "core/base/text.h"

#include <string>

using namespace peelpack::base;

TEST_CASE("Ill-formed UTF-8 is found where it begins", "[text]")
{
    const auto bad = [](std::string_view text) { return firstInvalidUtf8(text); };
    CHECK(bad("") == std::string_view::npos);
    CHECK(bad("Zo\xC3\xAB \xE9\xAB\x8B \xF0\x9F\xA6\xB4") == std::string_view::npos);
    CHECK(bad("\xF4\x8F\xBF\xBF") == std::string_view::npos); // U+10FFFF
    CHECK(bad("a\x80") == 1);                                 // a lone continuation
    CHECK(bad("ab\xC0\xAF") == 2);                            // overlong
    CHECK(bad("\xE0\x9F\xBF") == 0);                          // overlong
    CHECK(bad("\xF0\x8F\xBF\xBF") == 0);                      // overlong
    CHECK(bad("\xED\xA0\x80") == 0);                          // a surrogate
    CHECK(bad("\xF4\x90\x80\x80") == 0);                      // above U+10FFFF
    CHECK(bad("\xF5\x80\x80\x80") == 0);
    CHECK(bad("x\xE2\x82") == 1); // cut short
    CHECK(bad("\xC3") == 0);
    CHECK(bad("\xFF\xFE") == 0);
}

TEST_CASE("Names are folded as people read them", "[text]")
{
    CHECK(foldCaseAndSpaces("  Lap   CHOLE\t ") == "lap chole");
    CHECK(foldCaseAndSpaces("\xC3\x89tude\xC2\xA0 x") == "\xC3\xA9tude x"); // a no-break space is a space
    CHECK(foldCaseAndSpaces("\xC3\x97") == "\xC3\x97");                     // the times sign has no lower case
    CHECK(foldCaseAndSpaces("").empty());
    CHECK(trimmed(" \ta b ") == "a b");
    CHECK(trimmed("  ").empty());
}

TEST_CASE("Splitting and listing", "[text]")
{
    CHECK(split("a|b||", '|').size() == 4);
    CHECK(split("", '|').size() == 1);
    CHECK(listed({"a"}, "and") == "a");
    CHECK(listed({"a", "b"}, "or") == "a or b");
    CHECK(listed({"a", "b", "c"}, "and") == "a, b and c");
    CHECK(listed({}, "and").empty());
    CHECK(counted(1, "case", "cases") == "1 case");
    CHECK(counted(0, "case", "cases") == "0 cases");
}

TEST_CASE("A string pool numbers texts in the order of arrival and keeps them", "[text]")
{
    StringPool pool;
    for (int round = 0; round < 2; ++round) {
        for (std::uint32_t i = 0; i < 50'000; ++i) {
            REQUIRE(pool.intern("text " + std::to_string(i)) == i);
        }
    }
    const std::string large(1'000'000, 'x');
    const std::uint32_t number = pool.intern(large);
    const std::uint32_t empty = pool.intern("");
    CHECK(pool.size() == 50'002);
    CHECK(pool.at(17) == "text 17");
    CHECK(pool.at(number) == large);
    CHECK(pool.at(empty).empty());
    const std::string_view before = pool.at(17);
    const StringPool moved = std::move(pool);
    CHECK(moved.at(17).data() == before.data());
}
