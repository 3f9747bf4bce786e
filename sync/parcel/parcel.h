#pragma once

#include "sync/journal/reason.h"
#include "sync/keys/random.h"
#include "sync/keys/seal.h"

#include <span>

namespace peelpack::parcel {

inline constexpr std::size_t mostRecipients = 32;
inline constexpr std::size_t mostParcelBytes = std::size_t{65} * 1024 * 1024;

/// One volume sealed to 1 to 32 devices (FORMAT.md section 9), whatever carries it. Nothing outside says from whom, to
/// whom or of which program. Reasons: TooFew, TooMany (recipients), TooLarge, UnusableKey.
journal::Checked<keys::Bytes> seal(keys::ByteView volume, std::span<const keys::SealKey> recipients,
                                   keys::RandomSource& random);

/// True when the bytes begin as a parcel does; says nothing about the rest.
bool isParcel(keys::ByteView bytes);

/// The volume, as a whole or not at all. From bytes that may be hostile: everything is checked before it is used, and
/// the size before anything is set aside. Reasons: TooLarge, TooShort, NotOurs, TooFew, TooMany, NotForThisDevice,
/// NotCommitted, HeaderDamaged, ChunkDamaged.
journal::Checked<keys::Bytes> open(keys::ByteView parcel, const keys::OpeningKey& key);

} // namespace peelpack::parcel
