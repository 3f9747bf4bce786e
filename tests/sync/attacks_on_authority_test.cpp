#include "sync/merge/actions.h"
#include "sync/merge/bounds.h"
#include "sync/merge/contents.h"
#include "sync/merge/receipts.h"
#include "sync/trust/policy.h"
#include "tests/sync/support/catch.h"
#include "tests/sync/support/rules.h"
#include "tests/sync/support/world.h"

// Rows 8, 9, 10, 15, 16 and 18 of the journal document's section 7, one test each by its number: what revoked devices,
// staff, restored backups and wrong clocks can do.
namespace peelpack::test {
namespace {

using journal::Reason;
using journal::Verdict;
using Standing = trust::Judgment::Standing;

/// The payload's bytes with its reason, which is "x", taken out by hand.
keys::Bytes withoutReason(const journal::Payload& payload)
{
    keys::Bytes bytes = journal::encode(payload).value();
    const keys::Bytes reason{1, 0, 0, 0, 0, 0, 0, 0, 'x'};
    const auto at = std::search(bytes.begin(), bytes.end(), reason.begin(), reason.end());
    REQUIRE(at != bytes.end());
    *at = 0;
    bytes.erase(at + 8);
    return bytes;
}

/// Whatever says that it needs a reason is neither written nor read nor taken in without one, whoever signs it; with
/// one it is taken in. `silent` and `said` differ in the reason, which is "x".
void checkReason(World& world, const journal::Payload& silent, const journal::Payload& said,
                 const keys::DeviceKey& staff)
{
    CHECK(journal::encode(silent).reason() == Reason::TextMissing);
    const std::uint16_t kind = kindOf(said);
    const keys::Bytes bytes = withoutReason(said);
    CHECK(journal::decodePayload(kind, bytes).reason() == Reason::TextMissing);
    CHECK(journal::decodePayload(kind, journal::encode(said).value()).ok());

    const journal::Place place = world.all.next(world.feedOf(staff, world.studentId));
    const auto forced =
        journal::writeRawEntry(world.program, place, {minute(1), std::nullopt}, kind, bytes, staff.signing);
    REQUIRE(forced.ok());
    const auto refused = offer(world.all, {place.feed, place.seq, {keys::ByteView(forced.value().bytes)}});
    REQUIRE(refused.report.findings.size() == 1);
    CHECK(refused.report.findings[0].verdict == Verdict::Refused);
    CHECK(refused.report.findings[0].reason == Reason::TextMissing);

    const auto good = write(world, place, said, staff);
    CHECK(offer(world.all, {place.feed, place.seq, {keys::ByteView(good.bytes)}}).report.findings.empty());
}

/// The same act with and without its reason.
template <class Payload>
void checkAct(World& world, Payload said)
{
    said.act = act(idOf(0x51), {}, "x");
    Payload silent = said;
    silent.act.reason.clear();
    checkReason(world, silent, said, world.instructor);
}

} // namespace

TEST_CASE("Attack 8: what a revoked device or card goes on writing, or pre-dates, is aside", "[attack]")
{
    World world;
    world.setUp();
    world.sheet(world.student, world.studentId, idOf(0x51));
    REQUIRE(world.receipt(world.instructor, world.studentId).has_value());
    const journal::FeedId feed = world.feedOf(world.student, world.studentId);

    SECTION("a lost phone")
    {
        journal::Revoke revoke;
        revoke.feed = feed;
        revoke.accepted = 3;
        revoke.reason = "Lost on the bus.";
        world.append(world.instructor, world.studentId, revoke);
        const auto predated =
            world.append(world.student, world.studentId, journal::SheetOpened{idOf(0x52), idOf(0x53), draft()},
                         {minute(-5000), std::nullopt});
        CHECK(judgment(world.all, predated) == trust::Judgment{Standing::Aside, Reason::Revoked});
        CHECK(judgment(world.all, {feed, 2, world.all.feed(feed)->trunk().entries[2].link.hash}).standing ==
              Standing::Counts);
        world.append(world.instructor, world.studentId, journal::Admit{predated, "Seen on the old phone."});
        CHECK(judgment(world.all, predated).standing == Standing::Counts);
    }
    SECTION("an instructor cannot take back what was receipted, the director can")
    {
        journal::Revoke revoke;
        revoke.feed = feed;
        revoke.accepted = 1;
        revoke.reason = "Doubts.";
        world.append(world.instructor, world.studentId, revoke);
        CHECK(world.all.authority().limit(feed) == 3);
        world.append(world.director, world.studentId, revoke);
        CHECK(world.all.authority().limit(feed) == 1);
    }
    SECTION("an instructor's device, by the director only")
    {
        const journal::FeedId program = world.feedOf(world.instructor, world.programStream);
        journal::Revoke revoke;
        revoke.feed = program;
        revoke.accepted = 1;
        revoke.reason = "Left the college.";
        const auto tried = world.append(world.secondInstructor, world.programStream, revoke);
        CHECK(judgment(world.all, tried) == trust::Judgment{Standing::Refused, Reason::RoleMayNotWrite});
        CHECK(world.all.authority().limit(program) > 1);

        journal::Revoke spare = revoke;
        spare.feed = world.feedOf(world.instructor, world.studentId);
        spare.accepted = 2;
        world.append(world.director, world.programStream, revoke);
        world.append(world.director, world.studentId, spare);
        const auto authority = world.all.authority();
        CHECK(authority.limit(program) == 1);
        CHECK(authority.limit(spare.feed) == 2);
        CHECK(authority.limit(world.feedOf(world.instructor, world.otherStudentId)) == 0);
        // The grant that stands below the accepted position stays good, the other one does not.
        CHECK(authority.holder(world.student.signing.verifyKey()) != nullptr);
        CHECK(authority.holder(world.otherStudent.signing.verifyKey()) == nullptr);
        const auto later =
            world.append(world.instructor, world.studentId, journal::Initial{act(idOf(0x51), {}), false});
        CHECK(judgment(world.all, later) == trust::Judgment{Standing::Aside, Reason::Revoked});
    }
    SECTION("a lost signing card")
    {
        journal::Revoke revoke;
        revoke.target = journal::KeyKind::Card;
        revoke.card = world.cardId;
        revoke.epoch = 1;
        revoke.reason = "Card lost.";
        world.append(world.instructor, world.programStream, revoke);
        world.append(world.student, world.studentId, journal::SheetOpened{idOf(0x52), idOf(0x53), draft()});
        const auto late =
            world.append(world.student, world.studentId,
                         journal::attest(world.statement(world.studentId, idOf(0x52)), world.card).value());
        CHECK(judgment(world.all, late) == trust::Judgment{Standing::Aside, Reason::CardRevoked});
        const journal::Position early{feed, 1, world.all.feed(feed)->trunk().entries[1].link.hash};
        CHECK(judgment(world.all, early).standing == Standing::Counts);
        // A receipt that its writer gave knowing of the revocation saves nothing.
        REQUIRE(world.receipt(world.instructor, world.studentId).has_value());
        CHECK(judgment(world.all, late) == trust::Judgment{Standing::Aside, Reason::CardRevoked});
    }
    SECTION("a director, by the program key only")
    {
        journal::Revoke revoke;
        revoke.feed = world.feedOf(world.director, world.programStream);
        revoke.accepted = 1;
        revoke.reason = "Disagreement.";
        const auto tried = world.append(world.instructor, world.programStream, revoke);
        CHECK(judgment(world.all, tried) == trust::Judgment{Standing::Refused, Reason::RoleMayNotWrite});
        world.certify(1, trust::DirectorRevoked{revoke.feed, 2});
        CHECK(world.all.authority().limit(revoke.feed) == 2);
        CHECK(world.all.authority().holder(world.instructor.signing.verifyKey()) != nullptr);
        CHECK(world.all.authority().holder(world.secondInstructor.signing.verifyKey()) == nullptr);
    }
}

TEST_CASE("Attack 9: an amendment without a reason is nothing", "[attack]")
{
    World world;
    world.setUp();
    world.sheet(world.student, world.studentId, idOf(0x51));
    journal::Amend amend;
    amend.marks = {{sheet::Skill::Setup, sheet::Mark::No, {}}};
    checkAct(world, amend);
}

TEST_CASE("Attack 9: a re-filing without a reason is nothing", "[attack]")
{
    World world;
    world.setUp();
    world.sheet(world.student, world.studentId, idOf(0x51));
    journal::Refile refile;
    refile.choices = {{0, "eye", 0}};
    checkAct(world, refile);
}

TEST_CASE("Attack 9: a sheet that is made void without a reason is not", "[attack]")
{
    World world;
    world.setUp();
    world.sheet(world.student, world.studentId, idOf(0x51));
    checkAct(world, journal::Void{});
}

TEST_CASE("Attack 9: a completion by exception without a reason is nothing", "[attack]")
{
    World world;
    world.setUp();
    const journal::Position head = world.sheet(world.student, world.studentId, idOf(0x51));
    const journal::CompleteByException said{"cap15", {}, head, 120, 118, "x"};
    journal::CompleteByException silent = said;
    silent.reason.clear();
    checkReason(world, silent, said, world.director);
}

TEST_CASE("Attack 9: an admission without a reason is nothing", "[attack]")
{
    World world;
    world.setUp();
    const journal::Position entry = world.sheet(world.student, world.studentId, idOf(0x51));
    checkReason(world, journal::Admit{entry, {}}, journal::Admit{entry, "x"}, world.instructor);
}

TEST_CASE("Attack 9: no change of a mark without a reason; what was receipted cannot be dropped or rewritten",
          "[attack]")
{
    World world;
    world.setUp();
    world.sheet(world.student, world.studentId, idOf(0x51));
    const journal::FeedId feed = world.feedOf(world.instructor, world.studentId);
    journal::Amend silent;
    silent.act = act(idOf(0x51), {});
    silent.marks = {{sheet::Skill::Setup, sheet::Mark::No, {}}};
    CHECK(journal::encode(silent).reason() == Reason::TextMissing);

    // A modified app that signs it all the same is refused by everybody else.
    silent.act.reason = "x";
    keys::Bytes bytes = journal::encode(silent).value();
    const keys::Bytes withReason{1, 0, 0, 0, 0, 0, 0, 0, 'x'};
    const auto at = std::search(bytes.begin(), bytes.end(), withReason.begin(), withReason.end());
    REQUIRE(at != bytes.end());
    *at = 0;
    bytes.erase(at + 8);
    const auto forced =
        journal::writeRawEntry(world.program, world.all.next(feed), {minute(1), std::nullopt},
                               static_cast<std::uint16_t>(journal::Kind::Amend), bytes, world.instructor.signing);
    const auto taken = offer(world.all, {feed, 1, {keys::ByteView(forced.value().bytes)}});
    REQUIRE(taken.report.findings.size() == 1);
    CHECK(taken.report.findings[0].reason == Reason::TextMissing);

    // With a reason the original stays beside it.
    silent.act.reason = "The preceptor called: set-up was done by staff.";
    world.append(world.instructor, world.studentId, silent);
    CHECK(world.all.feed(world.feedOf(world.student, world.studentId))->count() == 3);

    // A receipt that the instructor later denies: their own feed shows a second history.
    const journal::Place place = world.all.next(feed);
    const auto receipt = world.receipt(world.instructor, world.studentId);
    REQUIRE(receipt.has_value());
    const auto denial = write(world, place, journal::Initial{act(idOf(0x51), {}), false}, world.instructor);
    const auto denied = offer(world.all, {feed, place.seq, {keys::ByteView(denial.bytes)}});
    REQUIRE(denied.report.findings.size() == 1);
    CHECK(denied.report.findings[0].verdict == Verdict::Forked);
    CHECK(journal::holds(*denied.report.findings[0].evidence));
}

TEST_CASE("Attack 10: two instructors contradict each other off line: both are kept, one outcome everywhere",
          "[attack]")
{
    World world;
    world.setUp();
    world.sheet(world.student, world.studentId, idOf(0x51));
    const auto first = world.append(world.instructor, world.studentId, journal::Initial{act(idOf(0x51), {}), false});
    const merge::Ledger before = world.all;

    const auto returned = world.append(world.secondInstructor, world.studentId,
                                       journal::Return{act(idOf(0x51), first.hash, "The room does not fit.")});
    const merge::Ledger two = world.all;
    world.all = before;
    journal::Refile refile;
    refile.act = act(idOf(0x51), first.hash, "Belongs under another specialty.");
    refile.choices = {{0, "orthopedic", 0}};
    const auto refiled = world.append(world.instructor, world.studentId, refile);
    const merge::Ledger one = world.all;

    const auto join = [&](const merge::Ledger& a, const merge::Ledger& b) {
        auto taken = merge::take(a, merge::contents(b));
        REQUIRE(taken.ok());
        return std::move(taken).value().ledger;
    };
    const merge::Ledger left = join(one, two);
    const merge::Ledger right = join(two, one);
    CHECK(volumeOf(left) == volumeOf(right));
    for (const merge::Ledger* ledger : {&left, &right}) {
        const auto actions = merge::actionsOf(ledger->authority(), *ledger, world.studentId).at(idOf(0x51));
        REQUIRE(actions.inForce.size() == 2);
        CHECK(actions.inForce[0].entry.position == first);
        CHECK(actions.inForce[1].entry.position == returned); // a return goes before a re-file
        REQUIRE(actions.beside.size() == 1);
        CHECK(actions.beside[0].entry.position == refiled);
    }

    // The director's word goes first, whatever its kind.
    world.all = left;
    const auto decided =
        world.append(world.director, world.studentId, journal::Initial{act(idOf(0x51), first.hash), true});
    const auto actions = merge::actionsOf(world.all.authority(), world.all, world.studentId).at(idOf(0x51));
    CHECK(actions.inForce.back().entry.position == decided);
    CHECK(actions.beside.size() == 2);
}

TEST_CASE("Attack 15: a restored instructor's device learns from students' copies before it signs any receipt",
          "[attack]")
{
    World world;
    world.setUp();
    world.sheet(world.student, world.studentId, idOf(0x51));
    const merge::Ledger backup = world.all;
    REQUIRE(world.receipt(world.instructor, world.studentId).has_value());
    const merge::Ledger current = world.all;
    const journal::FeedId stream = world.feedOf(world.instructor, world.studentId);
    const auto studentCopy = merge::contents(current, world.studentId);

    // The same device, rolled back: it is shown its own entry that it does not know.
    CHECK(merge::ownFeed(backup, world.instructor.signing.verifyKey(), studentCopy.heads) == merge::OwnFeed::Behind);
    CHECK(merge::ownFeed(current, world.instructor.signing.verifyKey(), studentCopy.heads) == merge::OwnFeed::Current);
    CHECK(merge::receiptFor(backup.authority(), backup, world.instructor.signing.verifyKey(), world.studentId,
                            studentCopy.heads)
              .reason() == Reason::RecordForked);

    // A new device of the same person, that continues the old one.
    const keys::DeviceKey fresh = deviceOf(0x29);
    world.all = backup;
    journal::Grant grant = world.grant(world.instructorId, journal::Role::Instructor, fresh);
    grant.continues = journal::Position{world.feedOf(world.instructor, world.programStream), 0,
                                        backup.feed(world.feedOf(world.instructor, world.programStream))->head().hash};
    world.append(world.director, world.programStream, grant);
    const merge::Ledger restored = world.all;
    CHECK(
        merge::receiptFor(restored.authority(), restored, fresh.signing.verifyKey(), world.studentId, studentCopy.heads)
            .reason() == Reason::PredecessorMissing);
    const auto repaired = merge::take(restored, studentCopy);
    REQUIRE(repaired.ok());
    CHECK(repaired.value().ledger.feed(stream)->count() == current.feed(stream)->count());
    const auto owed = merge::receiptFor(repaired.value().ledger.authority(), repaired.value().ledger,
                                        fresh.signing.verifyKey(), world.studentId, studentCopy.heads);
    REQUIRE(owed.ok());
    CHECK_FALSE(owed.value().has_value()); // the old device had receipted all of it
}

TEST_CASE("Attack 16: a clock wrong by ten years, or stepping back, changes nothing but a question", "[attack]")
{
    const auto outcome = [](std::int64_t shift, std::size_t& questions) {
        World world;
        world.setUp();
        world.sheet(world.student, world.studentId, idOf(0x51));
        const auto receipt = world.receipt(world.instructor, world.studentId);
        REQUIRE(receipt.has_value());
        world.append(world.student, world.studentId, journal::SheetOpened{idOf(0x52), idOf(0x53), draft()},
                     {{minute(60).seconds + shift, 60}, receipt});
        const auto attested = world.append(
            world.student, world.studentId,
            journal::attest(world.statement(world.studentId, idOf(0x52)), world.card).value(), {minute(61), receipt});
        questions =
            merge::timeQuestions(world.all.authority(), world.all, world.feedOf(world.student, world.studentId)).size();
        CHECK(judgment(world.all, attested).standing == Standing::Counts);
        return merge::receiptedCount(world.all.authority(), world.feedOf(world.student, world.studentId));
    };
    constexpr std::int64_t tenYears = 10LL * 365 * 86'400;
    std::size_t questions = 0;
    const auto right = outcome(0, questions);
    CHECK(questions == 0);
    for (const std::int64_t shift : {tenYears, -tenYears, INT64_MAX / 4, INT64_MIN / 4}) {
        INFO(shift);
        CHECK(outcome(shift, questions) == right);
        CHECK(questions > 0);
    }
    CHECK(outcome(3600, questions) == right); // daylight saving on a phone that stores local time
    CHECK(questions == 1);
}

TEST_CASE("Attack 18: the policy in force is the latest by chain, not by time, and no older one comes back", "[attack]")
{
    World world;
    world.setUp();
    const auto first = trust::policyInForce(world.all.authority(), world.all.feeds());
    REQUIRE(first.has_value());
    CHECK(first->policy.requirementSet == "cap15");
    CHECK(trust::counts(first->policy, sheet::Strength::Card));
    CHECK_FALSE(trust::counts(first->policy, sheet::Strength::Drawn));
    CHECK_FALSE(trust::counts(first->policy, sheet::Strength::None));

    journal::Policy next = first->policy;
    next.standsOn = first->entry.hash;
    next.requirementSet = "spread10";
    const auto second = world.append(world.director, world.programStream, next, {minute(-900'000), std::nullopt});
    CHECK(trust::policyInForce(world.all.authority(), world.all.feeds())->entry == second);

    SECTION("the older entry, offered again")
    {
        const auto again = offer(world.all, runOf(world.all, first->entry.feed));
        CHECK(again.report.taken == 0);
        CHECK(trust::policyInForce(again.ledger.authority(), again.ledger.feeds())->entry == second);
    }
    SECTION("an instructor's own policy")
    {
        journal::Policy own = next;
        own.standsOn = second.hash;
        own.requirementSet = "one-case";
        const auto tried = world.append(world.instructor, world.programStream, own);
        CHECK(judgment(world.all, tried) == trust::Judgment{Standing::Refused, Reason::RoleMayNotWrite});
        CHECK(trust::policyInForce(world.all.authority(), world.all.feeds())->entry == second);
    }
    SECTION("two directors replace the same policy: the newer director's holds, whichever hash is smaller")
    {
        const keys::DeviceKey successor = deviceOf(0x15);
        world.certify(2, trust::DirectorCertificate{idOf(0x14), successor.signing.verifyKey(),
                                                    successor.opening.sealKey(), "Invented Successor"});
        journal::Policy newer = next;
        newer.standsOn = second.hash;
        const auto older = world.append(world.director, world.programStream, newer);
        const merge::Ledger before = world.all;
        bool smaller = false;
        bool larger = false;
        for (std::uint16_t wording = 2; !(smaller && larger); ++wording) {
            world.all = before;
            newer.wording = wording;
            const auto theirs = world.append(successor, world.programStream, newer);
            (theirs.hash < older.hash ? smaller : larger) = true;
            CHECK(trust::policyInForce(world.all.authority(), world.all.feeds())->entry == theirs);
        }
    }
    SECTION("a new director stands on what is there")
    {
        const keys::DeviceKey successor = deviceOf(0x15);
        world.certify(2, trust::DirectorCertificate{idOf(0x14), successor.signing.verifyKey(),
                                                    successor.opening.sealKey(), "Invented Successor"});
        journal::Policy newer = next;
        newer.standsOn = second.hash;
        newer.requirementSet = "cap15-four";
        const auto third = world.append(successor, world.programStream, newer);
        CHECK(trust::policyInForce(world.all.authority(), world.all.feeds())->entry == third);
    }
}

} // namespace peelpack::test
