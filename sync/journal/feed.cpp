#include "sync/journal/feed.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace peelpack::journal {
namespace {

/// A place between entries: after `at` entries of the segment.
struct Cursor {
    Segment* segment = nullptr;
    std::size_t at = 0;
    Link previous;
};

void findCursors(Segment& segment, std::uint32_t from, std::uint32_t seq, std::vector<Cursor>& found)
{
    // The entry before the place is at seq - 1.
    const std::uint32_t end = from + static_cast<std::uint32_t>(segment.entries.size());
    if (seq > from && seq <= end) {
        const std::size_t at = seq - from;
        found.push_back({&segment, at, segment.entries[at - 1].link});
    } else if (seq > end) {
        for (Segment& branch : segment.branches) {
            findCursors(branch, end, seq, found);
        }
    }
}

/// The first entry held at `seq` that `fits` accepts.
template <class Fits>
const KeptEntry* findEntry(const Segment& segment, std::uint32_t from, std::uint32_t seq, const Fits& fits)
{
    const std::uint32_t end = from + static_cast<std::uint32_t>(segment.entries.size());
    if (seq < from) {
        return nullptr;
    }
    if (seq < end) {
        const KeptEntry& entry = segment.entries[seq - from];
        return fits(entry.link) ? &entry : nullptr;
    }
    for (const Segment& branch : segment.branches) {
        if (const KeptEntry* entry = findEntry(branch, end, seq, fits)) {
            return entry;
        }
    }
    return nullptr;
}

const Link& firstLink(const Segment& branch)
{
    return branch.entries.front().link;
}

/// Calls for the first entry of everything that follows a cursor.
template <class Visit>
void eachFollower(const Cursor& cursor, const Visit& visit)
{
    if (cursor.at < cursor.segment->entries.size()) {
        visit(cursor.segment->entries[cursor.at]);
        return;
    }
    for (const Segment& branch : cursor.segment->branches) {
        visit(branch.entries.front());
    }
}

/// Keeps what FORMAT.md section 8 keeps, `forks` being how many are above this segment.
void prune(Segment& segment, std::size_t forks)
{
    if (segment.branches.empty()) {
        return;
    }
    std::sort(segment.branches.begin(), segment.branches.end(),
              [](const Segment& a, const Segment& b) { return firstLink(a) < firstLink(b); });
    const std::size_t most = forks < Feed::mostForks ? Feed::mostBranches : 1;
    if (segment.branches.size() > most) {
        segment.branches.erase(segment.branches.begin() + static_cast<std::ptrdiff_t>(most), segment.branches.end());
    }
    if (segment.branches.size() == 1) {
        Segment only = std::move(segment.branches.front());
        segment.entries.insert(segment.entries.end(), std::make_move_iterator(only.entries.begin()),
                               std::make_move_iterator(only.entries.end()));
        segment.branches = std::move(only.branches);
        prune(segment, forks);
        return;
    }
    for (Segment& branch : segment.branches) {
        prune(branch, forks + 1);
    }
}

/// True when the place had no follower, so that the entry only makes the feed longer.
bool insert(const Cursor& cursor, KeptEntry entry)
{
    Segment& segment = *cursor.segment;
    if (cursor.at == segment.entries.size() && segment.branches.empty()) {
        segment.entries.push_back(std::move(entry));
        return true;
    }
    if (cursor.at < segment.entries.size()) {
        Segment rest;
        const auto boundary = segment.entries.begin() + static_cast<std::ptrdiff_t>(cursor.at);
        rest.entries.assign(std::make_move_iterator(boundary), std::make_move_iterator(segment.entries.end()));
        rest.branches = std::move(segment.branches);
        segment.entries.erase(boundary, segment.entries.end());
        segment.branches.clear();
        segment.branches.push_back(std::move(rest));
    }
    Segment branch;
    branch.entries.push_back(std::move(entry));
    segment.branches.push_back(std::move(branch));
    return false;
}

void eachSegmentFrom(const Segment& segment, std::uint32_t from, const Feed::OnSegment& onSegment)
{
    onSegment(from, segment);
    const std::uint32_t end = from + static_cast<std::uint32_t>(segment.entries.size());
    for (const Segment& branch : segment.branches) {
        eachSegmentFrom(branch, end, onSegment);
    }
}

} // namespace

const KeptEntry* Feed::find(std::uint32_t seq, const keys::Hash& hash) const
{
    return findEntry(m_trunk, 0, seq, [&](const Link& link) { return link.hash == hash; });
}

bool Feed::holds(std::uint32_t seq, const Link& link) const
{
    return findEntry(m_trunk, 0, seq, [&](const Link& held) { return held == link; }) != nullptr;
}

bool Feed::holdsAny(std::uint32_t seq) const
{
    return findEntry(m_trunk, 0, seq, [](const Link& /*link*/) { return true; }) != nullptr;
}

void Feed::eachSegment(const OnSegment& onSegment) const
{
    eachSegmentFrom(m_trunk, 0, onSegment);
}

std::vector<ForkEvidence> Feed::evidence() const
{
    std::vector<ForkEvidence> found;
    eachSegment([&](std::uint32_t from, const Segment& segment) {
        if (segment.branches.size() > 1) {
            const std::uint32_t seq = from + static_cast<std::uint32_t>(segment.entries.size());
            found.push_back(
                journal::evidence(m_id, seq, firstLink(segment.branches[0]), firstLink(segment.branches[1])));
        }
    });
    return found;
}

/// The steps of apply(), which alone may change a feed.
struct FeedFold {
    Feed& feed;
    const keys::VerifyKey& program;
    const Offer& offer;
    keys::UsableKeys* usable; ///< null: the entry was verified before
    Outcome result;
    Cursor only;                 ///< the one place in a feed that has no fork
    std::vector<Cursor> several; ///< the places in one that has

    [[nodiscard]] bool verifiedBefore() const { return usable == nullptr; }

    void run()
    {
        const auto parts = takeApart(offer.entry);
        if (!parts) {
            result.reason = parts.reason();
            return;
        }
        const std::span<const Cursor> cursors = places();
        if (alreadyThere(cursors)) {
            return;
        }
        Checked<Payload> payload(Payload(Unread{}));
        const bool checkedBefore = verifiedBefore() && checkedByEveryVersion(parts.value().kind);
        if (!checkedBefore) {
            payload = decodePayload(parts.value().kind, parts.value().payload);
        }
        if (!payload) {
            result.reason = payload.reason();
            return;
        }
        if (cursors.empty()) {
            result.verdict = Verdict::Gap;
            result.reason = Reason::PredecessorMissing;
            return;
        }
        const bool trustPlace = verifiedBefore() && cursors.size() == 1;
        const auto fitting = std::find_if(cursors.begin(), cursors.end(), [&](const Cursor& cursor) {
            result.link = linkAfter(cursor, parts.value());
            return trustPlace || verifyHead(feed.id(), offer.seq, result.link);
        });
        if (fitting == cursors.end()) {
            result.reason = Reason::BadSignature;
            result.link = {};
            return;
        }
        // An attestation or evidence inside is checked once the device's own signature is known to hold.
        keys::UsableKeys own;
        const Reason fault = checkedBefore ? Reason::None
                                           : placeFault(program, feed.id(), parts.value().kind, payload.value(),
                                                        usable == nullptr ? own : *usable);
        if (fault != Reason::None) {
            result.reason = fault;
            result.link = {};
            return;
        }
        take(*fitting, parts.value().kind);
    }

    std::span<const Cursor> places()
    {
        Segment& trunk = feed.m_trunk;
        const auto fits = [&](const Cursor& cursor) { return !offer.after || cursor.previous == *offer.after; };
        if (offer.seq == 0 || trunk.branches.empty()) {
            if (offer.seq > trunk.entries.size()) {
                return {};
            }
            only = {&trunk, offer.seq, offer.seq == 0 ? Link{} : trunk.entries[offer.seq - 1].link};
            return {&only, fits(only) ? 1U : 0U};
        }
        findCursors(trunk, 0, offer.seq, several);
        std::erase_if(several, [&](const Cursor& cursor) { return !fits(cursor); });
        return several;
    }

    bool alreadyThere(std::span<const Cursor> cursors)
    {
        for (const Cursor& cursor : cursors) {
            eachFollower(cursor, [&](const KeptEntry& entry) {
                if (std::equal(entry.bytes.begin(), entry.bytes.end(), offer.entry.begin(), offer.entry.end())) {
                    result.verdict = Verdict::Known;
                    result.link = entry.link;
                }
            });
        }
        return result.verdict == Verdict::Known;
    }

    [[nodiscard]] Link linkAfter(const Cursor& cursor, const EntryParts& parts) const
    {
        return {entryHash(program, {feed.id(), offer.seq, cursor.previous}, parts.body), parts.signature};
    }

    void take(const Cursor& cursor, std::uint16_t kind)
    {
        eachFollower(cursor, [&](const KeptEntry& entry) {
            result.evidence = evidence(feed.id(), offer.seq, entry.link, result.link);
        });
        keys::SharedBytes bytes = offer.shared == nullptr ? keys::SharedBytes::copyOf(offer.entry) : *offer.shared;
        if (insert(cursor, {std::move(bytes), result.link, kind})) {
            result.verdict = Verdict::Taken;
            return;
        }
        prune(feed.m_trunk, 0);
        result.verdict = Verdict::Forked;
        result.reason = feed.holds(offer.seq, result.link) ? Reason::RecordForked : Reason::BranchNotKept;
    }
};

Applied apply(Feed feed, const keys::VerifyKey& program, const Offer& offer)
{
    keys::UsableKeys usable;
    Outcome outcome = applyTo(feed, program, offer, usable);
    return {outcome, std::move(feed)};
}

Outcome applyTo(Feed& feed, const keys::VerifyKey& program, const Offer& offer, keys::UsableKeys& usable)
{
    FeedFold fold{feed, program, offer, &usable, {}, {}, {}};
    fold.run();
    return fold.result;
}

Outcome applyKeptTo(Feed& feed, const keys::VerifyKey& program, const Offer& offer)
{
    FeedFold fold{feed, program, offer, nullptr, {}, {}, {}};
    fold.run();
    return fold.result;
}

} // namespace peelpack::journal
