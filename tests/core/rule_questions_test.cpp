#include "core/questions/rule_questions.h"
#include "tests/support/catch.h"

#include <algorithm>

using namespace peelpack;
using questions::SheetQuestion;
using questions::SheetRules;
using Kind = questions::SheetQuestionKind;

namespace {

const base::Date theDay = base::Date::fromDays(20'000);
const base::Id preceptor = [] {
    base::Id made;
    made.bytes[0] = 7;
    return made;
}();

base::Date daysLater(std::int32_t days)
{
    return base::Date::fromDays(theDay.days() + days);
}

/// First scrub at North Campus, signed by a CST.
record::SheetRecord signedSheet()
{
    record::SheetRecord sheet;
    sheet.standing = record::SheetStanding::Signed;
    sheet.content.head.date = theDay;
    sheet.content.head.site = "North Campus";
    record::Signer signer;
    signer.statement.name = "L. Brandt";
    signer.statement.credential = "CST";
    signer.statement.person = preceptor;
    for (std::size_t i = 0; i < sheet::skillCount; ++i) {
        sheet.content.marks.set(static_cast<sheet::Skill>(i), sheet::Mark::Yes);
        signer.statement.marks.set(static_cast<sheet::Skill>(i), sheet::Mark::Yes);
    }
    sheet.signers.push_back(signer);
    return sheet;
}

SheetRules::ClinicalDay day(std::int32_t later, const char* site, record::MinuteOfDay start = record::notSaid,
                            record::MinuteOfDay end = record::notSaid)
{
    return {daysLater(later), site, start, end};
}

std::vector<Kind> kinds(const record::SheetRecord& sheet, const SheetRules& rules)
{
    std::vector<Kind> found;
    for (const SheetQuestion& question : questions::ruleQuestions(sheet, rules)) {
        CHECK_FALSE(question.sentence.empty());
        found.push_back(question.kind);
    }
    return found;
}

using Kinds = std::vector<Kind>;

} // namespace

TEST_CASE("A program that has said nothing asks nothing")
{
    CHECK(kinds(signedSheet(), {}).empty());
}

TEST_CASE("A credential is asked about when the list does not name it for the role of the sheet")
{
    SheetRules rules;
    rules.signers = {{"CST", false, true, true}, {"RN", true, false, false}};
    CHECK(kinds(signedSheet(), rules) == Kinds{Kind::CredentialNotListed});
    rules.signers[0].first = true;
    CHECK(kinds(signedSheet(), rules).empty());
    record::SheetRecord sheet = signedSheet();
    sheet.signers[0].statement.credential = " cst ";
    CHECK(kinds(sheet, rules).empty());
    sheet.signers[0].statement.credential.clear();
    CHECK(kinds(sheet, rules) == Kinds{Kind::CredentialNotListed});
    sheet.signers[0].statement.credential = "RN";
    CHECK(kinds(sheet, rules).empty());
    sheet.content.marks.set(sheet::Skill::Pass, sheet::Mark::No); // second scrub, which an RN is not listed for
    CHECK(kinds(sheet, rules) == Kinds{Kind::CredentialNotListed});
    sheet.content.marks.set(sheet::Skill::Pass, sheet::Mark::Unmarked); // no role yet
    CHECK(kinds(sheet, rules).empty());
    sheet.signers.clear();
    CHECK(kinds(sheet, rules).empty());
}

TEST_CASE("A preceptor's orientation is held against the day of the case")
{
    SheetRules rules;
    rules.standings[preceptor] = {daysLater(0), true};
    CHECK(kinds(signedSheet(), rules).empty());
    rules.standings[preceptor].oriented = daysLater(1);
    CHECK(kinds(signedSheet(), rules) == Kinds{Kind::NotOriented});
    rules.standings[preceptor] = {std::nullopt, false};
    CHECK(kinds(signedSheet(), rules) == Kinds{Kind::NotOriented, Kind::NotActive});
    record::SheetRecord sheet = signedSheet();
    sheet.signers[0].statement.person.reset();
    CHECK(kinds(sheet, rules).empty());
}

TEST_CASE("A case is asked about on another day or at another site than the class's clinical days")
{
    SheetRules rules;
    rules.days = {day(-1, "North Campus"), day(0, "South Annex"), day(0, "north  campus")};
    CHECK(kinds(signedSheet(), rules).empty());
    rules.days.pop_back();
    CHECK(kinds(signedSheet(), rules) == Kinds{Kind::OtherSite});
    CHECK(questions::ruleQuestions(signedSheet(), rules).front().name == "South Annex");
    record::SheetRecord sheet = signedSheet();
    sheet.content.head.site.clear();
    CHECK(kinds(sheet, rules).empty());
    rules.days.pop_back();
    CHECK(kinds(signedSheet(), rules) == Kinds{Kind::NoClinicalDay});
    CHECK(kinds(sheet, rules) == Kinds{Kind::NoClinicalDay});
    // A night that begins the day before.
    rules.days = {day(-1, "North Campus", 1320, 360)};
    CHECK(kinds(signedSheet(), rules).empty());
    rules.days = {day(-1, "North Campus", 420, 900)};
    CHECK(kinds(signedSheet(), rules) == Kinds{Kind::NoClinicalDay});
}

TEST_CASE("Who initials a sheet has answered, and a sheet that is gone raises nothing")
{
    SheetRules rules;
    rules.days = {day(3, "North Campus")};
    record::SheetRecord sheet = signedSheet();
    REQUIRE(kinds(sheet, rules).size() == 1);
    for (const auto standing :
         {record::SheetStanding::Initialed, record::SheetStanding::Void, record::SheetStanding::Withdrawn}) {
        sheet.standing = standing;
        CHECK(kinds(sheet, rules).empty());
    }
}
