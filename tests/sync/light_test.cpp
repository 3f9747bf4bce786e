#include "sync/carry/collector.h"
#include "sync/carry/frame_source.h"
#include "sync/keys/hash.h"
#include "sync/keys/little_endian.h"
#include "tests/sync/support/catch.h"
#include "tests/sync/support/world.h"

#include <algorithm>
#include <array>
#include <bit>
#include <numeric>
#include <random>

// A parcel by light: whatever is lost, repeated, mixed in or made up, what comes out is the parcel or nothing.
namespace peelpack::test {
namespace {

using carry::Collector;
using carry::FrameSource;
using carry::Offered;
using journal::Reason;
using Sort = Offered::Sort;

keys::Bytes content(std::size_t size, std::uint8_t seed = 1)
{
    keys::Bytes bytes(size);
    SeededRandom(seed).fill(bytes);
    return bytes;
}

FrameSource cut(const keys::Bytes& parcel, std::size_t most = carry::usualPieceBytes)
{
    auto source = FrameSource::of(parcel, most);
    REQUIRE(source.ok());
    return std::move(source).value();
}

/// Offers frames as `next` names them until the parcel is there; so many were needed.
template <class Next>
std::size_t readUntilWhole(const FrameSource& source, const keys::Bytes& parcel, Next next)
{
    Collector collector;
    const std::size_t enough = std::size_t{50} * source.count() + 5000;
    for (std::size_t offered = 1; offered < enough; ++offered) {
        Offered result = collector.offer(source.frame(next()));
        REQUIRE(result.sort != Sort::Unusable);
        REQUIRE(result.sort != Sort::StartedAnew);
        if (result.sort == Sort::Complete) {
            const bool same = result.parcel == parcel;
            REQUIRE(same);
            REQUIRE(collector.progress() == carry::Progress{source.parcel(), source.count(), source.count()});
            REQUIRE(collector.unfinished().empty());
            return offered;
        }
    }
    FAIL("It never came to an end.");
    return 0;
}

/// A frame of the given fields with a right check, whatever it says.
keys::Bytes made(const keys::Id& id, std::uint32_t length, std::uint16_t count, std::uint16_t number,
                 const keys::Bytes& piece)
{
    return carry::writeFrame({id, length, count, number, piece});
}

Reason reasonOf(const keys::Bytes& code)
{
    return carry::readFrame(code).reason();
}

} // namespace

TEST_CASE("The plain frames of a parcel give it back, of every size", "[light]")
{
    for (const std::size_t size : {1U, 2U, 298U, 299U, 300U, 598U, 599U, 4097U, 20'000U, 65'555U}) {
        INFO(size);
        const keys::Bytes parcel = content(size);
        const FrameSource source = cut(parcel);
        CHECK(source.count() == (size + 298) / 299);
        std::uint16_t number = 0;
        CHECK(readUntilWhole(source, parcel, [&] { return number++; }) == source.count());
    }
}

TEST_CASE("A frame never has more bytes than its code holds", "[light]")
{
    for (const std::size_t size : {1U, 300U, 1000U, 524'288U}) {
        const FrameSource source = cut(content(size));
        for (const std::uint16_t number : {std::uint16_t{0}, source.count(), std::uint16_t{65'535}}) {
            CHECK(source.frame(number).size() <= 331);
            CHECK(source.frame(number).size() == source.frame(0).size());
        }
    }
}

TEST_CASE("Only what is larger than goes by light is not cut", "[light]")
{
    CHECK(FrameSource::of({}).reason() == Reason::TooShort);
    CHECK(FrameSource::of(content(carry::mostLightBytes + 1)).reason() == Reason::TooLarge);
    CHECK(cut(content(carry::mostLightBytes)).count() == 1754);
    CHECK(cut(content(carry::mostLightBytes), 256).count() == 2048);
}

TEST_CASE("The largest parcel comes through with every other frame missed", "[light]")
{
    const keys::Bytes parcel = content(carry::mostLightBytes);
    const FrameSource source = cut(parcel);
    std::uint16_t number = 0;
    const std::size_t needed = readUntilWhole(source, parcel, [&] {
        number = static_cast<std::uint16_t>(number + 2);
        return number;
    });
    CHECK(needed < std::size_t{source.count()} + 40);
}

TEST_CASE("Any order, losses, repetitions, any beginning: the parcel is the same", "[light]")
{
    for (std::uint32_t seed = 0; seed < 300; ++seed) {
        INFO("seed " << seed);
        std::mt19937 random(seed);
        const auto upTo = [&](std::uint32_t most) { return static_cast<std::uint16_t>(random() % most); };
        const keys::Bytes parcel = content(std::size_t{1} + random() % 12'000, static_cast<std::uint8_t>(seed));
        const FrameSource source = cut(parcel, 256 + upTo(769));
        std::uint16_t running = upTo(65'536);
        const std::uint16_t way = upTo(4);
        const std::uint32_t lossInTen = random() % 8;
        std::vector<std::uint16_t> shuffled(std::size_t{2} * source.count() + 40);
        std::iota(shuffled.begin(), shuffled.end(), upTo(65'536));
        std::shuffle(shuffled.begin(), shuffled.end(), random);
        std::size_t at = 0;
        readUntilWhole(source, parcel, [&]() -> std::uint16_t {
            switch (way) {
            case 0: // as it is shown, from the middle, some missed
                do {
                    ++running;
                } while (random() % 10 < lossInTen);
                return running;
            case 1: // any
                return upTo(65'536);
            case 2: // plain frames again and again, by chance
                return upTo(source.count());
            default: // each twice
                return shuffled[at++ / 2 % shuffled.size()];
            }
        });
    }
}

TEST_CASE("Spare frames alone are few more than there are pieces", "[light]")
{
    std::size_t more = 0;
    constexpr std::size_t rounds = 200;
    for (std::size_t seed = 0; seed < rounds; ++seed) {
        const keys::Bytes parcel = content(299 * 40, static_cast<std::uint8_t>(seed));
        const FrameSource source = cut(parcel);
        std::uint16_t number = source.count();
        more += readUntilWhole(source, parcel, [&] { return number++; }) - source.count();
    }
    // A random square matrix over GF(2) wants 1.6 more rows on average (common knowledge, no source).
    CHECK(more > rounds);
    CHECK(more < 2 * rounds + rounds / 2);
}

TEST_CASE("Every frame names at least one piece, and a plain one its own", "[light]")
{
    for (const std::uint16_t count : {std::uint16_t{1}, std::uint16_t{2}, std::uint16_t{64}, std::uint16_t{2048}}) {
        const keys::Id id = idOf(static_cast<std::uint8_t>(count));
        for (std::uint32_t number = 0; number < 3000; ++number) {
            const carry::PieceSet pieces = carry::piecesOf(id, count, static_cast<std::uint16_t>(number));
            int chosen = 0;
            for (const std::uint64_t word : pieces) {
                chosen += std::popcount(word);
            }
            REQUIRE(chosen >= 1);
            REQUIRE(chosen <= count);
            if (number < count) {
                REQUIRE(chosen == 1);
                REQUIRE(((pieces[number / 64] >> (number % 64)) & 1U) == 1);
            }
        }
    }
}

TEST_CASE("Four parcels are read at once; a fifth takes the place of the one that waited longest", "[light]")
{
    std::vector<keys::Bytes> parcels;
    std::vector<FrameSource> sources;
    for (std::uint8_t i = 0; i < 5; ++i) {
        parcels.push_back(content(3000, i));
        sources.push_back(cut(parcels.back()));
    }
    const std::uint16_t count = sources.front().count();
    Collector collector;
    for (std::uint16_t number = 0; number < count; ++number) {
        for (std::size_t i = 0; i < 4; ++i) {
            const Offered result = collector.offer(sources[i].frame(number));
            CHECK(result.sort == (number + 1 == count ? Sort::Complete : Sort::Taken));
            CHECK(collector.progress() == carry::Progress{sources[i].parcel(), number + std::size_t{1}, count});
            if (number + 1 == count) {
                CHECK(result.parcel == parcels[i]);
            }
        }
    }
    // A complete one is not read again.
    CHECK(collector.offer(sources[0].frame(3)).sort == Sort::Known);
    CHECK(collector.unfinished().empty());
    // Unless somebody wants it again.
    collector.forgetComplete();
    CHECK_FALSE(collector.progress());
    for (std::uint16_t number = 0; number < count; ++number) {
        CHECK(collector.offer(sources[0].frame(number)).sort == (number + 1 == count ? Sort::Complete : Sort::Taken));
    }

    Collector other;
    for (std::size_t i : {0U, 1U, 2U, 3U, 0U, 4U}) {
        CHECK(other.offer(sources[i].frame(other.unfinished().size() < 4 ? 0 : 1)).sort == Sort::Taken);
    }
    CHECK(other.unfinished().size() == 4);
    CHECK(other.offer(sources[1].frame(0)).sort == Sort::Taken); // was dropped
    CHECK(other.offer(sources[0].frame(0)).sort == Sort::Known); // was not
}

TEST_CASE("One parcel under two lengths or counts is two, and the true one comes through", "[light][hostile]")
{
    const keys::Bytes parcel = content(3000);
    const FrameSource source = cut(parcel);
    const keys::Bytes piece(carry::pieceBytes(2999, source.count()), 7);
    Collector collector;
    for (std::uint16_t number = 0; number < source.count(); ++number) {
        CHECK(collector.offer(made(source.parcel(), 2999, source.count(), number, piece)).sort !=
              Sort::Complete); // the whole is not what the id says
        const Offered result = collector.offer(source.frame(number));
        CHECK(result.sort == (number + 1 == source.count() ? Sort::Complete : Sort::Taken));
    }
}

TEST_CASE("A wrong piece is found, all is dropped and the reading starts anew", "[light][hostile]")
{
    const keys::Bytes parcel = content(3000);
    const FrameSource source = cut(parcel);
    const std::uint16_t count = source.count();
    const keys::Bytes wrong(carry::pieceBytes(3000, count), 0xEE);
    const keys::Bytes lie = made(source.parcel(), 3000, count, 4, wrong);
    SECTION("at the end, by the hash of the whole")
    {
        Collector collector;
        for (std::uint16_t number = 0; number < count; ++number) {
            const Offered result = collector.offer(number == 4 ? lie : source.frame(number));
            CHECK(result.sort == (number + 1 == count ? Sort::StartedAnew : Sort::Taken));
            CHECK(result.parcel.empty());
        }
        CHECK_FALSE(collector.progress());
        CHECK(collector.unfinished().empty());
        for (std::uint16_t number = 0; number < count; ++number) {
            CHECK(collector.offer(source.frame(number)).sort == (number + 1 == count ? Sort::Complete : Sort::Taken));
        }
    }
    SECTION("at once, where it contradicts")
    {
        Collector collector;
        CHECK(collector.offer(source.frame(4)).sort == Sort::Taken);
        CHECK(collector.offer(lie).sort == Sort::StartedAnew);
        CHECK(collector.unfinished().empty());
        CHECK(collector.offer(source.frame(4)).sort == Sort::Taken);
    }
}

TEST_CASE("Filling that is not zero is not the parcel", "[light][hostile]")
{
    keys::Bytes parcel = content(301);
    Collector collector; // two pieces of 151 bytes, of which one byte is filling
    const keys::Id id = carry::parcelId(parcel);
    parcel.push_back(1);
    CHECK(collector.offer(made(id, 301, 2, 0, {parcel.begin(), parcel.begin() + 151})).sort == Sort::Taken);
    CHECK(collector.offer(made(id, 301, 2, 1, {parcel.begin() + 151, parcel.end()})).sort == Sort::StartedAnew);
}

TEST_CASE("Codes that are no frames, or say what cannot be, are passed over with a reason", "[light][hostile]")
{
    const keys::Bytes good = cut(content(3000)).frame(0);
    CHECK(carry::readFrame(good).ok());
    CHECK(reasonOf({}) == Reason::NotOurs);
    CHECK(reasonOf({'P', 'P', 'L'}) == Reason::TooShort);
    CHECK(reasonOf(keys::Bytes(400, 'x')) == Reason::NotOurs);
    keys::Bytes newer = good;
    newer[3] = 2;
    CHECK(reasonOf(newer) == Reason::UnknownVersion);
    CHECK(reasonOf({good.begin(), good.begin() + 20}) == Reason::TooShort);
    const keys::Id id = idOf(1);
    const keys::Bytes piece(100, 1);
    CHECK(reasonOf(made(id, 0, 1, 0, piece)) == Reason::BadNumber);
    CHECK(reasonOf(made(id, 100, 0, 0, piece)) == Reason::BadNumber);
    CHECK(reasonOf(made(id, 100, 101, 0, {1})) == Reason::BadNumber);
    CHECK(reasonOf(made(id, 6, 5, 0, {1, 1})) == Reason::BadNumber); // three pieces of two bytes would do
    CHECK(reasonOf(made(id, UINT32_MAX, 2048, 0, piece)) == Reason::TooLarge);
    CHECK(reasonOf(made(id, 524'289, 2048, 0, piece)) == Reason::TooLarge);
    CHECK(reasonOf(made(id, 2049, 2049, 0, {1})) == Reason::TooLarge);
    CHECK(reasonOf(made(id, 2000, 1, 0, keys::Bytes(2000))) == Reason::TooLarge); // a piece too long
    CHECK(reasonOf(made(id, 100, 1, 0, keys::Bytes(99))) == Reason::TooShort);
    CHECK(reasonOf(made(id, 100, 1, 0, keys::Bytes(101))) == Reason::LeftOver);
    CHECK(carry::readFrame(made(id, 100, 1, 65'535, piece)).ok());
}

TEST_CASE("Every flipped bit of a frame is noticed", "[light][hostile]")
{
    const keys::Bytes good = cut(content(3000)).frame(2);
    Collector collector;
    for (std::size_t bit = 0; bit < good.size() * 8; ++bit) {
        keys::Bytes bad = good;
        bad[bit / 8] ^= static_cast<std::uint8_t>(1U << (bit % 8));
        REQUIRE(collector.offer(bad).sort == Sort::Unusable);
    }
    CHECK(collector.unfinished().empty());
}

TEST_CASE("Made-up frames, whatever they say, end in the parcel or in nothing", "[light][hostile]")
{
    for (std::uint32_t seed = 0; seed < 60; ++seed) {
        INFO("seed " << seed);
        std::mt19937 random(seed);
        const auto below = [&](std::uint32_t most) { return static_cast<std::uint32_t>(random()) % most; };
        const keys::Bytes parcel = content(std::size_t{200} + below(3000), static_cast<std::uint8_t>(seed));
        const FrameSource source = cut(parcel);
        const auto length = static_cast<std::uint32_t>(parcel.size());
        Collector collector;
        std::uint16_t number = 0;
        bool whole = false;
        for (int i = 0; i < 4000 && !whole; ++i) {
            const std::uint32_t dice = below(40);
            keys::Bytes code = source.frame(number++);
            if (dice == 0) { // a lie about this parcel
                const keys::Bytes piece(carry::pieceBytes(length, source.count()), static_cast<std::uint8_t>(random()));
                code = made(source.parcel(), length, source.count(), static_cast<std::uint16_t>(random()), piece);
            } else if (dice < 4) { // another parcel, which never comes to an end
                const std::uint32_t other = 1 + below(524'288);
                const auto count = static_cast<std::uint16_t>(1 + (other - 1) / (256 + below(700)));
                code = made(idOf(static_cast<std::uint8_t>(random())), other, count,
                            static_cast<std::uint16_t>(random()), keys::Bytes(carry::pieceBytes(other, count), 1));
            } else if (dice < 8) { // misread
                code[below(331) % code.size()] ^= static_cast<std::uint8_t>(1 + below(255));
            }
            const Offered result = collector.offer(code);
            REQUIRE(collector.unfinished().size() <= 4);
            REQUIRE(result.parcel.empty() == (result.sort != Sort::Complete));
            if (result.sort == Sort::Complete && carry::parcelId(result.parcel) == source.parcel()) {
                const bool same = result.parcel == parcel;
                REQUIRE(same);
                whole = true;
            }
        }
        CHECK(whole);
    }
}

TEST_CASE("A sealed parcel comes through light and opens", "[light]")
{
    World world;
    world.setUp();
    const keys::Bytes volume = volumeOf(world.all);
    SeededRandom random(9);
    const std::array recipients{world.instructor.opening.sealKey()};
    const auto sealed = parcel::seal(volume, recipients, random);
    REQUIRE(sealed.ok());
    const FrameSource source = cut(sealed.value());
    Collector collector;
    for (std::uint32_t number = 1;; number += 2) { // every other is missed
        REQUIRE(number < 65'536);
        const Offered result = collector.offer(source.frame(static_cast<std::uint16_t>(number)));
        if (result.sort == Sort::Complete) {
            const auto opened = parcel::open(result.parcel, world.instructor.opening);
            REQUIRE(opened.ok());
            const bool same = opened.value() == volume;
            CHECK(same);
            break;
        }
    }
}

} // namespace peelpack::test
