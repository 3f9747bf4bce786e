#include "sync/merge/contents.h"

#include "sync/keys/card.h"

#include <algorithm>

namespace peelpack::merge {

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

} // namespace peelpack::merge
