#include "tests/support/catch.h"

#include "core/sheet/csv.h"
#include "tests/support/files.h"
#include "tests/support/random_history.h"

#include <nlohmann/json.hpp>

#include <string>
#include <vector>

using namespace peelpack;
using nlohmann::json;
using Rows = std::vector<std::vector<std::string>>;

namespace {

struct Read {
    Rows rows;
    std::optional<sheet::CsvReader::Fault> fault;
};

Read readInPieces(std::string_view text, std::size_t piece, sheet::CsvReader::Limits limits = {})
{
    Read read;
    sheet::CsvReader reader(
        [&](std::size_t, std::span<const std::string_view> fields) {
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
TEST_CASE("csv-spectrum is read", "[csv]")
{
    const json spectrum = vectors("csv_spectrum.json");
    std::size_t read = 0;
    for (const json& one : spectrum) {
        const std::string text = fromBase64(one["csv_base64"].get<std::string>());
        const Read got = readInPieces(text, 3);
        CAPTURE(text);
        REQUIRE_FALSE(got.fault.has_value());
        const json& expected = one["json"];
        REQUIRE(got.rows.size() == expected.size() + 1);
        for (std::size_t row = 0; row < expected.size(); ++row) {
            for (std::size_t column = 0; column < got.rows[0].size(); ++column) {
                CHECK(got.rows[row + 1].at(column) == expected[row].at(got.rows[0][column]).get<std::string>());
            }
        }
        ++read;
    }
    CHECK(read == 11);
}

TEST_CASE("What is no CSV is refused with the line", "[csv]")
{
    struct Bad {
        std::string text;
        std::size_t line;
        std::string reason;
    };
    const std::vector<Bad> bad{
        {std::string("a,b\nc,") + '\0' + "d\n", 2, "NUL"},
        {"a\nb\rc\n", 2, "carriage return"},
        {"a\r", 1, "carriage return"},
        {"\xFF\xFE"
         "a,",
         1, "UTF-16"},
        {"a\n\n\"x\ny\xC3\n\"\n", 4, "not UTF-8"},
        {"a\n\"b\nc", 3, "never closed"},
    };
    for (const Bad& one : bad) {
        for (const std::size_t piece : {1U, 2U, 4096U}) {
            CAPTURE(one.text, piece);
            const Read read = readInPieces(one.text, piece);
            REQUIRE(read.fault.has_value());
            CHECK(read.fault->reason.find(one.reason) != std::string::npos);
            CHECK(read.fault->line <= one.line);
            CHECK(read.fault->line + 1 >= one.line);
        }
    }
}

TEST_CASE("Fields and records are bounded", "[csv]")
{
    const sheet::CsvReader::Limits limits{10, 3};
    CHECK_FALSE(readInPieces("1234567890,b,c\n", 5, limits).fault.has_value());
    CHECK(readInPieces("12345678901,b,c\n", 5, limits).fault.has_value());
    CHECK(readInPieces("\"12345678901\"\n", 1, limits).fault.has_value());
    CHECK(readInPieces("a,b,c,d\n", 5, limits).fault.has_value());
}

TEST_CASE("Cells that a spreadsheet would execute are defused, and reading removes exactly that", "[csv]")
{
    const json cases = vectors("csv_rfc4180_own.json");
    for (const json& cell : cases["cells_a_spreadsheet_may_execute"]) {
        const auto text = cell.get<std::string>();
        CAPTURE(text);
        CHECK(sheet::defused(text) == "'" + text);
        CHECK(sheet::undefused(sheet::defused(text)) == text);
    }
    for (const char* innocent : {"", "3-0 silk", "'tis", "a=b", "'", "''", "O'Neil", "0.5 %"}) {
        CHECK(sheet::defused(innocent) == innocent);
        CHECK(sheet::undefused(innocent) == innocent);
    }
    support::Dice dice(1);
    for (int i = 0; i < 20'000; ++i) {
        std::string text;
        for (std::uint32_t length = dice.below(6); length > 0; --length) {
            text += std::string_view("'='+-@|a\t\r")[dice.below(10)];
        }
        CAPTURE(text);
        REQUIRE(sheet::undefused(sheet::defused(text)) == text);
    }
}

TEST_CASE("Any field survives writing and reading", "[csv]")
{
    support::Dice dice(2);
    for (int i = 0; i < 3'000; ++i) {
        std::vector<std::string> fields(1 + dice.below(5));
        std::string line;
        for (std::string& field : fields) {
            for (std::uint32_t length = dice.below(8); length > 0; --length) {
                field += std::string_view("a,\"\n\r b;'")[dice.below(9)];
            }
            line += (line.empty() ? "" : ",") + sheet::csvField(field);
        }
        if (line.empty() && fields.size() == 1) {
            continue;
        }
        line.clear();
        for (std::size_t field = 0; field < fields.size(); ++field) {
            line += (field == 0 ? "" : ",") + sheet::csvField(fields[field]);
        }
        const Read read = readInPieces(line + "\r\n", 1 + dice.below(4));
        CAPTURE(line);
        REQUIRE_FALSE(read.fault.has_value());
        REQUIRE(read.rows.size() == 1);
        CHECK(read.rows[0] == fields);
    }
}
