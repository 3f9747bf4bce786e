#pragma once

#include "sync/journal/feed.h"
#include "sync/journal/statement.h"

#include <functional>
#include <initializer_list>

namespace peelpack::journal {

/// An entry of a feed, read. Made from kept bytes only, so that it always succeeds.
struct Decoded {
    Position position;
    EntryContext context;
    std::uint16_t kind = 0;
    Payload payload;
    Link link;
};

/// `kept` is an entry of `feed` at `seq`.
Decoded decode(const FeedId& feed, std::uint32_t seq, const KeptEntry& kept);

/// The statement of a kept attestation, without a copy of its bytes.
Checked<Statement> statementIn(const KeptEntry& attestation);
/// As decode, without the payload.
Decoded decodeWithoutPayload(const FeedId& feed, std::uint32_t seq, const KeptEntry& kept);

/// Accepts these kinds and no other.
std::function<bool(std::uint16_t)> ofKind(std::initializer_list<Kind> kinds);

/// Calls for the trunk's entries before `limit` whose kind `wanted` accepts (null: all), in order.
void eachTrunkEntry(const Feed& feed, std::uint32_t limit, const std::function<bool(std::uint16_t)>& wanted,
                    const std::function<void(Decoded&&)>& onEntry);
/// Calls for every entry of every branch too.
void eachEntry(const Feed& feed, const std::function<bool(std::uint16_t)>& wanted,
               const std::function<void(Decoded&&)>& onEntry);

} // namespace peelpack::journal
