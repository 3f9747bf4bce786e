#include "sync/merge/ledger.h"

#include "core/base/parallel.h"
#include "sync/keys/card.h"

#include <algorithm>
#include <cassert>
#include <iterator>
#include <set>
#include <tuple>

namespace peelpack::merge {

using journal::FeedId;
using journal::Reason;
using journal::Verdict;

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

} // namespace

/// The steps of take(), which alone may change a ledger.
struct LedgerFold {
    Ledger ledger;
    TakeReport report;
    bool verifiedBefore = false;
    bool kept = false; ///< in order of arrival, where a branch may go on after another's entry
    keys::UsableKeys usable{};

    static constexpr std::size_t entriesAhead = 4; ///< that memory is asked for

    Reason takeCertificates(const std::vector<keys::ByteView>& certificates)
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

    static journal::Offer offered(std::uint32_t seq, keys::ByteView entry) { return {seq, entry, {}, nullptr}; }
    static journal::Offer offered(std::uint32_t seq, const keys::SharedBytes& entry)
    {
        return {seq, entry, {}, &entry};
    }

    template <class AnyRun>
    void takeRun(const AnyRun& run)
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

    /// From a ledger that holds none of the feeds that are here.
    void takeFeedsOf(Ledger& other) { ledger.m_feeds.merge(other.m_feeds); }

    /// Takes out the feeds whose heads do not verify, and names them.
    std::set<FeedId> forgetDoubtful()
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

    [[nodiscard]] bool flooded(std::size_t feedsBefore) const
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
};

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

void append(Ledger& ledger, const journal::Place& place, const journal::SignedEntry& entry)
{
    LedgerFold fold{std::move(ledger), {}, true, true};
    fold.takeRun(Run{place.feed, place.seq, {entry.bytes}});
    assert(fold.report.taken == 1 && fold.report.findings.empty());
    ledger = std::move(fold.ledger);
}

std::vector<Run> newEntries(const Ledger& before, const Ledger& after)
{
    std::vector<Run> runs;
    for (const auto& item : after.feeds()) {
        const journal::FeedId& id = item.first;
        const journal::Feed& feed = item.second;
        const journal::Feed* held = before.feed(id);
        feed.eachSegment([&, &feedId = id](std::uint32_t from, const journal::Segment& segment) {
            Run run{feedId, from, {}};
            for (std::size_t i = 0; i < segment.entries.size(); ++i) {
                const journal::KeptEntry& entry = segment.entries[i];
                const auto seq = static_cast<std::uint32_t>(from + i);
                if (held == nullptr || !held->holds(seq, entry.link)) {
                    if (run.entries.empty()) {
                        run.from = seq;
                    }
                    run.entries.emplace_back(entry.bytes);
                }
            }
            if (!run.entries.empty()) {
                runs.push_back(std::move(run));
            }
        });
    }
    return runs;
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

namespace {

bool concernsOther(const trust::Certificate& certificate, const keys::Id& student, const keys::Id& programStream)
{
    if (const auto* revoked = std::get_if<trust::DirectorRevoked>(&certificate.content)) {
        return revoked->feed.stream != programStream && revoked->feed.stream != student;
    }
    if (const auto* completion = std::get_if<trust::Completion>(&certificate.content)) {
        return completion->student != student;
    }
    return false;
}

void addFeed(Batch& batch, const journal::Feed& feed)
{
    feed.eachSegment([&](std::uint32_t from, const journal::Segment& segment) {
        if (segment.entries.empty()) {
            return;
        }
        Run run{feed.id(), from, {}};
        run.entries.reserve(segment.entries.size());
        for (const journal::KeptEntry& entry : segment.entries) {
            run.entries.emplace_back(entry.bytes);
        }
        if (segment.branches.empty()) {
            const auto count = static_cast<std::uint32_t>(from + segment.entries.size());
            batch.heads.push_back({feed.id(), count, segment.entries.back().link});
        }
        batch.runs.push_back(std::move(run));
    });
}

} // namespace

Batch contents(const Ledger& ledger, const std::optional<keys::Id>& student)
{
    const keys::Id programStream = keys::programStream(ledger.program());
    Batch batch;
    for (const trust::Certificate& certificate : ledger.certificates()) {
        if (!student || !concernsOther(certificate, *student, programStream)) {
            batch.certificates.emplace_back(certificate.bytes);
        }
    }
    for (const auto& [id, feed] : ledger.feeds()) {
        if (!student || id.stream == *student || id.stream == programStream) {
            addFeed(batch, feed);
        }
    }
    std::sort(batch.heads.begin(), batch.heads.end());
    return batch;
}

Batch contentsWithout(const Ledger& ledger, const keys::VerifyKey& device)
{
    Batch batch = contents(ledger);
    std::erase_if(batch.runs, [&](const Run& run) { return run.feed.device == device; });
    std::erase_if(batch.heads, [&](const StatedHead& head) { return head.feed.device == device; });
    return batch;
}

Batch newsFor(const Batch& batch, std::span<const StatedHead> theirs)
{
    Batch news{batch.certificates, batch.heads, {}};
    for (const Run& run : batch.runs) {
        // What they have is sure only where their head is one of ours: then everything before it is theirs too.
        std::uint32_t have = run.from;
        for (const StatedHead& head : theirs) {
            const bool inRun =
                head.feed == run.feed && head.count > run.from && head.count - run.from <= run.entries.size();
            if (inRun) {
                const keys::ByteView entry = run.entries[head.count - run.from - 1];
                const auto signature = keys::Signature::from(entry.last(keys::Signature::size));
                if (signature == head.link.signature) {
                    have = std::max(have, head.count);
                }
            }
        }
        if (have - run.from < run.entries.size()) {
            const auto skip = static_cast<std::ptrdiff_t>(have - run.from);
            news.runs.push_back({run.feed, have, {run.entries.begin() + skip, run.entries.end()}});
        }
    }
    return news;
}

} // namespace peelpack::merge
