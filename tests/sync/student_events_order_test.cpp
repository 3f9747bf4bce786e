#include "sync/merge/actions.h"
#include "sync/merge/contents.h"
#include "sync/merge/student_events.h"
#include "tests/sync/support/catch.h"
#include "tests/sync/support/events.h"

#include <algorithm>
#include <numeric>

namespace peelpack::test {
namespace {

using record::Part;
using record::SheetStanding;
using sheet::Mark;
using sheet::Skill;

std::vector<keys::Hash> orderOf(const record::StudentEvents& events)
{
    std::vector<keys::Hash> order;
    for (const record::Event& event : events.events) {
        order.push_back({event.entry.bytes});
    }
    return order;
}

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
        REQUIRE(record::recordOf(students.at(world.studentId)).sheets == sheets);
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
                CHECK(authority.judge(entry, authority.viewOf(entry.position.feed), statement.value(),
                                      authority.strengthOf(statement.value())) == judgment);
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

} // namespace peelpack::test
