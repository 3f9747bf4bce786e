#include "sync/merge/student_events.h"

#include "sync/keys/card.h"
#include "sync/merge/actions.h"
#include "sync/merge/record_content.h"

#include <algorithm>
#include <set>

namespace peelpack::merge {

using journal::Kind;
using trust::Judgment;

namespace {

using FeedsOfStudent = std::vector<const journal::Feed*>;

bool isAboutSheet(std::uint16_t kind)
{
    return journal::isAct(kind) || kind == static_cast<std::uint16_t>(Kind::Imported) ||
           (kind >= static_cast<std::uint16_t>(Kind::SheetOpened) &&
            kind <= static_cast<std::uint16_t>(Kind::Declined));
}

/// The smallest hash at the feed's first place.
keys::Hash firstHash(const journal::Feed& feed)
{
    const journal::Segment* segment = &feed.trunk();
    if (segment->entries.empty() && !segment->branches.empty()) {
        segment = &segment->branches.front();
    }
    return segment->entries.empty() ? keys::Hash{} : segment->entries.front().link.hash;
}

/// A feed after those that its device continues, otherwise by first hash.
FeedsOfStudent inOrder(const trust::Authority& authority, FeedsOfStudent feeds)
{
    std::map<journal::FeedId, const journal::Feed*> byId;
    for (const journal::Feed* feed : feeds) {
        byId.emplace(feed->id(), feed);
    }
    std::sort(feeds.begin(), feeds.end(),
              [](const journal::Feed* a, const journal::Feed* b) { return firstHash(*a) < firstHash(*b); });
    FeedsOfStudent ordered;
    std::set<journal::FeedId> met; // each is opened once, so that grants that name one another in a ring end
    for (const journal::Feed* start : feeds) {
        std::vector<std::pair<const journal::Feed*, bool>> open{{start, false}}; // true: what it continues is done
        while (!open.empty()) {
            const auto [feed, ready] = open.back();
            open.pop_back();
            if (ready) {
                ordered.push_back(feed);
                continue;
            }
            if (!met.insert(feed->id()).second) {
                continue;
            }
            open.emplace_back(feed, true);
            const trust::Holder* holder = authority.holder(feed->id().device);
            if (holder == nullptr) {
                continue;
            }
            for (const journal::Position& earlier : holder->continues) {
                if (const auto found = byId.find(earlier.feed); found != byId.end()) {
                    open.emplace_back(found->second, false);
                }
            }
        }
    }
    return ordered;
}

record::Writer writerOf(const trust::Holder* holder)
{
    if (holder == nullptr) {
        return {};
    }
    record::Writer writer{record::Part::Other, idOf(holder->person), holder->name};
    switch (holder->role) {
    case journal::Role::Director:
        writer.part = record::Part::Director;
        break;
    case journal::Role::Instructor:
        writer.part = record::Part::Instructor;
        break;
    case journal::Role::Student:
        writer.part = record::Part::Student;
        break;
    case journal::Role::Coordinator:
    case journal::Role::Contact:
        break;
    }
    return writer;
}

record::Standing standingOf(const Judgment& judgment)
{
    using Verdict = record::Standing::Verdict;
    switch (judgment.standing) {
    case Judgment::Standing::Aside:
        return {Verdict::Aside, std::string(journal::sentence(judgment.reason))};
    case Judgment::Standing::Refused:
        return {Verdict::Refused, std::string(journal::sentence(judgment.reason))};
    case Judgment::Standing::Counts:
        break;
    }
    return {};
}

/// Sheet and content of an entry that is no action, attestations apart.
struct SheetContent {
    record::Event& event;

    void operator()(journal::SheetOpened& opened) const
    {
        event.sheet = idOf(opened.sheet);
        event.what = record::Opened{draftOf(opened.operation, std::move(opened.draft))};
    }
    void operator()(journal::HeadChanged& changed) const
    {
        event.sheet = idOf(changed.sheet);
        event.what = record::HeadChanged{draftOf(changed.operation, std::move(changed.draft))};
    }
    void operator()(journal::Withdrawn& withdrawn) const
    {
        event.sheet = idOf(withdrawn.sheet);
        event.what = record::Withdrawn{std::move(withdrawn.reason)};
    }
    void operator()(const journal::Logged& logged) const
    {
        event.sheet = idOf(logged.sheet);
        event.what = record::Logged{choicesOf(logged.choices)};
    }
    void operator()(journal::ReviewAsked& asked) const
    {
        event.sheet = idOf(asked.sheet);
        event.what = record::ReviewAsked{asked.wanted.skill, asked.wanted.mark, std::move(asked.reason)};
    }
    void operator()(const journal::HandOverEnded& ended) const
    {
        event.sheet = idOf(ended.sheet);
        event.what = handOverOf(ended);
    }
    void operator()(journal::Declined& declined) const
    {
        event.sheet = idOf(declined.sheet);
        event.what = record::Declined{std::move(declined.reason)};
    }
    void operator()(journal::Imported& imported) const
    {
        event.sheet = idOf(imported.sheet);
        event.what = importedOf(std::move(imported));
    }
    template <class Other>
    void operator()(const Other& /*other*/) const
    {
    }
};

struct DecisionContent {
    record::Decision operator()(const journal::Return& /*back*/) const { return record::Return{}; }
    record::Decision operator()(const journal::ReviewAccepted& accepted) const
    {
        return record::ReviewAccepted{accepted.granted.skill, accepted.granted.mark, hashOf(accepted.request)};
    }
    record::Decision operator()(journal::Amend& amend) const
    {
        record::Amend result{marksOf(std::move(amend.marks)), std::nullopt, std::move(amend.procedures)};
        if (amend.head) {
            result.head = headOf(std::move(*amend.head));
        }
        return result;
    }
    record::Decision operator()(const journal::Refile& refile) const
    {
        return record::Refile{choicesOf(refile.choices)};
    }
    record::Decision operator()(const journal::Void& /*gone*/) const { return record::Void{}; }
    record::Decision operator()(const journal::Initial& initial) const { return record::Initial{initial.confirmed}; }
    template <class Other>
    record::Decision operator()(const Other& /*other*/) const
    {
        return {};
    }
};

/// Reads the entries of one student's stream, each once.
class StudentReader {
    static constexpr std::size_t entriesAhead = 4; ///< that memory is asked for

public:
    StudentReader(const trust::Authority& authority, const keys::Id& student, std::string name) : m_authority(authority)
    {
        m_result.student = idOf(student);
        m_result.name = std::move(name);
    }

    record::StudentEvents read(FeedsOfStudent feeds)
    {
        std::size_t most = 0;
        for (const journal::Feed* feed : feeds) {
            most += feed->count();
        }
        m_result.events.reserve(most);
        for (const journal::Feed* feed : inOrder(m_authority, std::move(feeds))) {
            m_view = m_authority.viewOf(feed->id());
            m_imported.clear();
            feed->eachSegment([&](std::uint32_t from, const journal::Segment& segment) {
                for (std::uint32_t i = 0; i < segment.entries.size(); ++i) {
                    const std::size_t soon = std::min<std::size_t>(i + entriesAhead, segment.entries.size() - 1);
                    keys::readSoon(segment.entries[soon].bytes);
                    const journal::KeptEntry& kept = segment.entries[i];
                    if (kept.kind == static_cast<std::uint16_t>(Kind::Attestation)) {
                        takeAttestation(journal::decodeWithoutPayload(feed->id(), from + i, kept),
                                        journal::statementIn(kept));
                    } else if (isAboutSheet(kept.kind)) {
                        take(journal::decode(feed->id(), from + i, kept));
                    }
                }
            });
        }
        addActs();
        return std::move(m_result);
    }

private:
    struct JudgedAct {
        journal::Decoded entry;
        Judgment judgment;
    };

    void take(journal::Decoded&& entry)
    {
        const Judgment judgment = m_authority.judge(entry, m_view);
        if (!journal::isAct(entry.kind)) {
            record::Event& event = addEvent(entry, m_view.writer, judgment);
            std::visit(SheetContent{event}, entry.payload);
            if (auto* imported = std::get_if<record::Imported>(&event.what); imported && event.standing.counts()) {
                imported->again = !m_imported.insert(event.sheet).second;
            }
        } else if (judgment.standing == Judgment::Standing::Counts) {
            auto& actions = m_actions[journal::actOf(entry.payload)->sheet];
            const trust::Holder& writer = *m_view.writer;
            actions.push_back({std::move(entry), writer.role, writer.person, writer.epoch});
        } else {
            m_otherActs.push_back({std::move(entry), judgment});
        }
    }

    void takeAttestation(const journal::Decoded& entry, journal::Checked<journal::Statement>&& read)
    {
        if (!read) {
            return; // does not happen: such an entry is refused when it is brought
        }
        journal::Statement statement = std::move(read).value();
        const sheet::Strength strength = m_authority.strengthOf(statement);
        const std::optional<keys::Id> person = m_authority.personOf(statement.signer);
        const Judgment judgment = m_authority.judge(entry, m_view, statement, strength);
        record::Event& event = addEvent(entry, m_view.writer, judgment);
        event.sheet = idOf(statement.sheet);
        auto& attested = event.what.emplace<record::Attested>(attestedOf(std::move(statement)));
        attested.strength = strength;
        if (person) {
            attested.person = idOf(*person);
        }
    }

    record::Event& addEvent(const journal::Decoded& entry, const trust::Holder* writer, const Judgment& judgment)
    {
        record::Event& event = m_result.events.emplace_back();
        event.entry = hashOf(entry.position.hash);
        event.writer = writerOf(writer);
        event.claimed = timeOf(entry.context.time);
        event.standing = standingOf(judgment);
        return event;
    }

    void addActs()
    {
        for (auto& [sheet, actions] : m_actions) {
            SheetActions walked = walkOf(std::move(actions));
            for (Action& action : walked.inForce) {
                addAct(std::move(action.entry), Judgment{}, true);
            }
            for (Action& action : walked.beside) {
                addAct(std::move(action.entry), Judgment{}, false);
            }
        }
        std::sort(m_otherActs.begin(), m_otherActs.end(),
                  [](const JudgedAct& a, const JudgedAct& b) { return a.entry.position.hash < b.entry.position.hash; });
        for (JudgedAct& other : m_otherActs) {
            addAct(std::move(other.entry), other.judgment, false);
        }
    }

    void addAct(journal::Decoded entry, const Judgment& judgment, bool inForce)
    {
        const journal::Act& said = *journal::actOf(entry.payload);
        record::Event& event = addEvent(entry, m_authority.holder(entry.position.feed.device), judgment);
        event.sheet = idOf(said.sheet);
        record::Act act{hashOf(said.standsOn), hashOf(said.about), said.reason, inForce, {}};
        act.decision = std::visit(DecisionContent{}, entry.payload);
        event.what = std::move(act);
    }

    const trust::Authority& m_authority;
    trust::Authority::FeedView m_view; // of the feed at hand
    record::StudentEvents m_result;
    std::set<base::Id> m_imported;                     // sheets that the feed at hand imported
    std::map<keys::Id, std::vector<Action>> m_actions; // that count, by sheet
    std::vector<JudgedAct> m_otherActs;
};

/// The names of all students, of the devices that no other continues where there are several.
std::map<keys::Id, std::string> namesOf(const trust::Authority& authority)
{
    std::set<keys::VerifyKey> continued;
    for (const auto& [device, holder] : authority.holders()) {
        for (const journal::Position& earlier : holder.continues) {
            continued.insert(earlier.feed.device);
        }
    }
    std::map<keys::Id, std::string> names;
    for (const bool old : {false, true}) {
        for (const auto& [device, holder] : authority.holders()) {
            if (holder.role == journal::Role::Student && continued.contains(device) == old) {
                names.try_emplace(holder.person, holder.name);
            }
        }
    }
    return names;
}

std::string nameOf(const std::map<keys::Id, std::string>& names, const keys::Id& student)
{
    const auto found = names.find(student);
    return found == names.end() ? std::string() : found->second;
}

} // namespace

std::vector<StudentStream> studentStreams(const trust::Authority& authority, const Ledger& ledger)
{
    const keys::Id programStream = keys::programStream(ledger.program());
    std::map<keys::Id, StudentStream> streams;
    for (auto& [student, name] : namesOf(authority)) {
        streams[student] = {student, name, {}};
    }
    for (const auto& [id, feed] : ledger.feeds()) {
        if (id.stream != programStream) {
            StudentStream& stream = streams[id.stream];
            stream.student = id.stream;
            stream.feeds.push_back(&feed);
        }
    }
    std::vector<StudentStream> result;
    result.reserve(streams.size());
    for (auto& [student, stream] : streams) {
        result.push_back(std::move(stream));
    }
    return result;
}

record::StudentEvents studentEvents(const trust::Authority& authority, const StudentStream& stream)
{
    return StudentReader(authority, stream.student, stream.name).read(stream.feeds);
}

record::StudentEvents studentEvents(const trust::Authority& authority, const Ledger& ledger, const keys::Id& student)
{
    StudentStream stream{student, nameOf(namesOf(authority), student), {}};
    for (const auto& [id, feed] : ledger.feeds()) {
        if (id.stream == student) {
            stream.feeds.push_back(&feed);
        }
    }
    return studentEvents(authority, stream);
}

std::map<keys::Id, record::StudentEvents> allStudents(const trust::Authority& authority, const Ledger& ledger)
{
    std::map<keys::Id, record::StudentEvents> result;
    for (const StudentStream& stream : studentStreams(authority, ledger)) {
        record::StudentEvents events = studentEvents(authority, stream);
        if (!events.events.empty() || !stream.name.empty()) {
            result.emplace(stream.student, std::move(events));
        }
    }
    return result;
}

} // namespace peelpack::merge
