#include "sync/merge/receipts.h"

#include "sync/keys/card.h"

#include <algorithm>

namespace peelpack::merge {

using journal::FeedId;
using journal::Reason;

std::vector<Contradiction> contradictions(const trust::Authority& authority, const Ledger& ledger,
                                          std::span<const StatedHead> heads)
{
    std::vector<Contradiction> found;
    for (const trust::ReceiptRecord& receipt : authority.receipts()) {
        const journal::Feed* feed = ledger.feed(receipt.covered.feed);
        const bool present = feed != nullptr && feed->find(receipt.covered.seq, receipt.covered.hash) != nullptr;
        if (feed != nullptr && !present && feed->holdsAny(receipt.covered.seq)) {
            found.push_back({Contradiction::Sort::Rewritten, receipt, feed->count()});
            continue;
        }
        for (const StatedHead& head : heads) {
            if (head.feed != receipt.covered.feed) {
                continue;
            }
            if (head.count <= receipt.covered.seq) {
                found.push_back({Contradiction::Sort::Cut, receipt, head.count});
            } else if (head.count == receipt.covered.seq + 1 && head.link.hash != receipt.covered.hash) {
                found.push_back({Contradiction::Sort::Rewritten, receipt, head.count});
            }
        }
    }
    return found;
}

std::uint32_t receiptedCount(const trust::Authority& authority, const FeedId& feed)
{
    std::uint32_t count = 0;
    for (const trust::ReceiptRecord& receipt : authority.receipts()) {
        if (receipt.covered.feed == feed && receipt.held) {
            count = std::max(count, receipt.covered.seq + 1);
        }
    }
    return count;
}

OwnFeed ownFeed(const Ledger& ledger, const keys::VerifyKey& device, std::span<const StatedHead> heads)
{
    OwnFeed result = OwnFeed::Current;
    for (const auto& [id, feed] : ledger.feeds()) {
        if (id.device == device && feed.forked()) {
            result = OwnFeed::Forked;
        }
    }
    for (const StatedHead& head : heads) {
        if (head.feed.device != device) {
            continue;
        }
        const journal::Feed* feed = ledger.feed(head.feed);
        const bool held = feed != nullptr && feed->holds(head.count - 1, head.link);
        if (held || !journal::verifyHead(head.feed, head.count - 1, head.link)) {
            continue; // nothing new, or not ours
        }
        const bool other = feed != nullptr && feed->holdsAny(head.count - 1);
        result = std::max(result, other ? OwnFeed::Forked : OwnFeed::Behind);
    }
    return result;
}

namespace {

/// The devices of the person whose device it is, itself first.
std::vector<keys::VerifyKey> devicesOfWriter(const trust::Authority& authority, const keys::VerifyKey& device)
{
    std::vector<keys::VerifyKey> devices{device};
    const trust::Holder* writer = authority.holder(device);
    for (const auto& [other, holder] : authority.holders()) {
        if (writer != nullptr && other != device && holder.person == writer->person) {
            devices.push_back(other);
        }
    }
    return devices;
}

/// True when something was written after the first `count` entries that is worth a receipt. Receipts are not: two
/// devices would answer one another for ever.
bool hasNews(const journal::Feed& feed, std::uint32_t count)
{
    const auto& entries = feed.trunk().entries;
    const auto isNews = [](const journal::KeptEntry& entry) {
        const auto parts = journal::takeApart(entry.bytes);
        return parts && parts.value().kind != static_cast<std::uint16_t>(journal::Kind::Receipt);
    };
    return std::any_of(entries.begin() + std::min<std::ptrdiff_t>(count, std::ssize(entries)), entries.end(), isNews);
}

bool holdsAll(const Ledger& ledger, const StatedHead& head)
{
    const journal::Feed* feed = ledger.feed(head.feed);
    return feed != nullptr && feed->holds(head.count - 1, head.link);
}

} // namespace

journal::Checked<std::optional<journal::Receipt>> receiptFor(const trust::Authority& authority, const Ledger& ledger,
                                                             const keys::VerifyKey& device, const keys::Id& stream,
                                                             std::span<const StatedHead> heads)
{
    if (ownFeed(ledger, device, heads) != OwnFeed::Current) {
        return Reason::RecordForked;
    }
    const std::vector<keys::VerifyKey> own = devicesOfWriter(authority, device);
    for (const StatedHead& head : heads) {
        const bool earlierDevice = std::find(own.begin() + 1, own.end(), head.feed.device) != own.end();
        if (earlierDevice && head.feed.stream == stream && !holdsAll(ledger, head)) {
            return Reason::PredecessorMissing;
        }
    }
    for (const Contradiction& contradiction : contradictions(authority, ledger, {})) {
        if (contradiction.receipt.covered.feed.stream == stream) {
            return Reason::RecordForked;
        }
    }
    std::map<FeedId, std::uint32_t> receipted; // by any device of the same person
    for (const trust::ReceiptRecord& record : authority.receipts()) {
        if (std::find(own.begin(), own.end(), record.receipt.feed.device) != own.end() && record.held) {
            auto& count = receipted[record.covered.feed];
            count = std::max(count, record.covered.seq + 1);
        }
    }
    journal::Receipt receipt;
    for (const auto& [id, feed] : ledger.feeds()) {
        const bool ours = std::find(own.begin(), own.end(), id.device) != own.end();
        if (id.stream == stream && !ours && authority.holder(id.device) != nullptr && hasNews(feed, receipted[id])) {
            receipt.items.push_back({id.device, feed.count() - 1, feed.head().hash});
        }
    }
    if (receipt.items.empty()) {
        return std::optional<journal::Receipt>();
    }
    const journal::Feed* program = ledger.feed({device, keys::programStream(ledger.program())});
    receipt.programCount = program == nullptr ? 0 : program->count();
    return std::optional<journal::Receipt>(std::move(receipt));
}

} // namespace peelpack::merge
