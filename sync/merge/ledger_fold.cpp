#include "sync/merge/ledger_fold.h"

#include <algorithm>
#include <optional>

namespace peelpack::merge {

using journal::FeedId;
using journal::Reason;
using journal::Verdict;

namespace {

/// One wrong link makes every later one wrong, and the device has signed the last.
bool headsHold(const journal::Feed& feed)
{
    bool hold = true;
    feed.eachSegment([&](std::uint32_t from, const journal::Segment& segment) {
        if (segment.branches.empty() && !segment.entries.empty()) {
            const auto seq = static_cast<std::uint32_t>(from + segment.entries.size() - 1);
            hold = hold && journal::verifyHead(feed.id(), seq, segment.entries.back().link);
        }
    });
    return hold;
}

constexpr std::size_t entriesAhead = 4; // that memory is asked for

journal::Offer offered(std::uint32_t seq, keys::ByteView entry)
{
    return {seq, entry, {}, nullptr};
}
journal::Offer offered(std::uint32_t seq, const keys::SharedBytes& entry)
{
    return {seq, entry, {}, &entry};
}

} // namespace

Reason LedgerFold::takeCertificates(const std::vector<keys::ByteView>& certificates)
{
    auto& held = ledger.m_certificates;
    for (const keys::ByteView bytes : certificates) {
        auto certificate = trust::readCertificate(ledger.m_program, bytes);
        if (!certificate) {
            return certificate.reason();
        }
        const auto place =
            std::lower_bound(held.begin(), held.end(), certificate.value().bytes,
                             [](const trust::Certificate& a, const keys::Bytes& b) { return a.bytes < b; });
        if (place == held.end() || place->bytes != certificate.value().bytes) {
            if (held.size() >= Ledger::mostCertificates) {
                return Reason::TooMany;
            }
            held.insert(place, std::move(certificate).value());
            ++report.certificates;
        }
    }
    return Reason::None;
}

template <class AnyRun>
void LedgerFold::takeAnyRun(const AnyRun& run)
{
    if (run.entries.empty()) {
        return;
    }
    const auto [place, isNew] = ledger.m_feeds.try_emplace(run.feed, run.feed);
    std::optional<journal::Link> after;
    for (std::size_t i = 0; i < run.entries.size(); ++i) {
        const auto seq = static_cast<std::uint32_t>(run.from + i);
        keys::readSoon(run.entries[std::min(i + entriesAhead, run.entries.size() - 1)]);
        journal::Offer offer = offered(seq, run.entries[i]);
        offer.after = after;
        const journal::Outcome applied = verifiedBefore
                                             ? journal::applyKeptTo(place->second, ledger.m_program, offer)
                                             : journal::applyTo(place->second, ledger.m_program, offer, usable);
        if (!kept) {
            after = applied.link;
        }
        if (applied.verdict == Verdict::Known) {
            ++report.known;
            continue;
        }
        if (applied.verdict == Verdict::Taken) {
            ++report.taken;
            continue;
        }
        report.findings.push_back({run.feed, seq, applied.verdict, applied.reason, applied.evidence});
        if (applied.verdict == Verdict::Forked && applied.reason == Reason::RecordForked) {
            ++report.taken;
            continue;
        }
        report.gap = report.gap || applied.verdict == Verdict::Gap;
        break;
    }
    if (place->second.count() == 0 && !place->second.forked()) {
        ledger.m_feeds.erase(place);
    }
}

void LedgerFold::takeRun(const Run& run)
{
    takeAnyRun(run);
}

void LedgerFold::takeRun(const KeptRun& run)
{
    takeAnyRun(run);
}

void LedgerFold::takeFeedsOf(Ledger& other)
{
    ledger.m_feeds.merge(other.m_feeds);
}

std::set<FeedId> LedgerFold::forgetDoubtful()
{
    std::set<FeedId> doubtful;
    std::erase_if(ledger.m_feeds, [&](const auto& item) {
        const bool wrong = !headsHold(item.second);
        if (wrong) {
            doubtful.insert(item.first);
        }
        return wrong;
    });
    return doubtful;
}

bool LedgerFold::flooded(std::size_t feedsBefore) const
{
    if (ledger.m_feeds.size() == feedsBefore || ledger.m_feeds.size() <= Ledger::mostUnknownFeeds) {
        return false;
    }
    const trust::Authority authority = ledger.authority();
    const auto unknown = std::count_if(ledger.m_feeds.begin(), ledger.m_feeds.end(), [&](const auto& item) {
        return authority.holder(item.first.device) == nullptr;
    });
    return static_cast<std::size_t>(unknown) > Ledger::mostUnknownFeeds;
}

} // namespace peelpack::merge
