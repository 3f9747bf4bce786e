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
    static const std::vector<std::string> pieces{"a",
                                                 "b",
                                                 " ",
                                                 ",",
                                                 "\"",
                                                 "=",
                                                 "+",
                                                 "-",
                                                 "@",
                                                 "|",
                                                 "'",
                                                 "\n",
                                                 "\r\n",
                                                 "\r",
                                                 "\t",
                                                 ";",
                                                 "Y",
                                                 "NA",
                                                 "\xC3\xA9",
                                                 "\xC2\xA0",
                                                 "\xEF\xBC\x9D",
                                                 "0",
                                                 "''",
                                                 "\"\"",
                                                 "\xE9\xAB\x8B",
                                                 "\xEF\xBB\xBF"};
    std::string text;
    for (std::uint32_t length = dice.below(most); length > 0; --length) {
        text += pieces[dice.below(static_cast<std::uint32_t>(pieces.size()))];
    }
    return std::string(base::trimmed(text)); // a cell is kept without spaces around it
}

/// A row with everything in it that a row can carry, as nasty as can be.
CaseRow randomRow(support::Dice& dice, int number)
{
    CaseRow row;
    row.sheet = "s" + std::to_string(number);
    row.student = dice.chance(50) ? "=" + pick(dice, 8) + "x" : "'" + pick(dice, 8) + "x";
    row.procedure = dice.chance(50) ? "p" + pick(dice, 12) + "." : "-" + pick(dice, 12) + "p";
    row.date = base::Date::fromDays(static_cast<std::int32_t>(dice.below(109'573)) - 25'567);
    if (dice.chance(80)) {
        row.categories.add(catalogue::categoryAt(dice.below(12)));
        row.categories.add(catalogue::categoryAt(dice.below(12)));
        row.categories.add(catalogue::categoryAt(dice.below(12)));
    } else if (dice.chance(50)) {
        row.categories.add(catalogue::categoryAt(12 + dice.below(2)));
    }
    row.operation = pick(dice, 4);
    row.surgeon = pick(dice, 8);
    row.site = pick(dice, 8);
    row.room = pick(dice, 8);
    row.preceptor = pick(dice, 8);
    row.credential = pick(dice, 4);
    row.feedback = pick(dice, 40);
    row.start = dice.chance(50) ? "07:30" : pick(dice, 3);
    row.end = dice.chance(50) ? "23:59" : pick(dice, 3);
    row.canceled = dice.chance(10);
    row.attested = static_cast<sheet::Strength>(dice.below(6));
    if (dice.chance(50)) {
        row.onePathology = dice.chance(10) ? UINT32_MAX : dice.below(5);
        row.initialed = base::Date::fromDays(20'000);
    }
    if (dice.chance(20)) {
        row.importedRole = static_cast<sheet::Role>(dice.below(3));
    } else {
        for (const sheet::Skill skill : sheet::allSkills) {
            row.marks.set(skill, static_cast<sheet::Mark>(dice.below(4)));
        }
    }
    return row;
}

/// What the book holds, all of it, as text.
std::string listingOf(const sheet::SheetBook& book)
{
    std::string out;
    for (const sheet::BookStudent& student : book.students()) {
        for (const sheet::BookSheet& one : book.sheetsOf(student)) {
            out += std::string(student.name) + " " + std::string(one.id) + " " + one.date.iso() + " ";
            for (const sheet::Skill skill : sheet::allSkills) {
                out += std::string(sheet::cell(one.marks.of(skill))) + ".";
            }
            out += " " + std::string(sheet::id(one.attested)) + (one.canceled ? " canceled" : "");
            for (const sheet::BookRow& row : book.rowsOf(one)) {
                out += " " + std::to_string(row.number) + " " + std::string(book.procedure(row)) + " " +
                       std::string(catalogue::id(row.categories.front()));
            }
            out += "\n";
        }
    }
    return out;
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
    isRefused(changed(row, ",,\n", ",,,\n"), 3, "", 1); // one cell too many
    isRefused(changed(row, "eye", "eye|"), 3, "categories", 1);
    isRefused(changed(row, "eye", "diagnostic-endoscopy|general"), 3, "categories", 1);
    isRefused(changed(row, "eye", "Eye"), 3, "categories", 1);
    isRefused(changed(row, "2026-03-14,,", "2026-02-30,,"), 3, "initialed", 1);
    isRefused("s2,2026-03-12,Ines,Thing,eye,,,,,,,,,,,,,,,,Y,third\n", 3, "role", 1);
    for (const char* number : {"-1", "1.5", "4294967296", "1x", "+1"}) {
        isRefused(changed(row, ",,,card", "," + std::string(number) + ",,card"), 3, "one_pathology", 1);
    }
    isRefused("\n\n" + row.substr(0, 3) + "2026-13-01" + row.substr(13), 5, "date", 1); // blank lines are lines
    const std::string tall = changed(changed(good, "s1", "s3"), "Thing", "\"Thing\nin two lines\"");
    isRefused(tall + changed(row, "eye", "foot"), 5, "categories", 2);
}

TEST_CASE("Every mark column refuses what is no mark", "[rows]")
{
    for (std::size_t i = 0; i < sheet::skillCount; ++i) {
        for (const char* text : {"y", "Yes", "n/a", "N/A", "1", "X", "-", "na"}) {
            std::string row = "s2,2026-03-12,Ines,Thing,eye";
            for (std::size_t j = 0; j < sheet::skillCount; ++j) {
                row += j == i ? "," + std::string(text) : ",Y";
            }
            isRefused(row + ",,,,,,,\n", 3, std::string(sheet::column(sheet::allSkills[i])), 1);
        }
    }
}

TEST_CASE("Every refusal of a cell stands, whatever cell of the row is bad as well", "[rows]")
{
    const std::string worst = "s2,soon,Ines,,foot,maybe,Y,Y,Y,Y,Y,N,NA,,Y,,,X,stamp,soon,X,third\n";
    isRefused(worst, 3, "date", 1); // one finding for a row: the first bad cell
    const base::Result<SheetReader::Reading> reading = read(header + worst + good + worst);
    REQUIRE(reading.value().report.refused.size() == 2);
    CHECK(reading.value().report.refused[0].line == 2);
    CHECK(reading.value().report.refused[1].line == 4);
    CHECK(reading.value().report.rows == 3);
    CHECK(reading.value().book.sheetCount() == 1);
}

TEST_CASE("A file with far too many bad rows is refused as a whole", "[rows]")
{
    SheetReader reader(shippedCatalogue());
    REQUIRE(reader.feed(header));
    const std::string bad = changed(good, "2026-03-12", "soon");
    for (std::size_t i = 0; i < SheetReader::mostRefusals; ++i) {
        REQUIRE(reader.feed(bad));
    }
    CHECK_FALSE(reader.feed(bad));
    const base::Result<SheetReader::Reading> reading = reader.finish();
    REQUIRE_FALSE(reading.ok());
    CHECK(reading.error().sentence.find("100000") != std::string::npos);
    CHECK(reading.error().sentence.ends_with("."));
}

TEST_CASE("Unequal rows and a bad joined row refuse the whole sheet", "[rows]")
{
    const std::string marks = "Y,Y,Y,Y,Y,Y,N,NA,,Y";
    for (std::size_t i = 0; i < sheet::skillCount; ++i) {
        std::string other;
        for (std::size_t j = 0; j < sheet::skillCount; ++j) {
            const std::string_view was = base::split(marks, ',')[j];
            other += (j == 0 ? "" : ",") + std::string(j != i ? was : was == "N" ? "Y" : "N");
        }
        isRefused(changed(good, marks, other), 3, std::string(sheet::column(sheet::allSkills[i])), 0);
    }
    isRefused("s1,2026-03-12,Ines,Thing,eye,,,,,,,,,,,,,,card,2026-03-14,Y,first\n", 3, "verify", 0);
    isRefused(changed(good, "Y,Y,Y,Y,Y,Y", "Y,Y,N,Y,Y,Y"), 3, "counts", 0);
    isRefused(changed(good, "2026-03-12", "2026-03-13"), 3, "date", 0);
    isRefused(changed(good, "card", "paper"), 3, "attested", 0);
    isRefused(changed(good, "2026-03-14", "2026-03-15"), 3, "initialed", 0);
    isRefused(changed(good, ",,,card", ",,Y,card"), 3, "canceled", 0);
    isRefused(changed(changed(good, "eye", "foot"), ",,,card", ",1,,card"), 3, "categories", 0);
    isRefused(changed(good, ",,,card", ",one,,card"), 3, "one_pathology", 0);
    isRefused(changed(good, "eye", "foot"), 3, "categories", 1); // not joined: only the row
    isRefused(changed(changed(good, "Thing,eye", "Thing,"), ",,,card", ",1,,card"), 3, "procedure", 0);

    // The others are counted, and the same id of another student is another sheet.
    const std::string unequal = changed(good, "2026-03-12", "2026-03-13");
    const std::string others = changed(good, "Ines", "Tomas") + changed(good, "s1", "s2");
    for (const std::string& text : {good + unequal + others, others + unequal + good, unequal + others + good + good}) {
        const base::Result<SheetReader::Reading> reading = read(header + text);
        CAPTURE(text);
        REQUIRE(reading.value().report.refused.size() == 1); // said once for the sheet
        CHECK(reading.value().report.refused[0].column == "date");
        CHECK(reading.value().report.refused[0].reason.find("\"s1\" of Ines") != std::string::npos);
        REQUIRE(reading.value().book.students().size() == 2);
        CHECK(reading.value().book.students()[0].name == "Ines");
        CHECK(reading.value().book.sheetsOf(reading.value().book.students()[0])[0].id == "s2");
        CHECK(reading.value().book.students()[1].name == "Tomas");
    }
    // The joined row that is bad may come before the good ones.
    const std::string joined = changed(good, ",,,card", ",1,,card");
    CHECK(read(header + changed(joined, "eye", "foot") + good + others).value().book.sheetCount() == 2);
    CHECK(read(header + joined + joined + others).value().book.sheetCount() == 3);
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
    CHECK(sentence("\xEF\xBB\xBF").find("empty") != std::string::npos);
    CHECK(sentence("\n" + header).find("lacks") != std::string::npos);
    CHECK(sentence(changed(header, ",camera", "")).find("the column camera") != std::string::npos);
    CHECK(sentence(changed(changed(header, ",camera", ""), "date,", "")).find("date and camera") != std::string::npos);
    CHECK(sentence("\xFF\xFEs").find("UTF-16") != std::string::npos);
    CHECK(sentence(header + good + std::string("s2\0", 3)).starts_with("Line 3"));
    for (const std::string_view text : {"", "sheet;date;student\n", "a\rb\n"}) {
        CHECK(sentence(text).starts_with("Line 1"));
        CHECK(sentence(text).ends_with("."));
    }
    CHECK(read(header).value().report.rows == 0);
    CHECK(read(header).value().report.refused.empty());
    CHECK(read(header.substr(0, header.size() - 1)).ok()); // header only, without its line end
    // A paper log without marks needs no mark columns.
    CHECK(read("sheet,date,student,procedure,categories,imported,role\ns1,2026-03-12,Ines,Thing,eye,Y,first\n")
              .value()
              .book.sheetCount() == 1);
}

TEST_CASE("Columns in any order, line ends of either kind and pieces of any size read the same", "[rows]")
{
    const std::vector<std::vector<std::string>> table{
        {"sheet", "date", "student", "procedure", "categories", "verify", "setup", "counts", "pass", "technique",
         "sponge", "suction", "cut", "retract", "camera", "operation", "canceled", "attested"},
        {"s2", "2026-03-12", "Ines", "Thing, the \"first\"", "eye|general", "Y", "N", "NA", "", "Y", "Y", "N", "NA", "",
         "Y", "=o1", "Y", "card"},
        {"s1", "2026-03-13", "Zo\xC3\xAB", "'Thing", "orthopedics", "N", "N", "Y", "Y", "NA", "Y", "", "NA", "", "Y",
         "", "", "paper"}};
    std::vector<std::size_t> order(table[0].size());
    for (std::size_t i = 0; i < order.size(); ++i) {
        order[i] = i;
    }
    std::string expected;
    support::Dice dice(4);
    for (int round = 0; round < 60; ++round) {
        std::string text = round % 3 == 0 ? "\xEF\xBB\xBF" : "";
        for (const std::vector<std::string>& row : table) {
            for (std::size_t i = 0; i < order.size(); ++i) {
                text += (i == 0 ? "" : ",") + sheet::csvField(row[order[i]]);
            }
            text += round % 2 == 0 ? "\r\n" : "\n";
        }
        const base::Result<SheetReader::Reading> reading = read(text, 1 + dice.below(50));
        CAPTURE(text);
        REQUIRE(reading.ok());
        REQUIRE(reading.value().report.refused.empty());
        REQUIRE(reading.value().report.warnings.empty());
        const std::string listing = listingOf(reading.value().book);
        expected = round == 0 ? listing : expected;
        REQUIRE(listing == expected);
        for (std::size_t i = order.size() - 1; i > 0; --i) {
            std::swap(order[i], order[dice.below(static_cast<std::uint32_t>(i + 1))]);
        }
    }
    CHECK(expected == "Ines s2 2026-03-12 Y.N.NA..Y.Y.N.NA..Y. card canceled 1 Thing, the \"first\" eye\n"
                      "Zo\xC3\xAB s1 2026-03-13 N.N.Y.Y.NA.Y..NA..Y. paper 1 'Thing orthopedics\n");
}

TEST_CASE("A row from a paper log carries its role and no marks", "[rows]")
{
    for (const sheet::Role role : {sheet::Role::First, sheet::Role::Second, sheet::Role::Observed}) {
        const base::Result<SheetReader::Reading> reading =
            read(header + "s1,2026-03-12,Ines,Thing,eye,,,,,,,,,,,,,,,,Y," + std::string(sheet::id(role)) + "\n");
        REQUIRE(reading.value().book.sheetCount() == 1);
        const sheet::SheetBook& book = reading.value().book;
        CHECK(book.sheetsOf(book.students()[0])[0].importedRole == role);
        CHECK(book.sheetsOf(book.students()[0])[0].marks.none());
    }
    const base::Result<SheetReader::Reading> marked = read(header + good);
    const sheet::SheetBook& book = marked.value().book;
    CHECK_FALSE(book.sheetsOf(book.students()[0])[0].importedRole.has_value());
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
    const base::Result<SheetReader::Reading> unknown = rows("no such thing");
    REQUIRE(unknown.value().report.refused.size() == 1);
    CHECK(unknown.value().report.refused[0].line == 2);
    CHECK(unknown.value().report.refused[0].column == "procedure");
    CHECK(unknown.value().report.refused[0].reason.find("\"no such thing\"") != std::string::npos);
    CHECK_FALSE(unknown.value().report.refused[0].mend.empty());

    const base::Result<catalogue::Catalogue> twice =
        catalogue::Catalogue::fromTsv("id\tname\tsynonyms\tshorthand\tcategories\tflags\tsources\n"
                                      "one\tFirst\tshared\t\teye\t\t\ntwo\tSecond\tshared\t\tgeneral\t\t\n");
    SheetReader reader(twice.value());
    reader.feed(header + changed(good, "Thing,eye", "Shared,"));
    const base::Result<SheetReader::Reading> ambiguous = reader.finish();
    REQUIRE(ambiguous.value().report.refused.size() == 1);
    CHECK(ambiguous.value().report.refused[0].column == "procedure");
    CHECK(ambiguous.value().report.refused[0].reason.find("one and two") != std::string::npos);
    SheetReader filed(twice.value());
    filed.feed(header + changed(good, "Thing,eye", "Shared,eye")); // with a category any text is good
    CHECK(filed.finish().value().book.sheetCount() == 1);
    SheetReader byId(twice.value());
    byId.feed(header + changed(good, "Thing,eye", "TWO,"));
    const base::Result<SheetReader::Reading> second = byId.finish();
    const sheet::SheetBook& two = second.value().book;
    REQUIRE(two.sheetCount() == 1);
    CHECK(two.rowsOf(two.sheetsOf(two.students()[0])[0])[0].categories.front() == catalogue::Category::General);
}

TEST_CASE("A row reads back as it was written", "[rows]")
{
    support::Dice dice(11);
    for (int round = 0; round < 2'000; ++round) {
        const CaseRow row = randomRow(dice, round);
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
        REQUIRE(records == 2);
        REQUIRE(got == row);
        // No cell is one that a spreadsheet would execute.
        sheet::CsvReader again([&](std::size_t, std::span<const std::string_view> fields) {
            REQUIRE(fields.size() == sheet::columnCount);
            for (const std::string_view field : fields) {
                REQUIRE(field.find_first_of("=+-@|\t\r") != 0);
                REQUIRE_FALSE(field.starts_with("\xEF\xBC\x9D"));
            }
        });
        REQUIRE_FALSE(again.feed(text).has_value());
        REQUIRE_FALSE(again.finish().has_value());
        REQUIRE(sheet::rowLine(got) == sheet::rowLine(row));
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
    sheets.push_back(changed(good, "s1", "refused") + changed(changed(good, "s1", "refused"), "card", "paper"));
    sheets.push_back(changed(changed(good, "s1", "late"), "2026-03-12", "2025-01-01"));
    std::size_t refused = 0;
    const auto listing = [&](const std::vector<std::string>& parts) {
        std::string text = header;
        for (const std::string& part : parts) {
            text += part;
        }
        const base::Result<SheetReader::Reading> reading = read(text, 100);
        refused = reading.value().report.refused.size();
        return listingOf(reading.value().book);
    };
    const std::string before = listing(sheets);
    CHECK(std::count(before.begin(), before.end(), '\n') == 61);
    CHECK(before.starts_with("Ines late 2025-01-01"));
    CHECK(before.find("2 Second thing") != std::string::npos);
    CHECK(before.find("refused") == std::string::npos);
    support::Dice dice(3);
    for (int round = 0; round < 20; ++round) {
        for (std::size_t i = sheets.size() - 1; i > 0; --i) {
            std::swap(sheets[i], sheets[dice.below(static_cast<std::uint32_t>(i + 1))]);
        }
        REQUIRE(listing(sheets) == before);
        REQUIRE(refused == 1);
    }
    // Rows of different sheets may be mixed, as long as those of one sheet keep their order.
    std::vector<std::string> mixed;
    for (const std::string& sheet : sheets) {
        mixed.push_back(sheet.substr(0, sheet.find('\n') + 1));
    }
    for (const std::string& sheet : sheets) {
        mixed.push_back(sheet.substr(sheet.find('\n') + 1));
    }
    CHECK(listing(mixed) == before);
}

TEST_CASE("A hundred thousand rows stream in pieces of 1 MiB", "[rows]")
{
    std::string text = header;
    for (int i = 0; i < 100'000; ++i) {
        std::string row = good;
        row.replace(0, 2, "s" + std::to_string(i));
        row.replace(row.find("Ines"), 4, "student " + std::to_string(i % 500));
        text += row;
    }
    constexpr std::size_t piece = std::size_t{1} << 20U;
    REQUIRE(text.size() > 5 * piece);
    SheetReader reader(shippedCatalogue());
    std::size_t before = 0;
    for (std::size_t at = 0; at < text.size(); at += piece) {
        REQUIRE(reader.feed(std::string_view(text).substr(at, piece)));
        CHECK(reader.rowsSeen() > before); // rows are taken as they come, not at the end
        before = reader.rowsSeen();
    }
    CHECK(reader.rowsSeen() == 100'000);
    const base::Result<SheetReader::Reading> reading = reader.finish();
    REQUIRE(reading.ok());
    CHECK(reading.value().report.refused.empty());
    CHECK(reading.value().book.sheetCount() == 100'000);
    REQUIRE(reading.value().book.students().size() == 500);
    for (const sheet::BookStudent& student : reading.value().book.students()) {
        REQUIRE(student.sheetCount == 200);
    }
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
