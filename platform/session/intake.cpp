#include "platform/session/intake.h"

#include "platform/vault/vault_error.h"
#include "sync/journal/fork.h"
#include "sync/merge/contents.h"
#include "sync/parcel/parcel.h"
#include "sync/parcel/volume.h"

#include <algorithm>
#include <set>

namespace peelpack::session {
namespace {

/// Heads of other feeds than ours that contradict an entry that we hold: evidence without the other entry.
std::vector<journal::ForkEvidence> contradictingHeads(const merge::Ledger& ledger,
                                                      const std::vector<merge::StatedHead>& heads)
{
    std::vector<journal::ForkEvidence> found;
    for (const merge::StatedHead& head : heads) {
        const journal::Feed* feed = ledger.feed(head.feed);
        const std::uint32_t seq = head.count - 1;
        if (feed == nullptr || feed->forked() || seq >= feed->count()) {
            continue;
        }
        const journal::Link& held = feed->trunk().entries[seq].link;
        if (held != head.link) {
            found.push_back(journal::evidence(head.feed, seq, held, head.link));
        }
    }
    return found;
}

/// Of each feed that was shown, the receipt that reaches furthest; what was found before is not said again. Who carries
/// somebody else's record may have an older copy of it: of an end that is missing only a student's record tells.
std::vector<merge::Contradiction> worthSaying(const std::vector<merge::Contradiction>& found,
                                              const trust::Authority& authority,
                                              const std::vector<merge::StatedHead>& heads)
{
    std::map<std::pair<journal::FeedId, merge::Contradiction::Sort>, merge::Contradiction> furthest;
    for (const merge::Contradiction& one : found) {
        const journal::FeedId& feed = one.receipt.covered.feed;
        const bool shown =
            std::any_of(heads.begin(), heads.end(), [&](const merge::StatedHead& head) { return head.feed == feed; });
        const trust::Holder* writer = authority.holder(feed.device);
        const bool students = writer != nullptr && writer->person == feed.stream;
        if (!shown || (one.sort == merge::Contradiction::Sort::Cut && !students)) {
            continue;
        }
        const auto place = furthest.try_emplace({feed, one.sort}, one).first;
        if (place->second.receipt.covered.seq < one.receipt.covered.seq) {
            place->second = one;
        }
    }
    std::vector<merge::Contradiction> said;
    said.reserve(furthest.size());
    for (const auto& [place, one] : furthest) {
        said.push_back(one);
    }
    return said;
}

} // namespace

/// One take-in, step by step. It may change the session only at its end.
class Intake {
public:
    Intake(Session& session, std::vector<OfferedFile> files) : m_session(session), m_files(std::move(files)) {}

    base::Result<IntakeReport> run()
    {
        openFiles();
        addHeld();
        merge::TakenAll taken = merge::takeAll(m_session.m_ledger, m_batches);
        readOutcome(taken);
        findForks(taken.ledger);
        collectNews(taken.ledger);
        if (m_session.isStaff() && !m_report.ownRecordSplit && !m_session.writeBar().stands()) {
            if (const base::Result<bool> written = writeReceipts(taken.ledger); !written) {
                return written.error();
            }
        }
        if (!m_change.empty()) {
            const vault::Result<bool> saved = m_session.m_vault->save(m_change);
            if (!saved) {
                return vault::asError(saved.error());
            }
            m_report.saved = true;
        }
        return finish(std::move(taken.ledger));
    }

private:
    static constexpr std::size_t fromHeld = SIZE_MAX;

    void openFiles()
    {
        const base::Result<const keys::DeviceKey*> own = m_session.device();
        for (OfferedFile& file : m_files) {
            FileOutcome outcome;
            outcome.name = file.name;
            keys::Bytes volume;
            if (!parcel::isParcel(file.bytes)) {
                volume = std::move(file.bytes);
            } else if (!own) {
                outcome.whyNot = own.error().sentence;
            } else {
                auto opened = parcel::open(file.bytes, own.value()->opening);
                if (opened) {
                    volume = std::move(opened).value();
                } else {
                    outcome.whyNot = journal::sentence(opened.reason());
                }
            }
            m_report.files.push_back(std::move(outcome));
            if (m_report.files.back().whyNot.empty()) {
                addVolume(std::move(volume), m_report.files.size() - 1);
            }
        }
    }

    void addVolume(keys::Bytes bytes, std::size_t file)
    {
        auto volume = parcel::readVolume(m_session.program(), bytes);
        if (!volume) {
            if (file != fromHeld) {
                m_report.files[file].whyNot = journal::sentence(volume.reason());
            }
            return;
        }
        // What the batch lends from stays where it is: moving a vector does not move its elements.
        m_batches.push_back(std::move(volume).value().batch);
        m_volumes.push_back(std::move(bytes));
        m_fileOf.push_back(file);
    }

    void addHeld()
    {
        for (const vault::HeldVolume& held : m_session.m_held) {
            addVolume(held.bytes, fromHeld);
            if (m_fileOf.size() > m_heldNumbers.size()) {
                m_heldNumbers.resize(m_fileOf.size(), 0);
                m_heldNumbers.back() = held.number;
            }
        }
        m_heldNumbers.resize(m_fileOf.size(), 0);
    }

    void readOutcome(const merge::TakenAll& taken)
    {
        std::map<std::size_t, journal::Reason> unusable(taken.unusable.begin(), taken.unusable.end());
        for (std::size_t i = 0; i < m_batches.size(); ++i) {
            const merge::TakeReport& report = taken.reports[i];
            const auto refused = unusable.find(i);
            if (refused == unusable.end()) {
                m_heads.insert(m_heads.end(), m_batches[i].heads.begin(), m_batches[i].heads.end());
            }
            m_report.taken += report.taken;
            m_report.certificates += report.certificates;
            if (m_fileOf[i] == fromHeld) {
                if (!report.gap || refused != unusable.end()) {
                    m_change.release.push_back(m_heldNumbers[i]);
                }
                continue;
            }
            FileOutcome& outcome = m_report.files[m_fileOf[i]];
            outcome.used = refused == unusable.end();
            outcome.whyNot = outcome.used ? std::string() : std::string(journal::sentence(refused->second));
            outcome.taken = report.taken;
            outcome.known = report.known;
            outcome.waits = outcome.used && report.gap;
            outcome.findings = report.findings;
            if (outcome.waits && !alreadyHeld(m_volumes[i])) {
                m_change.hold.push_back(m_volumes[i]);
            }
        }
    }

    [[nodiscard]] bool alreadyHeld(const keys::Bytes& volume) const
    {
        return std::any_of(m_session.m_held.begin(), m_session.m_held.end(),
                           [&](const vault::HeldVolume& held) { return held.bytes == volume; });
    }

    void findForks(const merge::Ledger& ledger)
    {
        for (const auto& [id, feed] : ledger.feeds()) {
            const journal::Feed* before = m_session.m_ledger.feed(id);
            if (feed.forked() && (before == nullptr || !before->forked())) {
                const auto evidence = feed.evidence();
                m_report.forks.insert(m_report.forks.end(), evidence.begin(), evidence.end());
            }
        }
        for (const journal::ForkEvidence& evidence : contradictingHeads(ledger, m_heads)) {
            m_report.forks.push_back(evidence);
        }
        m_report.contradictions =
            worthSaying(merge::contradictions(m_session.authority(), ledger, m_heads), m_session.authority(), m_heads);
        const base::Result<const keys::DeviceKey*> own = m_session.device();
        if (!own) {
            return;
        }
        const keys::VerifyKey key = own.value()->signing.verifyKey();
        const bool unknownOwn = std::any_of(ledger.feeds().begin(), ledger.feeds().end(), [&](const auto& item) {
            const journal::Feed* before = m_session.m_ledger.feed(item.first);
            return item.first.device == key && item.second.count() > (before == nullptr ? 0 : before->count());
        });
        m_report.ownRecordSplit = unknownOwn ||
                                  merge::ownFeed(m_session.m_ledger, key, m_heads) != merge::OwnFeed::Current ||
                                  merge::ownFeed(ledger, key, m_heads) != merge::OwnFeed::Current;
        if (m_report.ownRecordSplit && !m_session.note(notes::stopped)) {
            m_change.notes[notes::stopped] = keys::Bytes{1};
        }
    }

    void collectNews(const merge::Ledger& ledger)
    {
        for (const merge::Run& run : merge::newEntries(m_session.m_ledger, ledger)) {
            for (std::size_t i = 0; i < run.entries.size(); ++i) {
                m_change.entries.push_back(
                    {run.feed, static_cast<std::uint32_t>(run.from + i), keys::SharedBytes::copyOf(run.entries[i])});
            }
            m_streams.insert(run.feed.stream);
        }
        std::set<keys::Bytes> known;
        for (const trust::Certificate& certificate : m_session.m_ledger.certificates()) {
            known.insert(certificate.bytes);
        }
        for (const trust::Certificate& certificate : ledger.certificates()) {
            if (!known.contains(certificate.bytes)) {
                m_change.certificates.push_back(certificate.bytes);
            }
        }
    }

    /// Evidence of forks that nobody has said yet, and receipts for every stream with something new.
    base::Result<bool> writeReceipts(merge::Ledger& ledger)
    {
        const trust::Authority authority = ledger.authority();
        const keys::VerifyKey key = m_session.device().value()->signing.verifyKey();
        std::vector<Writing> writings;
        for (const journal::ForkEvidence& evidence : m_report.forks) {
            if (authority.holder(evidence.feed.device) != nullptr && !said(ledger, evidence)) {
                writings.push_back({evidence.feed.stream, journal::ForkFound{evidence}});
            }
        }
        const std::size_t evidenceCount = writings.size();
        for (const keys::Id& stream : m_streams) {
            auto receipt = merge::receiptFor(authority, ledger, key, stream, m_heads);
            if (!receipt) {
                m_report.withoutReceipt.emplace_back(stream, receipt.reason());
            } else if (receipt.value()) {
                writings.push_back({stream, *receipt.value()});
            }
        }
        const base::Result<std::vector<SignedWriting>> entries = m_session.signAll(ledger, writings);
        if (!entries) {
            return entries.error();
        }
        m_report.receipts = entries.value().size() - evidenceCount;
        for (const SignedWriting& written : entries.value()) {
            m_change.entries.push_back({written.place.feed, written.place.seq, written.entry.bytes});
            merge::append(ledger, written.place, written.entry);
        }
        return true;
    }

    static bool said(const merge::Ledger& ledger, const journal::ForkEvidence& evidence)
    {
        bool found = false;
        const auto wanted = journal::ofKind({journal::Kind::ForkFound});
        for (const auto& [id, feed] : ledger.feeds()) {
            if (id.stream == evidence.feed.stream) {
                journal::eachTrunkEntry(feed, feed.count(), wanted, [&](const journal::Decoded& entry) {
                    const auto& other = std::get<journal::ForkFound>(entry.payload).evidence;
                    found = found || (other.feed == evidence.feed && other.seq <= evidence.seq);
                });
            }
        }
        return found;
    }

    base::Result<IntakeReport> finish(merge::Ledger ledger)
    {
        if (!m_report.saved) {
            return std::move(m_report);
        }
        m_session.m_ledger = std::move(ledger);
        m_session.forgetWorkedOut();
        for (const auto& [name, value] : m_change.notes) {
            m_session.m_notes[name] = value.value_or(keys::Bytes{});
        }
        const bool heldChanged = !m_change.hold.empty() || !m_change.release.empty();
        if (heldChanged || !m_session.m_broken.empty()) {
            if (const base::Result<bool> again = m_session.reload(); !again) {
                return again.error();
            }
        }
        return std::move(m_report);
    }

    Session& m_session;
    std::vector<OfferedFile> m_files;
    IntakeReport m_report;
    std::vector<keys::Bytes> m_volumes;
    std::vector<merge::Batch> m_batches;
    std::vector<std::size_t> m_fileOf;
    std::vector<std::uint64_t> m_heldNumbers;
    std::vector<merge::StatedHead> m_heads;
    std::set<keys::Id> m_streams;
    vault::Change m_change;
};

base::Result<IntakeReport> takeIn(Session& session, std::vector<OfferedFile> files)
{
    return Intake(session, std::move(files)).run();
}

} // namespace peelpack::session
