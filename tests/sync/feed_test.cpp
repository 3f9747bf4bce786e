#include "tests/sync/support/catch.h"
#include "tests/sync/support/sign_again.h"
#include "tests/sync/support/world.h"

#include <algorithm>

namespace peelpack::test {
namespace {

using journal::Reason;
using journal::Verdict;

struct Written {
    std::uint32_t seq;
    keys::Bytes bytes;
    journal::Link link;
};

/// A feed of withdrawals with a fork wherever `branch` says so: a tree given as (parent index, text).
class Tree {
public:
    Tree() : device(deviceOf(0x31)), program(signerOf(0x77).verifyKey()), feed{device.signing.verifyKey(), idOf(0x30)}
    {
    }

    /// `parent` is an index into `entries`, or -1 for entry 0.
    std::size_t add(int parent, const std::string& text)
    {
        journal::Place place{feed, 0, {}};
        if (parent >= 0) {
            const Written& before = entries.at(static_cast<std::size_t>(parent));
            place.seq = before.seq + 1;
            place.previous = before.link;
        }
        const auto entry = journal::writeEntry(program, place, {minute(0), std::nullopt},
                                               journal::Withdrawn{idOf(1), text}, device.signing);
        REQUIRE(entry.ok());
        entries.push_back({place.seq, entry.value().bytes, entry.value().link});
        return entries.size() - 1;
    }

    /// The entry at `index` with another signature by the same device.
    std::size_t signAgain(std::size_t index, std::uint8_t nonce)
    {
        Written again = entries.at(index);
        const keys::Bytes seed(keys::SigningKey::seedBytes, 0x31);
        const std::array<std::uint8_t, 1> nonces{nonce};
        again.link.signature = test::signAgain(seed, journal::headStatement(feed, again.seq, again.link.hash), nonces);
        std::copy(again.link.signature.bytes.begin(), again.link.signature.bytes.end(),
                  again.bytes.end() - keys::Signature::size);
        entries.push_back(std::move(again));
        return entries.size() - 1;
    }

    [[nodiscard]] journal::Feed fold(const std::vector<std::size_t>& order) const
    {
        journal::Feed state(feed);
        for (bool again = true; again;) {
            again = false;
            for (const std::size_t index : order) {
                journal::Applied applied =
                    journal::apply(std::move(state), program, {entries[index].seq, entries[index].bytes, std::nullopt});
                state = std::move(applied.feed);
                again = again || applied.verdict == Verdict::Taken ||
                        (applied.verdict == Verdict::Forked && applied.reason == Reason::RecordForked);
            }
        }
        return state;
    }

    /// What is held, in canonical order.
    static keys::Bytes content(const journal::Feed& state)
    {
        keys::Bytes bytes;
        state.eachSegment([&](std::uint32_t from, const journal::Segment& segment) {
            bytes.push_back(static_cast<std::uint8_t>(from));
            bytes.push_back(static_cast<std::uint8_t>(segment.branches.size()));
            for (const journal::KeptEntry& entry : segment.entries) {
                keys::append(bytes, entry.bytes);
            }
        });
        return bytes;
    }

    keys::DeviceKey device;
    keys::VerifyKey program;
    journal::FeedId feed;
    std::vector<Written> entries;
};

} // namespace

TEST_CASE("The verdicts of the fold: taken, known, gap, refused, forked", "[feed]")
{
    Tree tree;
    const auto a = tree.add(-1, "a");
    const auto b = tree.add(static_cast<int>(a), "b");
    const auto other = tree.add(static_cast<int>(a), "other");
    journal::Feed state(tree.feed);
    const auto offer = [&](std::uint32_t seq, const keys::Bytes& bytes) {
        journal::Applied applied = journal::apply(state, tree.program, {seq, bytes, std::nullopt});
        state = applied.feed;
        return std::pair(applied.verdict, applied.reason);
    };
    CHECK(offer(1, tree.entries[b].bytes) == std::pair(Verdict::Gap, Reason::PredecessorMissing));
    CHECK(state.count() == 0);
    CHECK(offer(0, tree.entries[a].bytes) == std::pair(Verdict::Taken, Reason::None));
    CHECK(offer(0, tree.entries[a].bytes) == std::pair(Verdict::Known, Reason::None));
    CHECK(offer(0, tree.entries[b].bytes) == std::pair(Verdict::Refused, Reason::BadSignature));
    CHECK(offer(1, tree.entries[b].bytes) == std::pair(Verdict::Taken, Reason::None));
    CHECK(offer(2, tree.entries[b].bytes) == std::pair(Verdict::Refused, Reason::BadSignature));
    CHECK(offer(1, tree.entries[other].bytes) == std::pair(Verdict::Forked, Reason::RecordForked));
    CHECK(offer(1, tree.entries[other].bytes) == std::pair(Verdict::Known, Reason::None));
    CHECK(state.count() == 1);
    CHECK(state.evidence().size() == 1);
    CHECK(journal::holds(state.evidence().front()));
    CHECK(journal::sentence(Reason::RecordForked) == "This phone's record split here, often after a restore.");
}

TEST_CASE("A forked feed is the same in every order in which its entries come", "[feed]")
{
    Tree tree;
    const auto root = static_cast<int>(tree.add(-1, "root"));
    const auto left = static_cast<int>(tree.add(root, "left"));
    const auto right = static_cast<int>(tree.add(root, "right"));
    tree.add(left, "left left");
    tree.add(left, "left right");
    tree.add(right, "right on");
    std::vector<std::size_t> order{0, 1, 2, 3, 4, 5};
    const keys::Bytes expected = Tree::content(tree.fold(order));
    std::size_t orders = 0;
    do {
        if (Tree::content(tree.fold(order)) != expected) {
            FAIL("order " << orders);
        }
        ++orders;
    } while (std::next_permutation(order.begin(), order.end()));
    CHECK(orders == 720);
}

TEST_CASE("Two entry zeros are a fork like any other", "[feed]")
{
    Tree tree;
    tree.add(-1, "one");
    tree.add(-1, "two");
    tree.add(0, "one on");
    const journal::Feed forward = tree.fold({0, 1, 2});
    CHECK(forward.count() == 0);
    CHECK(forward.forked());
    CHECK(Tree::content(forward) == Tree::content(tree.fold({2, 1, 0})));
    CHECK(forward.evidence().front().seq == 0);
}

TEST_CASE("At one fork the four smallest branches are kept whole, in any order", "[feed]")
{
    Tree tree;
    const auto root = static_cast<int>(tree.add(-1, "root"));
    std::vector<std::size_t> order{0};
    for (int branch = 0; branch < 7; ++branch) {
        const auto first = tree.add(root, "branch " + std::to_string(branch));
        order.push_back(first);
        order.push_back(tree.add(static_cast<int>(first), "and on"));
    }
    const journal::Feed state = tree.fold(order);
    REQUIRE(state.trunk().branches.size() == 4);
    for (const journal::Segment& branch : state.trunk().branches) {
        CHECK(branch.entries.size() == 2);
    }
    std::vector<journal::Link> firsts;
    for (std::size_t i = 1; i < order.size(); i += 2) {
        firsts.push_back(tree.entries[order[i]].link);
    }
    std::sort(firsts.begin(), firsts.end());
    for (std::size_t i = 0; i < 4; ++i) {
        CHECK(state.trunk().branches[i].entries.front().link == firsts[i]);
    }
    const keys::Bytes expected = Tree::content(state);
    SeededRandom random(5);
    for (int round = 0; round < 60; ++round) {
        for (std::size_t i = order.size(); i-- > 1;) {
            std::array<std::uint8_t, 1> byte{};
            random.fill(byte);
            std::swap(order[i], order[byte[0] % (i + 1)]);
        }
        CHECK(Tree::content(tree.fold(order)) == expected);
    }
}

TEST_CASE("One entry signed in six ways is six branches, and taking them in comes to an end", "[feed]")
{
    Tree tree;
    const auto root = static_cast<int>(tree.add(-1, "root"));
    std::vector<std::size_t> order{0, tree.add(root, "the same")};
    for (std::uint8_t nonce = 1; nonce < 6; ++nonce) {
        order.push_back(tree.signAgain(1, nonce));
    }
    std::sort(order.begin() + 1, order.end(),
              [&](std::size_t a, std::size_t b) { return tree.entries[a].link < tree.entries[b].link; });
    const journal::Feed state = tree.fold(order);
    REQUIRE(state.trunk().branches.size() == 4);
    for (std::size_t i = 0; i < 4; ++i) {
        CHECK(state.trunk().branches[i].entries.front().link == tree.entries[order[i + 1]].link);
    }
    const Written& larger = tree.entries[order.back()];
    const auto applied = journal::apply(state, tree.program, {larger.seq, larger.bytes, std::nullopt});
    CHECK(applied.verdict == Verdict::Forked);
    CHECK(applied.reason == Reason::BranchNotKept);
    CHECK(journal::holds(*applied.evidence));
    const keys::Bytes expected = Tree::content(state);
    std::reverse(order.begin(), order.end());
    CHECK(Tree::content(tree.fold(order)) == expected);

    merge::Batch batch;
    for (const std::size_t index : order) {
        batch.runs.push_back({tree.feed, tree.entries[index].seq, {keys::ByteView(tree.entries[index].bytes)}});
    }
    const merge::TakenAll taken = merge::takeAll(merge::Ledger(tree.program), std::span(&batch, 1));
    CHECK(Tree::content(*taken.ledger.feed(tree.feed)) == expected);
}

TEST_CASE("Forks inside one another stay bounded, in any order", "[feed]")
{
    // At every seq two entries that both follow the first of the two before: a comb of 30 forks.
    Tree tree;
    auto parent = static_cast<int>(tree.add(-1, "root"));
    std::vector<std::size_t> order{0};
    for (int depth = 0; depth < 30; ++depth) {
        const auto one = tree.add(parent, "one " + std::to_string(depth));
        const auto two = tree.add(parent, "two " + std::to_string(depth));
        order.insert(order.end(), {one, two});
        parent = static_cast<int>(one);
    }
    const journal::Feed state = tree.fold(order);
    CHECK(state.evidence().size() <= 4);
    const keys::Bytes expected = Tree::content(state);
    std::reverse(order.begin(), order.end());
    CHECK(Tree::content(tree.fold(order)) == expected);
    std::rotate(order.begin(), order.begin() + 17, order.end());
    CHECK(Tree::content(tree.fold(order)) == expected);
}

TEST_CASE("Every flipped bit of a feed is located at its entry", "[feed]")
{
    World world;
    world.setUp();
    world.sheet(world.student, world.studentId, idOf(0x51));
    const journal::FeedId id = world.feedOf(world.student, world.studentId);
    const auto& entries = world.all.feed(id)->trunk().entries;
    for (std::uint32_t seq = 0; seq < entries.size(); ++seq) {
        journal::Feed before(id);
        for (std::uint32_t i = 0; i < seq; ++i) {
            before = journal::apply(std::move(before), world.program, {i, entries[i].bytes, std::nullopt}).feed;
        }
        for (std::size_t bit = 0; bit < 8 * entries[seq].bytes.size(); ++bit) {
            keys::Bytes changed = entries[seq].bytes.toBytes();
            changed[bit / 8] ^= static_cast<std::uint8_t>(1U << (bit % 8));
            const journal::Applied applied = journal::apply(before, world.program, {seq, changed, std::nullopt});
            if (applied.verdict != Verdict::Refused || applied.feed.count() != seq) {
                FAIL("entry " << seq << ", bit " << bit << " was not refused");
            }
        }
    }
    CHECK(entries.size() == 3);
}

TEST_CASE("A kind of a newer version is kept, passed on and not counted; a newer body is refused", "[feed]")
{
    World world;
    world.setUp();
    const journal::FeedId id = world.feedOf(world.student, world.studentId);
    const keys::Bytes payload{9, 9, 9};
    const auto entry = journal::writeRawEntry(world.program, world.all.next(id), {minute(1), std::nullopt}, 999,
                                              payload, world.student.signing);
    merge::Batch batch;
    batch.runs.push_back({id, 0, {keys::ByteView(entry.value().bytes)}});
    auto taken = merge::take(world.all, batch);
    REQUIRE(taken.ok());
    world.all = std::move(taken).value().ledger;
    CHECK(judgment(world.all, {id, 0, entry.value().link.hash}) ==
          trust::Judgment{trust::Judgment::Standing::Aside, Reason::NewerKind});
    world.append(world.student, world.studentId, journal::SheetOpened{idOf(0x51), idOf(0x50), draft()});
    CHECK(volumeOf(fromVolume(world.program, volumeOf(world.all)).ledger) == volumeOf(world.all));

    keys::Bytes newer = entry.value().bytes;
    newer[0] = 2;
    CHECK(journal::takeApart(newer).reason() == Reason::UnknownVersion);
}

TEST_CASE("A character that may not be in a text is found wherever it stands", "[feed]")
{
    for (std::size_t size = 1; size <= 20; ++size) {
        for (std::size_t at = 0; at < size; ++at) {
            for (unsigned byte = 0; byte < 256; ++byte) {
                std::string text(size, at % 2 == 0 ? ' ' : '~');
                text[at] = static_cast<char>(byte);
                const bool good = byte == '\n' || (byte >= ' ' && byte < 0x7F);
                const Reason expected = good ? Reason::None : Reason::BadText;
                if (journal::encode(journal::Withdrawn{idOf(1), text}).reason() != expected) {
                    FAIL("byte " << byte << " at " << at << " of " << size);
                }
            }
        }
    }
    CHECK(journal::encode(journal::Withdrawn{idOf(1), std::string(4000, 'x')}).ok());
    CHECK(journal::encode(journal::Withdrawn{idOf(1), std::string(4001, 'x')}).reason() == Reason::TextTooLong);
}

TEST_CASE("An owner cannot write what others would refuse", "[feed]")
{
    World world;
    world.setUp();
    const journal::Place place = world.all.next(world.feedOf(world.student, world.studentId));
    const auto write = [&](const journal::Payload& payload) {
        return journal::writeEntry(world.program, place, {minute(1), std::nullopt}, payload, world.student.signing)
            .reason();
    };
    journal::Draft bad = draft();
    CHECK(write(journal::SheetOpened{idOf(1), idOf(2), bad}) == Reason::None);
    bad.procedures.clear();
    CHECK(write(journal::SheetOpened{idOf(1), idOf(2), bad}) == Reason::TooFew);
    bad = draft();
    bad.procedures.assign(9, "x");
    CHECK(write(journal::SheetOpened{idOf(1), idOf(2), bad}) == Reason::TooMany);
    bad = draft();
    bad.head.room = std::string(201, 'x');
    CHECK(write(journal::SheetOpened{idOf(1), idOf(2), bad}) == Reason::TextTooLong);
    bad.head.room = "\xC0\x80";
    CHECK(write(journal::SheetOpened{idOf(1), idOf(2), bad}) == Reason::BadText);
    bad.head.room = std::string("4\0x", 3);
    CHECK(write(journal::SheetOpened{idOf(1), idOf(2), bad}) == Reason::BadText);
    bad = draft();
    std::swap(bad.marks[0], bad.marks[1]);
    CHECK(write(journal::SheetOpened{idOf(1), idOf(2), bad}) == Reason::BadOrder);
    bad = draft();
    bad.marks[0].reason = "a reason without N/A";
    CHECK(write(journal::SheetOpened{idOf(1), idOf(2), bad}) == Reason::BadCombination);
    bad = draft();
    bad.head.start = 1440;
    CHECK(write(journal::SheetOpened{idOf(1), idOf(2), bad}) == Reason::BadNumber);
    CHECK(write(journal::Withdrawn{idOf(1), ""}) == Reason::TextMissing);
    CHECK(write(journal::Withdrawn{idOf(1), std::string(4001, 'x')}) == Reason::TextTooLong);
    CHECK(write(journal::Policy{}) == Reason::TextMissing);
    journal::Policy policy;
    policy.requirementSet = "cap15";
    CHECK(write(policy) == Reason::WrongStream);
    CHECK(write(journal::Unread{}) == Reason::NewerKind);
    const auto wrongKey = journal::writeEntry(world.program, place, {minute(1), std::nullopt},
                                              journal::Withdrawn{idOf(1), "x"}, world.otherStudent.signing);
    CHECK(wrongKey.reason() == Reason::BadSignature);
    const auto wrongZone = journal::writeEntry(world.program, place, {{0, 901}, std::nullopt},
                                               journal::Withdrawn{idOf(1), "x"}, world.student.signing);
    CHECK(wrongZone.reason() == Reason::BadNumber);
}

} // namespace peelpack::test
