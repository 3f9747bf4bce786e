#pragma once

#include "sync/merge/ledger.h"

#include <optional>
#include <vector>

namespace peelpack::merge {

/// Between which receipts an entry came to be, by chain. Their times are what the receipts' writers claimed.
struct Bounds {
    std::optional<trust::ReceiptRecord> after;  ///< the last receipt that it, or an entry before it, cites
    std::optional<trust::ReceiptRecord> before; ///< the first receipt that covers it
};

/// Empty ends for an entry that cites none, or that none covers.
Bounds boundsOf(const trust::Authority& authority, const Ledger& ledger, const journal::Position& entry);

/// Something about claimed times that an instructor should check. Never a reason to refuse.
struct TimeQuestion {
    enum class Sort : std::uint8_t {
        BeforeCitedReceipt,  ///< says it was written before the receipt that it cites
        AfterReceipt,        ///< says it was written after the receipt that covers it
        SteppedBack,         ///< says it was written before the entry before it
        DatedBeforeReceipts, ///< a sheet opened with, or moved to, a day before a receipt that its phone had seen
    };
    Sort sort = Sort::BeforeCitedReceipt;
    journal::Position entry;
    journal::Time claimed;
    Bounds bounds;
};

/// In words for the instructor.
std::string_view sentence(TimeQuestion::Sort sort);

/// What clocks may differ by, in seconds, before it is worth a question.
inline constexpr std::int64_t clockSlack = 10LL * 60;
/// A sheet may be opened this many days after its date without a question.
inline constexpr std::int64_t lateDays = 2;

/// All questions about one feed, in order. The same on every device that holds the same entries.
std::vector<TimeQuestion> timeQuestions(const trust::Authority& authority, const Ledger& ledger,
                                        const journal::FeedId& feed);

} // namespace peelpack::merge
