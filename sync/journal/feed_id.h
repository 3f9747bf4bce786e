#pragma once

#include "sync/keys/bytes.h"

#include <compare>

namespace peelpack::journal {

/// Names a feed: one device writes it, in one stream (FORMAT.md section 2). Ordered by device, then stream.
struct FeedId {
    keys::VerifyKey device;
    keys::Id stream; ///< a student's person id, or the program stream's id

    auto operator<=>(const FeedId&) const = default; // NOLINT(modernize-use-nullptr): a false alarm of version 14
};

/// One entry, named so that nobody can put another in its place.
struct Position {
    FeedId feed;
    std::uint32_t seq = 0; ///< from 0
    keys::Hash hash;

    auto operator<=>(const Position&) const = default; // NOLINT(modernize-use-nullptr): a false alarm of version 14
};

/// What the next entry of a feed follows: hash and signature of the entry before. All zero before entry 0.
struct Link {
    keys::Hash hash;
    keys::Signature signature;

    auto operator<=>(const Link&) const = default; // NOLINT(modernize-use-nullptr): a false alarm of version 14
};

/// When somebody says that something happened. A claim: never a reason to refuse, never an order.
struct Time {
    std::int64_t seconds = 0; ///< since 1970-01-01T00:00:00Z
    std::int16_t zone = 0;    ///< minutes east of UTC, -900 to 900

    bool operator==(const Time&) const = default;
};
inline constexpr std::int16_t farthestZone = 900;

} // namespace peelpack::journal
