#include "core/record/case_rows.h"
#include "sync/merge/actions.h"
#include "sync/merge/contents.h"
#include "tests/sync/support/catch.h"
#include "tests/sync/support/events.h"

#include <algorithm>

namespace peelpack::test {
namespace {

using catalogue::Category;
using journal::Reason;
using record::Part;
using record::SheetStanding;
using sheet::Mark;
using sheet::Skill;
using sheet::Strength;
using Verdict = record::Standing::Verdict;

template <class Kind>
const Kind& contentAt(const record::StudentEvents& events, const journal::Position& position)
{
    const auto* content = std::get_if<Kind>(&eventAt(events, position).what);
    REQUIRE(content != nullptr);
    return *content;
}

template <class Kind>
const Kind& decisionAt(const record::StudentEvents& events, const journal::Position& position)
{
    const auto* decision = std::get_if<Kind>(&contentAt<record::Act>(events, position).decision);
    REQUIRE(decision != nullptr);
    return *decision;
}

} // namespace

TEST_CASE("A sheet that was opened, signed, logged and initialed is one record with all of it", "[events]")
{
    World world;
    world.setUp();
    const auto logged = world.sheet(world.student, world.studentId, firstSheet);
    const auto initial =
        world.append(world.instructor, world.studentId, journal::Initial{actAbout(firstSheet, {}, logged), true});
    const record::StudentEvents events = eventsOf(world);
    CHECK(events.student.bytes == world.studentId.bytes);
    CHECK(events.name == "Invented Name");
    REQUIRE(events.events.size() == 4);
    CHECK(events.events[0].writer.part == Part::Student);
    CHECK(events.events[0].writer.person.bytes == world.studentId.bytes);
    CHECK(events.events[0].writer.name == "Invented Name");
    CHECK(eventAt(events, initial).writer.part == Part::Instructor);
    CHECK(eventAt(events, initial).writer.person.bytes == world.instructorId.bytes);
    CHECK(eventAt(events, initial).claimed.seconds == 1'772'366'400 + 60 * 9);
    CHECK(eventAt(events, initial).claimed.zone == -300);

    const record::SheetRecord sheet = sheetOf(events, firstSheet);
    CHECK(sheet.standing == SheetStanding::Initialed);
    CHECK(sheet.operation.bytes == idOf(0x50).bytes);
    CHECK(sheet.strength == Strength::Card);
    CHECK(sheet.content.procedures == draft().procedures);
    CHECK(sheet.content.head.date == draft().head.date);
    CHECK(sheet.content.head.surgeon == "Invented Surgeon");
    CHECK(sheet.content.head.site == "North Pavilion");
    CHECK(sheet.content.head.room == "4");
    CHECK(sheet.content.head.start == 450);
    CHECK(sheet.content.head.end == record::notSaid);
    CHECK_FALSE(sheet.content.head.canceled);
    CHECK(sheet.content.marks.marks.of(Skill::Pass) == Mark::Yes);
    CHECK(sheet.content.marks.reason(Skill::Camera) == "held by the second assistant");
    CHECK(sheet.content.choices == std::vector<record::Choice>{{0, Category::General, 0}});
    REQUIRE(sheet.signers.size() == 1);
    CHECK(sheet.signers[0].statement.name == "Invented Preceptor");
    CHECK(sheet.signers[0].statement.credential == "CST");
    REQUIRE(sheet.signers[0].statement.person);
    CHECK(sheet.signers[0].statement.person->bytes == world.preceptorId.bytes);
    CHECK(sheet.signers[0].statement.signedAt.seconds == minute(5).seconds);
    CHECK(sheet.signers[0].confirmed);
    CHECK(sheet.feedback ==
          std::vector<record::FeedbackText>{{"Invented Preceptor", "Calm and ahead of the surgeon."}});
    REQUIRE(sheet.initial);
    CHECK_FALSE(sheet.initial->onlyByAttester);
    CHECK(sheet.history.size() == 4);
    CHECK(std::all_of(sheet.history.begin(), sheet.history.end(),
                      [](const record::HistoryLine& line) { return line.weight == record::Weight::Counts; }));
}

TEST_CASE("Every kind of entry about a sheet keeps what it says", "[events]")
{
    World world;
    world.setUp();
    const auto student = [&](const journal::Payload& payload) {
        return world.append(world.student, world.studentId, payload);
    };
    const auto instructor = [&](const journal::Payload& payload) {
        return world.append(world.instructor, world.studentId, payload);
    };
    journal::Draft changed = draft();
    changed.procedures = {"Cystoscopy", "Biopsy"};
    changed.head.canceled = true;
    const auto headChanged = student(journal::HeadChanged{firstSheet, idOf(0x5A), changed});
    const auto log = student(journal::Logged{firstSheet, {{0, "eye", 1}, {1, "of-a-newer-version", 1}}});
    const auto asked =
        student(journal::ReviewAsked{firstSheet, {Skill::Counts, Mark::NotApplicable, {}}, "None were called for."});
    const auto ended =
        student(journal::HandOverEnded{firstSheet, minute(1), minute(2), 3, journal::HandOverCause::WrongCard});
    const auto declined = student(journal::Declined{firstSheet, "I did not scrub."});
    const auto withdrawn = student(journal::Withdrawn{firstSheet, "Twice."});
    journal::Amend amend{actAbout(firstSheet, {}, asked, "The board."), {{Skill::Cut, Mark::No, {}}}, {}, {"Look"}};
    amend.head = changed.head;
    const auto amended = instructor(amend);
    const auto refiled = instructor(
        journal::Refile{actAbout(firstSheet, amended.hash, withdrawn, "A scope."), {{0, "diagnostic-endoscopy", 0}}});
    const auto accepted =
        instructor(journal::ReviewAccepted{actAbout(firstSheet, refiled.hash, withdrawn, "So it was."),
                                           asked.hash,
                                           {Skill::Counts, Mark::NotApplicable, {}}});
    const auto back = instructor(journal::Return{actAbout(firstSheet, accepted.hash, withdrawn, "Look.")});
    const auto gone = instructor(journal::Void{actAbout(firstSheet, back.hash, withdrawn, "Twice.")});

    const record::StudentEvents events = eventsOf(world);
    CHECK(events.events.size() == 11);
    const auto& draftSaid = contentAt<record::HeadChanged>(events, headChanged).draft;
    CHECK(draftSaid.operation.bytes == idOf(0x5A).bytes);
    CHECK(draftSaid.procedures == changed.procedures);
    CHECK(draftSaid.head.canceled);
    CHECK(draftSaid.marks.marks.of(Skill::Camera) == Mark::NotApplicable);
    CHECK(contentAt<record::Logged>(events, log).choices ==
          std::vector<record::Choice>{{0, Category::Eye, 1}, {1, std::nullopt, 1}});
    CHECK(contentAt<record::ReviewAsked>(events, asked) ==
          record::ReviewAsked{Skill::Counts, Mark::NotApplicable, "None were called for."});
    const auto& handOver = contentAt<record::HandOverEnded>(events, ended);
    CHECK(handOver.began.seconds == minute(1).seconds);
    CHECK(handOver.ended.seconds == minute(2).seconds);
    CHECK(handOver.wrongTries == 3);
    CHECK(handOver.cause == record::HandOverCause::WrongCard);
    CHECK(contentAt<record::Declined>(events, declined).reason == "I did not scrub.");
    CHECK(contentAt<record::Withdrawn>(events, withdrawn).reason == "Twice.");
    const auto& change = decisionAt<record::Amend>(events, amended);
    CHECK(change.marks.marks.of(Skill::Cut) == Mark::No);
    CHECK(change.procedures == std::vector<std::string>{"Look"});
    REQUIRE(change.head);
    CHECK(change.head->canceled);
    const auto& act = contentAt<record::Act>(events, amended);
    CHECK(act.standsOn.isZero());
    CHECK(act.about.bytes == asked.hash.bytes);
    CHECK(act.reason == "The board.");
    CHECK(act.inForce);
    CHECK(decisionAt<record::Refile>(events, refiled).choices ==
          std::vector<record::Choice>{{0, Category::DiagnosticEndoscopy, 0}});
    CHECK(contentAt<record::Act>(events, refiled).standsOn.bytes == amended.hash.bytes);
    CHECK(decisionAt<record::ReviewAccepted>(events, accepted).request.bytes == asked.hash.bytes);
    CHECK(decisionAt<record::ReviewAccepted>(events, accepted).skill == Skill::Counts);
    CHECK(decisionAt<record::ReviewAccepted>(events, accepted).mark == Mark::NotApplicable);
    decisionAt<record::Return>(events, back);
    decisionAt<record::Void>(events, gone);
    CHECK(sheetOf(events, firstSheet).standing == SheetStanding::Void);
}

TEST_CASE("Entries that do not count are there with the reason, and neither sign nor act", "[events]")
{
    World world;
    world.setUp();
    world.append(world.student, world.studentId, journal::SheetOpened{firstSheet, idOf(0x50), draft()});
    journal::Statement forged = world.statement(world.studentId, firstSheet);
    const keys::SigningKey other = signerOf(0x77);
    forged.signer.key = other.verifyKey(); // another key for a vouched card
    const auto unknownSigner = world.append(world.student, world.studentId, journal::attest(forged, other).value());
    const auto ownInitial = world.append(world.student, world.studentId, journal::Initial{act(firstSheet, {}), false});
    const keys::DeviceKey stranger = deviceOf(0x66);
    const auto nobody = world.append(stranger, world.studentId, journal::Withdrawn{firstSheet, "Gone."});
    const auto staffSheet =
        world.append(world.instructor, world.studentId, journal::SheetOpened{secondSheet, idOf(0x50), draft()});

    const record::StudentEvents events = eventsOf(world);
    CHECK(events.events.size() == 5);
    const auto& standing = eventAt(events, unknownSigner).standing;
    CHECK(standing.verdict == Verdict::Aside);
    CHECK(standing.why == journal::sentence(Reason::UnknownSigner));
    CHECK(eventAt(events, ownInitial).standing.verdict == Verdict::Refused);
    CHECK(eventAt(events, ownInitial).standing.why == journal::sentence(Reason::RoleMayNotWrite));
    CHECK_FALSE(contentAt<record::Act>(events, ownInitial).inForce);
    CHECK(eventAt(events, nobody).standing.why == journal::sentence(Reason::NoGrant));
    CHECK(eventAt(events, nobody).writer == record::Writer{});
    CHECK(eventAt(events, staffSheet).standing.verdict == Verdict::Refused);
    CHECK(eventAt(events, staffSheet).writer.part == Part::Instructor);
    const record::SheetRecord sheet = sheetOf(events, firstSheet);
    CHECK(sheet.standing == SheetStanding::Open);
    CHECK(sheet.signers.empty());
    CHECK(sheet.history.size() == 4);
    CHECK(sheetOf(events, secondSheet).content.procedures.empty());
}

TEST_CASE("An attestation past a fork signs once an instructor admits it", "[events]")
{
    World world;
    world.setUp();
    world.append(world.student, world.studentId, journal::SheetOpened{firstSheet, idOf(0x50), draft()});
    const merge::Ledger fork = world.all;
    const auto attestation =
        world.append(world.student, world.studentId,
                     journal::attest(world.statement(world.studentId, firstSheet), world.card).value());
    const merge::Ledger one = world.all;
    world.all = fork;
    world.append(world.student, world.studentId, journal::Withdrawn{secondSheet, "Other."});
    auto both = merge::take(world.all, merge::contents(one));
    REQUIRE(both.ok());
    world.all = std::move(both).value().ledger;
    CHECK(sheetOf(eventsOf(world), firstSheet).standing == SheetStanding::Open);
    CHECK(eventAt(eventsOf(world), attestation).standing.why == journal::sentence(Reason::PastFork));
    world.append(world.instructor, world.studentId, journal::Admit{attestation, "Seen on the phone."});
    CHECK(sheetOf(eventsOf(world), firstSheet).standing == SheetStanding::Signed);
}

TEST_CASE("An initial by the preceptor who attested shows as theirs alone", "[events]")
{
    World world;
    world.setUp();
    const keys::SigningKey phone = signerOf(0x48);
    journal::Vouch vouch;
    vouch.person = world.instructorId;
    vouch.name = "Invented Instructor";
    vouch.keyKind = journal::KeyKind::Device;
    vouch.key = phone.verifyKey();
    world.append(world.director, world.programStream, vouch);
    journal::Statement statement = world.statement(world.studentId, firstSheet);
    statement.signer.kind = journal::SignerKind::Device;
    statement.signer.key = phone.verifyKey();
    statement.signer.card = {};
    statement.signer.epoch = 0;
    world.append(world.student, world.studentId, journal::SheetOpened{firstSheet, idOf(0x50), draft()});
    const auto attestation = world.append(world.student, world.studentId, journal::attest(statement, phone).value());
    const auto initial =
        world.append(world.instructor, world.studentId, journal::Initial{actAbout(firstSheet, {}, attestation), false});
    const record::SheetRecord sheet = sheetOf(eventsOf(world), firstSheet);
    CHECK(sheet.strength == Strength::OwnPhone);
    CHECK(sheet.initial->onlyByAttester);
    CHECK(merge::initialedOnlyByAttester(world.all.authority(), world.all, world.studentId, firstSheet));
    world.append(world.secondInstructor, world.studentId,
                 journal::Initial{actAbout(firstSheet, initial.hash, attestation), false});
    CHECK_FALSE(sheetOf(eventsOf(world), firstSheet).initial->onlyByAttester);
}

TEST_CASE("A ledger's sheets become rows", "[events]")
{
    World world;
    world.setUp();
    const auto logged = world.sheet(world.student, world.studentId, firstSheet);
    world.sheet(world.student, world.studentId, secondSheet);
    world.append(world.instructor, world.studentId, journal::Initial{actAbout(firstSheet, {}, logged), false});
    const record::RowRules rules{[](std::string_view) {
                                     return catalogue::CategoryList{Category::General, Category::Eye};
                                 },
                                 [](Strength strength, bool) { return strength == Strength::Card; }};
    const auto rows = record::caseRows(record::recordOf(eventsOf(world)), rules);
    REQUIRE(rows.size() == 2);
    CHECK(rows[0].sheet == "51515151");
    CHECK(rows[0].operation == "50505050");
    CHECK(rows[1].operation == "50505050");
    CHECK(rows[0].categories == catalogue::CategoryList{Category::General, Category::Eye});
    CHECK(rows[0].attested == Strength::Card);
    REQUIRE(rows[0].initialed);
    CHECK_FALSE(rows[1].initialed);
    CHECK(rows[0].marks.of(Skill::Camera) == Mark::NotApplicable);
}

} // namespace peelpack::test
