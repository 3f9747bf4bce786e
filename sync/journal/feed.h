#pragma once

#include "sync/journal/entry.h"
#include "sync/journal/fork.h"
#include "sync/keys/shared_bytes.h"

#include <functional>
#include <optional>
#include <vector>

namespace peelpack::journal {

/// One entry as it is kept: the bytes that were signed, and what the next one builds on.
struct KeptEntry {
    keys::SharedBytes bytes;
    Link link;
    std::uint16_t kind = 0; ///< what the bytes say
};

/// Entries that follow one another, and the branches after the last of them: none, or two and more, by the links of
/// their first entries. A segment with no entries occurs only as the trunk.
struct Segment {
    std::vector<KeptEntry> entries;
    std::vector<Segment> branches;
};

/// The verified entries of one feed: a trunk up to the first fork, and the branches after it.
/// A value; the same set of entries gives the same feed, whatever the order they came in.
class Feed {
public:
    /// Kept at one fork: the branches with the smallest links.
    static constexpr std::size_t mostBranches = 4;
    /// Forks inside one another; deeper ones keep only the smallest branch.
    static constexpr std::size_t mostForks = 4;

    explicit Feed(const FeedId& id) : m_id(id) {}

    [[nodiscard]] const FeedId& id() const { return m_id; }
    [[nodiscard]] const Segment& trunk() const { return m_trunk; }
    /// Entries before the first fork; all of them when there is none.
    [[nodiscard]] std::uint32_t count() const { return static_cast<std::uint32_t>(m_trunk.entries.size()); }
    [[nodiscard]] bool forked() const { return !m_trunk.branches.empty(); }
    /// The link of the trunk's last entry; zero when there is none.
    [[nodiscard]] Link head() const { return m_trunk.entries.empty() ? Link{} : m_trunk.entries.back().link; }
    /// Where the owner's next entry goes. Only for a feed that is not forked.
    [[nodiscard]] Place next() const { return {m_id, count(), head()}; }

    /// Null when no entry of that hash is held, in the trunk or in any branch.
    [[nodiscard]] const KeptEntry* find(std::uint32_t seq, const keys::Hash& hash) const;
    /// True when exactly this entry is held. A modified app can sign one entry in many ways: same hash, other
    /// signature.
    [[nodiscard]] bool holds(std::uint32_t seq, const Link& link) const;
    /// True when some entry is held at `seq`.
    [[nodiscard]] bool holdsAny(std::uint32_t seq) const;
    /// Evidence of every fork, from what is held.
    [[nodiscard]] std::vector<ForkEvidence> evidence() const;

    /// Calls for every segment: the seq of its first entry, the segment. Trunk first, then depth first.
    using OnSegment = std::function<void(std::uint32_t from, const Segment& segment)>;
    void eachSegment(const OnSegment& onSegment) const;

private:
    friend struct FeedFold;

    FeedId m_id;
    Segment m_trunk;
};

/// An entry that somebody brings.
struct Offer {
    std::uint32_t seq = 0;
    keys::ByteView entry;
    /// The link of its predecessor where that is known (the entry before it in the same run); empty: any that is held.
    std::optional<Link> after;
    /// The same bytes where they may be kept as they are; null: they are copied.
    const keys::SharedBytes* shared = nullptr;
};

/// What became of an entry.
struct Outcome {
    Verdict verdict = Verdict::Refused;
    Reason reason = Reason::None;
    Link link;                            ///< of the entry, when it is Taken, Known or Forked
    std::optional<ForkEvidence> evidence; ///< when Forked
};

struct Applied : Outcome {
    Feed feed;
};

/// The fold: state = apply(state, entry). Pure; checks size, form, chain, signature, in this order. On Gap and Refused
/// the feed is unchanged. Verdicts: Taken, Known, Gap, Refused, Forked. Authority is judged later (trust/authority.h).
Applied apply(Feed feed, const keys::VerifyKey& program, const Offer& offer);
/// The same for one entry of many, whose signers' keys are remembered; the feed is changed in its place.
Outcome applyTo(Feed& feed, const keys::VerifyKey& program, const Offer& offer, keys::UsableKeys& usable);

/// The fold over entries that this installation verified before and kept where nobody else can write: size, form of the
/// body and chain, and no signature unless the place would be doubtful without it. A payload is looked at only where an
/// older build may have kept it unread. The caller compares the heads that come out with those it kept.
Outcome applyKeptTo(Feed& feed, const keys::VerifyKey& program, const Offer& offer);

} // namespace peelpack::journal
