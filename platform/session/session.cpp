#include "platform/session/session.h"

#include "core/base/parallel.h"
#include "platform/session/refusal.h"
#include "platform/vault/vault_error.h"
#include "sync/keys/card.h"
#include "sync/merge/contents.h"
#include "sync/merge/reopen.h"
#include "sync/merge/student_events.h"

#include <algorithm>
#include <set>

namespace peelpack::session {
namespace {

/// Kinds that can change who may do what, or the rules in force.
bool concernsAuthority(const journal::Payload& payload)
{
    return std::visit(
        []<class T>(const T& /*value*/) {
            if constexpr (std::is_same_v<T, journal::Unread>) {
                return true;
            } else {
                return T::kind < journal::Kind::SheetOpened || T::kind >= journal::Kind::Receipt;
            }
        },
        payload);
}

} // namespace

Session::Session(std::unique_ptr<vault::Vault> vault, const keys::VerifyKey& program, Clock clock,
                 keys::RandomSource& random)
    : m_vault(std::move(vault)), m_clock(std::move(clock)), m_random(random), m_ledger(program),
      m_programStream(keys::programStream(program))
{
}

base::Result<std::unique_ptr<Session>> Session::open(std::unique_ptr<vault::Vault> vault, Clock clock,
                                                     keys::RandomSource& random)
{
    vault::Result<vault::Contents> contents = vault->contents();
    if (!contents) {
        return vault::asError(contents.error());
    }
    return open(std::move(vault), std::move(contents).value(), std::move(clock), random);
}

base::Result<std::unique_ptr<Session>> Session::open(std::unique_ptr<vault::Vault> vault, vault::Contents contents,
                                                     Clock clock, keys::RandomSource& random)
{
    const auto& kept = contents.notes;
    const auto program = kept.find(notes::program);
    const auto person = kept.find(notes::person);
    const auto role = kept.find(notes::role);
    if (program == kept.end() || person == kept.end() || role == kept.end() || role->second.size() != 1) {
        return base::Error{base::ErrorCode::NotFound, "This vault belongs to no program yet."};
    }
    const auto programId = keys::VerifyKey::from(program->second);
    const auto personId = keys::Id::from(person->second);
    if (!programId || !personId) {
        return base::Error{base::ErrorCode::BadInput, "The settings of this vault are damaged."};
    }
    std::unique_ptr<Session> session(new Session(std::move(vault), *programId, std::move(clock), random));
    session->m_person = *personId;
    session->m_role = static_cast<journal::Role>(role->second.front());
    session->takeContents(std::move(contents));
    return session;
}

base::Result<bool> Session::reload()
{
    vault::Result<vault::Contents> contents = m_vault->contents();
    if (!contents) {
        return vault::asError(contents.error());
    }
    takeContents(std::move(contents).value());
    return true;
}

void Session::takeContents(vault::Contents contents)
{
    m_notes = std::move(contents.notes);
    m_held = std::move(contents.held);
    m_damage.clear();
    m_broken.clear();
    forgetWorkedOut();
    for (const vault::Damage& damage : contents.damage) {
        m_damage.push_back("Damaged: " + damage.place + ".");
    }
    merge::Kept kept;
    for (const keys::Bytes& certificate : contents.certificates) {
        kept.certificates.emplace_back(certificate);
    }
    for (vault::PlacedEntry& entry : contents.entries) {
        const bool follows = !kept.runs.empty() && kept.runs.back().feed == entry.feed &&
                             kept.runs.back().from + kept.runs.back().entries.size() == entry.seq;
        if (!follows) {
            kept.runs.push_back({entry.feed, entry.seq, {}});
        }
        kept.runs.back().entries.push_back(std::move(entry.bytes));
    }
    auto reopened = merge::reopen(m_ledger.program(), kept);
    if (!reopened) {
        m_damage.emplace_back("Damaged: the certificates of the program.");
        kept.certificates.clear();
        reopened = merge::reopen(m_ledger.program(), kept);
    }
    merge::Reopened result = std::move(reopened).value();
    m_ledger = std::move(result.ledger);
    for (const merge::Finding& finding : result.unfit) {
        m_broken.push_back(finding.feed);
        m_damage.push_back("Not readable in its place: what follows entry " + std::to_string(finding.seq) +
                           " of a feed that is damaged before it.");
    }
}

const trust::Authority& Session::authority() const
{
    if (!m_authority) {
        m_authority.emplace(m_ledger.authority());
        m_lastReceipts.clear();
    }
    return *m_authority;
}

const trust::ProgramRules& Session::rules() const
{
    if (!m_rules) {
        m_rules.emplace(trust::rulesInForce(authority(), m_ledger.feeds()));
    }
    return *m_rules;
}

void Session::forgetWorkedOut()
{
    m_authority.reset();
    m_rules.reset();
}

base::Result<const keys::DeviceKey*> Session::device() const
{
    const vault::Result<const keys::DeviceKey*> device = m_vault->device();
    if (!device) {
        return vault::asError(device.error());
    }
    return device.value();
}

base::Result<journal::FeedId> Session::ownFeed(const keys::Id& stream) const
{
    const base::Result<const keys::DeviceKey*> own = device();
    if (!own) {
        return own.error();
    }
    return journal::FeedId{own.value()->signing.verifyKey(), stream};
}

WriteBar Session::writeBar() const
{
    const base::Result<const keys::DeviceKey*> own = device();
    if (!own) {
        return {own.error().sentence};
    }
    if (m_notes.contains(notes::stopped)) {
        return {"This phone's record split, often after a restore, so nothing more is signed with its keys: join "
                "again, and "
                "go on where you are."};
    }
    const keys::VerifyKey key = own.value()->signing.verifyKey();
    const bool broken =
        std::any_of(m_broken.begin(), m_broken.end(), [&](const journal::FeedId& feed) { return feed.device == key; });
    if (broken) {
        return {
            "A part of this device's own record is damaged: take in a parcel that has your history, and join again."};
    }
    return {};
}

std::optional<journal::Position> Session::lastReceiptFor(const journal::FeedId& feed) const
{
    const trust::Authority& known = authority();
    const auto [place, isNew] = m_lastReceipts.try_emplace(feed);
    if (isNew) {
        std::optional<std::pair<std::uint32_t, keys::Hash>> best;
        for (const trust::ReceiptRecord& record : known.receipts()) {
            const std::pair order(record.covered.seq, record.receipt.hash);
            if (record.covered.feed == feed && record.held && (!best || order > *best)) {
                best = order;
                place->second = record.receipt;
            }
        }
    }
    return place->second;
}

base::Result<std::vector<SignedWriting>> Session::signAll(const merge::Ledger& ledger,
                                                          const std::vector<Writing>& writings) const
{
    const base::Result<const keys::DeviceKey*> own = device();
    if (!own) {
        return own.error();
    }
    const keys::SigningKey& key = own.value()->signing;
    std::map<journal::FeedId, journal::Place> places;
    std::vector<SignedWriting> done;
    for (const Writing& writing : writings) {
        const journal::FeedId feed{key.verifyKey(), writing.stream};
        journal::Place& place = places.try_emplace(feed, ledger.next(feed)).first->second;
        auto entry =
            journal::writeEntry(program(), place, {m_clock(), lastReceiptFor(feed)}, writing.payload, key, m_usable);
        if (!entry) {
            return refused(entry.reason());
        }
        done.push_back({place, std::move(entry).value()});
        place.seq += 1;
        place.previous = done.back().entry.link;
    }
    return done;
}

base::Result<std::vector<journal::Position>> Session::append(const std::vector<Writing>& writings)
{
    if (const WriteBar bar = writeBar(); bar.stands()) {
        return base::Error{base::ErrorCode::BadValue, bar.sentence};
    }
    const base::Result<std::vector<SignedWriting>> entries = signAll(m_ledger, writings);
    if (!entries) {
        return entries.error();
    }
    vault::Change change;
    for (const SignedWriting& written : entries.value()) {
        change.entries.push_back({written.place.feed, written.place.seq, written.entry.bytes});
    }
    const vault::Result<bool> saved = m_vault->save(change);
    if (!saved) {
        return vault::asError(saved.error());
    }
    std::vector<journal::Position> positions;
    for (const SignedWriting& written : entries.value()) {
        merge::append(m_ledger, written.place, written.entry);
        positions.push_back({written.place.feed, written.place.seq, written.entry.link.hash});
    }
    if (std::any_of(writings.begin(), writings.end(), [](const Writing& w) { return concernsAuthority(w.payload); })) {
        forgetWorkedOut();
    }
    return positions;
}

base::Result<journal::Position> Session::append(const keys::Id& stream, const journal::Payload& payload)
{
    base::Result<std::vector<journal::Position>> positions = append({{stream, payload}});
    if (!positions) {
        return positions.error();
    }
    return positions.value().front();
}

base::Result<bool> Session::keepCertificates(std::vector<keys::Bytes> certificates)
{
    vault::Change change;
    change.certificates = std::move(certificates);
    if (const vault::Result<bool> kept = m_vault->save(change); !kept) {
        return vault::asError(kept.error());
    }
    return reload();
}

std::optional<keys::Bytes> Session::note(const std::string& name) const
{
    const auto found = m_notes.find(name);
    return found == m_notes.end() ? std::nullopt : std::optional(found->second);
}

base::Result<bool> Session::setNote(const std::string& name, std::optional<keys::Bytes> value)
{
    vault::Change change;
    change.notes[name] = value;
    const vault::Result<bool> saved = m_vault->save(change);
    if (!saved) {
        return vault::asError(saved.error());
    }
    if (value) {
        m_notes[name] = std::move(*value);
    } else {
        m_notes.erase(name);
    }
    return true;
}

base::Result<bool> Session::renewDevice()
{
    const vault::Result<bool> renewed = m_vault->renewDevice();
    if (!renewed) {
        return vault::asError(renewed.error());
    }
    return setNote(notes::stopped, std::nullopt);
}

record::StudentRecord Session::recordOf(const keys::Id& student) const
{
    record::StudentEvents events = merge::studentEvents(authority(), m_ledger, student);
    if (m_role == journal::Role::Student && student == m_person) {
        countOwnUngranted(events);
    }
    return record::recordOf(events);
}

std::vector<record::StudentRecord> Session::recordsOf(const std::vector<keys::Id>& students) const
{
    std::map<keys::Id, merge::StudentStream> streams;
    for (merge::StudentStream& stream : merge::studentStreams(authority(), m_ledger)) {
        streams.emplace(stream.student, std::move(stream));
    }
    constexpr std::size_t worthAThread = 4; // students
    std::vector<record::StudentRecord> records(students.size());
    base::inParallel(students.size(), base::partsFor(students.size(), worthAThread), [&](std::size_t i) {
        const auto stream = streams.find(students[i]);
        const merge::StudentStream none{students[i], {}, {}};
        records[i] =
            record::recordOf(merge::studentEvents(authority(), stream == streams.end() ? none : stream->second));
    });
    if (const auto own = std::find(students.begin(), students.end(), m_person);
        own != students.end() && m_role == journal::Role::Student) {
        records[static_cast<std::size_t>(own - students.begin())] = recordOf(m_person);
    }
    return records;
}

void Session::countOwnUngranted(record::StudentEvents& events) const
{
    const base::Result<journal::FeedId> own = ownFeed(m_person);
    const journal::Feed* feed = own ? m_ledger.feed(own.value()) : nullptr;
    if (feed == nullptr || authority().holder(own.value().device) != nullptr) {
        return;
    }
    std::set<base::EntryHash> written;
    journal::eachTrunkEntry(*feed, feed->count(), nullptr, [&](const journal::Decoded& entry) {
        written.insert(base::EntryHash{entry.position.hash.bytes});
    });
    const record::Writer writer{record::Part::Student, base::Id{m_person.bytes}, events.name};
    for (record::Event& event : events.events) {
        if (event.standing.verdict == record::Standing::Verdict::Aside && written.contains(event.entry)) {
            event.standing = {};
            event.writer = writer;
        }
    }
}

} // namespace peelpack::session
