#include "sync/merge/actions.h"
#include "sync/merge/contents.h"
#include "sync/merge/receipts.h"
#include "sync/merge/reopen.h"
#include "tests/sync/support/catch.h"
#include "tests/sync/support/sign_again.h"
#include "tests/sync/support/world.h"

#include <algorithm>
#include <numeric>

namespace peelpack::test {
namespace {

using journal::Reason;
using journal::Verdict;

/// A world in which much happens, cut into batches that overlap, leave gaps and disagree.
struct Scene {
    World world;
    std::vector<merge::Ledger> states; ///< what somebody had at some time
    std::vector<keys::Bytes> volumes;

    Scene()
    {
        world.setUp();
        keep();
        world.sheet(world.student, world.studentId, idOf(0x51));
        keep();
        world.receipt(world.instructor, world.studentId);
        const auto first =
            world.append(world.instructor, world.studentId, journal::Initial{act(idOf(0x51), {}), false});
        keep();
        const merge::Ledger fork = world.all;
        world.sheet(world.student, world.studentId, idOf(0x52));
        world.append(world.secondInstructor, world.studentId,
                     journal::Return{act(idOf(0x51), first.hash, "The room does not fit.")});
        keep();
        world.all = fork; // the student's phone, restored, goes on otherwise
        world.sheet(world.student, world.studentId, idOf(0x53));
        world.sheet(world.otherStudent, world.otherStudentId, idOf(0x54));
        keep();
    }

    void keep()
    {
        const merge::Batch everything = merge::contents(world.all);
        if (states.empty()) {
            volumes.push_back(volumeOf(world.program, everything));
        } else {
            // Only what is new since the last time: alone it has gaps.
            const auto heads = merge::contents(states.back()).heads;
            volumes.push_back(volumeOf(world.program, merge::newsFor(everything, heads)));
        }
        states.push_back(world.all);
    }

    [[nodiscard]] merge::TakenAll takeIn(const std::vector<std::size_t>& order) const
    {
        std::vector<merge::Batch> batches;
        for (const std::size_t index : order) {
            const auto read = parcel::readVolume(world.program, volumes[index]);
            REQUIRE(read.ok());
            batches.push_back(read.value().batch);
        }
        return merge::takeAll(merge::Ledger(world.program), batches);
    }
};

} // namespace

TEST_CASE("Batches taken in every order and with repetitions give byte-equal exports", "[merge]")
{
    const Scene scene;
    std::vector<std::size_t> order(scene.volumes.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    const merge::Ledger expected = scene.takeIn(order).ledger;
    const keys::Bytes bytes = volumeOf(expected);
    CHECK(expected.feed(scene.world.feedOf(scene.world.student, scene.world.studentId))->forked());
    std::size_t orders = 0;
    do {
        if (volumeOf(scene.takeIn(order).ledger) != bytes) {
            FAIL("order " << orders);
        }
        std::vector<std::size_t> repeated = order;
        repeated.insert(repeated.end(), {order[2], order[0], order[2]});
        if (volumeOf(scene.takeIn(repeated).ledger) != bytes) {
            FAIL("order " << orders << ", repeated");
        }
        ++orders;
    } while (std::next_permutation(order.begin(), order.end()));
    CHECK(orders == 120);
}

TEST_CASE("Two ledgers joined either way round are equal, and joining again changes nothing", "[merge]")
{
    const Scene scene;
    for (const merge::Ledger& a : scene.states) {
        for (const merge::Ledger& b : scene.states) {
            const auto ab = merge::take(a, merge::contents(b));
            const auto ba = merge::take(b, merge::contents(a));
            REQUIRE(ab.ok());
            REQUIRE(ba.ok());
            CHECK(volumeOf(ab.value().ledger) == volumeOf(ba.value().ledger));
            const auto again = merge::take(ab.value().ledger, merge::contents(b));
            CHECK_FALSE(again.value().report.news());
        }
    }
}

TEST_CASE("A batch that comes too early reports a gap, leaves no trace, and fits later", "[merge]")
{
    const Scene scene;
    const auto late = parcel::readVolume(scene.world.program, scene.volumes[1]);
    const auto early = merge::take(merge::Ledger(scene.world.program), late.value().batch);
    REQUIRE(early.ok());
    // The student's feed starts in this batch and can be taken; the entries that follow other feeds cannot.
    const auto next = parcel::readVolume(scene.world.program, scene.volumes[2]);
    const auto gap = merge::take(merge::Ledger(scene.world.program), next.value().batch);
    REQUIRE(gap.ok());
    CHECK(gap.value().report.gap);
    CHECK(gap.value().report.taken == 0);
    CHECK(gap.value().ledger.feeds().empty());
    REQUIRE_FALSE(gap.value().report.findings.empty());
    CHECK(gap.value().report.findings[0].verdict == Verdict::Gap);
    CHECK(journal::word(gap.value().report.findings[0].verdict) == "gap");
    CHECK(scene.takeIn({2, 1, 0}).ledger.feeds().size() == scene.states[2].feeds().size());
}

TEST_CASE("The heads of an export are in canonical order, also where the smaller branch is the longer one", "[merge]")
{
    World world;
    world.setUp();
    const journal::FeedId feed = world.feedOf(world.student, world.studentId);
    const auto write = [&](const journal::Place& place, const std::string& text) {
        return journal::writeEntry(world.program, place, {minute(1), std::nullopt},
                                   journal::Withdrawn{idOf(0x51), text}, world.student.signing)
            .value();
    };
    auto one = write({feed, 0, {}}, "one");
    auto two = write({feed, 0, {}}, "two");
    if (two.link < one.link) {
        std::swap(one, two);
    }
    const auto longer = write({feed, 1, one.link}, "on");
    merge::Batch batch;
    batch.runs.push_back({feed, 0, {keys::ByteView(one.bytes), keys::ByteView(longer.bytes)}});
    batch.runs.push_back({feed, 0, {keys::ByteView(two.bytes)}});
    const auto taken = merge::take(world.all, batch);
    REQUIRE(taken.ok());
    const auto heads = merge::contents(taken.value().ledger).heads;
    CHECK(std::is_sorted(heads.begin(), heads.end()));
    CHECK(std::count_if(heads.begin(), heads.end(), [&](const merge::StatedHead& head) { return head.feed == feed; }) ==
          2);
}

TEST_CASE("A take-in without news is owed no receipt", "[merge]")
{
    World world;
    world.setUp();
    world.sheet(world.student, world.studentId, idOf(0x51));
    const keys::VerifyKey& device = world.instructor.signing.verifyKey();
    CHECK(merge::receiptFor(world.all.authority(), world.all, device, world.studentId, {}).value().has_value());
    world.receipt(world.instructor, world.studentId);
    CHECK_FALSE(merge::receiptFor(world.all.authority(), world.all, device, world.studentId, {}).value().has_value());
    CHECK_FALSE(
        merge::receiptFor(world.all.authority(), world.all, device, world.otherStudentId, {}).value().has_value());
    CHECK(merge::receiptedCount(world.all.authority(), world.feedOf(world.student, world.studentId)) == 3);
    CHECK(merge::receiptedCount(world.all.authority(), world.feedOf(world.otherStudent, world.otherStudentId)) == 0);
    world.sheet(world.student, world.studentId, idOf(0x52));
    const auto owed = merge::receiptFor(world.all.authority(), world.all, device, world.studentId, {}).value();
    REQUIRE(owed.has_value());
    REQUIRE(owed->items.size() == 1);
    CHECK(owed->items[0].seq == 5);
}

TEST_CASE("Two devices do not answer each other's receipts for ever", "[merge]")
{
    World world;
    world.setUp();
    world.sheet(world.student, world.studentId, idOf(0x51));
    CHECK(world.receipt(world.instructor, world.studentId).has_value());
    CHECK(world.receipt(world.secondInstructor, world.studentId).has_value());
    CHECK_FALSE(world.receipt(world.instructor, world.studentId).has_value());
    CHECK_FALSE(world.receipt(world.secondInstructor, world.studentId).has_value());

    world.append(world.secondInstructor, world.studentId, journal::Initial{act(idOf(0x51), {}), false});
    const auto receipt = world.receipt(world.instructor, world.studentId);
    REQUIRE(receipt.has_value()); // up to its head, with the receipt that stands before it
    CHECK(merge::receiptedCount(world.all.authority(), world.feedOf(world.secondInstructor, world.studentId)) == 2);
    CHECK_FALSE(world.receipt(world.secondInstructor, world.studentId).has_value());
}

TEST_CASE("The export of the feeds that others write is byte-equal on two taking devices", "[merge]")
{
    Scene scene;
    World& world = scene.world;
    const auto exportFor = [&](const keys::DeviceKey& taker, const std::vector<std::size_t>& order) {
        world.all = scene.takeIn(order).ledger;
        const auto owed =
            merge::receiptFor(world.all.authority(), world.all, taker.signing.verifyKey(), world.otherStudentId, {});
        REQUIRE(owed.ok());
        REQUIRE(owed.value().has_value());
        world.append(taker, world.otherStudentId, *owed.value());
        merge::Batch others = merge::contentsWithout(world.all, world.instructor.signing.verifyKey());
        std::erase_if(others.runs, [&](const merge::Run& run) {
            return run.feed.device == world.secondInstructor.signing.verifyKey();
        });
        std::erase_if(others.heads, [&](const merge::StatedHead& head) {
            return head.feed.device == world.secondInstructor.signing.verifyKey();
        });
        return volumeOf(world.program, others);
    };
    CHECK(exportFor(world.instructor, {0, 1, 2, 3, 4}) == exportFor(world.secondInstructor, {4, 2, 0, 3, 1}));
}

TEST_CASE("Actions come out the same whatever the order, through every rank", "[merge]")
{
    World world;
    world.setUp();
    world.sheet(world.student, world.studentId, idOf(0x51));
    const keys::Id sheet = idOf(0x51);
    const merge::Ledger before = world.all;
    journal::Amend amend;
    amend.act = act(sheet, {}, "A reason.");
    amend.marks = {{sheet::Skill::Setup, sheet::Mark::No, {}}};
    journal::Refile refile;
    refile.act = act(sheet, {}, "A reason.");
    refile.choices = {{0, "orthopedic", 0}};
    journal::ReviewAccepted accepted;
    accepted.act = act(sheet, {});
    const std::vector<journal::Payload> ascending{journal::Initial{act(sheet, {}), false},
                                                  accepted,
                                                  refile,
                                                  amend,
                                                  journal::Return{act(sheet, {}, "A reason.")},
                                                  journal::Void{act(sheet, {}, "A reason.")}};
    for (std::size_t weaker = 0; weaker < ascending.size(); ++weaker) {
        for (std::size_t stronger = weaker + 1; stronger < ascending.size(); ++stronger) {
            world.all = before;
            world.append(world.instructor, world.studentId, ascending[weaker]);
            const auto wins = world.append(world.secondInstructor, world.studentId, ascending[stronger]);
            const auto actions = merge::actionsOf(world.all.authority(), world.all, world.studentId).at(sheet);
            INFO(weaker << " " << stronger);
            REQUIRE(actions.inForce.size() == 1);
            CHECK(actions.inForce[0].entry.position == wins);
        }
    }
    // Of two alike the smaller hash, and an action on nothing that is here waits beside.
    world.all = before;
    const auto one = world.append(world.instructor, world.studentId, ascending[0]);
    const auto two = world.append(world.secondInstructor, world.studentId, ascending[0]);
    keys::Hash nowhere;
    nowhere.bytes.fill(9);
    world.append(world.instructor, world.studentId, journal::Void{act(sheet, nowhere, "A reason.")});
    const auto actions = merge::actionsOf(world.all.authority(), world.all, world.studentId).at(sheet);
    REQUIRE(actions.inForce.size() == 1);
    CHECK(actions.inForce[0].entry.position.hash == std::min(one.hash, two.hash));
    CHECK(actions.beside.size() == 2);
}

TEST_CASE("Who attested a sheet does not initial it alone", "[merge]")
{
    World world;
    world.setUp();
    world.preceptorId = world.instructorId; // the instructor scrubbed with the student, on an own vouched phone
    journal::Vouch vouch;
    vouch.person = world.instructorId;
    vouch.name = "Invented Instructor";
    vouch.keyKind = journal::KeyKind::Device;
    const keys::SigningKey phone = signerOf(0x46);
    vouch.key = phone.verifyKey();
    world.append(world.secondInstructor, world.programStream, vouch);
    world.append(world.student, world.studentId, journal::SheetOpened{idOf(0x51), idOf(0x50), draft()});
    journal::Statement statement = world.statement(world.studentId, idOf(0x51));
    statement.signer.kind = journal::SignerKind::Device;
    statement.signer.key = phone.verifyKey();
    statement.signer.card = {};
    statement.signer.epoch = 0;
    world.append(world.student, world.studentId, journal::attest(statement, phone).value());
    const auto own = world.append(world.instructor, world.studentId, journal::Initial{act(idOf(0x51), {}), false});
    CHECK(merge::initialedOnlyByAttester(world.all.authority(), world.all, world.studentId, idOf(0x51)));
    world.append(world.secondInstructor, world.studentId, journal::Initial{act(idOf(0x51), own.hash), false});
    CHECK_FALSE(merge::initialedOnlyByAttester(world.all.authority(), world.all, world.studentId, idOf(0x51)));
}

TEST_CASE("A ledger that was kept opens again by its chain, forks included, and damage to it is noticed", "[merge]")
{
    const Scene scene;
    const merge::Ledger ledger = scene.takeIn({0, 1, 2, 3, 4}).ledger;
    const merge::Batch kept = merge::contents(ledger);
    const auto again = merge::reopen(scene.world.program, kept);
    REQUIRE(again.ok());
    CHECK(again.value().unfit.empty());
    CHECK(volumeOf(again.value().ledger) == volumeOf(ledger));
    for (const std::size_t threads : {1U, 2U, 3U, 7U}) {
        CHECK(volumeOf(merge::reopen(scene.world.program, kept, threads).value().ledger) == volumeOf(ledger));
    }
    for (std::size_t run = 0; run < kept.runs.size(); ++run) {
        for (std::size_t entry = 0; entry < kept.runs[run].entries.size(); ++entry) {
            INFO(run << " " << entry);
            const keys::ByteView good = kept.runs[run].entries[entry];
            keys::Bytes changed(good.begin(), good.end());
            changed[3] ^= 1U; // the claimed time: well-formed, and another hash
            merge::Batch damaged = kept;
            damaged.runs[run].entries[entry] = changed;
            const auto other = merge::reopen(scene.world.program, damaged);
            CHECK((!other.ok() || volumeOf(other.value().ledger) != volumeOf(ledger)));
            const auto shared = merge::reopen(scene.world.program, damaged, 1 + (run + entry) % 4);
            REQUIRE(shared.ok() == other.ok());
            if (other.ok()) {
                CHECK(volumeOf(shared.value().ledger) == volumeOf(other.value().ledger));
                CHECK(shared.value().unfit == other.value().unfit);
            }
            merge::Batch shorter = kept;
            shorter.runs[run].entries.erase(shorter.runs[run].entries.begin(),
                                            shorter.runs[run].entries.begin() + static_cast<std::ptrdiff_t>(entry) + 1);
            shorter.runs[run].from += static_cast<std::uint32_t>(entry) + 1;
            if (!shorter.runs[run].entries.empty() && kept.runs[run].from == 0) {
                CHECK_FALSE(merge::reopen(scene.world.program, shorter).value().unfit.empty());
            }
        }
    }
}

TEST_CASE("What came after a missing entry is placed once the entry is there again", "[merge]")
{
    World world;
    world.setUp();
    world.sheet(world.student, world.studentId, idOf(0x51));
    merge::Batch kept = merge::contents(world.all);
    merge::Run& run = *std::find_if(kept.runs.begin(), kept.runs.end(), [&](const merge::Run& candidate) {
        return candidate.feed == world.feedOf(world.student, world.studentId);
    });
    const merge::Run missing{run.feed, run.from + 1, {run.entries[1]}};
    const merge::Run rest{run.feed, run.from + 2, {run.entries.begin() + 2, run.entries.end()}};
    run.entries.resize(1);
    kept.runs.push_back(rest);
    CHECK(merge::reopen(world.program, kept).value().unfit.size() == 1);
    kept.runs.push_back(missing);
    const auto whole = merge::reopen(world.program, kept).value();
    CHECK(whole.unfit.empty());
    CHECK(volumeOf(whole.ledger) == volumeOf(world.all));
}

TEST_CASE("What follows a missing branch does not slip behind another", "[merge]")
{
    World world;
    world.setUp();
    world.sheet(world.student, world.studentId, idOf(0x51));
    const journal::FeedId feed = world.feedOf(world.student, world.studentId);
    const journal::Place place{feed, 2, world.all.feed(feed)->trunk().entries[1].link};
    const auto branch = write(world, place, journal::Withdrawn{idOf(0x51), "Twice."}, world.student);
    const auto next = write(world, {feed, 3, branch.link}, journal::Withdrawn{idOf(0x51), "Twice."}, world.student);
    merge::Batch kept = merge::contents(world.all);
    kept.runs.push_back({feed, 3, {keys::ByteView(next.bytes)}});
    const auto damaged = merge::reopen(world.program, kept).value();
    CHECK(volumeOf(damaged.ledger) == volumeOf(world.all));
    REQUIRE(damaged.unfit.size() == 1);
    CHECK(damaged.unfit[0].seq == 3);
    kept.runs.push_back({feed, 2, {keys::ByteView(branch.bytes)}});
    const auto whole = merge::reopen(world.program, kept).value();
    CHECK(whole.unfit.empty());
    CHECK(whole.ledger.feed(feed)->find(3, next.link.hash) != nullptr);
}

TEST_CASE("New entries are those that a ledger does not hold, branches too", "[merge]")
{
    const Scene scene;
    const merge::Ledger all = scene.takeIn({0, 1, 2, 3, 4}).ledger;
    for (std::size_t parcel = 0; parcel < 5; ++parcel) {
        const merge::Ledger some = scene.takeIn({parcel}).ledger;
        merge::Batch news = merge::contents(all);
        news.runs = merge::newEntries(some, all);
        merge::Batch kept = merge::contents(some);
        kept.certificates = news.certificates;
        kept.runs.insert(kept.runs.end(), news.runs.begin(), news.runs.end());
        const auto whole = merge::reopen(scene.world.program, kept).value();
        CHECK(whole.unfit.empty());
        CHECK(volumeOf(whole.ledger) == volumeOf(all));
        CHECK(merge::newEntries(all, all).empty());
    }
}

TEST_CASE("An entry that is held under another signature is new, and what follows it stays in its place", "[merge]")
{
    World world;
    world.setUp();
    world.sheet(world.student, world.studentId, idOf(0x51));
    const merge::Ledger before = world.all;
    const journal::FeedId feed = world.feedOf(world.student, world.studentId);
    const auto& entries = before.feed(feed)->trunk().entries;
    journal::Link again = entries[2].link;
    const keys::Bytes seed(keys::SigningKey::seedBytes, 0x31);
    again.signature = signAgain(seed, journal::headStatement(feed, 2, again.hash), {});
    keys::Bytes branch = entries[2].bytes.toBytes();
    std::copy(again.signature.bytes.begin(), again.signature.bytes.end(), branch.end() - keys::Signature::size);
    const auto next = write(world, {feed, 3, again}, journal::Withdrawn{idOf(0x51), "Twice."}, world.student);
    const merge::Ledger after = offer(before, {feed, 2, {keys::ByteView(branch), keys::ByteView(next.bytes)}}).ledger;
    REQUIRE(after.feed(feed)->forked());

    const std::array heads{merge::StatedHead{feed, 3, again}};
    CHECK(merge::ownFeed(before, feed.device, heads) == merge::OwnFeed::Forked);
    merge::Batch kept = merge::contents(before);
    const auto news = merge::newEntries(before, after);
    kept.runs.insert(kept.runs.end(), news.begin(), news.end());
    const auto reopened = merge::reopen(world.program, kept).value();
    CHECK(reopened.unfit.empty());
    CHECK(volumeOf(reopened.ledger) == volumeOf(after));
}

TEST_CASE("A gap, a refusal or a foreign certificate leaves the ledger byte-identical", "[merge]")
{
    World world;
    world.setUp();
    world.sheet(world.student, world.studentId, idOf(0x51));
    const keys::Bytes before = volumeOf(world.all);
    const auto foreign = trust::writeCertificate(
        signerOf(0x77), 9,
        trust::DirectorCertificate{idOf(1), deviceOf(1).signing.verifyKey(), deviceOf(1).opening.sealKey(), "X"});
    merge::Batch batch = merge::contents(world.all);
    batch.certificates.emplace_back(foreign.value());
    CHECK(merge::take(world.all, batch).reason() == Reason::BadSignature);
    CHECK(volumeOf(world.all) == before);

    merge::Batch wrongHead = merge::contents(world.all);
    wrongHead.heads[0].count += 1;
    CHECK(merge::take(world.all, wrongHead).reason() == Reason::BadSignature);
}

} // namespace peelpack::test
