#pragma once

#include "sync/merge/ledger.h"

#include <vector>

namespace peelpack::parcel {

inline constexpr std::size_t mostVolumeBytes = std::size_t{64} * 1024 * 1024;
inline constexpr std::size_t mostHeads = 1024;
inline constexpr std::size_t mostRuns = 4096;
inline constexpr std::size_t mostEntries = 100'000;

/// One volume, read (FORMAT.md section 8). Everything is lent from the bytes it was read from; signatures have not been
/// looked at.
struct Volume {
    std::uint16_t number = 0; ///< from 1
    std::uint16_t of = 0;
    merge::Batch batch;
};

/// The volumes of a batch, each at most `mostBytes` long: one where everything fits. Reasons: TooManyFeeds, TooMany,
/// and TooLarge when a single entry does not fit.
journal::Checked<std::vector<keys::Bytes>> writeVolumes(const keys::VerifyKey& program, const merge::Batch& batch,
                                                        std::size_t mostBytes = mostVolumeBytes);

/// From bytes that may be hostile: every count is checked against the bytes left before anything is set aside for it.
/// Reasons: TooLarge, TooShort, LeftOver, NotOurs, WrongProgram, BadNumber, TooMany, TooManyFeeds, TooManyEntries,
/// BadDigest.
journal::Checked<Volume> readVolume(const keys::VerifyKey& program, keys::ByteView bytes);

} // namespace peelpack::parcel
