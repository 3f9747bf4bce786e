#include "tests/support/catch.h"

#include "core/sheet/sheet_reader.h"
#include "core/tally/tally.h"
#include "core/tally/why_not_counted.h"
#include "platform/files/resources.h"
#include "tests/support/shipped_sets.h"

#include <string>

using namespace peelpack;
using tally::Level;

namespace {

constexpr const char* header =
    "sheet,date,student,procedure,categories,verify,setup,counts,pass,technique,sponge,suction,cut,"
    "retract,camera,operation,one_pathology,canceled,attested,initialed,imported,role\n";
constexpr const char* allYes = "Y,Y,Y,Y,Y,Y,Y,Y,Y,Y";
constexpr const char* secondScrub = "Y,N,Y,Y,Y,Y,N,N,N,N";
constexpr const char* observation = "N,N,N,N,N,N,N,N,N,NA";

struct Row {
    std::string sheet;
    std::string procedure;
    std::string categories;
    std::string marks = allYes;
    std::string rest = ",,,,,,"; // operation to role
    std::string student = "Ines";
    std::string date = "2026-03-12";
};

std::string csv(const std::vector<Row>& rows)
{
    std::string text = header;
    for (const Row& row : rows) {
        text += row.sheet + "," + row.date + "," + row.student + "," + row.procedure + "," + row.categories + "," +
                row.marks + "," + row.rest + "\n";
    }
    return text;
}

const catalogue::Catalogue& shippedCatalogue()
{
    static const catalogue::Catalogue catalogue = files::shippedCatalogue().value();
    return catalogue;
}

sheet::SheetBook book(const std::vector<Row>& rows)
{
    sheet::SheetReader reader(shippedCatalogue());
    REQUIRE(reader.feed(csv(rows)));
    base::Result<sheet::SheetReader::Reading> reading = reader.finish();
    REQUIRE(reading.ok());
    REQUIRE(reading.value().report.refused.empty());
    return std::move(std::move(reading).value().book);
}

tally::StudentTally tallyOf(const sheet::SheetBook& sheets, const requirement::RequirementSet& set,
                            Level level = Level::Recorded)
{
    return tally::Tallier(set, level).tally(sheets, sheets.students().front(), {});
}

} // namespace

// Published counting example (see placement_test.cpp): a breast biopsy followed by a mastectomy is one pathology, one
// case.
TEST_CASE("One pathology is one case with the union of the categories", "[tally]")
{
    const sheet::SheetBook sheets = book({{"s1", "Breast biopsy", "general", allYes, ",1,,,,,"},
                                          {"s1", "Mastectomy", "general|plastic-reconstructive", allYes, ",1,,,,,"}});
    const requirement::RequirementSet set = support::shippedSet("spread10");
    const tally::StudentTally tally = tallyOf(sheets, set);
    REQUIRE(tally.candidates.size() == 1);
    CHECK(tally.candidates[0].categories.size() == 2);
    CHECK(tally.best.value.counted == 1);
    CHECK(tally.asLogged.value.counted == 1);
}

// Published counting example: a laparoscopic operation turned open is one case.
TEST_CASE("One conversion is one case", "[tally]")
{
    const sheet::SheetBook sheets = book({{"s1", "laparoscopic cholecystectomy", "", allYes, ",1,,,,,"},
                                          {"s1", "open cholecystectomy", "", allYes, ",1,,,,,"}});
    const requirement::RequirementSet set = support::shippedSet("cap15");
    CHECK(tallyOf(sheets, set).best.value.counted == 1);
}

TEST_CASE("Sheets joined by an operation share its categories", "[tally]")
{
    const requirement::RequirementSet set = support::shippedSet("spread10");
    const std::vector<Row> apart{{"s1", "A", "orthopedics"}, {"s2", "B", "orthopedics"}};
    CHECK(tallyOf(book(apart), set).best.value.counted == 2);
    std::vector<Row> joined = apart;
    joined[0].rest = joined[1].rest = "op7,,,,,,";
    CHECK(tallyOf(book(joined), set).best.value.counted == 1);
    joined[1].student = "Tomas"; // another student's operation of the same name is another operation
    CHECK(tallyOf(book(joined), set).best.value.counted == 1);
    const sheet::SheetBook two = book(joined);
    REQUIRE(two.students().size() == 2);
    for (const sheet::BookStudent& student : two.students()) {
        CHECK(tally::Tallier(set, Level::Recorded).tally(two, student, {}).best.value.counted == 1);
    }
}

TEST_CASE("First scrub counts as second scrub in the categories apart", "[tally]")
{
    const requirement::RequirementSet set = support::shippedSet("spread10");
    const sheet::SheetBook sheets =
        book({{"s1", "Scope", "diagnostic-endoscopy"}, {"s2", "Delivery", "labor-delivery"}});
    const tally::StudentTally tally = tallyOf(sheets, set);
    CHECK(tally.best.value.counted == 2);
    CHECK(tally.best.value.firstScrub == 0);
    for (std::size_t i = 0; i < 2; ++i) {
        CHECK(tally::countedOutcome(tally.candidates[i], std::nullopt) == role::Outcome::Second);
    }
}

TEST_CASE("Assisting counts in the categories apart only where the set says so", "[tally]")
{
    requirement::RequirementSet set = support::shippedSet("spread10");
    const sheet::SheetBook sheets = book({{"s1", "Delivery", "labor-delivery", "Y,N,N,N,N,N,N,N,N,N"},
                                          {"s2", "Delivery", "labor-delivery", observation},
                                          {"s3", "Hernia", "general", "Y,N,N,N,N,N,N,N,N,N"}});
    CHECK(tallyOf(sheets, set).best.value.counted == 0);
    set.assistCounts = true;
    CHECK(tallyOf(sheets, set).best.value.counted == 1);
}

TEST_CASE("What a level takes", "[tally]")
{
    const requirement::RequirementSet set = support::shippedSet("spread10");
    const sheet::SheetBook sheets = book({{"s1", "A", "eye", allYes, ",,,own-phone,,,"},
                                          {"s2", "A", "eye", allYes, ",,,card,2026-03-14,,"},
                                          {"s3", "A", "eye", allYes, ",,,card-new,,,"},
                                          {"s4", "A", "eye", allYes, ",,,drawn,2026-03-14,,"},
                                          {"s5", "A", "eye", allYes, ",,,paper,,,"},
                                          {"s6", "A", "eye"},
                                          {"s7", "A", "eye", allYes, ",,Y,card,2026-03-14,,"}});
    CHECK(tallyOf(sheets, set, Level::Recorded).best.value.counted == 6);
    CHECK(tallyOf(sheets, set, Level::Attested).best.value.counted == 2);
    CHECK(tallyOf(sheets, set, Level::Initialed).best.value.counted == 2);
}

TEST_CASE("Every case that does not count has its reason", "[tally]")
{
    const requirement::RequirementSet set = support::shippedSet("spread10");
    std::vector<Row> rows{{"c", "A", "eye", allYes, ",,Y,,,,"},
                          {"o", "A", "eye", observation},
                          {"u", "A", "eye", "Y,Y,Y,Y,Y,,,,,"},
                          {"t1", "A", "general"},
                          {"t1", "B", "general"}};
    for (int i = 0; i < 12; ++i) {
        rows.push_back({"d" + std::to_string(i), "Scope", "diagnostic-endoscopy"});
    }
    for (int i = 0; i < 35; ++i) {
        rows.push_back({"g" + std::to_string(i), "A", "general", secondScrub});
    }
    const sheet::SheetBook sheets = book(rows);
    const tally::StudentTally tally = tallyOf(sheets, set);
    CHECK(tally.sheets == 51);
    CHECK(tally.canceled == 1);
    CHECK(tally.observed == 1);
    CHECK(tally.unmarked == 1);
    std::vector<std::string> reasons;
    for (std::size_t i = 0; i < tally.candidates.size(); ++i) {
        if (!tally.best.seats[i].counts()) {
            reasons.push_back(tally::sentence(tally::whyNotCounted(set, tally, tally.best, i)));
            CHECK(reasons.back().ends_with("."));
        }
    }
    for (const char* part :
         {"canceled before incision", "observation", "Not every skill is marked", "Two procedures of one operation",
          "At most 10 cases of Diagnostic endoscopy", "are full"}) {
        CAPTURE(part);
        CHECK(std::any_of(reasons.begin(), reasons.end(),
                          [&](const std::string& reason) { return reason.find(part) != std::string::npos; }));
    }
}

TEST_CASE("N/A stands for Yes only where the set lets it", "[tally]")
{
    requirement::RequirementSet set = support::shippedSet("spread10");
    const sheet::SheetBook sheets = book({{"s1", "A", "eye", "Y,Y,NA,Y,Y,N,N,N,N,N"}});
    CHECK(tallyOf(sheets, set).best.value.firstScrub == 1);
    set.notApplicable = {};
    CHECK(tallyOf(sheets, set).best.value.counted == 0);
}

TEST_CASE("Paper logs carry their role", "[tally]")
{
    const requirement::RequirementSet set = support::shippedSet("spread10");
    const sheet::SheetBook sheets = book({{"s1", "A", "eye", ",,,,,,,,,", ",,,paper,,Y,first"},
                                          {"s2", "A", "eye", ",,,,,,,,,", ",,,,,Y,second"},
                                          {"s3", "A", "eye", ",,,,,,,,,", ",,,,,Y,observed"},
                                          {"s4", "A", "eye", ",,,,,,,,,", ",,Y,,,Y,first"}});
    const tally::StudentTally tally = tallyOf(sheets, set);
    CHECK(tally.best.value.counted == 2);
    CHECK(tally.best.value.firstScrub == 1);
    CHECK(tally.observed == 1);
    CHECK(tally.canceled == 1);
}
