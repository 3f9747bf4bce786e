#include "sync/merge/bounds.h"

#include <algorithm>
#include <map>

namespace peelpack::merge {
namespace {

constexpr std::int64_t secondsInDay = 86'400;

std::optional<trust::ReceiptRecord> recordOf(const trust::Authority& authority, const journal::Position& receipt)
{
    const auto found = std::find_if(authority.receipts().begin(), authority.receipts().end(),
                                    [&](const trust::ReceiptRecord& record) { return record.receipt == receipt; });
    return found == authority.receipts().end() ? std::nullopt : std::optional(*found);
}

/// The covering receipt with the smallest reach; of equal ones the smallest hash.
std::optional<trust::ReceiptRecord> coverOf(const trust::Authority& authority, const journal::Position& entry)
{
    std::optional<trust::ReceiptRecord> best;
    for (const trust::ReceiptRecord& record : authority.receipts()) {
        const bool covers = record.held && record.covered.feed == entry.feed && record.covered.seq >= entry.seq;
        if (covers && (!best || std::pair(record.covered.seq, record.receipt.hash) <
                                    std::pair(best->covered.seq, best->receipt.hash))) {
            best = record;
        }
    }
    return best;
}

/// The day with which each sheet of a stream was opened; of several the earliest.
std::map<keys::Id, base::Date> openedDays(const Ledger& ledger, const keys::Id& stream)
{
    std::map<keys::Id, base::Date> days;
    const auto opens = [](std::uint16_t kind) {
        return kind == static_cast<std::uint16_t>(journal::Kind::SheetOpened);
    };
    for (const auto& [id, feed] : ledger.feeds()) {
        if (id.stream != stream) {
            continue;
        }
        journal::eachTrunkEntry(feed, feed.count(), opens, [&](const journal::Decoded& entry) {
            const auto& opened = std::get<journal::SheetOpened>(entry.payload);
            const auto [place, added] = days.try_emplace(opened.sheet, opened.draft.head.date);
            place->second = std::min(place->second, opened.draft.head.date);
        });
    }
    return days;
}

/// The day that an entry gives a sheet, as seconds at the end of that day; empty for entries that give none, or leave
/// the one with which it was opened.
std::optional<std::int64_t> endOfSheetDay(const journal::Payload& payload, const std::map<keys::Id, base::Date>& days)
{
    std::optional<base::Date> date;
    if (const auto* opened = std::get_if<journal::SheetOpened>(&payload)) {
        date = opened->draft.head.date;
    } else if (const auto* changed = std::get_if<journal::HeadChanged>(&payload)) {
        const auto before = days.find(changed->sheet);
        if (before == days.end() || before->second != changed->draft.head.date) {
            date = changed->draft.head.date;
        }
    }
    return date ? std::optional((date->days() + 1LL) * secondsInDay) : std::nullopt;
}

/// Whether the claimed time lies before `limit` by more than clocks may differ, without leaving the range of the type.
bool clearlyBefore(std::int64_t claimed, std::int64_t limit)
{
    return claimed<limit&& static_cast<std::uint64_t>(limit) -
                   static_cast<std::uint64_t>(claimed)> static_cast<std::uint64_t>(clockSlack);
}

} // namespace

std::string_view sentence(TimeQuestion::Sort sort)
{
    switch (sort) {
    case TimeQuestion::Sort::BeforeCitedReceipt:
        return "The phone's clock said a time before a receipt that it had already seen.";
    case TimeQuestion::Sort::AfterReceipt:
        return "The phone's clock said a time after the receipt that covers this.";
    case TimeQuestion::Sort::SteppedBack:
        return "The phone's clock was set back.";
    case TimeQuestion::Sort::DatedBeforeReceipts:
        return "The sheet was opened after a receipt, and its date is well before that receipt.";
    }
    return {};
}

Bounds boundsOf(const trust::Authority& authority, const Ledger& ledger, const journal::Position& entry)
{
    Bounds bounds;
    bounds.before = coverOf(authority, entry);
    const journal::Feed* feed = ledger.feed(entry.feed);
    if (feed == nullptr) {
        return bounds;
    }
    const std::uint32_t end = std::min(entry.seq + 1, feed->count());
    for (std::uint32_t seq = 0; seq < end; ++seq) {
        const auto parts = journal::takeApart(feed->trunk().entries[seq].bytes);
        if (parts && parts.value().context.cites) {
            if (auto record = recordOf(authority, *parts.value().context.cites)) {
                bounds.after = record;
            }
        }
    }
    return bounds;
}

std::vector<TimeQuestion> timeQuestions(const trust::Authority& authority, const Ledger& ledger,
                                        const journal::FeedId& feedId)
{
    std::vector<TimeQuestion> questions;
    const journal::Feed* feed = ledger.feed(feedId);
    if (feed == nullptr) {
        return questions;
    }
    const std::map<keys::Id, base::Date> days = openedDays(ledger, feedId.stream);
    std::optional<journal::Time> previous;
    std::optional<trust::ReceiptRecord> after;
    journal::eachTrunkEntry(*feed, feed->count(), nullptr, [&](const journal::Decoded& entry) {
        if (entry.context.cites) {
            if (auto record = recordOf(authority, *entry.context.cites)) {
                after = record;
            }
        }
        const Bounds bounds{after, coverOf(authority, entry.position)};
        const std::int64_t claimed = entry.context.time.seconds;
        const auto ask = [&](TimeQuestion::Sort sort) {
            questions.push_back({sort, entry.position, entry.context.time, bounds});
        };
        if (bounds.after && clearlyBefore(claimed, bounds.after->time.seconds)) {
            ask(TimeQuestion::Sort::BeforeCitedReceipt);
        }
        if (bounds.before && clearlyBefore(bounds.before->time.seconds, claimed)) {
            ask(TimeQuestion::Sort::AfterReceipt);
        }
        if (previous && clearlyBefore(claimed, previous->seconds)) {
            ask(TimeQuestion::Sort::SteppedBack);
        }
        const auto sheetDay = endOfSheetDay(entry.payload, days);
        if (bounds.after && sheetDay &&
            clearlyBefore(*sheetDay + lateDays * secondsInDay, bounds.after->time.seconds)) {
            ask(TimeQuestion::Sort::DatedBeforeReceipts);
        }
        previous = entry.context.time;
    });
    return questions;
}

} // namespace peelpack::merge
