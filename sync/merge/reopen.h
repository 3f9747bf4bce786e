#pragma once

#include "sync/merge/ledger.h"

#include <cstddef>
#include <cstdint>
#include <vector>

namespace peelpack::merge {

/// Consecutive entries of one feed that stay where they are, for as long as the ledger that is made from them. Entry i
/// is at from + i.
struct KeptRun {
    journal::FeedId feed;
    std::uint32_t from = 0;
    std::vector<keys::SharedBytes> entries;
};

/// What an installation has kept, in the order in which it came.
struct Kept {
    std::vector<keys::ByteView> certificates; ///< lent
    std::vector<KeptRun> runs;
};

struct Reopened {
    Ledger ledger;
    std::vector<Finding>
        unfit; ///< what does not follow what is here: something before it is missing or damaged; by feed
};

/// The ledger again from entries that were verified when they came in, and that this installation kept where nobody
/// else can write, in the order in which they came: costs the chain and the signature of each feed's last entry; all
/// signatures of a feed only where that one does not fit. Whoever keeps them answers for all of them being there.
/// Reason: a certificate is damaged. Feeds are shared out among `threads` threads, 0: as many as the machine and the
/// number of entries suggest; what comes out is the same.
journal::Checked<Reopened> reopen(const keys::VerifyKey& program, const Kept& kept, std::size_t threads = 0);
/// The same from entries that are lent, which are copied. Heads are not looked at.
journal::Checked<Reopened> reopen(const keys::VerifyKey& program, const Batch& kept, std::size_t threads = 0);

} // namespace peelpack::merge
