#include "tests/support/catch.h"
#include "tests/support/story.h"

using namespace peelpack;
using namespace peelpack::record;
using namespace peelpack::support;
using catalogue::Category;
using sheet::Mark;
using sheet::Skill;
using sheet::Strength;

TEST_CASE("Names are ordered as bytes and written in hexadecimal", "[record]")
{
    base::Id id;
    CHECK(id.isZero());
    id.bytes[0] = 0x0F;
    id.bytes[15] = 0xA1;
    CHECK_FALSE(id.isZero());
    CHECK(id.hex() == "0f0000000000000000000000000000a1");
    CHECK(id.hex(3) == "0f0");
    CHECK(base::Id{} < id);
}

TEST_CASE("A claimed time is a day where it was claimed, whatever it claims", "[record]")
{
    CHECK(Time{1'772'366'400, -300}.day().iso() == "2026-03-01");
    CHECK(Time{1'772'326'800, -300}.day().iso() == "2026-02-28"); // 01:00 UTC
    CHECK(Time{-1, 0}.day().iso() == "1969-12-31");
    CHECK(Time{INT64_MIN, -900}.day().iso() == "1900-01-01");
    CHECK(Time{INT64_MAX, 900}.day().iso() == "2199-12-31");
}

TEST_CASE("Reasons stay only with N/A, and an overlay replaces only what it marks", "[record]")
{
    ReasonedMarks marks;
    marks.set(Skill::Counts, Mark::NotApplicable, "no counts here");
    marks.set(Skill::Verify, Mark::NotApplicable, "done before");
    marks.set(Skill::Pass, Mark::Yes, "not kept");
    CHECK(marks.reason(Skill::Counts) == "no counts here");
    CHECK(marks.reasons.size() == 2);
    CHECK(marks.reasons.front().skill == Skill::Verify);
    marks.overlay(marksOf({{Skill::Counts, Mark::Yes}}));
    CHECK(marks.reason(Skill::Counts).empty());
    CHECK(marks.reason(Skill::Verify) == "done before");
    CHECK(marks.marks.of(Skill::Counts) == Mark::Yes);
    CHECK(marks.marks.of(Skill::Pass) == Mark::Yes);
}

TEST_CASE("An unsigned sheet is open and shows the student's newest draft that counts", "[record]")
{
    Story story;
    story.student(Opened{draft()});
    story.student(HeadChanged{draft({"Appendectomy", "Cystoscopy"}, marksOf({{Skill::Pass, Mark::Yes}}))});
    story.student(HeadChanged{draft({"Nothing"})}, aside);
    story.student(HeadChanged{draft({"Less"})}, refused);
    const SheetRecord record = story.record();
    CHECK(record.standing == SheetStanding::Open);
    CHECK(id(record.standing) == "open");
    CHECK(record.strength == Strength::None);
    CHECK(record.operation == named<base::Id>(0x50));
    CHECK(record.content.procedures == std::vector<std::string>{"Appendectomy", "Cystoscopy"});
    CHECK(record.content.marks.marks.of(Skill::Pass) == Mark::Yes);
    CHECK_FALSE(record.unsignedVersion);
    CHECK_FALSE(record.original);
    REQUIRE(record.history.size() == 4);
    CHECK(record.history[1].weight == Weight::Counts);
    CHECK(record.history[2].weight == Weight::Aside);
    CHECK(record.history[2].whyNot == aside.why);
    CHECK(record.history[3].weight == Weight::Refused);
    CHECK(record.history[3].whyNot == refused.why);
}

TEST_CASE("Several signers' marks are joined; the first one's head and procedures stand", "[record]")
{
    Story story;
    story.student(Opened{draft({"Something else"})});
    Attested first = attested(marksOf({{Skill::Verify, Mark::Yes}, {Skill::Setup, Mark::Yes}}), Strength::OwnPhone);
    first.feedback = "Calm.";
    first.marks.set(Skill::Counts, Mark::NotApplicable, "none called for");
    Attested second = attested(marksOf({{Skill::Pass, Mark::No}}), Strength::CardNew, "Second Preceptor", 0x41);
    second.head = head("7");
    story.student(first);
    story.student(second);
    story.student(attested(allYes()), aside);
    const SheetRecord record = story.record();
    CHECK(record.standing == SheetStanding::Signed);
    CHECK(record.strength == Strength::CardNew);
    CHECK(record.content.procedures == std::vector<std::string>{"Appendectomy"});
    CHECK(record.content.head.room == "4");
    CHECK(record.content.marks.marks.of(Skill::Setup) == Mark::Yes);
    CHECK(record.content.marks.marks.of(Skill::Pass) == Mark::No);
    CHECK(record.content.marks.marks.of(Skill::Camera) == Mark::Unmarked);
    CHECK(record.content.marks.reason(Skill::Counts) == "none called for");
    REQUIRE(record.signers.size() == 2);
    CHECK_FALSE(record.signers[0].otherContent);
    CHECK(record.signers[1].otherContent);
    CHECK(record.disputed.empty());
    CHECK(record.feedback == std::vector<FeedbackText>{{"Invented Preceptor", "Calm."}});
}

TEST_CASE("The strength of a sheet is the weakest of the signers who made marks", "[record]")
{
    const auto strengthWith = [](std::vector<std::pair<Strength, Skill>> signers, bool unmarking = false) {
        Story story;
        for (const auto& [strength, skill] : signers) {
            story.student(attested(marksOf({{skill, Mark::Yes}}), strength));
        }
        if (unmarking) {
            story.student(attested({}, Strength::Drawn));
        }
        return story.record().strength;
    };
    CHECK(strengthWith({{Strength::Card, Skill::Pass}, {Strength::OwnPhone, Skill::Cut}}) == Strength::Card);
    CHECK(strengthWith({{Strength::Card, Skill::Pass}, {Strength::Paper, Skill::Cut}}) == Strength::Paper);
    CHECK(strengthWith({{Strength::Drawn, Skill::Pass}, {Strength::CardNew, Skill::Cut}}) == Strength::Drawn);
    CHECK(strengthWith({{Strength::None, Skill::Pass}, {Strength::Drawn, Skill::Cut}}) == Strength::None);
    CHECK(strengthWith({{Strength::Card, Skill::Pass}}, true) == Strength::Card);
    CHECK(strengthWith({}, true) == Strength::Drawn);
}

TEST_CASE("Where two signers differ No stands until an instructor rules", "[record]")
{
    Story story;
    story.student(attested(marksOf({{Skill::Pass, Mark::Yes}, {Skill::Cut, Mark::Yes}}), Strength::Card, "One"));
    const auto seen = story.student(
        attested(marksOf({{Skill::Pass, Mark::NotApplicable}, {Skill::Cut, Mark::Yes}}), Strength::Card, "Two", 0x41));
    SheetRecord record = story.record();
    CHECK(record.content.marks.marks.of(Skill::Pass) == Mark::No);
    CHECK(record.content.marks.marks.of(Skill::Cut) == Mark::Yes);
    REQUIRE(record.disputed.size() == 1);
    CHECK(record.disputed[0].skill == Skill::Pass);
    CHECK(record.disputed[0].given ==
          std::vector<DisputedMark::Given>{{"One", Mark::Yes}, {"Two", Mark::NotApplicable}});
    CHECK_FALSE(record.disputed[0].settled);

    story.act(Initial{}, seen);
    CHECK_FALSE(story.record().disputed[0].settled);
    story.act(Amend{marksOf({{Skill::Pass, Mark::Yes}}), {}, {}}, seen, "I was there.");
    record = story.record();
    CHECK(record.content.marks.marks.of(Skill::Pass) == Mark::Yes);
    REQUIRE(record.disputed.size() == 1);
    CHECK(record.disputed[0].settled);
}

TEST_CASE("A change after signing leaves the signed sheet and shows as an unsigned version", "[record]")
{
    Story story;
    story.student(Opened{draft()});
    story.student(attested(marksOf({{Skill::Pass, Mark::No}})));
    CHECK_FALSE(story.record().unsignedVersion);
    story.student(HeadChanged{draft({"Appendectomy"}, marksOf({{Skill::Pass, Mark::No}}))});
    CHECK_FALSE(story.record().unsignedVersion); // says what was signed

    SECTION("a mark")
    {
        story.student(HeadChanged{draft({"Appendectomy"}, marksOf({{Skill::Pass, Mark::Yes}}))});
    }
    SECTION("a mark that nobody made")
    {
        story.student(HeadChanged{draft({"Appendectomy"}, marksOf({{Skill::Cut, Mark::Yes}}))});
    }
    SECTION("the head")
    {
        story.student(HeadChanged{draft({"Appendectomy"}, {}, head("9"))});
    }
    SECTION("the procedures")
    {
        story.student(HeadChanged{draft({"Cystoscopy"})});
    }
    const SheetRecord record = story.record();
    REQUIRE(record.unsignedVersion);
    CHECK(record.unsignedVersion->entry == entry(4));
    CHECK(record.standing == SheetStanding::Signed);
    CHECK(record.content.procedures == std::vector<std::string>{"Appendectomy"});
    CHECK(record.content.head.room == "4");
    CHECK(record.content.marks.marks.of(Skill::Pass) == Mark::No);
    CHECK(record.content.marks.marks.of(Skill::Cut) == Mark::Unmarked);
}

TEST_CASE("A changed version that somebody signs as well is not unsigned", "[record]")
{
    Story story;
    story.student(attested(marksOf({{Skill::Pass, Mark::Yes}})));
    story.student(HeadChanged{draft({"Appendectomy"}, {}, head("9"))});
    Attested second = attested(marksOf({{Skill::Cut, Mark::Yes}}));
    second.head = head("9");
    story.student(second);
    const SheetRecord record = story.record();
    CHECK_FALSE(record.unsignedVersion);
    CHECK(record.content.head.room == "4");
    CHECK(record.signers[1].otherContent);
}

TEST_CASE("Choices are the newest logged, and those without a procedure are dropped", "[record]")
{
    Story story;
    story.student(Opened{draft({"Appendectomy", "Spinal fusion"})});
    story.student(Logged{{{0, Category::General, 0}}});
    story.student(Logged{{{0, Category::General, 1}, {1, Category::Orthopedics, 1}}});
    story.student(Logged{{{0, Category::Eye, 0}}}, aside);
    CHECK(story.record().content.choices ==
          std::vector<Choice>{{0, Category::General, 1}, {1, Category::Orthopedics, 1}});
    story.student(HeadChanged{draft({"Appendectomy"})});
    CHECK(story.record().content.choices == std::vector<Choice>{{0, Category::General, 1}});
}
