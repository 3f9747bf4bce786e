#pragma once

#include "sync/journal/feed_id.h"
#include "sync/journal/payload.h"
#include "sync/journal/reason.h"
#include "sync/keys/sign.h"

#include <optional>

namespace peelpack::journal {

inline constexpr std::size_t mostEntryBytes = std::size_t{64} * 1024;
inline constexpr std::size_t leastEntryBytes = 82;
inline constexpr std::uint8_t entryVersion = 1;

/// What a writer says beside the payload. All of it is given by the caller: there is no clock here.
struct EntryContext {
    Time time;
    std::optional<Position> cites; ///< the last receipt that this device has seen
};

/// An entry taken apart; the views live as long as the entry's bytes.
struct EntryParts {
    EntryContext context;
    std::uint16_t kind = 0;
    keys::ByteView payload;
    keys::ByteView body; ///< everything before the signature
    keys::Signature signature;
};

/// Size and form of the body only: payload and signature are not looked at. Reasons: TooLarge, TooShort, LeftOver,
/// UnknownVersion, BadBoolean, BadNumber.
Checked<EntryParts> takeApart(keys::ByteView entry);

/// The bytes and the link of a new entry.
struct SignedEntry {
    keys::Bytes bytes;
    Link link;
};

/// Where a new entry goes.
struct Place {
    FeedId feed;
    std::uint32_t seq = 0;
    Link previous; ///< zero for seq 0
};

/// Writes and signs. A reason when a reader would refuse it, or the key is not the feed's.
Checked<SignedEntry> writeEntry(const keys::VerifyKey& program, const Place& place, const EntryContext& context,
                                const Payload& payload, const keys::SigningKey& key);
/// The same for one entry of many, whose signers' keys are remembered.
Checked<SignedEntry> writeEntry(const keys::VerifyKey& program, const Place& place, const EntryContext& context,
                                const Payload& payload, const keys::SigningKey& key, keys::UsableKeys& usable);

/// As writeEntry for a payload that is already bytes, of any kind: what a newer version would write.
Checked<SignedEntry> writeRawEntry(const keys::VerifyKey& program, const Place& place, const EntryContext& context,
                                   std::uint16_t kind, keys::ByteView payload, const keys::SigningKey& key);

/// h_i of FORMAT.md section 2.
keys::Hash entryHash(const keys::VerifyKey& program, const Place& place, keys::ByteView body);
/// The 100 bytes that sig_i signs.
keys::Bytes headStatement(const FeedId& feed, std::uint32_t seq, const keys::Hash& hash);
/// True when the link's signature is the feed's device's, over this seq and hash.
bool verifyHead(const FeedId& feed, std::uint32_t seq, const Link& link);

/// What the stream forbids about a payload in its place (FORMAT.md section 4); None if it may stand there.
Reason placeFault(const keys::VerifyKey& program, const FeedId& feed, std::uint16_t kind, const Payload& payload,
                  keys::UsableKeys& usable);

} // namespace peelpack::journal
