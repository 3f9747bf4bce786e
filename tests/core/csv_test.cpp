#include "tests/support/catch.h"

#include "core/sheet/csv.h"
#include "tests/support/files.h"
#include "tests/support/random_history.h"

#include <nlohmann/json.hpp>

#include <map>
#include <string>
#include <vector>

using namespace peelpack;
using nlohmann::json;
using Rows = std::vector<std::vector<std::string>>;

namespace {

struct Read {
    Rows rows;
    std::vector<std::size_t> lines;
    std::optional<sheet::CsvReader::Fault> fault;
};

Read readInPieces(std::string_view text, std::size_t piece, sheet::CsvReader::Limits limits = {})
{
    Read read;
    sheet::CsvReader reader(
        [&](std::size_t line, std::span<const std::string_view> fields) {
            read.lines.push_back(line);
            read.rows.emplace_back(fields.begin(), fields.end());
        },
        limits);
    for (std::size_t at = 0; at < text.size(); at += piece) {
        static_cast<void>(reader.feed(text.substr(at, piece)));
    }
    read.fault = reader.finish();
    return read;
}

std::string fromBase64(std::string_view text)
{
    constexpr std::string_view alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    std::string bytes;
    std::uint32_t bits = 0;
    int count = 0;
    for (const char c : text) {
        if (const std::size_t value = alphabet.find(c); value != std::string_view::npos) {
            bits = bits << 6U | static_cast<std::uint32_t>(value);
            count += 6;
            if (count >= 8) {
                count -= 8;
                bytes += static_cast<char>(bits >> static_cast<unsigned>(count) & 0xFFU);
            }
        }
    }
    return bytes;
}

json vectors(const std::string& file)
{
    return json::parse(support::projectFile("fixtures/vectors/" + file));
}

} // namespace

// RFC 4180 section 2; cases of our own in csv_rfc4180_own.json.
TEST_CASE("RFC 4180 is read as it stands, in pieces of any size", "[csv]")
{
    const json cases = vectors("csv_rfc4180_own.json");
    REQUIRE(cases["valid"].size() >= 14);
    REQUIRE(cases["malformed_under_rfc4180"].size() >= 3);
    for (const json& one : cases["valid"]) {
        for (const std::size_t piece : {1U, 2U, 3U, 7U, 4096U}) {
            CAPTURE(one["name"].get<std::string>(), piece);
            const Read read = readInPieces(one["csv"].get<std::string>(), piece);
            CHECK_FALSE(read.fault.has_value());
            CHECK(read.rows == one["rows"].get<Rows>());
        }
    }
    for (const json& one : cases["malformed_under_rfc4180"]) {
        for (const std::size_t piece : {1U, 2U, 3U, 4096U}) {
            CAPTURE(one["name"].get<std::string>(), piece);
            const Read read = readInPieces(one["csv"].get<std::string>(), piece);
            REQUIRE(read.fault.has_value());
            CHECK(read.fault->line == 1);
            CHECK_FALSE(read.fault->mend.empty());
        }
    }
}

// csv-spectrum (max-mapper, BSD-2-Clause): rows as objects by the header.
TEST_CASE("csv-spectrum is read, in pieces of any size", "[csv]")
{
    const json spectrum = vectors("csv_spectrum.json");
    REQUIRE(spectrum.size() == 11);
    for (const json& one : spectrum) {
        const std::string text = fromBase64(one["csv_base64"].get<std::string>());
        const json& expected = one["json"];
        for (const std::size_t piece : {1U, 2U, 3U, 4096U}) {
            const Read got = readInPieces(text, piece);
            CAPTURE(one["name"].get<std::string>(), piece);
            REQUIRE_FALSE(got.fault.has_value());
            REQUIRE(got.rows.size() == expected.size() + 1);
            for (std::size_t row = 0; row < expected.size(); ++row) {
                REQUIRE(got.rows[row + 1].size() == expected[row].size());
                for (std::size_t column = 0; column < got.rows[0].size(); ++column) {
                    CHECK(got.rows[row + 1][column] == expected[row].at(got.rows[0][column]).get<std::string>());
                }
            }
        }
    }
}

TEST_CASE("What is no CSV is refused with line and field, and the rows before it are given", "[csv]")
{
    struct Bad {
        std::string text;
        std::size_t line;
        std::size_t field;
        std::size_t rowsBefore;
        std::string reason;
    };
    using namespace std::string_literals;
    const std::vector<Bad> bad{
        {"a,b\nc,\0d\n"s, 2, 2, 1, "NUL"},
        {"a,b\n\"c\0d\"\n"s, 2, 1, 1, "NUL"},
        {"\0"s, 1, 1, 0, "NUL"},
        {"a\0,\0b\0\n\0"s, 1, 1, 0, "NUL"}, // UTF-16 without a byte-order mark
        {"a\nb\rc\n", 2, 1, 1, "carriage return"},
        {"a\r", 1, 1, 0, "carriage return"},
        {"a,b\r\r\n", 1, 2, 0, "carriage return"},
        {"a\rb\rc\r", 1, 1, 0, "carriage return"}, // line ends of long ago
        {"\"a\"\rb\n", 1, 1, 0, "carriage return"},
        {"\xFF\xFE"
         "a\0,\0"s,
         1, 1, 0, "UTF-16"},
        {"\xFE\xFF\0a\0,"s, 1, 1, 0, "UTF-16"},
        {"\xFF\xFE", 1, 1, 0, "UTF-16"},
        {"a\n\n\"x\ny\xC3\n\"\n", 4, 1, 2, "not UTF-8"},
        {"a,\xED\xA0\x80\n", 1, 2, 0, "not UTF-8"},
        {"a,b\xC3", 1, 2, 0, "not UTF-8"}, // cut in the middle of a character
        {"a\n\"b\nc", 2, 1, 1, "never closed"},
        {"a\n\"", 2, 1, 1, "never closed"},
        {"a\r\nb,\"c\"d\r\n", 2, 2, 1, "after a closing quote"},
        {"a\r\nb,c\"d\"\r\n", 2, 2, 1, "inside a field"},
        {"\"a\" ,b\n", 1, 1, 0, "after a closing quote"},
    };
    for (const Bad& one : bad) {
        for (const std::size_t piece : {1U, 2U, 3U, 4096U}) {
            CAPTURE(one.text, piece);
            const Read read = readInPieces(one.text, piece);
            REQUIRE(read.fault.has_value());
            CHECK(read.fault->reason.find(one.reason) != std::string::npos);
            CHECK(read.fault->line == one.line);
            CHECK(read.fault->field == one.field);
            CHECK_FALSE(read.fault->mend.empty());
            CHECK(read.rows.size() == one.rowsBefore);
        }
    }
}

TEST_CASE("After a fault nothing more is taken", "[csv]")
{
    std::size_t records = 0;
    sheet::CsvReader reader([&](std::size_t, std::span<const std::string_view>) { ++records; });
    REQUIRE_FALSE(reader.feed("a\n").has_value());
    REQUIRE(reader.feed("b\"\nc\n").has_value());
    const std::string reason = reader.feed("d\n\0")->reason;
    CHECK(reason.find("inside a field") != std::string::npos);
    CHECK(reader.finish()->reason == reason);
    CHECK(reader.finish()->line == 2);
    CHECK(records == 1);
}

TEST_CASE("Line ends, blank lines, byte-order marks and the lines of records", "[csv]")
{
    struct Case {
        std::string text;
        Rows rows;
        std::vector<std::size_t> lines;
    };
    const std::vector<Case> cases{
        {"", {}, {}},
        {"\xEF\xBB\xBF", {}, {}},
        {"\n", {{""}}, {1}},
        {"\r\n\r\n", {{""}, {""}}, {1, 2}},
        {"a\n\nb", {{"a"}, {""}, {"b"}}, {1, 2, 3}},
        {"a\r\nb\nc\r\n", {{"a"}, {"b"}, {"c"}}, {1, 2, 3}}, // mixed
        {"\"a\n\r\nb\"\r\nc,\"\rd\"\n", {{"a\n\r\nb"}, {"c", "\rd"}}, {1, 4}},
        {"\"\"", {{""}}, {1}},
        {"\xEF\xBB\xBF\"a\",b", {{"a", "b"}}, {1}},
        {"\xEF\xBB\xBF\xEF\xBB\xBF"
         "a",
         {{"\xEF\xBB\xBF"
           "a"}},
         {1}}, // only the first is dropped
        {"a\n\xEF\xBB\xBF"
         "b",
         {{"a"},
          {"\xEF\xBB\xBF"
           "b"}},
         {1, 2}},
        {"a,", {{"a", ""}}, {1}},
        {",", {{"", ""}}, {1}},
    };
    for (const Case& one : cases) {
        for (const std::size_t piece : {1U, 2U, 3U, 4096U}) {
            CAPTURE(one.text, piece);
            const Read read = readInPieces(one.text, piece);
            CHECK_FALSE(read.fault.has_value());
            CHECK(read.rows == one.rows);
            CHECK(read.lines == one.lines);
        }
    }
}

TEST_CASE("Fields and records are bounded", "[csv]")
{
    const sheet::CsvReader::Limits limits{10, 3};
    const auto reasonOf = [&](const std::string& text, std::size_t piece) {
        const Read read = readInPieces(text, piece, limits);
        return read.fault ? read.fault->reason : std::string();
    };
    for (const std::size_t piece : {1U, 2U, 3U, 4096U}) {
        CAPTURE(piece);
        CHECK(reasonOf("1234567890,b,c\n1234567890,b,c\n", piece).empty());
        CHECK(reasonOf("\"12345678\"\"0\",\"1\n345678\n0\"\n", piece).empty()); // what is kept is counted
        CHECK(reasonOf("12345678901,b,c\n", piece).find("longer than 10 bytes") != std::string::npos);
        CHECK(reasonOf("a,12345678901", piece).find("longer than 10 bytes") != std::string::npos);
        CHECK(reasonOf("\"12345678901\"\n", piece).find("longer than 10 bytes") != std::string::npos);
        CHECK(reasonOf("\"12345678\n0\n\"\n", piece).find("longer than 10 bytes") != std::string::npos);
        CHECK(reasonOf("a,b,c,d\n", piece).find("more than 3 fields") != std::string::npos);
        CHECK(reasonOf("a\n,,,\n", piece).find("more than 3 fields") != std::string::npos);
    }
    // The limits that are there when none are given.
    const std::string longest(std::size_t{64} * 1024, 'x');
    CHECK_FALSE(readInPieces(longest + "," + longest, 5000).fault.has_value());
    CHECK(readInPieces(longest + "x", 5000).fault.has_value());
    CHECK(readInPieces("\"" + longest + "x\"", 1).fault.has_value());
    CHECK(readInPieces(std::string(255, ',') + "\n", 7).rows.front().size() == 256);
    CHECK(readInPieces(std::string(256, ',') + "\n", 7).fault.has_value());
    CHECK(readInPieces(std::string(1'000'000, ','), 4096).fault->line == 1);
}

TEST_CASE("Cells that a spreadsheet would execute are defused, and reading removes exactly that", "[csv]")
{
    const json cases = vectors("csv_rfc4180_own.json");
    REQUIRE(cases["cells_a_spreadsheet_may_execute"].size() >= 8);
    for (const json& cell : cases["cells_a_spreadsheet_may_execute"]) {
        const auto text = cell.get<std::string>();
        CAPTURE(text);
        CHECK(sheet::defused(text) == "'" + text);
        CHECK(sheet::undefused(sheet::defused(text)) == text);
        CHECK(sheet::defused(sheet::defused(text)) == "''" + text);
        CHECK(sheet::undefused(sheet::defused(sheet::defused(text))) == sheet::defused(text));
    }
    for (const char* sign :
         {"=", "+", "-", "@", "\t", "\r", "|", "\xEF\xBC\x9D", "\xEF\xBC\x8B", "\xEF\xBC\x8D", "\xEF\xBC\xA0"}) {
        CAPTURE(sign);
        CHECK(sheet::defused(sign) == "'" + std::string(sign));
        CHECK(sheet::defused("a" + std::string(sign)) == "a" + std::string(sign));
    }
    for (const char* innocent : {"", "3-0 silk", "'tis", "a=b", "'", "''", "O'Neil", "0.5 %",
                                 "\xEF\xBC\x9C"
                                 "1"}) {
        CHECK(sheet::defused(innocent) == innocent);
        CHECK(sheet::undefused(innocent) == innocent);
    }
    CHECK(sheet::undefused("=1") == "=1"); // another program's file is taken as it stands
}

TEST_CASE("Defusing is reversible on random cells and leaves none that a spreadsheet would execute", "[csv]")
{
    const std::vector<std::string> pieces{"'",           "=", "+", "-", "@", "|", "\t", "\r", "a", " ", "\xEF\xBC\x9D",
                                          "\xEF\xBC\xA0"};
    support::Dice dice(1);
    std::map<std::string, std::string> sourceOf;
    for (int i = 0; i < 20'000; ++i) {
        std::string text;
        for (std::uint32_t length = dice.below(6); length > 0; --length) {
            text += pieces[dice.below(static_cast<std::uint32_t>(pieces.size()))];
        }
        const std::string written = sheet::defused(text);
        CAPTURE(text, written);
        REQUIRE(sheet::undefused(written) == text);
        REQUIRE(sourceOf.emplace(written, text).first->second == text); // no two cells are written alike
        REQUIRE(written.find_first_of("=+-@|\t\r") != 0);
        REQUIRE_FALSE(written.starts_with("\xEF\xBC\x9D"));
        REQUIRE_FALSE(written.starts_with("\xEF\xBC\xA0"));
    }
}

TEST_CASE("Any field survives writing and reading", "[csv]")
{
    CHECK(sheet::csvField("a b;c'") == "a b;c'"); // quoted only where it must be
    CHECK(sheet::csvField("a,b") == "\"a,b\"");
    CHECK(sheet::csvField("\"") == "\"\"\"\"");
    CHECK(sheet::csvField("\r") == "\"\r\"");
    CHECK(sheet::csvField("").empty());
    support::Dice dice(2);
    for (int i = 0; i < 3'000; ++i) {
        std::vector<std::string> fields(1 + dice.below(5));
        std::string line;
        for (std::size_t field = 0; field < fields.size(); ++field) {
            for (std::uint32_t length = dice.below(8); length > 0; --length) {
                fields[field] += std::string_view("a,\"\n\r b;'")[dice.below(9)];
            }
            line += (field == 0 ? "" : ",") + sheet::csvField(fields[field]);
        }
        const Read read = readInPieces(line + "\r\n", 1 + dice.below(4));
        CAPTURE(line);
        REQUIRE_FALSE(read.fault.has_value());
        REQUIRE(read.rows == Rows{fields});
    }
}
