#pragma once

#include "sync/merge/reopen.h"

#include <cstddef>
#include <set>
#include <vector>

namespace peelpack::merge {

/// The steps of take() and reopen(), which alone may change a ledger. Of this folder only.
struct LedgerFold {
    Ledger ledger;
    TakeReport report;
    bool verifiedBefore = false;
    bool kept = false; ///< in order of arrival, where a branch may go on after another's entry
    keys::UsableKeys usable{};

    /// None, or why they cannot be taken; those before the one that cannot are taken.
    journal::Reason takeCertificates(const std::vector<keys::ByteView>& certificates);
    void takeRun(const Run& run);
    void takeRun(const KeptRun& run);
    /// From a ledger that holds none of the feeds that are here.
    void takeFeedsOf(Ledger& other);
    /// Takes out the feeds whose heads do not verify, and names them.
    std::set<journal::FeedId> forgetDoubtful();
    /// More feeds came than a program has.
    [[nodiscard]] bool flooded(std::size_t feedsBefore) const;

private:
    template <class AnyRun>
    void takeAnyRun(const AnyRun& run);
};

} // namespace peelpack::merge
