#include "tests/support/catch.h"
#include "tests/support/story.h"

#include "core/record/case_rows.h"

using namespace peelpack;
using namespace peelpack::record;
using namespace peelpack::support;
using catalogue::Category;
using sheet::Mark;
using sheet::Skill;
using sheet::Strength;

namespace {

catalogue::CategoryList filed(std::string_view procedure)
{
    if (procedure == "Appendectomy") {
        return {Category::General};
    }
    if (procedure == "Cystoscopy") {
        return {Category::DiagnosticEndoscopy};
    }
    if (procedure == "Spinal fusion") {
        return {Category::Neurosurgery, Category::Orthopedics};
    }
    return {};
}

const RowRules cardCounts{filed, [](Strength strength, bool confirmed) {
                              return strength == Strength::OwnPhone || strength == Strength::Card ||
                                     (strength == Strength::Drawn && confirmed);
                          }};

std::vector<sheet::CaseRow> rowsOf(const Story& story)
{
    return caseRows(recordOf(story.events), cardCounts);
}

} // namespace

TEST_CASE("Rows of a signed and initialed sheet", "[record]")
{
    Story story;
    Attested signature = attested(allYes());
    signature.procedures = {"Appendectomy", "Spinal fusion", "Cystoscopy", "Unheard of"};
    signature.head.surgeon = "Invented Surgeon";
    signature.head.site = "North Pavilion";
    signature.head.start = 450;
    signature.head.canceled = true;
    signature.feedback = "Calm.";
    story.student(signature);
    const auto seen = story.student(
        Logged{{{0, Category::General, 2}, {1, Category::Orthopedics, 2}, {2, Category::DiagnosticEndoscopy, 0}}});
    std::vector<sheet::CaseRow> rows = rowsOf(story);
    REQUIRE(rows.size() == 4);
    CHECK_FALSE(rows[0].initialed);
    story.act(Initial{}, seen);
    rows = rowsOf(story);
    CHECK(rows[0].sheet == "51515151");
    CHECK(rows[0].student == "Invented Student");
    CHECK(rows[0].date.iso() == "2026-03-01");
    CHECK(rows[0].procedure == "Appendectomy");
    CHECK(rows[0].categories == catalogue::CategoryList{Category::General});
    CHECK(rows[0].marks == allYes().marks);
    CHECK(rows[0].operation.empty());
    CHECK(rows[0].onePathology == 2U);
    CHECK(rows[0].surgeon == "Invented Surgeon");
    CHECK(rows[0].site == "North Pavilion");
    CHECK(rows[0].room == "4");
    CHECK(rows[0].start == "07:30");
    CHECK(rows[0].end.empty());
    CHECK(rows[0].preceptor == "Invented Preceptor");
    CHECK(rows[0].credential == "CST");
    CHECK(rows[0].feedback == "Calm.");
    CHECK(rows[0].canceled);
    CHECK(rows[0].attested == Strength::Card);
    REQUIRE(rows[0].initialed);
    CHECK(rows[0].initialed->iso() == "2026-03-01");
    CHECK(rows[1].categories == catalogue::CategoryList{Category::Orthopedics, Category::Neurosurgery});
    CHECK(rows[1].onePathology == 2U);
    CHECK(rows[2].categories == catalogue::CategoryList{Category::DiagnosticEndoscopy});
    CHECK_FALSE(rows[2].onePathology);
    CHECK(rows[3].categories.empty());
}

TEST_CASE("A category apart stands alone in a row", "[record]")
{
    Story story;
    story.student(Opened{draft({"Cystoscopy", "Appendectomy", "Spinal fusion"})});
    story.student(
        Logged{{{0, Category::Genitourinary, 0}, {1, Category::DiagnosticEndoscopy, 0}, {2, std::nullopt, 0}}});
    const auto rows = rowsOf(story);
    REQUIRE(rows.size() == 3);
    CHECK(rows[0].categories == catalogue::CategoryList{Category::Genitourinary});
    CHECK(rows[1].categories == catalogue::CategoryList{Category::DiagnosticEndoscopy});
    CHECK(rows[2].categories == filed("Spinal fusion"));
}

TEST_CASE("A row says attested only where the policy accepts every signature behind the marks", "[record]")
{
    Story story;
    const auto attestedNow = [&] { return rowsOf(story).front().attested; };
    story.student(Opened{draft()});
    CHECK(attestedNow() == Strength::None);
    story.student(attested(marksOf({{Skill::Pass, Mark::Yes}}), Strength::OwnPhone));
    CHECK(attestedNow() == Strength::OwnPhone);
    const auto drawn = story.student(attested(marksOf({{Skill::Cut, Mark::Yes}}), Strength::Drawn));
    CHECK(attestedNow() == Strength::None);
    CHECK(story.record().strength == Strength::Drawn);
    story.act(Initial{false}, drawn);
    CHECK(attestedNow() == Strength::None);
    story.act(Initial{true}, drawn);
    CHECK(attestedNow() == Strength::Drawn);
    const auto amended = story.act(Amend{marksOf({{Skill::Cut, Mark::No}}), {}, {}}, drawn, "Seen otherwise.");
    CHECK(attestedNow() == Strength::Drawn); // confirmed earlier in the walk
    const auto again = story.student(attested(marksOf({{Skill::Sponge, Mark::Yes}}), Strength::Drawn));
    CHECK(attestedNow() == Strength::None); // nobody confirmed the newer one
    story.beside(Initial{true}, amended, again);
    CHECK(attestedNow() == Strength::None);
    story.act(Initial{true}, again);
    CHECK(attestedNow() == Strength::Drawn);
    story.student(attested(marksOf({{Skill::Sponge, Mark::Yes}}), Strength::CardNew));
    story.act(Return{}, again, "Who is this?");
    CHECK(rowsOf(story).front().attested == Strength::None); // answered; a new card does not count here
}

TEST_CASE("Sheets are named by as many digits as tell them apart, and shared operations too", "[record]")
{
    Story story;
    const auto open = [&](const base::Id& sheet, std::uint8_t operation) {
        story.sheet = sheet;
        Draft one = draft();
        one.operation = named<base::Id>(operation);
        story.student(Opened{one});
    };
    base::Id twin = named<base::Id>(0x51);
    twin.bytes[5] = 0x5F;
    open(named<base::Id>(0x51), 0x60);
    open(twin, 0x61);
    open(named<base::Id>(0x70), 0x60);
    const auto rows = rowsOf(story);
    REQUIRE(rows.size() == 3);
    CHECK(rows[0].sheet == "515151515151");
    CHECK(rows[1].sheet == "51515151515f");
    CHECK(rows[2].sheet == "70707070");
    CHECK(rows[0].operation == "60606060");
    CHECK(rows[1].operation.empty());
    CHECK(rows[2].operation == "60606060");
}

TEST_CASE("Withdrawn, void and unanswered returned sheets give no rows, and neither do empty ones", "[record]")
{
    Story story;
    story.student(Opened{draft()}, aside);
    CHECK(rowsOf(story).empty());
    const auto seen = story.student(attested(allYes()));
    CHECK(rowsOf(story).size() == 1);
    SECTION("void")
    {
        story.act(Void{}, seen, "Twice.");
        CHECK(rowsOf(story).empty());
    }
    SECTION("returned")
    {
        story.act(Return{}, seen, "The room does not fit.");
        CHECK(rowsOf(story).empty());
        story.student(Logged{{{0, Category::General, 0}}});
        CHECK(rowsOf(story).size() == 1);
    }
    SECTION("withdrawn")
    {
        story.student(Withdrawn{"Twice."});
        CHECK(rowsOf(story).empty());
    }
    SECTION("only asked to withdraw")
    {
        story.act(Initial{}, seen);
        story.student(Withdrawn{"Twice."});
        REQUIRE(rowsOf(story).size() == 1);
        CHECK(rowsOf(story).front().initialed);
    }
}

TEST_CASE("A row says initialed only where that counts", "[record]")
{
    Story story;
    auto seen = story.student(attested(allYes(), Strength::Card, "Both", 0x20));
    story.act(Initial{}, seen);
    CHECK_FALSE(rowsOf(story).front().initialed); // by the only attester
    seen = story.student(attested(allYes(), Strength::Card, "Another", 0x41));
    story.act(Initial{}, seen);
    CHECK(rowsOf(story).front().initialed);
    story.act(Amend{marksOf({{Skill::Cut, Mark::No}}), {}, {}}, seen, "Seen otherwise.");
    CHECK_FALSE(rowsOf(story).front().initialed);
    CHECK(rowsOf(story).front().marks.of(Skill::Cut) == Mark::No);
}
