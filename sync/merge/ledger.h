#pragma once

#include "sync/trust/authority.h"
#include "sync/trust/certificate.h"

#include <map>
#include <optional>
#include <span>
#include <vector>

namespace peelpack::merge {

/// A head of a feed as somebody states it: its last entry, signed by the feed's own device.
struct StatedHead {
    journal::FeedId feed;
    std::uint32_t count = 0; ///< entries up to and with this one; never 0
    journal::Link link;

    auto operator<=>(const StatedHead&) const = default; // NOLINT(modernize-use-nullptr): a false alarm of version 14
};

/// Consecutive entries of one feed, lent. Entry i is at from + i.
struct Run {
    journal::FeedId feed;
    std::uint32_t from = 0;
    std::vector<keys::ByteView> entries;
};

/// What one volume brings (parcel/volume.h reads and writes it), lent.
struct Batch {
    std::vector<keys::ByteView> certificates;
    std::vector<StatedHead> heads;
    std::vector<Run> runs;
};

/// Something about one place of what was brought.
struct Finding {
    journal::FeedId feed;
    std::uint32_t seq = 0;
    journal::Verdict verdict = journal::Verdict::Refused;
    journal::Reason reason = journal::Reason::None;
    std::optional<journal::ForkEvidence> evidence;
    bool operator==(const Finding&) const = default;
};

/// What came of a take-in. Nothing new: taken and findings tell so, and nothing needs to be written.
struct TakeReport {
    std::size_t taken = 0; ///< entries, branches included
    std::size_t known = 0;
    std::size_t certificates = 0;  ///< new ones
    bool gap = false;              ///< keep what brought it and offer it again later
    std::vector<Finding> findings; ///< gaps, refusals and forks, in the order of the batch

    [[nodiscard]] bool news() const { return taken > 0 || certificates > 0; }
};

/// All verified feeds and certificates that a device has of one program. A value; equal whatever the order, the overlap
/// and the number of the batches that it was made from.
class Ledger {
public:
    /// Feeds of devices that nobody has granted anything: more are a flood, not a program.
    static constexpr std::size_t mostUnknownFeeds = 1024;
    static constexpr std::size_t mostCertificates = 4096;

    explicit Ledger(const keys::VerifyKey& program) : m_program(program) {}

    [[nodiscard]] const keys::VerifyKey& program() const { return m_program; }
    [[nodiscard]] const trust::Feeds& feeds() const { return m_feeds; }
    [[nodiscard]] const std::vector<trust::Certificate>& certificates() const { return m_certificates; }
    /// Null when nothing of that feed is held.
    [[nodiscard]] const journal::Feed* feed(const journal::FeedId& id) const;
    /// Where an own entry goes next.
    [[nodiscard]] journal::Place next(const journal::FeedId& id) const;

    [[nodiscard]] trust::Authority authority() const;

private:
    friend struct LedgerFold;

    keys::VerifyKey m_program;
    trust::Feeds m_feeds;
    std::vector<trust::Certificate> m_certificates; // by bytes
};

struct Taken {
    Ledger ledger;
    TakeReport report;
};

/// The fold over batches. Pure. A bad entry ends its run; other runs go on. Reason instead of a result: the batch as a
/// whole cannot be used, and the ledger stays as it is.
journal::Checked<Taken> take(Ledger ledger, const Batch& batch);

/// Adds an entry that this device has just written and signed at next() of its feed. Only for a feed that has no fork.
void append(Ledger& ledger, const journal::Place& place, const journal::SignedEntry& entry);

/// Takes several batches until nothing changes any more, so that one that fills a gap of another may come after it.
/// Batches that cannot be used are passed over and named in `unusable`.
struct TakenAll {
    Ledger ledger;
    std::vector<TakeReport> reports; ///< of each batch, the last time it was offered
    std::vector<std::pair<std::size_t, journal::Reason>> unusable;
};
TakenAll takeAll(Ledger ledger, std::span<const Batch> batches);

} // namespace peelpack::merge
