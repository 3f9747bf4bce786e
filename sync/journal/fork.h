#pragma once

#include "sync/journal/program_payloads.h"
#include "sync/journal/reason.h"

namespace peelpack::journal {

inline constexpr std::size_t evidenceBytes = 248;

/// Evidence from the links of two entries of one feed and seq, the smaller first. The caller has two that differ.
ForkEvidence evidence(const FeedId& feed, std::uint32_t seq, const Link& one, const Link& other);

/// True when the two links differ, are in order and both carry the device's signature. Needs nothing else.
bool holds(const ForkEvidence& evidence);

/// The 248 bytes of FORMAT.md section 2.
keys::Bytes toBytes(const ForkEvidence& evidence);
/// A reason when the bytes are not evidence, or it does not hold.
Checked<ForkEvidence> evidenceFromBytes(keys::ByteView bytes);

} // namespace peelpack::journal
