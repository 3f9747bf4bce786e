#pragma once

#include "sync/merge/ledger.h"

#include <optional>
#include <span>
#include <vector>

namespace peelpack::merge {

/// Everything in canonical order (FORMAT.md section 8), lent from the ledger. A `student` restricts it to what that
/// student's phone may hold: program streams, the student's own stream, and certificates about neither another student
/// nor another student's stream.
Batch contents(const Ledger& ledger, const std::optional<keys::Id>& student = std::nullopt);

/// As contents, without the feeds that `device` writes.
Batch contentsWithout(const Ledger& ledger, const keys::VerifyKey& device);

/// From a batch without the entries that somebody has, as their heads say.
Batch newsFor(const Batch& batch, std::span<const StatedHead> theirs);

/// Entries of `after` that `before` does not hold, each after what it builds on; lent from `after`.
std::vector<Run> newEntries(const Ledger& before, const Ledger& after);

} // namespace peelpack::merge
