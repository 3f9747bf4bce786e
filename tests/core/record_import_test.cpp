#include "core/questions/sheet_questions.h"
#include "core/record/case_rows.h"
#include "core/record/sheet_role.h"
#include "core/sheet/row_writer.h"
#include "core/sheet/sheet_reader.h"
#include "core/tally/why_not_counted.h"
#include "platform/english/history.h"
#include "platform/files/resources.h"
#include "tests/support/catch.h"
#include "tests/support/shipped_sets.h"
#include "tests/support/story.h"

using namespace peelpack;
using namespace peelpack::record;
using catalogue::Category;
using sheet::Mark;
using sheet::Skill;
using support::lineOf;
using support::Story;

namespace {

std::vector<sheet::CaseRow> rowsOf(const Story& story)
{
    const RowRules rules{[](std::string_view) { return catalogue::CategoryList{Category::General}; },
                         [](sheet::Strength, bool) { return true; }};
    return caseRows(recordOf(story.events), rules);
}

/// The tally of the rows, by the path of a file or by that of a journal.
struct Counted {
    sheet::SheetReader::Reading reading;
    tally::StudentTally tally;
};
Counted counted(const std::vector<sheet::CaseRow>& rows, bool journal, tally::Level level)
{
    static const catalogue::Catalogue catalogue = files::shippedCatalogue().value();
    static const requirement::RequirementSet set = support::shippedSet("cap15");
    sheet::SheetReader reader(catalogue);
    if (journal) {
        reader.holdImports();
    }
    reader.feed(sheet::headerLine());
    for (const sheet::CaseRow& row : rows) {
        reader.feed(sheet::rowLine(row));
    }
    Counted result{reader.finish().value(), {}};
    tally::Tallier tallier(set, level, tally::everyStrength);
    REQUIRE(result.reading.book.students().size() == 1);
    result.tally = tallier.tally(result.reading.book, result.reading.book.students().front(), {});
    return result;
}

} // namespace

TEST_CASE("An imported sheet has its written role, no marks and no signature", "[record][import]")
{
    Story story;
    const base::EntryHash entry = story.imported(support::imported(sheet::Role::Second));
    const SheetRecord record = story.record();
    CHECK(record.standing == SheetStanding::Imported);
    CHECK(id(record.standing) == "imported");
    REQUIRE(record.imported);
    CHECK(record.imported->entry == entry);
    CHECK(record.imported->by.name == "Invented Instructor");
    CHECK(record.imported->said.source == "paper log of spring, page 3");
    CHECK(record.operation == support::named<base::Id>(0x50));
    CHECK(record.content.procedures == std::vector<std::string>{"Appendectomy"});
    CHECK(record.content.choices == std::vector<Choice>{{0, Category::General, 0}});
    CHECK(record.content.marks.marks.none());
    CHECK(record.strength == sheet::Strength::None);
    CHECK_FALSE(record.isSigned());
    CHECK(outcomeOf(record, {}) == role::Outcome::Second);
    CHECK(whyOf(record, {}) == "The role was written on a paper log, which carries no marks.");
    CHECK(english::inWords(lineOf(record, entry).what) ==
          "Imported from paper log of spring, page 3: Appendectomy, second scrub.");
    CHECK(questions::waits(record, false));
    CHECK(questions::sheetQuestions(record, false, false).empty());

    Imported canceled = support::imported();
    canceled.head.canceled = true;
    Story other;
    other.imported(canceled);
    CHECK(outcomeOf(other.record(), {}) == role::Outcome::Canceled);
}

TEST_CASE("An imported sheet is amended, re-filed, returned, initialed and made void like another", "[record][import]")
{
    Story story;
    const base::EntryHash entry = story.imported(support::imported());
    Head moved = support::head("7");
    story.act(Amend{{}, moved, {"Hernia repair"}}, entry, "Read wrongly.");
    SheetRecord record = story.record();
    CHECK(record.standing == SheetStanding::Amended);
    CHECK(record.content.head.room == "7");
    CHECK(record.content.procedures == std::vector<std::string>{"Hernia repair"});
    REQUIRE(record.original);
    CHECK(record.original->procedures == std::vector<std::string>{"Appendectomy"});
    story.act(Refile{{{0, Category::Genitourinary, 0}}}, entry, "Filed wrongly.");
    CHECK(story.record().content.choices == std::vector<Choice>{{0, Category::Genitourinary, 0}});
    story.act(Initial{}, entry);
    record = story.record();
    CHECK(record.standing == SheetStanding::Initialed);
    REQUIRE(record.initial);
    CHECK_FALSE(record.initial->onlyByAttester);
    CHECK(record.imported);
    story.act(Return{}, entry, "Which page?");
    CHECK(story.record().standing == SheetStanding::Returned);
    CHECK(rowsOf(story).empty());
    story.act(Void{}, entry, "Not in the log.");
    CHECK(story.record().standing == SheetStanding::Void);
}

TEST_CASE("Nobody changes the marks of an imported sheet", "[record][import]")
{
    Story story;
    const base::EntryHash entry = story.imported(support::imported(sheet::Role::Observed));
    const base::EntryHash amended =
        story.act(Amend{support::allYes(), support::head("7"), {"Hernia repair"}}, entry, "All Yes.");
    const base::EntryHash asked = story.student(ReviewAsked{Skill::Pass, Mark::Yes, "I passed."});
    const base::EntryHash accepted = story.act(ReviewAccepted{Skill::Pass, Mark::Yes, asked}, asked);
    const SheetRecord record = story.record();
    CHECK(record.content.marks.marks.none());
    CHECK(record.content.head.room == "4"); // as a whole without effect
    CHECK(record.content.procedures == std::vector<std::string>{"Appendectomy"});
    CHECK_FALSE(record.original);
    CHECK(record.reviews.empty());
    CHECK(outcomeOf(record, {}) == role::Outcome::Observed);
    CHECK(record.standing == SheetStanding::Amended); // and still not initialed
    for (const base::EntryHash& act : {amended, accepted}) {
        CHECK(lineOf(record, act).weight == Weight::NoEffect);
        CHECK(lineOf(record, act).whyNot == "The sheet was imported: it has no marks to change.");
    }
}

TEST_CASE("The student of an imported sheet can withdraw it and nothing else", "[record][import]")
{
    Story story;
    story.imported(support::imported());
    std::vector<base::EntryHash> vain{story.student(HeadChanged{support::draft({"Craniotomy"}, support::allYes())}),
                                      story.student(Logged{{{0, Category::Neurosurgery, 0}}}),
                                      story.student(ReviewAsked{Skill::Pass, Mark::Yes, "I passed."}),
                                      story.student(HandOverEnded{{}, {}, 3, HandOverCause::WrongPin}),
                                      story.student(Declined{"Was away."})};
    SheetRecord record = story.record();
    CHECK(record.standing == SheetStanding::Imported);
    CHECK(record.content.procedures == std::vector<std::string>{"Appendectomy"});
    CHECK(record.content.choices == std::vector<Choice>{{0, Category::General, 0}});
    CHECK(record.handOversEnded.empty());
    CHECK_FALSE(record.unsignedVersion);
    for (const base::EntryHash& entry : vain) {
        CHECK(lineOf(record, entry).weight == Weight::NoEffect);
        CHECK(lineOf(record, entry).whyNot == "The sheet was imported: the student can only withdraw it.");
    }
    const base::EntryHash withdrawn = story.student(Withdrawn{"That was not me."});
    record = story.record();
    CHECK(record.standing == SheetStanding::Withdrawn);
    CHECK(lineOf(record, withdrawn).weight == Weight::Counts);
    CHECK(rowsOf(story).empty());
}

TEST_CASE("A withdrawal after the initial of an imported sheet is a request", "[record][import]")
{
    Story story;
    const base::EntryHash entry = story.imported(support::imported());
    story.act(Initial{}, entry);
    const base::EntryHash withdrawn = story.student(Withdrawn{"That was not me."});
    const SheetRecord record = story.record();
    CHECK(record.standing == SheetStanding::Initialed);
    CHECK(record.history.size() == 3);
    CHECK(lineOf(record, withdrawn).weight == Weight::NoEffect);
    CHECK(record.history.back().entry == withdrawn); // after the initial, whose writer had not seen it
    CHECK(questions::waits(record, false));
}

TEST_CASE("An import under a student's own sheet has no effect", "[record][import]")
{
    Story story;
    const base::EntryHash opened = story.student(Opened{support::draft({"Cystoscopy"})});
    const base::EntryHash entry = story.imported(support::imported());
    SheetRecord record = story.record();
    CHECK_FALSE(record.imported);
    CHECK(record.standing == SheetStanding::Open);
    CHECK(record.content.procedures == std::vector<std::string>{"Cystoscopy"});
    CHECK(lineOf(record, entry).weight == Weight::NoEffect);
    CHECK(lineOf(record, entry).whyNot == "The sheet is the student's own.");
    CHECK(lineOf(record, opened).weight == Weight::Counts);

    // Nor does a student get an initial that was given to an import.
    Story taken;
    const base::EntryHash import = taken.imported(support::imported());
    taken.act(Initial{}, import);
    CHECK(taken.record().standing == SheetStanding::Initialed);
    taken.student(Opened{support::draft({"Craniotomy"}, support::allYes())});
    taken.student(support::attested(support::allYes()));
    record = taken.record();
    CHECK_FALSE(record.imported);
    CHECK(record.content.procedures.empty());
    CHECK(record.changedAfterInitial);
    CHECK(rowsOf(taken).empty());
    CHECK(questions::waits(record, false));

    // What does not count of the student's does not make it theirs.
    Story aside;
    aside.student(Opened{support::draft({"Cystoscopy"})}, support::aside);
    aside.imported(support::imported());
    CHECK(aside.record().imported);
}

TEST_CASE("Of several imports of a sheet one holds, and none after it was initialed", "[record][import]")
{
    Imported other = support::imported();
    other.procedures = {"Craniotomy"};
    Story story;
    other.again = true;
    const base::EntryHash again = story.imported(other); // the smaller hash, and the second of its device
    const base::EntryHash first = story.imported(support::imported());
    CHECK(story.record().imported->entry == first);
    CHECK(lineOf(story.record(), again).whyNot == "The sheet was imported before.");
    story.act(Initial{}, again); // names one that cannot be in effect
    CHECK(story.record().content.procedures == std::vector<std::string>{"Appendectomy"});

    other.again = false;
    Story both;
    const base::EntryHash smaller = both.imported(other);
    const base::EntryHash larger = both.imported(support::imported());
    CHECK(both.record().imported->entry == smaller);
    both.act(Initial{}, larger);
    CHECK(both.record().imported->entry == larger);
    CHECK(both.record().content.procedures == std::vector<std::string>{"Appendectomy"});

    Story refused;
    const base::EntryHash without = refused.imported(other, support::refused);
    CHECK_FALSE(refused.record().imported);
    CHECK(lineOf(refused.record(), without).weight == Weight::Refused);
}

TEST_CASE("An imported sheet counts nowhere until it is initialed, then with its role", "[tally][import]")
{
    for (const auto& [role, first] : {std::pair(sheet::Role::First, 1), std::pair(sheet::Role::Second, 0)}) {
        Story story;
        const base::EntryHash entry = story.imported(support::imported(role));
        std::vector<sheet::CaseRow> rows = rowsOf(story);
        REQUIRE(rows.size() == 1);
        CHECK(rows[0].importedRole == role);
        CHECK(rows[0].preceptor == "Invented Preceptor");
        CHECK(rows[0].attested == sheet::Strength::None);
        CHECK_FALSE(rows[0].initialed);
        for (const tally::Level level : {tally::Level::Recorded, tally::Level::Attested, tally::Level::Initialed}) {
            const Counted waiting = counted(rows, true, level);
            CHECK(waiting.tally.best.value.counted == 0);
            REQUIRE(waiting.tally.candidates.size() == 1);
            const tally::WhyNotCounted why =
                tally::whyNotCounted(support::shippedSet("cap15"), waiting.tally, waiting.tally.best, 0);
            CHECK(why.obstacle == tally::Obstacle::ImportNotInitialed);
            CHECK(tally::sentence(why) == "Imported, not attested: it counts once an instructor has initialed it.");
        }
        CHECK(counted(rows, false, tally::Level::Recorded).tally.best.value.counted == 1); // a file is taken as it is
        story.act(Initial{}, entry);
        rows = rowsOf(story);
        REQUIRE(rows.size() == 1);
        CHECK(rows[0].initialed);
        for (const tally::Level level : {tally::Level::Recorded, tally::Level::Initialed}) {
            const Counted now = counted(rows, true, level);
            CHECK(now.tally.best.value.counted == 1);
            CHECK(now.tally.best.value.firstScrub == first);
        }
        CHECK(counted(rows, true, tally::Level::Attested).tally.best.value.counted == 0); // nobody attested it
    }
}

TEST_CASE("An import beside another sheet of that day and procedure is a question", "[questions][import]")
{
    Story story;
    story.imported(support::imported());
    story.sheet = support::named<base::Id>(0x52);
    const base::EntryHash opened = story.student(Opened{support::draft({"  APPENDECTOMY "})});
    story.sheet = support::named<base::Id>(0x53);
    story.student(Opened{support::draft({"Appendectomy"})});
    StudentRecord student = recordOf(story.events);
    REQUIRE(student.sheets.size() == 3);
    const auto named = [](std::uint8_t byte) { return support::named<base::Id>(byte); };
    CHECK(questions::sameCases(student, student.sheets[0]) == std::vector<base::Id>{named(0x52), named(0x53)});
    CHECK(questions::sameCases(student, student.sheets[1]) == std::vector<base::Id>{named(0x51)}); // not the other own
    const auto asked = questions::sheetQuestions(student.sheets[0], false, false, {"52525252"});
    REQUIRE(asked.size() == 1);
    CHECK(asked[0].kind == questions::SheetQuestionKind::SameCase);
    CHECK(asked[0].sentence == "It may be entered twice: 52525252 has the same date and procedure.");

    student.sheets[1].content.head.date = *base::Date::fromIso("2026-03-02");
    student.sheets[2].standing = SheetStanding::Withdrawn;
    CHECK(questions::sameCases(student, student.sheets[0]).empty());
    CHECK(lineOf(student.sheets[1], opened).weight == Weight::Counts);
}
