#include "tests/support/catch.h"

#include "core/base/string_pool.h"
#include "core/base/text.h"
#include "tests/support/random_history.h"

#include <array>
#include <string>
#include <vector>

using namespace peelpack::base;

namespace {

/// UTF-8 as RFC 3629 section 3 lays the bits out, without asking whether the number is a character.
std::string laidOut(std::uint32_t number, unsigned bytes)
{
    const auto continuation = [&](unsigned shift) { return static_cast<char>(0x80U | ((number >> shift) & 0x3FU)); };
    switch (bytes) {
    case 1:
        return {static_cast<char>(number)};
    case 2:
        return {static_cast<char>(0xC0U | number >> 6U), continuation(0)};
    case 3:
        return {static_cast<char>(0xE0U | number >> 12U), continuation(6), continuation(0)};
    default:
        return {static_cast<char>(0xF0U | number >> 18U), continuation(12), continuation(6), continuation(0)};
    }
}

} // namespace

// RFC 3629 sections 3 and 4.
TEST_CASE("Exactly the shortest form of every character is well-formed UTF-8", "[text]")
{
    constexpr std::array<std::uint32_t, 4> ends{0x80, 0x800, 0x10000, 0x200000}; // what so many bytes can hold
    for (unsigned bytes = 1; bytes <= 4; ++bytes) {
        for (std::uint32_t number = 0; number < ends[bytes - 1]; ++number) {
            const bool shortest = bytes == 1 || number >= ends[bytes - 2];
            const bool character = number <= 0x10FFFF && (number < 0xD800 || number > 0xDFFF);
            const std::size_t expected = shortest && character ? std::string_view::npos : 1;
            const std::string text = 'a' + laidOut(number, bytes) + 'z';
            if (firstInvalidUtf8(text) != expected) {
                FAIL(number << " in " << bytes << " bytes");
            }
        }
    }
}

TEST_CASE("A character that is cut short or broken is found where it begins", "[text]")
{
    for (const std::uint32_t number : {0x80U, 0x7FFU, 0x800U, 0xD7FFU, 0xE000U, 0xFFFFU, 0x10000U, 0x10FFFFU}) {
        const unsigned bytes = number < 0x800 ? 2 : number < 0x10000 ? 3 : 4;
        const std::string whole = laidOut(number, bytes);
        CAPTURE(number);
        for (std::size_t length = 1; length < bytes; ++length) {
            const std::string cut = whole.substr(0, length);
            CHECK(firstInvalidUtf8("ab" + cut) == 2);
            CHECK(firstInvalidUtf8("ab" + cut + "cd") == 2);
            CHECK(firstInvalidUtf8("ab" + cut + whole) == 2);
            CHECK(firstInvalidUtf8(whole + cut) == bytes);
        }
        CHECK(firstInvalidUtf8(whole + "\x80") == bytes);
    }
    for (unsigned byte = 0x80; byte <= 0xFF; ++byte) {
        CHECK(firstInvalidUtf8(std::string(1, static_cast<char>(byte))) == 0);
    }
    for (const char lead : {'\xF8', '\xFC', '\xFE', '\xFF'}) { // the five and six bytes of long ago
        CHECK(firstInvalidUtf8(std::string(1, lead) + "\x88\x80\x80\x80\x80") == 0);
    }
}

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
    CHECK(trimmed("").empty());
    CHECK(trimmed("\na\n") == "\na\n");
    CHECK(foldCaseAndSpaces("\xC2\xA0 \r\n\t").empty());
    CHECK(foldCaseAndSpaces("A\r\nB") == "a b");
    CHECK(foldCaseAndSpaces("\xC3\x9F\xC3\xBF\xC3\xB7") == "\xC3\x9F\xC3\xBF\xC3\xB7"); // sharp s, y with dots
    CHECK(foldCaseAndSpaces("\xC2\xB5 \xC5\x81 \xE9\xAB\x8B") == "\xC2\xB5 \xC5\x81 \xE9\xAB\x8B");
    CHECK(foldCaseAndSpaces("3-0 [\\]^_`{|}~@") == "3-0 [\\]^_`{|}~@");
    for (unsigned second = 0x80; second <= 0xBF; ++second) { // U+00C0 to U+00FF
        const bool upper = second <= 0x9E && second != 0x97;
        const std::string text{'\xC3', static_cast<char>(second)};
        CHECK(foldCaseAndSpaces(text) == (upper ? std::string{'\xC3', static_cast<char>(second + 0x20)} : text));
    }
}

TEST_CASE("Folding twice is folding once, and spaces around change nothing", "[text]")
{
    const std::vector<std::string> pieces{"a",        "Z",        " ",        "\t",           "\n",
                                          "\xC2\xA0", "\xC3\x89", "\xC3\xA9", "\xE9\xAB\x8B", "-"};
    peelpack::support::Dice dice(5);
    for (int round = 0; round < 5'000; ++round) {
        std::string text;
        for (std::uint32_t length = dice.below(9); length > 0; --length) {
            text += pieces[dice.below(static_cast<std::uint32_t>(pieces.size()))];
        }
        const std::string folded = foldCaseAndSpaces(text);
        CAPTURE(text, folded);
        REQUIRE(foldCaseAndSpaces(folded) == folded);
        REQUIRE(foldCaseAndSpaces("\xC2\xA0 " + text + "\t") == folded);
        REQUIRE(folded.find("  ") == std::string::npos);
        REQUIRE(firstInvalidUtf8(folded) == std::string::npos);
    }
}

TEST_CASE("Splitting and listing", "[text]")
{
    using Items = std::vector<std::string>;
    CHECK(split("a|b||", '|') == std::vector<std::string_view>{"a", "b", "", ""});
    CHECK(split("", '|') == std::vector<std::string_view>{""});
    CHECK(split("|", '|') == std::vector<std::string_view>{"", ""});
    CHECK(listed(Items{"a"}, "and") == "a");
    CHECK(listed(Items{"a", "b"}, "or") == "a or b");
    CHECK(listed(Items{"a", "b", "c"}, "and") == "a, b and c");
    CHECK(listed(Items{}, "and").empty());
    CHECK(counted(1, "case", "cases") == "1 case");
    CHECK(counted(0, "case", "cases") == "0 cases");
    CHECK(counted(2, "case", "cases") == "2 cases");
}

TEST_CASE("A string pool numbers texts in the order of arrival and keeps them", "[text]")
{
    StringPool pool;
    CHECK(pool.size() == 0);
    CHECK(pool.intern("text 0") == 0);
    const std::string_view first = pool.at(0);
    for (int round = 0; round < 2; ++round) {
        for (std::uint32_t i = 0; i < 50'000; ++i) {
            REQUIRE(pool.intern("text " + std::to_string(i)) == i);
        }
    }
    const std::string large(1'000'000, 'x');
    const std::uint32_t number = pool.intern(large);
    const std::uint32_t empty = pool.intern("");
    CHECK(pool.size() == 50'002);
    CHECK(pool.intern(large) == number);
    CHECK(pool.intern("") == empty);
    CHECK(pool.intern(std::string_view("a\0b", 3)) != pool.intern(std::string_view("a\0c", 3))); // a NUL ends nothing
    for (std::uint32_t i = 0; i < 50'000; ++i) {
        REQUIRE(pool.at(i) == "text " + std::to_string(i));
    }
    CHECK(pool.at(0).data() == first.data()); // a view stays good while the pool grows
    CHECK(pool.at(number) == large);
    CHECK(pool.at(empty).empty());
    const std::string_view before = pool.at(17);
    const StringPool moved = std::move(pool);
    CHECK(moved.at(17).data() == before.data());
}
