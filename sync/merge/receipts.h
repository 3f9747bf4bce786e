#pragma once

#include "sync/merge/ledger.h"

#include <optional>
#include <span>
#include <vector>

namespace peelpack::merge {

/// A receipt that what is there, or what somebody states, contradicts.
struct Contradiction {
    enum class Sort : std::uint8_t {
        Cut,      ///< the receipted entry is missing from the end of what its writer now shows
        Rewritten ///< another entry stands at its place
    };
    Sort sort = Sort::Cut;
    trust::ReceiptRecord receipt;
    std::uint32_t shown = 0; ///< entries that its writer shows now
};

/// Compares the receipts that count with heads that came from the feeds' own writers, and with the feeds that are held.
/// Empty: nothing was cut or rewritten.
std::vector<Contradiction> contradictions(const trust::Authority& authority, const Ledger& ledger,
                                          std::span<const StatedHead> heads);

/// Entries of the feed that some receipt covers: from here on they are "not yet with your instructor".
std::uint32_t receiptedCount(const trust::Authority& authority, const journal::FeedId& feed);

/// How an own feed compares with what another device shows of it.
enum class OwnFeed : std::uint8_t {
    Current, ///< nothing is shown that we do not have
    Behind,  ///< it has entries of ours that we do not know: stop writing, take them in, go on in a new feed
    Forked,  ///< our record forked
};
OwnFeed ownFeed(const Ledger& ledger, const keys::VerifyKey& device, std::span<const StatedHead> heads);

/// The receipt that `device` owes for a stream after a take-in; empty when there is nothing new to receipt. `heads` are
/// what the sender stated. A reason when signing now could contradict what was signed before: RecordForked when a
/// receipt is contradicted or our own feed is forked or behind, PredecessorMissing when an earlier device of the same
/// person has entries in this stream that have not been taken in.
journal::Checked<std::optional<journal::Receipt>> receiptFor(const trust::Authority& authority, const Ledger& ledger,
                                                             const keys::VerifyKey& device, const keys::Id& stream,
                                                             std::span<const StatedHead> heads);

} // namespace peelpack::merge
