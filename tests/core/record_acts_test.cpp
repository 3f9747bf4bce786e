#include "platform/english/history.h"
#include "tests/support/catch.h"
#include "tests/support/story.h"

using namespace peelpack;
using namespace peelpack::record;
using namespace peelpack::support;
using catalogue::Category;
using sheet::Mark;
using sheet::Skill;
using sheet::Strength;

TEST_CASE("Amendments, accepted reviews and re-files replace; the original stands beside", "[record]")
{
    Story story;
    story.student(Opened{draft()});
    story.student(attested(marksOf({{Skill::Pass, Mark::No}, {Skill::Cut, Mark::No}})));
    const auto request = story.student(ReviewAsked{Skill::Pass, Mark::Yes, "I passed from time-out on."});
    const auto logged = story.student(Logged{{{0, Category::General, 0}}});
    Amend amend;
    amend.marks = marksOf({{Skill::Cut, Mark::Yes}});
    amend.head = head("5");
    amend.procedures = {"Appendectomy", "Cystoscopy"};
    story.act(amend, logged, "The board says so.");
    CHECK(story.record().standing == SheetStanding::Amended);
    story.act(ReviewAccepted{Skill::Pass, Mark::Yes, request}, logged);
    story.act(Refile{{{1, Category::DiagnosticEndoscopy, 0}}}, logged, "It was a look.");
    story.student(Logged{{{0, Category::Eye, 0}, {1, Category::Eye, 0}}});
    const SheetRecord record = story.record();
    CHECK(record.standing == SheetStanding::Amended);
    CHECK(record.content.marks.marks.of(Skill::Cut) == Mark::Yes);
    CHECK(record.content.marks.marks.of(Skill::Pass) == Mark::Yes);
    CHECK(record.content.head.room == "5");
    CHECK(record.content.procedures == std::vector<std::string>{"Appendectomy", "Cystoscopy"});
    CHECK(record.content.choices == std::vector<Choice>{{0, Category::Eye, 0}, {1, Category::DiagnosticEndoscopy, 0}});
    REQUIRE(record.original);
    CHECK(record.original->marks.marks.of(Skill::Cut) == Mark::No);
    CHECK(record.original->marks.marks.of(Skill::Pass) == Mark::No);
    CHECK(record.original->head.room == "4");
    CHECK(record.original->procedures == std::vector<std::string>{"Appendectomy"});
    CHECK(record.original->choices == std::vector<Choice>{{0, Category::Eye, 0}});
    CHECK(record.signers.size() == 1);
}

TEST_CASE("Actions beside the walk, aside or refused change nothing and are shown", "[record]")
{
    Story story;
    const auto signedEntry = story.student(attested(allYes()));
    const auto first = story.act(Initial{}, signedEntry);
    const auto beside = story.beside(Amend{marksOf({{Skill::Pass, Mark::No}}), {}, {}}, {}, signedEntry);
    const auto put = story.beside(Void{}, first, signedEntry, aside);
    const auto denied = story.beside(Return{}, first, signedEntry, refused);
    const SheetRecord record = story.record();
    CHECK(record.standing == SheetStanding::Initialed);
    CHECK(record.content.marks == allYes());
    CHECK_FALSE(record.original);
    CHECK(record.history.size() == 5);
    CHECK(lineOf(record, beside).weight == Weight::Beside);
    CHECK(lineOf(record, beside).why == "Another view.");
    CHECK_FALSE(lineOf(record, beside).whyNot.empty());
    CHECK(lineOf(record, put).weight == Weight::Aside);
    CHECK(lineOf(record, denied).weight == Weight::Refused);
}

TEST_CASE("A returned sheet stays returned until the student writes about it", "[record]")
{
    Story story;
    const auto seen = story.student(attested(allYes()));
    story.act(Return{}, seen, "The room does not fit.");
    SheetRecord record = story.record();
    CHECK(record.standing == SheetStanding::Returned);
    REQUIRE(record.returned);
    CHECK(record.returned->reason == "The room does not fit.");
    CHECK_FALSE(record.returned->answered);
    story.student(Logged{{{0, Category::General, 0}}}, aside);
    CHECK(story.record().standing == SheetStanding::Returned);
    story.student(Logged{{{0, Category::General, 0}}});
    record = story.record();
    CHECK(record.standing == SheetStanding::Signed);
    CHECK(record.returned->answered);
}

TEST_CASE("What the writer of a return had not seen yet answers it", "[record]")
{
    Story story;
    const auto seen = story.student(Opened{draft()});
    story.student(HeadChanged{draft({"Appendectomy"}, {}, head("9"))});
    story.act(Return{}, seen, "The room does not fit.");
    const SheetRecord record = story.record();
    CHECK(record.standing == SheetStanding::Open);
    CHECK(record.content.head.room == "9");
}

TEST_CASE("Only an initial at the end of the walk initials", "[record]")
{
    Story story;
    const auto seen = story.student(attested(allYes()));
    story.act(Initial{}, seen);
    SheetRecord record = story.record();
    CHECK(record.standing == SheetStanding::Initialed);
    REQUIRE(record.initial);
    CHECK(record.initial->by.name == "Invented Instructor");
    CHECK_FALSE(record.initial->onlyByAttester);
    story.act(Amend{marksOf({{Skill::Pass, Mark::No}}), {}, {}}, seen, "Seen otherwise.");
    record = story.record();
    CHECK(record.standing == SheetStanding::Amended);
    CHECK_FALSE(record.initial);
    story.act(Initial{}, seen);
    CHECK(story.record().standing == SheetStanding::Initialed);
    CHECK(story.record().original);
    story.act(Void{}, seen, "Twice on the log.");
    CHECK(story.record().standing == SheetStanding::Void);
}

TEST_CASE("An initial by the only attester does not count alone", "[record]")
{
    Story story;
    auto seen = story.student(attested(allYes(), Strength::Card, "Both", 0x20));
    SECTION("alone")
    {
        story.act(Initial{}, seen);
        CHECK(story.record().initial->onlyByAttester);
    }
    SECTION("with another attester")
    {
        seen = story.student(attested(allYes(), Strength::Card, "Another", 0x41));
        story.act(Initial{}, seen);
        CHECK_FALSE(story.record().initial->onlyByAttester);
    }
    SECTION("another attester, whom the initial did not see, does not help")
    {
        story.act(Initial{}, seen);
        story.student(attested(allYes(), Strength::Card, "Another", 0x41));
        CHECK(story.record().initial->onlyByAttester);
    }
    SECTION("somebody else initials")
    {
        story.act(Initial{}, seen, {}, 0x24);
        CHECK_FALSE(story.record().initial->onlyByAttester);
    }
}

TEST_CASE("What the student writes after an initial or void waits for the next action", "[record]")
{
    Story story;
    story.student(Opened{draft()});
    story.student(attested(marksOf({{Skill::Pass, Mark::Yes}})));
    const auto seen = story.student(Logged{{{0, Category::General, 0}}});
    const bool gone = GENERATE(false, true);
    story.act(gone ? Decision(Void{}) : Decision(Initial{}), seen, "A reason.");
    CHECK_FALSE(story.record().changedAfterInitial);
    const auto logged = story.student(Logged{{{0, Category::Eye, 0}}});
    const auto changed = story.student(HeadChanged{draft({"Appendectomy"}, {}, head("9"))});
    const auto second = story.student(attested(marksOf({{Skill::Pass, Mark::No}, {Skill::Cut, Mark::Yes}})));
    SheetRecord record = story.record();
    CHECK(record.standing == (gone ? SheetStanding::Void : SheetStanding::Initialed));
    CHECK(record.changedAfterInitial);
    CHECK(record.content.choices == std::vector<Choice>{{0, Category::General, 0}});
    CHECK(record.content.marks == marksOf({{Skill::Pass, Mark::Yes}}));
    CHECK(record.disputed.empty());
    REQUIRE(record.signers.size() == 2);
    CHECK(record.signers[1].afterInitial);
    REQUIRE(record.unsignedVersion);
    for (const auto& late : {logged, changed, second}) {
        CHECK(lineOf(record, late).weight == Weight::NoEffect);
        CHECK_FALSE(lineOf(record, late).whyNot.empty());
    }
    story.act(Initial{}, second);
    record = story.record();
    CHECK_FALSE(record.changedAfterInitial);
    CHECK(record.content.choices == std::vector<Choice>{{0, Category::Eye, 0}});
    CHECK(record.content.marks.marks.of(Skill::Cut) == Mark::Yes);
    CHECK(record.content.marks.marks.of(Skill::Pass) == Mark::No);
    CHECK(record.disputed.size() == 1);
    CHECK(lineOf(record, logged).weight == Weight::Counts);
}

TEST_CASE("An initialed draft stays as it was seen; the newer one shows beside it", "[record]")
{
    Story story;
    const auto seen = story.student(Opened{draft()});
    story.act(Initial{}, seen);
    const auto changed = story.student(HeadChanged{draft({"Cystoscopy"})});
    const SheetRecord record = story.record();
    CHECK(record.content.procedures == std::vector<std::string>{"Appendectomy"});
    REQUIRE(record.unsignedVersion);
    CHECK(record.unsignedVersion->entry == changed);
}

TEST_CASE("The student can withdraw a sheet until it is initialed; then it is a request", "[record]")
{
    Story story;
    auto seen = story.student(attested(allYes()));
    SECTION("before")
    {
        const auto withdrawn = story.student(Withdrawn{"Logged twice."});
        CHECK(story.record().standing == SheetStanding::Withdrawn);
        story.act(Initial{}, withdrawn);
        const SheetRecord record = story.record();
        CHECK(record.standing == SheetStanding::Withdrawn);
        CHECK_FALSE(record.initial);
        REQUIRE(record.withdrawal);
        CHECK(record.withdrawal->stands);
        CHECK(record.withdrawal->reason == "Logged twice.");
        story.act(Void{}, withdrawn, "Twice.");
        CHECK(story.record().standing == SheetStanding::Void);
    }
    SECTION("aside")
    {
        story.student(Withdrawn{"Logged twice."}, aside);
        CHECK(story.record().standing == SheetStanding::Signed);
        CHECK_FALSE(story.record().withdrawal);
    }
    SECTION("after")
    {
        story.act(Initial{}, seen);
        const auto withdrawn = story.student(Withdrawn{"Logged twice."});
        SheetRecord record = story.record();
        CHECK(record.standing == SheetStanding::Initialed);
        REQUIRE(record.withdrawal);
        CHECK_FALSE(record.withdrawal->stands);
        CHECK_FALSE(record.withdrawal->answered);
        CHECK(lineOf(record, withdrawn).weight == Weight::NoEffect);
        CHECK(english::inWords(lineOf(record, withdrawn).what) == "Asked to withdraw the sheet.");
        story.act(Initial{}, withdrawn);
        record = story.record();
        CHECK(record.standing == SheetStanding::Initialed);
        CHECK(record.withdrawal->answered);
    }
    SECTION("after a return that followed the initial")
    {
        story.act(Initial{}, seen);
        story.act(Return{}, seen, "Look again.");
        story.student(Withdrawn{"It was not mine."});
        CHECK(story.record().standing == SheetStanding::Withdrawn);
    }
}

TEST_CASE("A review is answered by an action that saw it", "[record]")
{
    Story story;
    const auto attestation = story.student(attested(marksOf({{Skill::Pass, Mark::No}, {Skill::Cut, Mark::No}})));
    const auto first = story.student(ReviewAsked{Skill::Pass, Mark::Yes, "I passed."});
    const auto second = story.student(ReviewAsked{Skill::Cut, Mark::Yes, "I cut."});
    story.student(ReviewAsked{Skill::Cut, Mark::Yes, "Not heard."}, aside);
    SheetRecord record = story.record();
    REQUIRE(record.reviews.size() == 2);
    CHECK(record.reviews[0].answer == Review::Answer::Pending);

    story.act(Initial{}, attestation);
    CHECK(story.record().reviews[0].answer == Review::Answer::Pending);
    story.beside(Return{}, {}, second);
    CHECK(story.record().reviews[0].answer == Review::Answer::Pending);

    story.act(ReviewAccepted{Skill::Pass, Mark::Yes, first}, second, "Yes, from the video.");
    record = story.record();
    CHECK(record.reviews[0].answer == Review::Answer::Accepted);
    CHECK(record.reviews[0].reason == "Yes, from the video.");
    CHECK(record.reviews[0].answeredBy == "Invented Instructor");
    CHECK(record.reviews[1].answer == Review::Answer::Declined);
    CHECK(record.content.marks.marks.of(Skill::Pass) == Mark::Yes);
    CHECK(record.content.marks.marks.of(Skill::Cut) == Mark::No);

    story.act(Initial{}, second, "The assistant cut.");
    record = story.record();
    CHECK(record.reviews[0].answer == Review::Answer::Accepted);
    CHECK(record.reviews[1].answer == Review::Answer::Declined);
    CHECK(record.reviews[1].reason == "The assistant cut.");
}

TEST_CASE("An action about an entry that is not here has seen nothing that is known", "[record]")
{
    Story story;
    story.student(attested(allYes()));
    story.student(ReviewAsked{Skill::Pass, Mark::No, "Too good."});
    story.act(Initial{true}, entry(0xEE));
    story.student(Withdrawn{"Mine?"});
    const SheetRecord record = story.record();
    CHECK(record.standing == SheetStanding::Initialed);
    CHECK_FALSE(record.changedAfterInitial);
    CHECK_FALSE(record.signers[0].confirmed);
    CHECK(record.reviews[0].answer == Review::Answer::Pending);
    CHECK_FALSE(record.withdrawal->stands);
    CHECK(orderOf(record) == std::vector<std::uint8_t>{1, 2, 4, 3});
}

TEST_CASE("Hand-overs that ended and refusals to sign are kept", "[record]")
{
    Story story;
    story.student(Opened{draft()});
    story.student(HandOverEnded{{}, {}, 2, HandOverCause::WrongPin});
    story.student(HandOverEnded{}, refused);
    story.student(Declined{"I did not scrub."});
    const SheetRecord record = story.record();
    REQUIRE(record.handOversEnded.size() == 1);
    CHECK(record.handOversEnded[0].wrongTries == 2);
    CHECK(english::inWords(record.history[1].what) ==
          "The hand-over ended unsigned: the PIN was wrong, 2 wrong tries.");
    CHECK(record.history[3].why == "I did not scrub.");
    CHECK(record.standing == SheetStanding::Open);
}

TEST_CASE("The history tells who did what and why, in an order that no clock decides", "[record]")
{
    Story story;
    story.student(Opened{draft()});                                        // 1
    const auto seen = story.student(attested(allYes()));                   // 2
    const auto later = story.student(Logged{{{0, Category::General, 0}}}); // 3
    const auto back = story.act(Return{}, seen, "Log it.");                // 4
    story.act(Refile{{{0, Category::Eye, 0}}}, later, "It was an eye.");   // 5
    story.beside(Void{}, back, seen);                                      // 6
    story.act(Initial{}, seen);                                            // 7, stands on 5
    for (Event& event : story.events.events) {
        event.claimed.seconds -= 1000 * event.entry.bytes[0];
    }
    const SheetRecord record = story.record();
    CHECK(orderOf(record) == std::vector<std::uint8_t>{1, 2, 4, 6, 3, 5, 7});
    CHECK(english::inWords(record.history[0].what) == "Opened the sheet: Appendectomy.");
    CHECK(english::inWords(record.history[1].what) == "Signed by Invented Preceptor, CST (card): 10 marks.");
    CHECK(english::inWords(record.history[2].what) == "Returned the sheet.");
    CHECK(record.history[2].why == "Log it.");
    CHECK(record.history[2].who.name == "Invented Instructor");
    CHECK(english::inWords(record.history[4].what) == "Logged under General.");
    CHECK(english::inWords(record.history[5].what) == "Re-filed under Eye.");
    CHECK(english::inWords(record.history[6].what) == "Initialed.");
}

TEST_CASE("Acts are placed alike whatever the order they come in", "[record]")
{
    Story story;
    const auto seen = story.student(attested(allYes()));
    const auto first = story.act(Initial{}, seen);
    story.beside(Void{}, first, seen);
    story.beside(Return{}, first, seen);
    const auto order = orderOf(story.record());
    std::reverse(story.events.events.begin() + 2, story.events.events.end());
    CHECK(orderOf(story.record()) == order);
}

TEST_CASE("A sheet that is only known from what does not count is shown", "[record]")
{
    Story story;
    story.student(Opened{draft()}, aside);
    const auto record = story.record();
    CHECK(record.standing == SheetStanding::Open);
    CHECK(record.content.procedures.empty());
    CHECK(record.history.size() == 1);
}
