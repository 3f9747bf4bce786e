#include "sync/keys/hash.h"
#include "sync/merge/contents.h"
#include "tests/sync/support/catch.h"
#include "tests/sync/support/world.h"

#include <algorithm>

namespace peelpack::test {
namespace {

using journal::Reason;

constexpr std::size_t slotBytes = 48;
constexpr std::size_t slotsAt = 51;

keys::Bytes content(std::size_t size)
{
    keys::Bytes bytes(size);
    SeededRandom(7).fill(bytes);
    return bytes;
}

keys::Bytes sealed(const keys::Bytes& volume, const keys::DeviceKey& to, std::uint8_t seed = 1)
{
    SeededRandom random(seed);
    const std::array recipients{to.opening.sealKey()};
    auto parcel = parcel::seal(volume, recipients, random);
    REQUIRE(parcel.ok());
    return std::move(parcel).value();
}

std::size_t chunksAt(std::size_t recipients)
{
    return slotsAt + recipients * slotBytes + 32 + 24 + 32;
}

} // namespace

TEST_CASE("A parcel gives back its volume to every recipient, whatever its size", "[parcel]")
{
    const keys::DeviceKey one = deviceOf(1);
    const keys::DeviceKey two = deviceOf(5);
    const keys::DeviceKey three = deviceOf(9);
    for (const std::size_t size : {1U, 65535U, 65536U, 65537U, 131072U, 200000U}) {
        INFO(size);
        const keys::Bytes volume = content(size);
        SeededRandom random(3);
        const std::array recipients{one.opening.sealKey(), two.opening.sealKey()};
        const auto parcel = parcel::seal(volume, recipients, random);
        REQUIRE(parcel.ok());
        const std::size_t chunks = (size + 65535) / 65536;
        CHECK(parcel.value().size() == chunksAt(2) + size + 17 * chunks);
        for (const keys::DeviceKey* recipient : {&one, &two}) {
            const auto opened = parcel::open(parcel.value(), recipient->opening);
            REQUIRE(opened.ok());
            CHECK(opened.value() == volume);
        }
        CHECK(parcel::open(parcel.value(), three.opening).reason() == Reason::NotForThisDevice);
    }
}

TEST_CASE("A parcel needs 1 to 32 usable recipients and something to carry", "[parcel]")
{
    SeededRandom random(3);
    const std::vector<keys::SealKey> none;
    CHECK(parcel::seal(content(5), none, random).reason() == Reason::TooFew);
    const std::vector<keys::SealKey> many(33, deviceOf(1).opening.sealKey());
    CHECK(parcel::seal(content(5), many, random).reason() == Reason::TooMany);
    const std::array zero{keys::SealKey{}};
    CHECK(parcel::seal(content(5), zero, random).reason() == Reason::UnusableKey);
    const std::array one{deviceOf(1).opening.sealKey()};
    CHECK(parcel::seal({}, one, random).reason() == Reason::TooFew);
}

TEST_CASE("Attack 11: every flipped bit of a parcel is noticed", "[parcel][attack]")
{
    const keys::DeviceKey to = deviceOf(1);
    const keys::Bytes parcel = sealed(content(66'000), to);
    const auto flipped = [&](std::size_t bit) {
        keys::Bytes changed = parcel;
        changed[bit / 8] ^= static_cast<std::uint8_t>(1U << (bit % 8));
        return parcel::open(changed, to.opening).reason();
    };
    // Every bit of the header and of both ends of the chunks; in between, every 997th.
    const std::size_t dense = 8 * (chunksAt(1) + 64);
    for (std::size_t bit = 0; bit < 8 * parcel.size(); bit += bit < dense || bit > 8 * (parcel.size() - 64) ? 1 : 997) {
        const Reason reason = flipped(bit);
        if (reason == Reason::None) {
            FAIL("bit " << bit << " was not noticed");
        }
    }
    CHECK(flipped(8 * (slotsAt + 3)) == Reason::NotForThisDevice);
    CHECK(flipped(8 * (slotsAt + slotBytes)) == Reason::NotCommitted);
    CHECK(flipped(8 * (slotsAt + slotBytes + 32)) == Reason::HeaderDamaged);
    CHECK(flipped(8 * chunksAt(1)) == Reason::ChunkDamaged);
}

TEST_CASE("Attack 11: a parcel cut at any length is noticed", "[parcel][attack]")
{
    const keys::DeviceKey to = deviceOf(1);
    const keys::Bytes parcel = sealed(content(140'000), to);
    std::vector<std::size_t> lengths;
    for (std::size_t length = 0; length < parcel.size(); length += length < 400 ? 1 : 811) {
        lengths.push_back(length);
    }
    const std::size_t chunk = 65536 + 17;
    lengths.insert(lengths.end(), {chunksAt(1) + chunk, chunksAt(1) + 2 * chunk, parcel.size() - 1});
    for (const std::size_t length : lengths) {
        INFO(length);
        CHECK_FALSE(parcel::open(keys::ByteView(parcel).first(length), to.opening).ok());
    }
    keys::Bytes longer = parcel;
    longer.push_back(0);
    CHECK(parcel::open(longer, to.opening).reason() == Reason::ChunkDamaged);
}

TEST_CASE("Attack 11: chunks in another order, twice, or from another parcel are noticed", "[parcel][attack]")
{
    const keys::DeviceKey to = deviceOf(1);
    const std::size_t chunk = 65536 + 17;
    const auto at = static_cast<std::ptrdiff_t>(chunksAt(1));
    const auto one = static_cast<std::ptrdiff_t>(chunk);
    const keys::Bytes parcel = sealed(content(3 * 65536), to);
    const keys::Bytes other = sealed(content(3 * 65536), to, 2);

    keys::Bytes reordered = parcel;
    std::swap_ranges(reordered.begin() + at, reordered.begin() + at + one, reordered.begin() + at + one);
    CHECK(parcel::open(reordered, to.opening).reason() == Reason::ChunkDamaged);

    keys::Bytes twice = parcel;
    twice.insert(twice.begin() + at, parcel.begin() + at, parcel.begin() + at + one);
    CHECK(parcel::open(twice, to.opening).reason() == Reason::ChunkDamaged);

    keys::Bytes missing = parcel;
    missing.erase(missing.begin() + at, missing.begin() + at + one);
    CHECK(parcel::open(missing, to.opening).reason() == Reason::ChunkDamaged);

    keys::Bytes splicedChunk = parcel;
    std::copy(other.begin() + at, other.begin() + at + one, splicedChunk.begin() + at);
    CHECK(parcel::open(splicedChunk, to.opening).reason() == Reason::ChunkDamaged);

    keys::Bytes splicedHead = other;
    std::copy(parcel.begin(), parcel.begin() + at, splicedHead.begin());
    CHECK(parcel::open(splicedHead, to.opening).reason() == Reason::ChunkDamaged);

    keys::Bytes splicedSlot = parcel;
    std::copy(other.begin(), other.begin() + slotsAt + slotBytes, splicedSlot.begin());
    CHECK(parcel::open(splicedSlot, to.opening).reason() == Reason::NotCommitted);
}

TEST_CASE("Attack 11: a parcel replayed changes nothing, and one opened by the wrong device shows nothing",
          "[parcel][attack]")
{
    World world;
    world.setUp();
    world.sheet(world.student, world.studentId, idOf(0x51));
    const keys::Bytes parcel = sealed(volumeOf(world.all), world.instructor);
    CHECK(parcel::open(parcel, world.otherStudent.opening).reason() == Reason::NotForThisDevice);
    const auto volume = parcel::open(parcel, world.instructor.opening);
    REQUIRE(volume.ok());
    const merge::Taken first = fromVolume(world.program, volume.value());
    CHECK(first.report.news());
    const auto read = parcel::readVolume(world.program, volume.value());
    const auto again = merge::take(first.ledger, read.value().batch);
    REQUIRE(again.ok());
    CHECK_FALSE(again.value().report.news());
    CHECK(again.value().report.findings.empty());
    CHECK(again.value().report.known == first.report.taken);
    CHECK(volumeOf(again.value().ledger) == volumeOf(first.ledger));
}

TEST_CASE("A student's parcel holds their own stream, the program streams, and nothing of anybody else", "[parcel]")
{
    World world;
    world.setUp();
    world.sheet(world.student, world.studentId, idOf(0x51));
    world.sheet(world.otherStudent, world.otherStudentId, idOf(0x52));
    REQUIRE(world.receipt(world.instructor, world.studentId).has_value());
    REQUIRE(world.receipt(world.instructor, world.otherStudentId).has_value());
    journal::Position head{world.feedOf(world.otherStudent, world.otherStudentId), 0, {}};
    world.certify(1, trust::Completion{world.otherStudentId, "cap15", {}, head, minute(1)});
    world.certify(1, trust::DirectorRevoked{world.feedOf(world.director, world.otherStudentId), 0});

    const keys::Bytes whole = volumeOf(world.all);
    const keys::Bytes part = volumeOf(world.program, merge::contents(world.all, world.studentId));
    const auto contains = [](const keys::Bytes& bytes, keys::ByteView needle) {
        return std::search(bytes.begin(), bytes.end(), needle.begin(), needle.end()) != bytes.end();
    };
    const keys::VerifyKey& otherDevice = world.otherStudent.signing.verifyKey();
    const keys::SealKey& otherSeal = world.otherStudent.opening.sealKey();
    for (const keys::ByteView needle : {world.otherStudentId.view(), otherDevice.view(), otherSeal.view()}) {
        CHECK(contains(whole, needle));
        CHECK_FALSE(contains(part, needle));
    }
    const merge::Taken taken = fromVolume(world.program, part);
    const auto authority = taken.ledger.authority();
    CHECK(authority.holder(world.student.signing.verifyKey()) != nullptr);
    CHECK(merge::contents(taken.ledger).runs.size() ==
          4); // two program streams, the student's feed, the instructor's stream about the student
}

TEST_CASE("An export in several volumes gives the same ledger as in one", "[parcel]")
{
    World world;
    world.setUp();
    for (std::uint8_t sheet = 0x50; sheet < 0x60; ++sheet) {
        world.sheet(world.student, world.studentId, idOf(sheet));
    }
    const auto volumes = parcel::writeVolumes(world.program, merge::contents(world.all), 6000);
    REQUIRE(volumes.ok());
    CHECK(volumes.value().size() > 2);
    std::vector<merge::Batch> batches;
    for (std::size_t i = volumes.value().size(); i-- > 0;) { // the last first: gaps fill as the others come
        const keys::Bytes& bytes = volumes.value()[i];
        CHECK(bytes.size() <= 6000);
        const auto read = parcel::readVolume(world.program, bytes);
        REQUIRE(read.ok());
        CHECK(read.value().number == i + 1);
        CHECK(read.value().of == volumes.value().size());
        batches.push_back(read.value().batch);
    }
    const merge::TakenAll taken = merge::takeAll(merge::Ledger(world.program), batches);
    CHECK(taken.unusable.empty());
    CHECK(volumeOf(taken.ledger) == volumeOf(world.all));
    CHECK(parcel::writeVolumes(world.program, merge::contents(world.all), 1500).reason() == Reason::TooLarge);
}

TEST_CASE("Every flipped bit of an export is noticed, also by somebody who mends the digest", "[parcel]")
{
    World world;
    world.setUp();
    world.sheet(world.student, world.studentId, idOf(0x51));
    const keys::Bytes volume = volumeOf(world.all);
    const std::size_t content = volume.size() - 32;
    std::size_t asWhole = 0;
    std::size_t located = 0;
    std::size_t harmless = 0;
    for (std::size_t bit = 0; bit < 8 * content; bit += 11) { // 11 and 8 have no common divisor: every bit of a byte
        keys::Bytes changed = volume;
        changed[bit / 8] ^= static_cast<std::uint8_t>(1U << (bit % 8));
        if (parcel::readVolume(world.program, changed).ok()) {
            FAIL("bit " << bit << " was not noticed");
        }
        const keys::Hash digest = keys::hash("peelpack.volum.1", {keys::ByteView(changed).first(content)});
        std::copy(digest.bytes.begin(), digest.bytes.end(), changed.end() - 32);
        const auto read = parcel::readVolume(world.program, changed);
        if (!read) {
            ++asWhole;
            continue;
        }
        const auto taken = merge::take(merge::Ledger(world.program), read.value().batch);
        if (!taken) {
            ++asWhole;
        } else if (!taken.value().report.findings.empty()) {
            ++located;
        } else {
            // Only the number of the volume and of how many it is one are not signed.
            ++harmless;
            CHECK(bit / 8 >= 95);
            CHECK(bit / 8 < 99);
            CHECK(volumeOf(taken.value().ledger) == volume);
        }
    }
    CHECK(asWhole > 0);
    CHECK(located > 0);
    CHECK(harmless < 4);
}

} // namespace peelpack::test
