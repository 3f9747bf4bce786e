#include "tests/support/catch.h"

#include "core/base/text.h"
#include "core/sheet/row_writer.h"
#include "core/sheet/sheet_reader.h"
#include "platform/files/resources.h"
#include "platform/files/text_file.h"
#include "tests/support/random_history.h"

#include <algorithm>
#include <string>

using namespace peelpack;
using sheet::CaseRow;
using sheet::SheetReader;

namespace {

const std::string header =
    "sheet,date,student,procedure,categories,verify,setup,counts,pass,technique,sponge,suction,cut,retract,"
    "camera,operation,one_pathology,canceled,attested,initialed,imported,role\n";
const std::string good = "s1,2026-03-12,Ines,Thing,eye,Y,Y,Y,Y,Y,Y,N,NA,,Y,,,,card,2026-03-14,,\n";

const catalogue::Catalogue& shippedCatalogue()
{
    static const catalogue::Catalogue catalogue = files::shippedCatalogue().value();
    return catalogue;
}

base::Result<SheetReader::Reading> read(std::string_view text, std::size_t piece = 1U << 20U)
{
    SheetReader reader(shippedCatalogue(), files::normalized);
    for (std::size_t at = 0; at < text.size() && reader.feed(text.substr(at, piece)); at += piece) {
    }
    return reader.finish();
}

std::string changed(std::string row, const std::string& from, const std::string& to)
{
    const std::size_t at = row.find(from);
    REQUIRE(at != std::string::npos);
    return row.replace(at, from.size(), to);
}

void isRefused(const std::string& row, std::size_t line, const std::string& column, std::size_t sheetsLeft)
{
    const base::Result<SheetReader::Reading> reading = read(header + good + row);
    CAPTURE(row);
    REQUIRE(reading.ok());
    REQUIRE(reading.value().report.refused.size() == 1);
    const sheet::Finding& finding = reading.value().report.refused.front();
    CHECK(finding.line == line);
    CHECK(finding.column == column);
    CHECK_FALSE(finding.reason.empty());
    CHECK_FALSE(finding.mend.empty());
    CHECK(reading.value().book.sheetCount() == sheetsLeft);
}

std::string pick(support::Dice& dice, std::uint32_t most)
{
    std::string text;
    for (std::uint32_t length = dice.below(most); length > 0; --length) {
        text += std::string_view("ab ,\"=+-@|'\n;\xC3\xA9")[dice.below(13)];
    }
    // A cell is kept without spaces around it, and a cut character is no UTF-8.
    std::string out(base::trimmed(text));
    return base::firstInvalidUtf8(out) == std::string::npos ? out : "plain";
}

} // namespace

TEST_CASE("Every bad cell refuses its row with line, column and mend", "[rows]")
{
    const std::string row = changed(good, "s1", "s2");
    isRefused(changed(row, "s2", ""), 3, "sheet", 1);
    isRefused(changed(row, "Ines", ""), 3, "student", 1);
    isRefused(changed(row, "2026-03-12", "02/30/2026"), 3, "date", 1);
    isRefused(changed(row, "2026-03-12", "2026-02-30"), 3, "date", 1);
    isRefused(changed(row, "2026-03-12", ""), 3, "date", 1);
    isRefused(changed(row, "Thing", ""), 3, "procedure", 1);
    isRefused(changed(row, "eye", "foot"), 3, "categories", 1);
    isRefused(changed(row, "eye", "eye|eye"), 3, "categories", 1);
    isRefused(changed(row, "eye", "eye|labor-delivery"), 3, "categories", 1);
    isRefused(changed(row, "eye,", ","), 3, "procedure", 1); // not in the catalogue
    isRefused(changed(row, "Y,Y,Y,Y,Y,Y", "Y,Y,yes,Y,Y,Y"), 3, "counts", 1);
    isRefused(changed(row, ",,,card", ",,X,card"), 3, "canceled", 1);
    isRefused(changed(row, "card", "stamp"), 3, "attested", 1);
    isRefused(changed(row, "2026-03-14", "soon"), 3, "initialed", 1);
    isRefused(changed(row, "2026-03-14,,", "2026-03-14,X,"), 3, "imported", 1);
    isRefused(changed(row, "2026-03-14,,", "2026-03-14,,first"), 3, "role", 1);
    isRefused(changed(row, "2026-03-14,,", "2026-03-14,Y,first"), 3, "imported", 1); // it carries marks
    isRefused("s2,2026-03-12,Ines,Thing,eye,,,,,,,,,,,,,,,,Y,\n", 3, "role", 1);
    isRefused("s2,2026-03-12,Ines,Thing,eye\n", 3, "", 1);
}

TEST_CASE("Unequal rows and a bad joined row refuse the whole sheet", "[rows]")
{
    isRefused(changed(good, "Y,Y,Y,Y,Y,Y", "Y,Y,N,Y,Y,Y"), 3, "counts", 0);
    isRefused(changed(good, "2026-03-12", "2026-03-13"), 3, "date", 0);
    isRefused(changed(good, "card", "paper"), 3, "attested", 0);
    isRefused(changed(good, "2026-03-14", "2026-03-15"), 3, "initialed", 0);
    isRefused(changed(good, ",,,card", ",,Y,card"), 3, "canceled", 0);
    isRefused(changed(changed(good, "eye", "foot"), ",,,card", ",1,,card"), 3, "categories", 0);
    isRefused(changed(good, ",,,card", ",one,,card"), 3, "one_pathology", 0);
    isRefused(changed(good, "eye", "foot"), 3, "categories", 1); // not joined: only the row
}

TEST_CASE("The header may be in any order and says what is missing", "[rows]")
{
    CHECK(read(header).value().book.students().empty());
    const base::Result<SheetReader::Reading> turned = read(
        "\xEF\xBB\xBFstudent,sheet,camera,date,procedure,verify,setup,counts,pass,technique,sponge,suction,cut,retract,"
        "categories,extra\r\nInes,s1,Y,2026-03-12,Thing,Y,Y,Y,Y,Y,N,N,N,N,eye,?\r\n\r\n");
    REQUIRE(turned.ok());
    CHECK(turned.value().book.sheetCount() == 1);
    REQUIRE(turned.value().report.warnings.size() == 1); // an unknown column is not read, and said
    CHECK(turned.value().report.warnings[0].column == "extra");

    const auto sentence = [](std::string_view text) {
        const base::Result<SheetReader::Reading> reading = read(text);
        REQUIRE_FALSE(reading.ok());
        return reading.error().sentence;
    };
    CHECK(sentence("").find("empty") != std::string::npos);
    CHECK(sentence("sheet;date;student\n").find("semicolons") != std::string::npos);
    CHECK(sentence("sheet\tdate\n").find("tabs") != std::string::npos);
    CHECK(sentence("sheet,date,student,procedure\n").find("verify") != std::string::npos);
    CHECK(sentence("sheet,sheet,date\n").find("twice") != std::string::npos);
    CHECK(sentence(header + "s1,\"open\n").find("never closed") != std::string::npos);
    CHECK(sentence(good).find("lacks") != std::string::npos);
    // A paper log without marks needs no mark columns.
    CHECK(read("sheet,date,student,procedure,categories,imported,role\ns1,2026-03-12,Ines,Thing,eye,Y,first\n")
              .value()
              .book.sheetCount() == 1);
}

TEST_CASE("An empty category cell takes the catalogue's, never fuzzily", "[rows]")
{
    const auto rows = [](const std::string& procedure) {
        return read(header + changed(good, "Thing,eye", procedure + ","));
    };
    const base::Result<SheetReader::Reading> named = rows("laparoscopic  CHOLECYSTECTOMY");
    REQUIRE(named.value().book.sheetCount() == 1);
    const sheet::SheetBook& book = named.value().book;
    const sheet::BookRow& row = book.rowsOf(book.sheetsOf(book.students()[0])[0])[0];
    CHECK(row.categories.front() == catalogue::Category::General);
    CHECK(rows("cholecystectomy-laparoscopic").value().book.sheetCount() == 1);
    CHECK(rows("laparoscopic cholecystectmy").value().book.sheetCount() == 0);

    const base::Result<catalogue::Catalogue> twice =
        catalogue::Catalogue::fromTsv("id\tname\tsynonyms\tshorthand\tcategories\tflags\tsources\n"
                                      "one\tFirst\tshared\t\teye\t\t\ntwo\tSecond\tshared\t\tgeneral\t\t\n");
    SheetReader reader(twice.value());
    reader.feed(header + changed(good, "Thing,eye", "Shared,"));
    const base::Result<SheetReader::Reading> ambiguous = reader.finish();
    REQUIRE(ambiguous.value().report.refused.size() == 1);
    CHECK(ambiguous.value().report.refused[0].reason.find("one and two") != std::string::npos);
}

TEST_CASE("A row reads back as it was written", "[rows]")
{
    support::Dice dice(11);
    for (int round = 0; round < 2'000; ++round) {
        CaseRow row;
        row.sheet = "s" + std::to_string(round);
        row.student = "x" + pick(dice, 8);
        row.procedure = "p" + pick(dice, 12);
        row.date = base::Date::fromDays(static_cast<std::int32_t>(dice.below(60'000)));
        row.categories.add(catalogue::categoryAt(dice.below(12)));
        row.categories.add(catalogue::categoryAt(dice.below(12)));
        row.operation = pick(dice, 4);
        row.surgeon = pick(dice, 8);
        row.site = pick(dice, 8);
        row.room = pick(dice, 8);
        row.preceptor = pick(dice, 8);
        row.credential = pick(dice, 4);
        row.feedback = pick(dice, 40);
        row.start = dice.chance(50) ? "07:30" : "";
        row.canceled = dice.chance(10);
        row.attested = static_cast<sheet::Strength>(dice.below(6));
        if (dice.chance(50)) {
            row.onePathology = dice.below(5);
            row.initialed = base::Date::fromDays(20'000);
        }
        if (dice.chance(20)) {
            row.importedRole = static_cast<sheet::Role>(dice.below(3));
        } else {
            for (const sheet::Skill skill : sheet::allSkills) {
                row.marks.set(skill, static_cast<sheet::Mark>(dice.below(4)));
            }
        }
        sheet::RowParser parser;
        CaseRow got;
        std::optional<sheet::Finding> finding;
        std::size_t records = 0;
        sheet::CsvReader reader([&](std::size_t line, std::span<const std::string_view> fields) {
            finding = ++records == 1 ? parser.readHeader(line, fields) : parser.readRow(line, fields, got);
        });
        const std::string text = sheet::headerLine() + sheet::rowLine(row);
        CAPTURE(text);
        REQUIRE_FALSE(reader.feed(text).has_value());
        REQUIRE_FALSE(reader.finish().has_value());
        REQUIRE_FALSE(finding.has_value());
        REQUIRE(got == row);
    }
}

TEST_CASE("The book is the same in whatever order the sheets come", "[rows]")
{
    std::vector<std::string> sheets;
    for (int i = 0; i < 60; ++i) {
        std::string row = changed(good, "s1", "s" + std::to_string(i));
        row = changed(row, "Ines", i % 3 == 0 ? "Tomas" : "Ines");
        sheets.push_back(row + changed(row, "Thing", "Second thing"));
    }
    const auto listing = [](const std::vector<std::string>& parts) {
        std::string text = header;
        for (const std::string& part : parts) {
            text += part;
        }
        const base::Result<SheetReader::Reading> reading = read(text, 100);
        std::string out;
        const sheet::SheetBook& book = reading.value().book;
        for (const sheet::BookStudent& student : book.students()) {
            for (const sheet::BookSheet& one : book.sheetsOf(student)) {
                for (const sheet::BookRow& row : book.rowsOf(one)) {
                    out += std::string(student.name) + " " + std::string(one.id) + " " + std::to_string(row.number) +
                           " " + std::string(book.procedure(row)) + "\n";
                }
            }
        }
        return out;
    };
    const std::string before = listing(sheets);
    CHECK(std::count(before.begin(), before.end(), '\n') == 120);
    support::Dice dice(3);
    for (int round = 0; round < 20; ++round) {
        for (std::size_t i = sheets.size() - 1; i > 0; --i) {
            std::swap(sheets[i], sheets[dice.below(static_cast<std::uint32_t>(i + 1))]);
        }
        REQUIRE(listing(sheets) == before);
    }
}

TEST_CASE("A hundred thousand rows stream", "[rows]")
{
    SheetReader reader(shippedCatalogue());
    reader.feed(header);
    for (int i = 0; i < 100'000; ++i) {
        std::string row = good;
        row.replace(0, 2, "s" + std::to_string(i));
        REQUIRE(reader.feed(row));
    }
    CHECK(reader.rowsSeen() == 100'000);
    CHECK(reader.finish().value().book.sheetCount() == 100'000);
}

TEST_CASE("Identifiers in free text are warned of with the place", "[rows]")
{
    const base::Result<SheetReader::Reading> reading = read(header + changed(good, "Thing", "Thing MRN 445566"));
    REQUIRE(reading.value().report.warnings.size() == 1);
    const sheet::Finding& warning = reading.value().report.warnings[0];
    CHECK(warning.line == 2);
    CHECK(warning.column == "procedure");
    CHECK(warning.reason.find("character 7") != std::string::npos);
    CHECK(reading.value().report.refused.empty());
}
