#pragma once

#include "sync/journal/reason.h"
#include "sync/keys/bytes.h"

#include <vector>

/// How parcels travel where there is no file (FORMAT.md section 9).
namespace peelpack::carry {

/// The largest parcel that goes by light, in bytes; a larger one goes as a file.
inline constexpr std::size_t mostLightBytes = std::size_t{512} * 1024;
inline constexpr std::size_t mostPieces = 2048;
inline constexpr std::size_t mostPieceBytes = 1024;
/// Of a frame, besides its piece.
inline constexpr std::size_t frameBytesBesides = 32;

/// One code of a running sequence: a piece of a parcel, or the exclusive or of several.
struct Frame {
    keys::Id parcel;          ///< parcelId() of the whole
    std::uint32_t length = 0; ///< of the whole, in bytes
    std::uint16_t count = 0;  ///< pieces of the whole
    std::uint16_t number = 0; ///< below count: that piece; else a spare
    keys::ByteView piece;     ///< lent; pieceBytes() of them
};

/// What the frames of a parcel have in common with nothing else.
keys::Id parcelId(keys::ByteView parcel);
/// Bytes of each piece, the last filled up with zeros. `count` is not 0.
std::size_t pieceBytes(std::size_t length, std::size_t count);

/// The bytes of a code. The frame must be well formed.
keys::Bytes writeFrame(const Frame& frame);
/// From bytes that may be hostile; the piece lies in `bytes`. Reasons: NotOurs (another code), UnknownVersion,
/// TooShort, TooLarge (more than goes by light), BadNumber, LeftOver, BadDigest (misread).
journal::Checked<Frame> readFrame(keys::ByteView bytes);

/// Pieces as bits, piece i in bit i % 64 of word i / 64.
using PieceSet = std::vector<std::uint64_t>;
/// Which pieces the frame of that number carries; never none. `count` is from 1 to mostPieces.
PieceSet piecesOf(const keys::Id& parcel, std::uint16_t count, std::uint16_t number);

} // namespace peelpack::carry
