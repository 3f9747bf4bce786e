#include "core/record/case_rows.h"
#include "sync/merge/actions.h"
#include "sync/merge/student_events.h"
#include "tests/sync/support/catch.h"
#include "tests/sync/support/world.h"

#include <algorithm>
#include <numeric>

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

const keys::Id firstSheet = idOf(0x51);
const keys::Id secondSheet = idOf(0x52);

record::StudentEvents eventsOf(const World& world)
{
    return merge::studentEvents(world.all.authority(), world.all, world.studentId);
}

const record::Event& eventAt(const record::StudentEvents& events, const journal::Position& position)
{
    const auto found = std::find_if(events.events.begin(), events.events.end(), [&](const record::Event& event) {
        return event.entry.bytes == position.hash.bytes;
    });
    REQUIRE(found != events.events.end());
    return *found;
}

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

record::SheetRecord sheetOf(const record::StudentEvents& events, const keys::Id& sheet)
{
    const record::StudentRecord student = record::recordOf(events);
    const auto found = std::find_if(student.sheets.begin(), student.sheets.end(),
                                    [&](const record::SheetRecord& one) { return one.id.bytes == sheet.bytes; });
    REQUIRE(found != student.sheets.end());
    return *found;
}

journal::Act actAbout(const keys::Id& sheet, const keys::Hash& standsOn, const journal::Position& about,
                      std::string reason = {})
{
    return {sheet, standsOn, about.hash, std::move(reason)};
}

std::vector<keys::Hash> orderOf(const record::StudentEvents& events)
{
    std::vector<keys::Hash> order;
    for (const record::Event& event : events.events) {
        order.push_back({event.entry.bytes});
    }
    return order;
}

/// The second device of the student, granted as the continuation of the first one's record.
keys::DeviceKey secondDevice(World& world, std::uint8_t seed)
{
    keys::DeviceKey device = deviceOf(seed);
    const journal::FeedId old = world.feedOf(world.student, world.studentId);
    const journal::Feed& feed = *world.all.feed(old);
    journal::Grant grant = world.grant(world.studentId, journal::Role::Student, device);
    grant.continues = journal::Position{old, feed.count() - 1, feed.head().hash};
    grant.name = "Newer Name";
    world.append(world.instructor, world.studentId, grant);
    return device;
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

TEST_CASE("Contradicting actions are walked as merge::actionsOf walks them", "[events]")
{
    World world;
    world.setUp();
    const auto logged = world.sheet(world.student, world.studentId, firstSheet);
    const auto first =
        world.append(world.instructor, world.studentId, journal::Initial{actAbout(firstSheet, {}, logged), false});
    world.append(world.secondInstructor, world.studentId,
                 journal::Return{actAbout(firstSheet, first.hash, logged, "The room does not fit.")});
    world.append(world.instructor, world.studentId,
                 journal::Amend{actAbout(firstSheet, first.hash, logged, "No."), {{Skill::Cut, Mark::No, {}}}, {}, {}});
    const auto byDirector = world.append(world.director, world.studentId,
                                         journal::Initial{actAbout(firstSheet, first.hash, logged), false});
    world.append(world.secondInstructor, world.studentId,
                 journal::Initial{actAbout(firstSheet, logged.hash, logged), false});
    const auto walked = merge::actionsOf(world.all.authority(), world.all, world.studentId).at(firstSheet);
    const record::StudentEvents events = eventsOf(world);
    std::vector<keys::Hash> inForce;
    std::vector<keys::Hash> beside;
    for (const record::Event& event : events.events) {
        if (const auto* one = std::get_if<record::Act>(&event.what)) {
            (one->inForce ? inForce : beside).push_back({event.entry.bytes});
        }
    }
    REQUIRE(walked.inForce.size() == 2);
    REQUIRE(inForce.size() == 2);
    CHECK(inForce[0] == walked.inForce[0].entry.position.hash);
    CHECK(inForce[1] == walked.inForce[1].entry.position.hash);
    CHECK(inForce[1] == byDirector.hash);
    REQUIRE(beside.size() == walked.beside.size());
    for (std::size_t i = 0; i < beside.size(); ++i) {
        CHECK(beside[i] == walked.beside[i].entry.position.hash);
    }
    const record::SheetRecord sheet = sheetOf(events, firstSheet);
    CHECK(sheet.standing == SheetStanding::Initialed);
    CHECK(sheet.initial->by.part == Part::Director);
    CHECK(sheet.content.marks.marks.of(Skill::Cut) == Mark::Yes);
}

TEST_CASE("A student whose second device continues the first has one record", "[events]")
{
    std::size_t smallerFirst = 0;
    for (std::uint8_t seed = 0x80; seed < 0x90; ++seed) {
        World world;
        world.setUp();
        const auto opened =
            world.append(world.student, world.studentId, journal::SheetOpened{firstSheet, idOf(0x50), draft()});
        const auto attestation =
            world.append(world.student, world.studentId,
                         journal::attest(world.statement(world.studentId, firstSheet), world.card).value());
        const keys::DeviceKey second = secondDevice(world, seed);
        const auto logged = world.append(second, world.studentId, journal::Logged{firstSheet, {{0, "general", 0}}});
        const record::StudentEvents events = eventsOf(world);
        CHECK(orderOf(events) == std::vector<keys::Hash>{opened.hash, attestation.hash, logged.hash});
        CHECK(events.name == "Newer Name");
        CHECK(record::recordOf(events).sheets.size() == 1);
        const record::SheetRecord sheet = sheetOf(events, firstSheet);
        CHECK(sheet.standing == SheetStanding::Signed);
        CHECK(sheet.content.choices.size() == 1);
        smallerFirst += logged.hash < opened.hash ? 1U : 0U;

        // Without having seen the second device's entry an initial leaves it without effect.
        world.append(world.instructor, world.studentId, journal::Initial{actAbout(firstSheet, {}, attestation), false});
        CHECK(sheetOf(eventsOf(world), firstSheet).changedAfterInitial);
    }
    CHECK(smallerFirst > 0); // else the order of the hashes alone would do
}

TEST_CASE("Devices that continue one another in a ring still give one order", "[events]")
{
    World world;
    world.setUp();
    const auto opened =
        world.append(world.student, world.studentId, journal::SheetOpened{firstSheet, idOf(0x50), draft()});
    const keys::DeviceKey second = secondDevice(world, 0x81);
    const auto logged = world.append(second, world.studentId, journal::Logged{firstSheet, {{0, "general", 0}}});
    journal::Grant grant = world.grant(world.studentId, journal::Role::Student, world.student);
    grant.continues = logged;
    world.append(world.instructor, world.studentId, grant);
    const auto order = orderOf(eventsOf(world));
    CHECK(order.size() == 2);
    CHECK(std::count(order.begin(), order.end(), opened.hash) == 1);
    CHECK(std::count(order.begin(), order.end(), logged.hash) == 1);
}

namespace {

bool isAttestation(std::uint16_t kind)
{
    return kind == static_cast<std::uint16_t>(journal::Kind::Attestation);
}

/// A program in which records fork, devices change, strangers write and instructors disagree, in batches.
std::vector<keys::Bytes> volumesOfStory(World& world)
{
    std::vector<keys::Bytes> volumes;
    merge::Ledger before(world.program);
    const auto keep = [&] {
        const auto heads = merge::contents(before).heads;
        volumes.push_back(volumeOf(world.program, merge::newsFor(merge::contents(world.all), heads)));
        before = world.all;
    };
    world.setUp();
    const auto logged = world.sheet(world.student, world.studentId, firstSheet);
    keep();
    const auto initial =
        world.append(world.instructor, world.studentId, journal::Initial{actAbout(firstSheet, {}, logged), false});
    world.append(world.secondInstructor, world.studentId,
                 journal::Return{actAbout(firstSheet, {}, logged, "The room does not fit.")});
    world.append(
        world.director, world.studentId,
        journal::Amend{actAbout(firstSheet, initial.hash, logged, "No."), {{Skill::Cut, Mark::No, {}}}, {}, {}});
    keep();
    const merge::Ledger fork = world.all;
    world.sheet(world.student, world.studentId, secondSheet);
    keep();
    world.all = fork; // the phone, restored, goes on otherwise
    world.append(world.student, world.studentId, journal::Withdrawn{firstSheet, "Twice."});
    const keys::DeviceKey second = secondDevice(world, 0x83);
    world.sheet(second, world.studentId, idOf(0x53));
    world.append(deviceOf(0x66), world.studentId, journal::Withdrawn{firstSheet, "Gone."});
    world.sheet(world.otherStudent, world.otherStudentId, idOf(0x54));
    keep();
    return volumes;
}

merge::Ledger takenIn(const World& world, const std::vector<keys::Bytes>& volumes,
                      const std::vector<std::size_t>& order)
{
    std::vector<merge::Batch> batches;
    for (const std::size_t index : order) {
        const auto read = parcel::readVolume(world.program, volumes[index]);
        REQUIRE(read.ok());
        batches.push_back(read.value().batch);
    }
    return merge::takeAll(merge::Ledger(world.program), batches).ledger;
}

} // namespace

TEST_CASE("Equal sets of entries give equal events and records, whatever the order they came in", "[events]")
{
    World world;
    const std::vector<keys::Bytes> volumes = volumesOfStory(world);
    std::vector<std::size_t> order(volumes.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    const merge::Ledger first = takenIn(world, volumes, order);
    REQUIRE(first.feed(world.feedOf(world.student, world.studentId))->forked());
    const auto expected = merge::allStudents(first.authority(), first);
    REQUIRE(expected.size() == 2);
    CHECK(expected.at(world.studentId).events.size() == 14);
    const auto sheets = record::recordOf(expected.at(world.studentId)).sheets;
    REQUIRE(sheets.size() == 3);
    CHECK(sheets[0].standing == SheetStanding::Returned);
    CHECK(sheets[1].standing == SheetStanding::Open); // past the fork: shown, not counted
    CHECK(sheets[1].history.size() == 3);
    CHECK(sheets[2].standing == SheetStanding::Signed);
    std::size_t orders = 0;
    while (std::next_permutation(order.begin(), order.end())) {
        const merge::Ledger ledger = takenIn(world, volumes, order);
        const auto students = merge::allStudents(ledger.authority(), ledger);
        REQUIRE(students == expected);
        const auto again = record::recordOf(students.at(world.studentId)).sheets;
        for (std::size_t i = 0; i < sheets.size(); ++i) {
            REQUIRE(again[i].standing == sheets[i].standing);
            REQUIRE(again[i].content == sheets[i].content);
            REQUIRE(std::equal(again[i].history.begin(), again[i].history.end(), sheets[i].history.begin(),
                               sheets[i].history.end(), [](const record::HistoryLine& a, const record::HistoryLine& b) {
                                   return a.entry == b.entry && a.what == b.what && a.weight == b.weight;
                               }));
        }
        ++orders;
    }
    CHECK(orders == 23);
}

TEST_CASE("All students at once are each as alone, those with nothing yet included", "[events]")
{
    World world;
    volumesOfStory(world);
    const keys::DeviceKey third = deviceOf(0x39);
    journal::Grant grant = world.grant(idOf(0x38), journal::Role::Student, third);
    grant.name = "Third Name";
    world.append(world.instructor, idOf(0x38), grant);
    world.append(deviceOf(0x66), idOf(0x3C), journal::Withdrawn{firstSheet, "Nobody's stream."});
    const trust::Authority authority = world.all.authority();
    const auto all = merge::allStudents(authority, world.all);
    REQUIRE(all.size() == 4);
    for (const auto& [student, events] : all) {
        CHECK(events == merge::studentEvents(authority, world.all, student));
    }
    CHECK(all.at(idOf(0x38)).name == "Third Name");
    CHECK(all.at(idOf(0x38)).events.empty());
    CHECK(all.at(idOf(0x3C)).name.empty());
    CHECK(all.at(idOf(0x3C)).events.size() == 1);
    CHECK(all.at(world.otherStudentId).events.size() == 3);
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

TEST_CASE("Judging an attestation with its statement at hand gives the same", "[events]")
{
    World world;
    volumesOfStory(world);
    journal::Revoke revoke;
    revoke.target = journal::KeyKind::Card;
    revoke.card = world.cardId;
    revoke.epoch = 1;
    revoke.reason = "Lost.";
    const auto checkAll = [&] {
        const trust::Authority authority = world.all.authority();
        std::size_t counted = 0;
        std::size_t others = 0;
        for (const auto& [id, feed] : world.all.feeds()) {
            journal::eachEntry(feed, isAttestation, [&](const journal::Decoded& entry) {
                const auto& attestation = std::get<journal::Attestation>(entry.payload);
                const auto statement = journal::decodeStatement(attestation.statement);
                const trust::Judgment judgment = authority.judge(entry);
                CHECK(authority.judge(entry, statement.value()) == judgment);
                (judgment.standing == trust::Judgment::Standing::Counts ? counted : others) += 1;
            });
        }
        return std::pair(counted, others);
    };
    CHECK(checkAll() == std::pair<std::size_t, std::size_t>{3, 0});
    world.receipt(world.instructor, world.studentId);
    world.append(world.instructor, world.programStream, revoke);
    CHECK(checkAll() == std::pair<std::size_t, std::size_t>{2, 1}); // what was receipted before stays
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
