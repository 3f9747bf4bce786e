#include "platform/session/completion.h"

#include "core/base/text.h"
#include "core/tally/tally.h"
#include "platform/files/requirement_json.h"
#include "platform/session/case_book.h"
#include "platform/session/program_rules.h"
#include "sync/keys/code.h"
#include "sync/keys/hash.h"
#include "sync/merge/record_content.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace peelpack::session {
namespace {

base::Error outside(const std::string& sentence)
{
    return {base::ErrorCode::BadValue, sentence};
}

/// The longest feed that is here of the student's.
std::optional<journal::Position> headOf(const Session& session, const keys::Id& student)
{
    std::optional<journal::Position> head;
    for (const auto& [id, feed] : session.ledger().feeds()) {
        const trust::Holder* holder = session.authority().holder(id.device);
        const bool theirs = id.stream == student && holder != nullptr && holder->role == journal::Role::Student &&
                            holder->person == student;
        if (theirs && feed.count() > 0 && (!head || feed.count() > head->seq + 1)) {
            head = journal::Position{id, feed.count() - 1, feed.head().hash};
        }
    }
    return head;
}

/// "2027-05-20T14:03:00Z"
std::string utcText(std::int64_t seconds)
{
    constexpr std::int64_t inDay = 86'400;
    constexpr std::int64_t inHour = 3'600;
    constexpr std::int64_t inMinute = 60;
    const std::int64_t ofDay = ((seconds % inDay) + inDay) % inDay;
    const auto twoDigits = [](std::int64_t value) { return (value < 10 ? "0" : "") + std::to_string(value); };
    const base::Date day = base::Date::fromDays(static_cast<std::int32_t>((seconds - ofDay) / inDay));
    return day.iso() + "T" + twoDigits(ofDay / inHour) + ":" + twoDigits(ofDay % inHour / inMinute) + ":" +
           twoDigits(ofDay % inMinute) + "Z";
}

evidence::ProvenSheet provenSheet(const record::SheetRecord& sheet)
{
    evidence::ProvenSheet proven;
    proven.sheet = idOf(sheet.id);
    proven.date = sheet.content.head.date;
    proven.site = sheet.content.head.site;
    for (const record::Signer* signer : sheet.contributors()) {
        evidence::ProvenSignature signature{signer->statement.name,
                                            signer->statement.credential,
                                            std::string(sheet::id(signer->statement.strength)),
                                            {}};
        signature.entry = *keys::Hash::from(signer->entry.bytes);
        proven.signatures.push_back(std::move(signature));
    }
    if (sheet.imported) {
        const record::Imported& said = sheet.imported->said;
        proven.imported = {said.source, said.preceptor, said.credential};
    }
    if (sheet.initial) {
        proven.initialedBy = sheet.initial->by.name;
        proven.initialed = sheet.initial->claimed.day();
    }
    return proven;
}

/// The sheets that have a seat in the best tally, with where their cases count.
std::vector<evidence::ProvenSheet> countedSheets(const record::StudentRecord& student, const sheet::SheetBook& book,
                                                 const requirement::RequirementSet& set,
                                                 const tally::StudentTally& tally)
{
    const record::SheetsByName byName = record::sheetsByName(student, record::shortNames(student));
    std::vector<evidence::ProvenSheet> sheets;
    const sheet::BookSheet* last = nullptr; // candidates of one sheet stand together
    for (std::size_t i = 0; i < tally.candidates.size(); ++i) {
        const tally::Candidate& candidate = tally.candidates[i];
        const tally::Seat& seat = tally.best.seats[i];
        if (!seat.counts()) {
            continue;
        }
        if (candidate.sheet != last) {
            last = candidate.sheet;
            sheets.push_back(provenSheet(*byName.find(candidate.sheet->id)->second));
        }
        const catalogue::Category category = catalogue::categoryAt(static_cast<std::size_t>(seat.category));
        sheets.back().cases.push_back({std::string(book.procedureText(candidate.procedure)),
                                       std::string(id(tally::countedOutcome(candidate, category))),
                                       std::string(id(category)),
                                       set.targets[static_cast<std::size_t>(seat.target)].id});
    }
    return sheets;
}

/// Whether the next entry of a feed counts as a director's: certified, neither ended nor past a fork.
bool wouldCount(const Session& session, const journal::FeedId& feed)
{
    const trust::Holder* holder = session.authority().holder(feed.device);
    return holder != nullptr && holder->role == journal::Role::Director &&
           session.authority().limit(feed) > session.ledger().next(feed).seq;
}

/// An entry of this director that counts and says exactly this.
std::optional<journal::Position> saidAlready(const Session& session, const journal::FeedId& feed,
                                             const journal::Payload& payload)
{
    std::optional<journal::Position> found;
    if (const journal::Feed* own = session.ledger().feed(feed)) {
        const auto wanted = journal::ofKind({journal::Kind::Complete, journal::Kind::CompleteByException});
        journal::eachTrunkEntry(*own, own->count(), wanted, [&](journal::Decoded&& entry) {
            if (entry.payload == payload &&
                session.authority().judge(entry).standing == trust::Judgment::Standing::Counts) {
                found = entry.position;
            }
        });
    }
    return found;
}

/// The set that the rules name, to the byte.
base::Result<requirement::RequirementSet> exactSet(const Session& session, const SetByName& named,
                                                   const std::string& setText)
{
    if (setText.empty()) {
        return setNamed(session, named);
    }
    if (keys::hash({}, {keys::bytesOf(setText)}) != named.digest) {
        return outside("The requirement set at hand is not the one in force as " + named.id +
                       ". Give its file with --set, or put the set in force again with \"program rules\"" +
                       (named.from ? " or \"program requirements\"." : "."));
    }
    return files::requirementSetFromJson(setText);
}

std::string noteOf(const keys::Id& student)
{
    return "record of " + keys::hex(student.view());
}

base::Result<bool> keepLastRecord(Session& session, const keys::Id& student, const std::string& id,
                                  const evidence::Json& document)
{
    const evidence::Digest digest = evidence::recordDigest(document);
    keys::Bytes note(digest.bytes.begin(), digest.bytes.end());
    keys::append(note, keys::bytesOf(id));
    return session.setNote(noteOf(student), note);
}

} // namespace

base::Result<CompletionState> completionState(const Session& session, const catalogue::Catalogue& catalogue,
                                              const keys::Id& student, const std::string& setText)
{
    const SetByName named = namedSet(session, student, today(session));
    if (!named.digest) {
        return base::Error{base::ErrorCode::NotFound, "No rules are in force."};
    }
    const std::optional<journal::Position> head = headOf(session, student);
    if (!head) {
        return base::Error{base::ErrorCode::NotFound, "Nothing of this student is here."};
    }
    const base::Result<requirement::RequirementSet> set = exactSet(session, named, setText);
    if (!set) {
        return set.error();
    }
    const record::StudentRecord record = session.recordOf(student);
    const base::Result<CaseBook> cases = caseBook(session, catalogue, record);
    if (!cases) {
        return cases.error();
    }
    CompletionState state{named.id, *named.digest, {}, {}, *head, set.value().required(), 0};
    for (const requirement::Target& target : set.value().targets) {
        state.targets.push_back({target.id, target.required, 0});
    }
    tally::Tallier tallier(set.value(), tally::Level::Initialed, tally::everyStrength);
    const tally::StudentTally tally = cases.value().tally(tallier, 0, {true, false, false});
    for (std::size_t i = 0; i < state.targets.size(); ++i) {
        state.targets[i].placed = tally.best.targets[i].placed;
    }
    state.counted = static_cast<std::uint32_t>(tally.best.value.counted);
    state.sheets = countedSheets(record, cases.value().reading.book, set.value(), tally);
    return state;
}

std::vector<CompletionDecision> decisionsAbout(const Session& session, const keys::Id& student)
{
    std::vector<std::pair<std::uint32_t, CompletionDecision>> found; // with the epoch of the director's certificate
    const auto wanted = journal::ofKind({journal::Kind::Complete, journal::Kind::CompleteByException});
    for (const auto& [id, feed] : session.ledger().feeds()) {
        const trust::Holder* writer = session.authority().holder(id.device);
        if (id.stream != student || writer == nullptr) {
            continue;
        }
        journal::eachEntry(feed, wanted, [&](journal::Decoded&& entry) {
            if (session.authority().judge(entry).standing != trust::Judgment::Standing::Counts) {
                return;
            }
            CompletionDecision decision{entry.position, entry.context.time, writer->name, {}, {}, {}, 0, 0, {}};
            if (const auto* plain = std::get_if<journal::Complete>(&entry.payload)) {
                decision.requirementSet = plain->requirementSet;
                decision.setDigest = plain->setDigest;
                decision.head = plain->studentHead;
            } else if (const auto* less = std::get_if<journal::CompleteByException>(&entry.payload)) {
                decision.requirementSet = less->requirementSet;
                decision.setDigest = less->setDigest;
                decision.head = less->studentHead;
                decision.required = less->required;
                decision.counted = less->counted;
                decision.exception = less->reason;
            }
            found.emplace_back(writer->epoch, std::move(decision));
        });
    }
    std::sort(found.begin(), found.end(), [](const auto& a, const auto& b) {
        return std::tie(a.first, a.second.entry.feed, a.second.entry.seq) <
               std::tie(b.first, b.second.entry.feed, b.second.entry.seq);
    });
    std::vector<CompletionDecision> decisions;
    decisions.reserve(found.size());
    for (auto& [epoch, decision] : found) {
        decisions.push_back(std::move(decision));
    }
    return decisions;
}

bool isAbout(const CompletionDecision& decision, const CompletionState& state)
{
    return decision.requirementSet == state.requirementSet && decision.setDigest == state.setDigest &&
           decision.head == state.head && decision.exception.empty() == state.complete();
}

base::Result<keys::SigningKey> programKeyFromCode(const keys::VerifyKey& program, std::string_view typed)
{
    const base::Result<keys::Secret> code = keys::codeFromText(keys::CodeSort::Program, typed);
    if (!code) {
        return code.error();
    }
    base::Result<keys::SigningKey> key = keys::programKey(code.value().view());
    if (key && key.value().verifyKey() != program) {
        return base::Error{base::ErrorCode::BadInput, "That is not the code of this program."};
    }
    return key;
}

std::optional<evidence::Superseded> lastRecordOf(const Session& session, const keys::Id& student)
{
    const std::optional<keys::Bytes> note = session.note(noteOf(student));
    if (!note || note->size() <= evidence::Digest::size) {
        return std::nullopt;
    }
    const auto digest = evidence::Digest::from(keys::ByteView(*note).first(evidence::Digest::size));
    return evidence::Superseded{{note->begin() + evidence::Digest::size, note->end()}, digest.value()};
}

base::Result<journal::Position> decideCompletion(Session& session, const CompletionState& state,
                                                 const std::string& exception)
{
    if (session.role() != journal::Role::Director) {
        return outside("Only the director decides who has met the requirements.");
    }
    if (!exception.empty() && base::trimmed(exception).empty()) {
        return outside("An exception needs its reason; it stands in the journal and in the record for good.");
    }
    if (state.complete() != exception.empty()) {
        return outside(state.complete() ? "Nothing is short: leave the exception out."
                                        : "Cases are short: a completion needs an exception with its reason.");
    }
    const keys::Id& student = state.head.feed.stream;
    const journal::Payload payload =
        exception.empty()
            ? journal::Payload(journal::Complete{state.requirementSet, state.setDigest, state.head})
            : journal::Payload(journal::CompleteByException{state.requirementSet, state.setDigest, state.head,
                                                            state.required, state.counted, exception});
    const base::Result<journal::FeedId> feed = session.ownFeed(student);
    if (!feed) {
        return feed.error();
    }
    if (!wouldCount(session, feed.value())) {
        return outside(
            "This device's decisions do not count any more: another is the director's. Take in a colleague's "
            "parcel, or see \"program show\".");
    }
    if (const auto before = saidAlready(session, feed.value(), payload)) {
        return *before;
    }
    return session.append(student, payload);
}

base::Result<MadeRecord> makeRecord(Session& session, const keys::SigningKey& programKey, const Person& student,
                                    const CompletionState& state, const std::string& exception,
                                    const std::optional<evidence::Superseded>& given)
{
    if (programKey.verifyKey() != session.program()) {
        return outside("That is not the code of this program.");
    }
    const std::optional<evidence::Superseded> last = lastRecordOf(session, student.id);
    if (given && last && *given != *last) {
        return outside(
            "A later record of this student was made with this vault; it is superseded without being named.");
    }
    const base::Result<evidence::SheetTree> tree = evidence::plant(state.sheets, session.random());
    if (!tree) {
        return tree.error();
    }
    const base::Result<journal::Position> entry = decideCompletion(session, state, exception);
    if (!entry) {
        return entry.error();
    }
    const journal::Time now = session.now();
    evidence::CompletionRecord record;
    record.id = evidence::randomUrn(session.random().id());
    record.program = session.program();
    record.student = student.id;
    record.name = student.name;
    record.requirementSet = state.requirementSet;
    record.setDigest = state.setDigest;
    record.level = std::string(tally::id(tally::Level::Initialed));
    record.targets = state.targets;
    record.date = merge::timeOf(now).day();
    record.issued = utcText(now.seconds);
    record.exception = exception.empty() ? std::nullopt : std::optional(exception);
    record.sheets = static_cast<std::uint32_t>(state.sheets.size());
    record.sheetsRoot = tree.value().root;
    record.head = state.head;
    record.entry = entry.value();
    record.supersedes = last ? last : given;
    base::Result<evidence::Json> document = evidence::issue(record, programKey);
    if (!document) {
        return document.error();
    }
    if (const base::Result<bool> kept = keepLastRecord(session, student.id, record.id, document.value()); !kept) {
        return kept.error();
    }
    evidence::Json proofs = evidence::proofsDocument(document.value(), tree.value().proofs);
    return MadeRecord{std::move(document).value(), std::move(proofs)};
}

} // namespace peelpack::session
