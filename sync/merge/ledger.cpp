#include "sync/merge/ledger.h"

#include "sync/merge/ledger_fold.h"

#include <algorithm>
#include <cassert>

namespace peelpack::merge {

using journal::FeedId;
using journal::Reason;

const journal::Feed* Ledger::feed(const FeedId& id) const
{
    const auto found = m_feeds.find(id);
    return found == m_feeds.end() ? nullptr : &found->second;
}

journal::Place Ledger::next(const FeedId& id) const
{
    const journal::Feed* held = feed(id);
    return held == nullptr ? journal::Place{id, 0, {}} : held->next();
}

trust::Authority Ledger::authority() const
{
    return trust::Authority::workOut(m_program, m_certificates, m_feeds);
}

namespace {

/// A head that is held needs no second look at its signature: it is the one that was verified with its entry.
bool isSigned(const Ledger& ledger, const StatedHead& head)
{
    if (head.count == 0) {
        return false;
    }
    const journal::Feed* feed = ledger.feed(head.feed);
    const journal::KeptEntry* held = feed == nullptr ? nullptr : feed->find(head.count - 1, head.link.hash);
    return (held != nullptr && held->link == head.link) || journal::verifyHead(head.feed, head.count - 1, head.link);
}

} // namespace

journal::Checked<Taken> take(Ledger ledger, const Batch& batch)
{
    const std::size_t feedsBefore = ledger.feeds().size();
    LedgerFold fold{std::move(ledger), {}, false, false};
    if (const Reason reason = fold.takeCertificates(batch.certificates); reason != Reason::None) {
        return reason;
    }
    const auto wrongHead = std::find_if(batch.heads.begin(), batch.heads.end(),
                                        [&](const StatedHead& head) { return !isSigned(fold.ledger, head); });
    if (wrongHead != batch.heads.end()) {
        return Reason::BadSignature;
    }
    for (const Run& run : batch.runs) {
        fold.takeRun(run);
    }
    if (fold.flooded(feedsBefore)) {
        return Reason::TooManyFeeds;
    }
    return Taken{std::move(fold.ledger), std::move(fold.report)};
}

void append(Ledger& ledger, const journal::Place& place, const journal::SignedEntry& entry)
{
    LedgerFold fold{std::move(ledger), {}, true, true};
    fold.takeRun(Run{place.feed, place.seq, {entry.bytes}});
    assert(fold.report.taken == 1 && fold.report.findings.empty());
    ledger = std::move(fold.ledger);
}

TakenAll takeAll(Ledger ledger, std::span<const Batch> batches)
{
    TakenAll result{std::move(ledger), std::vector<TakeReport>(batches.size()), {}};
    for (bool again = true; again;) {
        again = false;
        result.unusable.clear();
        for (std::size_t i = 0; i < batches.size(); ++i) {
            auto taken = take(result.ledger, batches[i]);
            if (!taken) {
                result.unusable.emplace_back(i, taken.reason());
                continue;
            }
            Taken step = std::move(taken).value();
            result.ledger = std::move(step.ledger);
            again = again || step.report.news();
            result.reports[i].taken += step.report.taken;
            result.reports[i].certificates += step.report.certificates;
            result.reports[i].known = step.report.known;
            result.reports[i].gap = step.report.gap;
            for (const Finding& finding : step.report.findings) {
                if (std::find(result.reports[i].findings.begin(), result.reports[i].findings.end(), finding) ==
                    result.reports[i].findings.end()) {
                    result.reports[i].findings.push_back(finding);
                }
            }
        }
    }
    return result;
}

} // namespace peelpack::merge
