#include "sync/carry/frame.h"

#include "sync/keys/hash.h"
#include "sync/keys/little_endian.h"

#include <algorithm>
#include <array>

namespace peelpack::carry {
namespace {

using journal::Reason;

constexpr std::string_view tag = "PPL";
constexpr std::uint8_t version = 1;
constexpr std::size_t checkBytes = 4;
constexpr std::size_t wordBits = 64;

std::array<std::uint8_t, checkBytes> checkOf(keys::ByteView before)
{
    const keys::Id whole = keys::shortHash("peelpack.frame.1", {before});
    std::array<std::uint8_t, checkBytes> check{};
    std::copy_n(whole.bytes.begin(), checkBytes, check.begin());
    return check;
}

/// None: length, count and number go together.
Reason misfit(const Frame& frame)
{
    if (frame.length > mostLightBytes || frame.count > mostPieces) {
        return Reason::TooLarge;
    }
    if (frame.length == 0 || frame.count == 0) {
        return Reason::BadNumber;
    }
    const std::size_t size = pieceBytes(frame.length, frame.count);
    if (size > mostPieceBytes) {
        return Reason::TooLarge;
    }
    const bool eachIsNeeded = (frame.count - std::size_t{1}) * size < frame.length;
    return eachIsNeeded ? Reason::None : Reason::BadNumber;
}

} // namespace

keys::Id parcelId(keys::ByteView parcel)
{
    return keys::shortHash("peelpack.light.1", {parcel});
}

std::size_t pieceBytes(std::size_t length, std::size_t count)
{
    return (length + count - 1) / count;
}

keys::Bytes writeFrame(const Frame& frame)
{
    keys::Bytes bytes;
    bytes.reserve(frameBytesBesides + frame.piece.size());
    keys::append(bytes, keys::bytesOf(tag));
    bytes.push_back(version);
    keys::append(bytes, frame.parcel.view());
    keys::append(bytes, keys::littleEndian(frame.length));
    keys::append(bytes, keys::littleEndian(frame.count));
    keys::append(bytes, keys::littleEndian(frame.number));
    keys::append(bytes, frame.piece);
    keys::append(bytes, checkOf(bytes));
    return bytes;
}

journal::Checked<Frame> readFrame(keys::ByteView bytes)
{
    if (!keys::startsWith(bytes, tag)) {
        return Reason::NotOurs;
    }
    keys::Reader reader(bytes.subspan(tag.size()));
    const auto itsVersion = reader.number<std::uint8_t>();
    if (!reader.failed() && itsVersion != version) {
        return Reason::UnknownVersion;
    }
    if (bytes.size() < frameBytesBesides) {
        return Reason::TooShort;
    }
    const std::array check = checkOf(bytes.first(bytes.size() - checkBytes));
    if (!std::equal(check.begin(), check.end(), bytes.end() - checkBytes)) {
        return Reason::BadDigest;
    }
    Frame frame;
    frame.parcel = reader.fixed<keys::Id>();
    frame.length = reader.number<std::uint32_t>();
    frame.count = reader.number<std::uint16_t>();
    frame.number = reader.number<std::uint16_t>();
    if (const Reason reason = misfit(frame); reason != Reason::None) {
        return reason;
    }
    const std::size_t size = pieceBytes(frame.length, frame.count);
    if (bytes.size() != frameBytesBesides + size) {
        return bytes.size() < frameBytesBesides + size ? Reason::TooShort : Reason::LeftOver;
    }
    frame.piece = reader.view(size);
    return frame;
}

PieceSet piecesOf(const keys::Id& parcel, std::uint16_t count, std::uint16_t number)
{
    PieceSet pieces((count + wordBits - 1) / wordBits);
    const auto put = [&](std::size_t piece) { pieces[piece / wordBits] |= std::uint64_t{1} << (piece % wordBits); };
    if (number < count) {
        put(number);
        return pieces;
    }
    constexpr std::size_t byteBits = 8;
    std::array<std::uint8_t, 64> block{};
    constexpr std::size_t blockBits = block.size() * byteBits;
    bool any = false;
    for (std::size_t i = 0; i < count; ++i) {
        const std::size_t bit = i % blockBits;
        if (bit == 0) {
            const std::array numberBytes = keys::littleEndian(number);
            const std::array blockBytes = keys::littleEndian(static_cast<std::uint16_t>(i / blockBits));
            // Lengths that always fit: it cannot fail.
            (void)keys::blake2b(block, "peelpack.spare.1", {parcel.view(), numberBytes, blockBytes});
        }
        if (((block[bit / byteBits] >> (bit % byteBits)) & 1U) != 0) {
            put(i);
            any = true;
        }
    }
    if (!any) {
        put(number % count);
    }
    return pieces;
}

} // namespace peelpack::carry
