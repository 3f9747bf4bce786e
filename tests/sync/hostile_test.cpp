#include "sync/journal/fields.h"
#include "sync/keys/hash.h"
#include "sync/keys/little_endian.h"
#include "tests/sync/support/catch.h"
#include "tests/sync/support/world.h"

#include <chrono>
#include <fstream>

// Attack 12: lengths that lie, nesting, floods. Bounded memory and time, and a clear reason. (A cost of one TiB is in
// vectors_test.cpp.)
namespace peelpack::journal {

/// A structure that can be nested at will, which no payload is: only to see that the archive stops it.
struct Nested {
    std::vector<Nested> inner;
};

template <class Archive>
void serialize(Archive& archive, Nested& nested)
{
    archive(list(nested.inner, 0, 10));
}

} // namespace peelpack::journal

namespace peelpack::test {
namespace {

using journal::Reason;
using keys::littleEndian;

/// The most memory this process has had, in KiB (Linux: VmHWM).
std::size_t peakMemory()
{
    std::ifstream status("/proc/self/status");
    std::string word;
    while (status >> word) {
        if (word == "VmHWM:") {
            std::size_t kibibytes = 0;
            status >> kibibytes;
            return kibibytes;
        }
    }
    return 0;
}

Reason decoded(journal::Kind kind, const keys::Bytes& payload)
{
    return journal::decodePayload(static_cast<std::uint16_t>(kind), payload).reason();
}

/// A volume of this program up to the counts, with a right digest.
keys::Bytes volumeWith(const keys::VerifyKey& program, const keys::Bytes& afterNumbers)
{
    keys::Bytes bytes;
    keys::append(bytes, keys::bytesOf("Peelpack journal 1: education records, keep them confidential.\n"));
    keys::append(bytes, program.view());
    keys::append(bytes, littleEndian(std::uint16_t{1}));
    keys::append(bytes, littleEndian(std::uint16_t{1}));
    keys::append(bytes, afterNumbers);
    keys::append(bytes, keys::hash("peelpack.volum.1", {bytes}).view());
    return bytes;
}

} // namespace

TEST_CASE("Attack 12: a text or a list that claims 4 GiB sets nothing aside", "[hostile][attack]")
{
    const std::size_t before = peakMemory();
    REQUIRE(before > 0);
    for (const std::uint64_t claim : {std::uint64_t{1} << 32U, UINT64_MAX, UINT64_MAX / 2, std::uint64_t{4001}}) {
        INFO(claim);
        keys::Bytes text{1};
        keys::append(text, idOf(1).view());
        keys::append(text, littleEndian(claim));
        CHECK(decoded(journal::Kind::Withdrawn, text) == (claim == 4001 ? Reason::TooShort : Reason::TextTooLong));

        keys::Bytes items{1};
        keys::append(items, littleEndian(claim));
        CHECK(decoded(journal::Kind::Receipt, items) == Reason::TooMany);

        keys::Bytes bytes{1};
        keys::append(bytes, littleEndian(claim));
        CHECK(decoded(journal::Kind::Attestation, bytes) == Reason::TooMany);
    }
    const keys::Bytes twelve{1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 0, 0};
    CHECK(decoded(journal::Kind::Receipt, twelve) == Reason::TooMany);
    CHECK(peakMemory() - before < 16 * 1024);
}

TEST_CASE("Attack 12: an entry whose length lies", "[hostile][attack]")
{
    keys::Bytes entry(100);
    entry[0] = 1;
    const auto withLength = [&](std::uint32_t length) {
        const auto bytes = littleEndian(length);
        std::copy(bytes.begin(), bytes.end(), entry.begin() + 14);
        return journal::takeApart(entry).reason();
    };
    CHECK(withLength(18) == Reason::None);
    CHECK(withLength(17) == Reason::LeftOver);
    CHECK(withLength(19) == Reason::TooShort);
    CHECK(withLength(UINT32_MAX) == Reason::TooShort);
    CHECK(journal::takeApart(keys::Bytes(81)).reason() == Reason::TooShort);
    CHECK(journal::takeApart(keys::Bytes(65537)).reason() == Reason::TooLarge);
    CHECK(journal::takeApart({}).reason() == Reason::TooShort);
}

TEST_CASE("Attack 12: deep nesting stops at 8", "[hostile][attack]")
{
    const auto nested = [](std::size_t depth) {
        keys::Bytes bytes{1};
        for (std::size_t i = 0; i + 1 < depth; ++i) {
            keys::append(bytes, littleEndian(std::uint64_t{1}));
        }
        keys::append(bytes, littleEndian(std::uint64_t{0}));
        journal::InputArchive archive(bytes);
        journal::Nested value;
        archive(value);
        return archive.finish();
    };
    CHECK(nested(1) == Reason::None);
    CHECK(nested(8) == Reason::None);
    CHECK(nested(9) == Reason::TooDeep);
    CHECK(nested(1'000'000) == Reason::TooDeep);
}

TEST_CASE("Attack 12: a volume whose counts lie is refused as a whole, at once", "[hostile][attack]")
{
    const World world;
    const std::size_t before = peakMemory();
    const auto read = [&](const keys::Bytes& rest) {
        return parcel::readVolume(world.program, volumeWith(world.program, rest)).reason();
    };
    const keys::Bytes none{0, 0};
    keys::Bytes empty;
    for (int i = 0; i < 3; ++i) {
        keys::append(empty, none);
    }
    CHECK(read(empty) == Reason::None);
    CHECK(read({0xFF, 0xFF}) == Reason::TooMany);
    CHECK(read({0, 0, 0xFF, 0xFF}) == Reason::TooManyFeeds);
    CHECK(read({0, 0, 0, 0, 0xFF, 0xFF}) == Reason::TooMany);
    CHECK(read({0, 0, 0, 0}) == Reason::TooShort);
    CHECK(read({}) == Reason::TooShort);
    keys::Bytes leftOver = empty;
    leftOver.push_back(0);
    CHECK(read(leftOver) == Reason::LeftOver);

    // One run that claims 10 million entries, and one that claims all that a number can.
    for (const std::uint32_t claim : {10'000'000U, UINT32_MAX, 2U}) {
        keys::Bytes run{0, 0, 0, 0, 1, 0};
        run.resize(run.size() + 48);
        keys::append(run, littleEndian(std::uint32_t{0}));
        keys::append(run, littleEndian(claim));
        run.resize(run.size() + 100);
        CHECK(read(run) == Reason::TooManyEntries);
    }
    // An entry length beyond the entry limit.
    keys::Bytes run{0, 0, 0, 0, 1, 0};
    run.resize(run.size() + 48);
    keys::append(run, littleEndian(std::uint32_t{0}));
    keys::append(run, littleEndian(std::uint32_t{1}));
    keys::append(run, littleEndian(UINT32_MAX));
    run.resize(run.size() + 100);
    CHECK(read(run) == Reason::TooLarge);
    CHECK(peakMemory() - before < 16 * 1024);
}

TEST_CASE("Attack 12: ten million tiny entries do not get past the reader", "[hostile][attack]")
{
    const World world;
    constexpr std::uint32_t fitting = 760'000; // what 64 MiB have room for
    keys::Bytes rest{0, 0, 0, 0, 1, 0};
    rest.resize(rest.size() + 48);
    keys::append(rest, littleEndian(std::uint32_t{0}));
    keys::append(rest, littleEndian(fitting));
    rest.resize(rest.size() + std::size_t{86} * fitting);
    const keys::Bytes volume = volumeWith(world.program, rest);
    const auto start = std::chrono::steady_clock::now();
    CHECK(parcel::readVolume(world.program, volume).reason() == Reason::TooManyEntries);
    CHECK(std::chrono::steady_clock::now() - start < std::chrono::seconds(5));
    CHECK(parcel::readVolume(world.program, keys::Bytes(parcel::mostVolumeBytes + 1)).reason() == Reason::TooLarge);
    CHECK(parcel::open(keys::Bytes(parcel::mostParcelBytes + 1), world.instructor.opening).reason() ==
          Reason::TooLarge);
}

TEST_CASE("Attack 12: more unknown devices than a program has are refused, and the ledger stays as it was",
          "[hostile][attack]")
{
    World world;
    world.setUp();
    std::vector<keys::Bytes> kept;
    merge::Batch batch;
    for (std::size_t i = 0; i < merge::Ledger::mostUnknownFeeds + 1; ++i) {
        keys::Bytes seed(32, 0x99);
        seed[0] = static_cast<std::uint8_t>(i & 0xFFU);
        seed[1] = static_cast<std::uint8_t>(i >> 8U);
        const keys::SigningKey key = keys::SigningKey::fromSeed(seed).value();
        const journal::FeedId feed{key.verifyKey(), idOf(0x30)};
        auto entry = journal::writeEntry(world.program, {feed, 0, {}}, {minute(0), std::nullopt},
                                         journal::Withdrawn{idOf(1), "x"}, key);
        kept.push_back(std::move(entry).value().bytes);
        batch.runs.push_back({feed, 0, {keys::ByteView(kept.back())}});
    }
    // Growing moves vectors, not their bytes, so the views are still good.
    CHECK(merge::take(world.all, batch).reason() == Reason::TooManyFeeds);
    batch.runs.pop_back();
    CHECK(merge::take(world.all, batch).ok());
}

TEST_CASE("Bytes at random, and good bytes changed at random, never crash a reader and never read two ways",
          "[hostile]")
{
    World world;
    world.setUp();
    world.sheet(world.student, world.studentId, idOf(0x51));
    REQUIRE(world.receipt(world.instructor, world.studentId).has_value());
    std::vector<std::pair<std::uint16_t, keys::Bytes>> payloads;
    for (const auto& [id, feed] : world.all.feeds()) {
        for (const journal::KeptEntry& entry : feed.trunk().entries) {
            const auto parts = journal::takeApart(entry.bytes);
            const keys::ByteView payload = parts.value().payload;
            payloads.emplace_back(parts.value().kind, keys::Bytes(payload.begin(), payload.end()));
        }
    }
    SeededRandom random(11);
    const auto below = [&](std::size_t most) {
        std::array<std::uint8_t, 4> bytes{};
        random.fill(bytes);
        return keys::Reader(bytes).number<std::uint32_t>() % most;
    };
    std::size_t accepted = 0;
    std::size_t refused = 0;
    for (int round = 0; round < 20'000; ++round) {
        auto [kind, bytes] = payloads[below(payloads.size())];
        for (std::size_t change = 0; change < 1 + below(3); ++change) {
            switch (below(3)) {
            case 0:
                bytes[below(bytes.size())] = static_cast<std::uint8_t>(below(256));
                break;
            case 1:
                bytes.erase(bytes.begin() + static_cast<std::ptrdiff_t>(below(bytes.size())));
                break;
            default:
                bytes.insert(bytes.begin() + static_cast<std::ptrdiff_t>(below(bytes.size())),
                             static_cast<std::uint8_t>(below(3)));
            }
        }
        const auto payload = journal::decodePayload(kind, bytes);
        if (!payload) {
            ++refused;
            continue;
        }
        ++accepted;
        const auto again = journal::encode(payload.value());
        if (!again || again.value() != bytes) {
            FAIL("two ways to write one payload of kind " << kind);
        }
    }
    CHECK(accepted > 1000);
    CHECK(refused > 1000);
    for (int round = 0; round < 5'000; ++round) {
        keys::Bytes bytes(below(300));
        random.fill(bytes);
        CHECK_FALSE(parcel::readVolume(world.program, bytes).ok());
        CHECK_FALSE(parcel::open(bytes, world.instructor.opening).ok());
        CHECK_FALSE(trust::readCertificate(world.program, bytes).ok());
        CHECK_FALSE(journal::evidenceFromBytes(bytes).ok());
        CHECK_FALSE(keys::SigningCard::fromCode(bytes).ok());
    }
}

TEST_CASE("Strict values: byte order, booleans, enumerations, leftovers", "[hostile]")
{
    const keys::Bytes initial = journal::encode(journal::Initial{act(idOf(1), {}), true}).value();
    keys::Bytes bytes = initial;
    CHECK(decoded(journal::Kind::Initial, bytes) == Reason::None);
    bytes.back() = 7;
    CHECK(decoded(journal::Kind::Initial, bytes) == Reason::BadBoolean);
    bytes = initial;
    bytes.front() = 0;
    CHECK(decoded(journal::Kind::Initial, bytes) == Reason::ByteOrder);
    bytes = initial;
    bytes.push_back(0);
    CHECK(decoded(journal::Kind::Initial, bytes) == Reason::LeftOver);
    bytes.resize(bytes.size() - 2);
    CHECK(decoded(journal::Kind::Initial, bytes) == Reason::TooShort);
    CHECK(decoded(journal::Kind::Initial, {}) == Reason::TooShort);

    journal::HandOverEnded ended;
    ended.sheet = idOf(1);
    bytes = journal::encode(ended).value();
    bytes.back() = 5;
    CHECK(decoded(journal::Kind::HandOverEnded, bytes) == Reason::BadNumber);
    bytes.back() = 0;
    CHECK(decoded(journal::Kind::HandOverEnded, bytes) == Reason::BadNumber);
}

} // namespace peelpack::test
