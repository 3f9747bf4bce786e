#include "sync/merge/reopen.h"

#include "core/base/parallel.h"
#include "sync/merge/ledger_fold.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <set>
#include <tuple>

namespace peelpack::merge {

using journal::FeedId;
using journal::Reason;
using journal::Verdict;

namespace {

using KeptRuns = std::vector<const KeptRun*>;

/// Takes the runs until no more of them fits: what a repair brought later stands behind what it makes fit.
void takeKept(LedgerFold& fold, const KeptRuns& runs)
{
    for (bool again = true; again;) {
        const std::size_t before = fold.report.taken;
        fold.report.findings.clear();
        for (const KeptRun* run : runs) {
            fold.takeRun(*run);
        }
        // Also a branch that is no longer kept is forked.
        std::erase_if(fold.report.findings, [](const Finding& finding) { return finding.verdict == Verdict::Forked; });
        again = !fold.report.findings.empty() && fold.report.taken > before;
    }
}

/// The feeds of these runs, all runs of a feed among them.
Reopened reopenFeeds(const keys::VerifyKey& program, const KeptRuns& runs)
{
    LedgerFold fold{Ledger(program), {}, true, true};
    takeKept(fold, runs);
    std::vector<Finding> unfit = std::move(fold.report.findings);
    // Where an entry is missing, what follows it may have been placed behind another: there the signatures decide.
    const std::set<FeedId> doubtful = fold.forgetDoubtful();
    if (!doubtful.empty()) {
        KeptRuns again = runs;
        std::erase_if(again, [&](const KeptRun* run) { return !doubtful.contains(run->feed); });
        std::erase_if(unfit, [&](const Finding& finding) { return doubtful.contains(finding.feed); });
        fold.verifiedBefore = false;
        takeKept(fold, again);
        unfit.insert(unfit.end(), fold.report.findings.begin(), fold.report.findings.end());
    }
    return {std::move(fold.ledger), std::move(unfit)};
}

std::size_t threadsFor(const std::vector<KeptRun>& runs)
{
    constexpr std::size_t worthAThread = 4096; // entries: some milliseconds
    std::size_t entries = 0;
    for (const KeptRun& run : runs) {
        entries += run.entries.size();
    }
    return base::partsFor(entries, worthAThread);
}

/// The runs in about equal shares, each feed whole in one of them.
std::vector<KeptRuns> sharesOf(const std::vector<KeptRun>& runs, std::size_t count)
{
    std::vector<KeptRuns> shares(count);
    std::vector<std::size_t> sizes(shares.size());
    std::map<FeedId, std::size_t> shareOf;
    for (const KeptRun& run : runs) {
        const auto smallest = std::min_element(sizes.begin(), sizes.end()) - sizes.begin();
        const std::size_t share = shareOf.try_emplace(run.feed, static_cast<std::size_t>(smallest)).first->second;
        shares[share].push_back(&run);
        sizes[share] += run.entries.size();
    }
    return shares;
}

} // namespace

journal::Checked<Reopened> reopen(const keys::VerifyKey& program, const Batch& kept, std::size_t threads)
{
    Kept copies{kept.certificates, {}};
    for (const Run& run : kept.runs) {
        copies.runs.push_back({run.feed, run.from, {}});
        std::transform(run.entries.begin(), run.entries.end(), std::back_inserter(copies.runs.back().entries),
                       keys::SharedBytes::copyOf);
    }
    return reopen(program, copies, threads);
}

journal::Checked<Reopened> reopen(const keys::VerifyKey& program, const Kept& kept, std::size_t threads)
{
    LedgerFold fold{Ledger(program), {}, true, true};
    if (const Reason reason = fold.takeCertificates(kept.certificates); reason != Reason::None) {
        return reason;
    }
    const std::vector<KeptRuns> shares = sharesOf(kept.runs, threads == 0 ? threadsFor(kept.runs) : threads);
    std::vector<Reopened> reopened(shares.size(), Reopened{Ledger(program), {}});
    base::inParallel(shares.size(), shares.size(),
                     [&](std::size_t i) { reopened[i] = reopenFeeds(program, shares[i]); });
    std::vector<Finding> unfit;
    for (Reopened& share : reopened) {
        fold.takeFeedsOf(share.ledger);
        unfit.insert(unfit.end(), share.unfit.begin(), share.unfit.end());
    }
    // The same on every machine, however many cores it has.
    std::sort(unfit.begin(), unfit.end(),
              [](const Finding& a, const Finding& b) { return std::tie(a.feed, a.seq) < std::tie(b.feed, b.seq); });
    return Reopened{std::move(fold.ledger), std::move(unfit)};
}

} // namespace peelpack::merge
