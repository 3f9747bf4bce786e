#include "sync/merge/bounds.h"
#include "sync/merge/receipts.h"
#include "tests/sync/support/catch.h"
#include "tests/sync/support/world.h"

// Rows 3 to 7 of the journal document's section 7, by number: what a student can do to feeds and attestations. Row 11
// is in parcel_test.cpp, 12 in hostile_test.cpp and vectors_test.cpp, 19 in vectors_test.cpp and keys_test.cpp, the
// others in attacks_on_authority_test.cpp.
namespace peelpack::test {
namespace {

using journal::Reason;
using journal::Verdict;
using Standing = trust::Judgment::Standing;

merge::StatedHead headOf(const merge::Ledger& ledger, const journal::FeedId& id)
{
    const journal::Feed& feed = *ledger.feed(id);
    return {id, feed.count(), feed.head()};
}

} // namespace

TEST_CASE("Attack 3: an attestation copied to another sheet, student or program does not verify", "[attack]")
{
    World world;
    world.setUp();
    const journal::Attestation genuine =
        journal::attest(world.statement(world.studentId, idOf(0x51)), world.card).value();
    const journal::FeedId own = world.feedOf(world.student, world.studentId);
    REQUIRE(journal::checkAttestation(genuine, world.program, own).ok());

    SECTION("another student's feed")
    {
        const journal::FeedId other = world.feedOf(world.otherStudent, world.otherStudentId);
        CHECK(journal::checkAttestation(genuine, world.program, other).reason() == Reason::WrongStudent);
        const auto written = journal::writeEntry(world.program, world.all.next(other), {minute(1), std::nullopt},
                                                 genuine, world.otherStudent.signing);
        CHECK(written.reason() == Reason::WrongStudent);
    }
    SECTION("another student's feed, through a modified app that writes it all the same")
    {
        const journal::FeedId other = world.feedOf(world.otherStudent, world.otherStudentId);
        const auto payload = journal::encode(genuine).value();
        const auto written = journal::writeRawEntry(world.program, world.all.next(other), {minute(1), std::nullopt},
                                                    static_cast<std::uint16_t>(journal::Kind::Attestation), payload,
                                                    world.otherStudent.signing);
        const auto taken = offer(world.all, {other, 0, {keys::ByteView(written.value().bytes)}});
        REQUIRE(taken.report.findings.size() == 1);
        CHECK(taken.report.findings[0].verdict == Verdict::Refused);
        CHECK(taken.report.findings[0].reason == Reason::WrongStudent);
        CHECK(volumeOf(taken.ledger) == volumeOf(world.all));
    }
    SECTION("another sheet: the sheet's id is inside what was signed")
    {
        journal::Attestation moved = genuine;
        const keys::Bytes from(16, 0x51);
        const auto at = std::search(moved.statement.begin(), moved.statement.end(), from.begin(), from.end());
        REQUIRE(at != moved.statement.end());
        std::fill(at, at + 16, std::uint8_t{0x52});
        CHECK(journal::decodeStatement(moved.statement).value().sheet == idOf(0x52));
        CHECK(journal::checkAttestation(moved, world.program, own).reason() == Reason::BadSignature);
    }
    SECTION("another program")
    {
        CHECK(journal::checkAttestation(genuine, signerOf(0x77).verifyKey(), own).reason() == Reason::WrongProgram);
    }
}

TEST_CASE("Attack 4: an unwelcome sheet or the tail of a feed dropped after a receipt is a proven cut", "[attack]")
{
    World world;
    world.setUp();
    world.sheet(world.student, world.studentId, idOf(0x51));
    const merge::Ledger early = world.all;
    world.sheet(world.student, world.studentId, idOf(0x52));
    REQUIRE(world.receipt(world.instructor, world.studentId).has_value());
    const journal::FeedId feed = world.feedOf(world.student, world.studentId);

    const auto authority = world.all.authority();
    CHECK(merge::contradictions(authority, world.all, {}).empty());
    const std::array whole{headOf(world.all, feed)};
    CHECK(merge::contradictions(authority, world.all, whole).empty());

    const std::array cut{headOf(early, feed)};
    const auto found = merge::contradictions(authority, world.all, cut);
    REQUIRE(found.size() == 1);
    CHECK(found[0].sort == merge::Contradiction::Sort::Cut);
    CHECK(found[0].receipt.covered.seq == 5);
    CHECK(found[0].shown == 3);

    // A sheet dropped from the middle: everything after it no longer fits.
    merge::Run dropped = runOf(world.all, feed);
    dropped.entries.erase(dropped.entries.begin() + 1);
    const auto taken = offer(merge::Ledger(world.program), dropped);
    CHECK(taken.report.taken == 1);
    REQUIRE(taken.report.findings.size() == 1);
    CHECK(taken.report.findings[0].reason == Reason::BadSignature);
    CHECK(taken.report.findings[0].seq == 1);
}

TEST_CASE("Attack 4: another history than the one that was receipted is proven, and nothing more is receipted",
          "[attack]")
{
    World world;
    world.setUp();
    const merge::Ledger before = world.all;
    world.sheet(world.student, world.studentId, idOf(0x51));
    const auto receipt = world.receipt(world.instructor, world.studentId);
    REQUIRE(receipt.has_value());
    const merge::Ledger genuine = world.all;
    const merge::Run instructors = runOf(genuine, receipt->feed);

    // A second device, which has the receipt, is shown a feed with the sheet left out and another in its place.
    world.all = before;
    world.sheet(world.student, world.studentId, idOf(0x59));
    const merge::Ledger shown = offer(world.all, instructors).ledger;
    const auto authority = shown.authority();
    const auto found = merge::contradictions(authority, shown, {});
    REQUIRE(found.size() == 1);
    CHECK(found[0].sort == merge::Contradiction::Sort::Rewritten);
    CHECK(found[0].receipt.receipt == *receipt);
    for (const keys::DeviceKey* device : {&world.instructor, &world.secondInstructor}) {
        CHECK(merge::receiptFor(shown.authority(), shown, device->signing.verifyKey(), world.studentId, {}).reason() ==
              Reason::RecordForked);
    }
    // The receipt says nothing about entries that it does not name.
    const journal::FeedId feed = world.feedOf(world.student, world.studentId);
    const journal::Position opened{feed, 0, shown.feed(feed)->trunk().entries[0].link.hash};
    CHECK_FALSE(merge::boundsOf(authority, shown, opened).before.has_value());
    CHECK(merge::receiptedCount(authority, feed) == 0);

    // A head alone, of the same length, shows it as well.
    const std::array heads{headOf(shown, feed)};
    const auto byHead = merge::contradictions(genuine.authority(), genuine, heads);
    REQUIRE(byHead.size() == 1);
    CHECK(byHead[0].sort == merge::Contradiction::Sort::Rewritten);
}

TEST_CASE("Attack 5: two histories signed on purpose give evidence of at most 300 bytes, and both are kept", "[attack]")
{
    World world;
    world.setUp();
    world.sheet(world.student, world.studentId, idOf(0x51));
    const journal::FeedId feed = world.feedOf(world.student, world.studentId);
    const journal::Place place = world.all.next(feed);
    const auto one = write(world, place, journal::Withdrawn{idOf(0x51), "Entered twice."}, world.student);
    const auto other = write(world, place, journal::Withdrawn{idOf(0x51), "Never happened."}, world.student);
    const auto first = offer(world.all, {feed, 3, {keys::ByteView(one.bytes)}});
    const auto second = offer(first.ledger, {feed, 3, {keys::ByteView(other.bytes)}});
    REQUIRE(second.report.findings.size() == 1);
    CHECK(second.report.findings[0].verdict == Verdict::Forked);
    REQUIRE(second.report.findings[0].evidence.has_value());
    const keys::Bytes evidence = journal::toBytes(*second.report.findings[0].evidence);
    CHECK(evidence.size() <= 300);
    CHECK(evidence.size() == journal::evidenceBytes);

    // Anybody can check it with nothing else, and not after a change to it.
    REQUIRE(journal::evidenceFromBytes(evidence).ok());
    for (std::size_t i = 0; i < evidence.size(); ++i) {
        keys::Bytes changed = evidence;
        changed[i] ^= 0x10U;
        INFO(i);
        CHECK_FALSE(journal::evidenceFromBytes(changed).ok());
    }
    // One entry held twice is no fork.
    CHECK_FALSE(journal::holds(journal::evidence(feed, 3, one.link, one.link)));

    const journal::Feed& forked = *second.ledger.feed(feed);
    CHECK(forked.count() == 3);
    CHECK(forked.find(3, one.link.hash) != nullptr);
    CHECK(forked.find(3, other.link.hash) != nullptr);
    CHECK(judgment(second.ledger, {feed, 3, one.link.hash}).reason == Reason::PastFork);
    CHECK(judgment(second.ledger, {feed, 3, other.link.hash}).reason == Reason::PastFork);
    CHECK(judgment(second.ledger, {feed, 2, forked.trunk().entries[2].link.hash}).standing == Standing::Counts);
    CHECK(volumeOf(second.ledger) == volumeOf(offer(offer(world.all, {feed, 3, {keys::ByteView(other.bytes)}}).ledger,
                                                    {feed, 3, {keys::ByteView(one.bytes)}})
                                                  .ledger));

    // Admitted one by one, with a reason.
    world.all = second.ledger;
    world.append(world.instructor, world.studentId,
                 journal::Admit{{feed, 3, other.link.hash}, "Compared with the student."});
    CHECK(judgment(world.all, {feed, 3, other.link.hash}).standing == Standing::Counts);
    CHECK(judgment(world.all, {feed, 3, one.link.hash}).reason == Reason::PastFork);

    // Evidence alone sets the rest aside on a device that has only one of the histories.
    world.all = first.ledger;
    world.append(world.instructor, world.studentId, journal::ForkFound{*second.report.findings[0].evidence});
    CHECK(judgment(world.all, {feed, 3, one.link.hash}).reason == Reason::PastFork);
}

TEST_CASE("Attack 6: a sheet backdated between two receipts becomes a question with the bounds", "[attack]")
{
    World world;
    world.setUp();
    world.sheet(world.student, world.studentId, idOf(0x51));
    const auto first = world.receipt(world.instructor, world.studentId);
    REQUIRE(first.has_value());
    const journal::FeedId feed = world.feedOf(world.student, world.studentId);

    // Honest: today's case, citing the receipt.
    journal::Draft today = draft();
    world.append(world.student, world.studentId, journal::SheetOpened{idOf(0x52), idOf(0x53), today},
                 {minute(40), first});
    CHECK(merge::timeQuestions(world.all.authority(), world.all, feed).empty());

    // Dishonest: a case of two weeks ago that nobody had heard of at the time of the receipt.
    journal::Draft old = draft();
    old.head.date = *base::Date::fromIso("2026-02-10");
    const auto backdated = world.append(world.student, world.studentId,
                                        journal::SheetOpened{idOf(0x54), idOf(0x55), old}, {minute(-20'000), first});
    world.append(
        world.instructor, world.studentId,
        *merge::receiptFor(world.all.authority(), world.all, world.instructor.signing.verifyKey(), world.studentId, {})
             .value(),
        {minute(60), std::nullopt});
    const auto questions = merge::timeQuestions(world.all.authority(), world.all, feed);
    REQUIRE(questions.size() == 3);
    for (const merge::TimeQuestion& question : questions) {
        CHECK(question.entry == backdated);
        REQUIRE(question.bounds.after.has_value());
        REQUIRE(question.bounds.before.has_value());
        CHECK(question.bounds.after->receipt == *first);
        CHECK(question.bounds.before->time == minute(60));
        CHECK_FALSE(merge::sentence(question.sort).empty());
    }
    CHECK(questions[0].sort == merge::TimeQuestion::Sort::BeforeCitedReceipt);
    CHECK(questions[1].sort == merge::TimeQuestion::Sort::SteppedBack);
    CHECK(questions[2].sort == merge::TimeQuestion::Sort::DatedBeforeReceipts);
    CHECK(judgment(world.all, backdated).standing == Standing::Counts); // a question, never a reason to refuse
}

TEST_CASE("A late correction of a sheet is a question only when it moves the day", "[bounds]")
{
    World world;
    world.setUp();
    const journal::Draft today = draft();
    world.append(world.student, world.studentId, journal::SheetOpened{idOf(0x51), idOf(0x50), today});
    const journal::FeedId feed = world.feedOf(world.student, world.studentId);
    const auto owed =
        merge::receiptFor(world.all.authority(), world.all, world.instructor.signing.verifyKey(), world.studentId, {});
    const auto seen =
        world.append(world.instructor, world.studentId, *owed.value(), {minute(20'000), std::nullopt}); // two weeks on
    journal::Draft corrected = today;
    corrected.head.room = "Room 9";
    world.append(world.student, world.studentId, journal::HeadChanged{idOf(0x51), idOf(0x50), corrected},
                 {minute(20'001), seen});
    CHECK(merge::timeQuestions(world.all.authority(), world.all, feed).empty());

    corrected.head.date = base::Date::fromDays(today.head.date.days() - 1);
    const auto moved = world.append(world.student, world.studentId,
                                    journal::HeadChanged{idOf(0x51), idOf(0x50), corrected}, {minute(20'002), seen});
    const auto questions = merge::timeQuestions(world.all.authority(), world.all, feed);
    REQUIRE(questions.size() == 1);
    CHECK(questions[0].sort == merge::TimeQuestion::Sort::DatedBeforeReceipts);
    CHECK(questions[0].entry == moved);
}

TEST_CASE("Attack 7: another's entries signed again, a role granted to oneself, a grant of another program", "[attack]")
{
    World world;
    world.setUp();
    world.sheet(world.student, world.studentId, idOf(0x51));

    SECTION("another student's entries signed again in the own feed")
    {
        // The same payloads under the other student's own device, in the first student's stream.
        const auto opened =
            world.append(world.otherStudent, world.studentId, journal::SheetOpened{idOf(0x51), idOf(0x50), draft()});
        CHECK(judgment(world.all, opened) == trust::Judgment{Standing::Refused, Reason::NotTheirStudent});
        // In their own stream the attestation does not verify: attack 3.
    }
    SECTION("the bytes of another device's entries offered under the own device's name")
    {
        merge::Run stolen = runOf(world.all, world.feedOf(world.student, world.studentId));
        stolen.feed.device = world.otherStudent.signing.verifyKey();
        const auto taken = offer(world.all, stolen);
        CHECK(taken.report.taken == 0);
        REQUIRE(taken.report.findings.size() == 1);
        CHECK(taken.report.findings[0].reason == Reason::BadSignature);
    }
    SECTION("a student's device grants itself a role")
    {
        const auto self = world.append(world.student, world.programStream,
                                       world.grant(world.studentId, journal::Role::Instructor, world.student));
        CHECK(judgment(world.all, self) == trust::Judgment{Standing::Refused, Reason::RoleMayNotWrite});
        CHECK(world.all.authority().holder(world.student.signing.verifyKey())->role == journal::Role::Student);
    }
    SECTION("an instructor makes another instructor, and a student of nobody's")
    {
        const keys::DeviceKey friendDevice = deviceOf(0x61);
        const auto made = world.append(world.instructor, world.programStream,
                                       world.grant(idOf(0x60), journal::Role::Instructor, friendDevice));
        CHECK(judgment(world.all, made) == trust::Judgment{Standing::Refused, Reason::RoleMayNotWrite});
        CHECK(world.all.authority().holder(friendDevice.signing.verifyKey()) == nullptr);
    }
    SECTION("a grant replayed from another program")
    {
        const keys::SigningKey otherProgram = signerOf(0x77);
        const journal::FeedId feed{world.instructor.signing.verifyKey(), idOf(0x60)};
        const auto foreign = journal::writeEntry(otherProgram.verifyKey(), {feed, 0, {}}, {minute(1), std::nullopt},
                                                 world.grant(idOf(0x60), journal::Role::Student, deviceOf(0x61)),
                                                 world.instructor.signing);
        REQUIRE(foreign.ok());
        const auto taken = offer(world.all, {feed, 0, {keys::ByteView(foreign.value().bytes)}});
        REQUIRE(taken.report.findings.size() == 1);
        CHECK(taken.report.findings[0].verdict == Verdict::Refused);
        CHECK(taken.report.findings[0].reason == Reason::BadSignature);
        CHECK(volumeOf(taken.ledger) == volumeOf(world.all));
    }
}

} // namespace peelpack::test
