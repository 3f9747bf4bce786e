#include "tests/support/catch.h"

#include "core/record/case_rows.h"

#include <algorithm>
#include <string>

using namespace peelpack;
using namespace peelpack::record;
using catalogue::Category;
using sheet::Mark;
using sheet::Skill;
using sheet::Strength;

namespace {

template <class Name>
Name named(std::uint8_t byte)
{
    Name name;
    name.bytes.fill(byte);
    return name;
}

base::EntryHash entry(std::uint8_t byte)
{
    return named<base::EntryHash>(byte);
}

ReasonedMarks marksOf(std::initializer_list<std::pair<Skill, Mark>> list)
{
    ReasonedMarks marks;
    for (const auto& [skill, mark] : list) {
        marks.set(skill, mark);
    }
    return marks;
}

ReasonedMarks allYes()
{
    ReasonedMarks marks;
    for (const Skill skill : sheet::allSkills) {
        marks.set(skill, Mark::Yes);
    }
    return marks;
}

Head head(std::string room = "4")
{
    Head head;
    head.date = *base::Date::fromIso("2026-03-01");
    head.room = std::move(room);
    return head;
}

Draft draft(std::vector<std::string> procedures = {"Appendectomy"}, const ReasonedMarks& marks = {},
            const Head& where = head())
{
    return {named<base::Id>(0x50), std::move(procedures), where, marks};
}

Attested attested(const ReasonedMarks& marks, Strength strength = Strength::Card,
                  std::string name = "Invented Preceptor", std::uint8_t person = 0x40)
{
    Attested result;
    result.operation = named<base::Id>(0x50);
    result.procedures = {"Appendectomy"};
    result.head = head();
    result.marks = marks;
    result.name = std::move(name);
    result.credential = "CST";
    result.person = named<base::Id>(person);
    result.strength = strength;
    return result;
}

/// Events of one student; entries are hashed 1, 2, 3 ... as they are added.
class Story {
public:
    base::Id sheet = named<base::Id>(0x51);
    StudentEvents events{named<base::Id>(0x30), "Invented Student", {}};

    base::EntryHash student(What what, Standing standing = {})
    {
        return add({Part::Student, named<base::Id>(0x30), "Invented Student"}, std::move(what), std::move(standing));
    }
    /// In force, standing on the last one in force, about the entry given.
    base::EntryHash act(Decision decision, const base::EntryHash& about, std::string reason = {},
                        std::uint8_t person = 0x20)
    {
        const base::EntryHash on = m_last;
        m_last = add({Part::Instructor, named<base::Id>(person), "Invented Instructor"},
                     Act{on, about, std::move(reason), true, std::move(decision)}, {});
        return m_last;
    }
    base::EntryHash beside(Decision decision, const base::EntryHash& standsOn, const base::EntryHash& about,
                           Standing standing = {})
    {
        return add({Part::Instructor, named<base::Id>(0x24), "Second Instructor"},
                   Act{standsOn, about, "Another view.", false, std::move(decision)}, std::move(standing));
    }

    [[nodiscard]] SheetRecord record() const
    {
        const StudentRecord all = recordOf(events);
        const auto found =
            std::find_if(all.sheets.begin(), all.sheets.end(), [&](const SheetRecord& one) { return one.id == sheet; });
        REQUIRE(found != all.sheets.end());
        return *found;
    }

private:
    base::EntryHash add(Writer writer, What what, Standing standing)
    {
        Event event;
        event.entry = entry(m_next++);
        event.sheet = sheet;
        event.writer = std::move(writer);
        event.claimed = {1'772'366'400, -300}; // 2026-03-01 12:00 UTC
        event.standing = std::move(standing);
        event.what = std::move(what);
        events.events.push_back(event);
        return event.entry;
    }

    std::uint8_t m_next = 1;
    base::EntryHash m_last;
};

const Standing aside{Standing::Verdict::Aside, "Nobody granted it."};
const Standing refused{Standing::Verdict::Refused, "Not allowed."};

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

std::vector<std::uint8_t> orderOf(const SheetRecord& record)
{
    std::vector<std::uint8_t> order;
    for (const HistoryLine& line : record.history) {
        order.push_back(line.entry.bytes[0]);
    }
    return order;
}

const HistoryLine& lineOf(const SheetRecord& record, const base::EntryHash& entry)
{
    return *std::find_if(record.history.begin(), record.history.end(),
                         [&](const HistoryLine& line) { return line.entry == entry; });
}

} // namespace

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
    CHECK(rowsOf(story).empty());
    story.student(Logged{{{0, Category::General, 0}}}, aside);
    CHECK(story.record().standing == SheetStanding::Returned);
    story.student(Logged{{{0, Category::General, 0}}});
    record = story.record();
    CHECK(record.standing == SheetStanding::Signed);
    CHECK(record.returned->answered);
    CHECK(rowsOf(story).size() == 1);
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
    CHECK(rowsOf(story).empty());
}

TEST_CASE("An initial by the only attester does not count alone", "[record]")
{
    Story story;
    auto seen = story.student(attested(allYes(), Strength::Card, "Both", 0x20));
    SECTION("alone")
    {
        story.act(Initial{}, seen);
        CHECK(story.record().initial->onlyByAttester);
        CHECK_FALSE(rowsOf(story).front().initialed);
    }
    SECTION("with another attester")
    {
        seen = story.student(attested(allYes(), Strength::Card, "Another", 0x41));
        story.act(Initial{}, seen);
        CHECK_FALSE(story.record().initial->onlyByAttester);
        CHECK(rowsOf(story).front().initialed);
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
        CHECK(rowsOf(story).empty());
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
        CHECK(lineOf(record, withdrawn).what == "Asked to withdraw the sheet.");
        CHECK(rowsOf(story).size() == 1);
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
    CHECK(record.history[1].what == "The hand-over ended unsigned: the PIN was wrong, 2 wrong tries.");
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
    CHECK(record.history[0].what == "Opened the sheet: Appendectomy.");
    CHECK(record.history[1].what == "Signed by Invented Preceptor, CST (card): 10 marks.");
    CHECK(record.history[2].what == "Returned the sheet.");
    CHECK(record.history[2].why == "Log it.");
    CHECK(record.history[2].who.name == "Invented Instructor");
    CHECK(record.history[4].what == "Logged under General.");
    CHECK(record.history[5].what == "Re-filed under Eye.");
    CHECK(record.history[6].what == "Initialed.");
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

TEST_CASE("A sheet that is only known from what does not count is shown and has no rows", "[record]")
{
    Story story;
    story.student(Opened{draft()}, aside);
    const auto record = story.record();
    CHECK(record.standing == SheetStanding::Open);
    CHECK(record.content.procedures.empty());
    CHECK(record.history.size() == 1);
    CHECK(rowsOf(story).empty());
}

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
