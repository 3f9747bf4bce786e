#include "platform/cli/record_check.h"

#include "core/base/text.h"
#include "core/catalogue/category.h"
#include "platform/cli/bytes_file.h"
#include "platform/cli/short_id.h"
#include "platform/evidence/did_key.h"

#include <algorithm>

namespace peelpack::cli {
namespace {

using evidence::CompletionRecord;

/// Proofs of a thousand sheets are one; a document in memory takes many times its bytes.
constexpr std::size_t mostEvidenceBytes = std::size_t{16} * 1024 * 1024;

std::string roleWords(const std::string& role)
{
    return role == "first" ? "first scrub" : role == "second" ? "second scrub" : role;
}

std::string recordText(const CompletionRecord& record)
{
    const std::string what =
        record.exception ? " is complete by exception under the requirement set " : " has met the requirement set ";
    std::string text = "  " + record.name + what + record.requirementSet + ", as the program's director decided on " +
                       record.date.iso() + ".\n  " + std::to_string(record.counted()) + " of " +
                       std::to_string(record.required()) + " cases counted, all of them " + record.level + ":\n";
    for (const evidence::TargetMet& target : record.targets) {
        text +=
            "    " + target.id + ": " + std::to_string(target.placed) + " of " + std::to_string(target.required) + "\n";
    }
    if (record.exception) {
        text += "  " + base::counted(record.required() - record.counted(), "case is short", "cases are short") +
                ". The director's reason: " + *record.exception + "\n";
    }
    return text + "  It stands for " + base::counted(record.sheets, "sheet", "sheets") +
           " and shows none. Issued by this program at " + record.issued + "; the signature fits.\n";
}

nlohmann::ordered_json recordJson(const CompletionRecord& record)
{
    nlohmann::ordered_json targets = nlohmann::ordered_json::array();
    for (const evidence::TargetMet& target : record.targets) {
        targets.push_back({{"target", target.id}, {"required", target.required}, {"placed", target.placed}});
    }
    return {{"id", record.id},
            {"name", record.name},
            {"requirementSet", record.requirementSet},
            {"decided", record.date.iso()},
            {"level", record.level},
            {"required", record.required()},
            {"counted", record.counted()},
            {"targets", std::move(targets)},
            {"exception", record.exception ? nlohmann::ordered_json(*record.exception) : nlohmann::ordered_json()},
            {"sheets", record.sheets}};
}

std::string sheetText(const evidence::ProvenSheet& sheet)
{
    std::string text = "  Proven: sheet " + shortId(sheet.sheet) + " of " + sheet.date.iso() +
                       (sheet.site.empty() ? "" : ", " + sheet.site) + ".\n";
    for (const evidence::ProvenCase& one : sheet.cases) {
        text += "    " + one.procedure + ": " + roleWords(one.role) + ", counts under " + one.category + " (" +
                one.target + ")\n";
    }
    std::vector<std::string> signers;
    for (const evidence::ProvenSignature& one : sheet.signatures) {
        signers.push_back(one.name + (one.credential.empty() ? "" : ", " + one.credential) + " (" + one.strength + ")");
    }
    const std::string signedBy = signers.empty() ? "Signed by nobody" : "Signed by " + base::listed(signers, "and");
    return text + "    " + (sheet.imported ? "Imported, not attested, from " + sheet.imported->source : signedBy) +
           "; initialed by " + sheet.initialedBy + " on " + sheet.initialed.iso() + ".\n";
}

/// Whether an entry of the journal says what a record says.
bool saysSame(const journal::Payload& payload, const CompletionRecord& record)
{
    if (record.exception) {
        return payload ==
               journal::Payload(journal::CompleteByException{record.requirementSet, record.setDigest, record.head,
                                                             record.required(), record.counted(), *record.exception});
    }
    return payload == journal::Payload(journal::Complete{record.requirementSet, record.setDigest, record.head});
}

/// An entry of that place and hash is in the journal.
bool holds(const merge::Ledger& journal, const journal::Position& position)
{
    const journal::Feed* feed = journal.feed(position.feed);
    return feed != nullptr && feed->find(position.seq, position.hash) != nullptr;
}

} // namespace

bool looksLikeJson(keys::ByteView bytes)
{
    const auto first = std::find_if(bytes.begin(), bytes.end(), [](std::uint8_t byte) {
        return byte != ' ' && byte != '\n' && byte != '\r' && byte != '\t';
    });
    return first != bytes.end() && (*first == '{' || *first == '[');
}

base::Result<evidence::Json> evidenceIn(const std::string& file, keys::ByteView bytes)
{
    if (bytes.size() > mostEvidenceBytes) {
        return base::Error{base::ErrorCode::BadInput, file + " is larger than any completion record."};
    }
    base::Result<evidence::Json> document =
        evidence::parseJson({reinterpret_cast<const char*>(bytes.data()), bytes.size()});
    if (!document) {
        return base::Error{document.error().code, file + ": " + document.error().sentence};
    }
    if (!evidence::isRecord(document.value()) && !evidence::isSheetProofs(document.value())) {
        return base::Error{base::ErrorCode::BadInput,
                           file + " is neither a completion record nor proofs of its sheets."};
    }
    return document;
}

base::Result<evidence::Json> readEvidence(const std::string& file)
{
    const base::Result<keys::Bytes> bytes = readBytes(file, mostEvidenceBytes);
    return bytes ? evidenceIn(file, bytes.value()) : bytes.error();
}

void RecordCheck::take(const std::string& file, evidence::Json document)
{
    if (evidence::isRecord(document)) {
        base::Result<CompletionRecord> record = evidence::verifyRecord(document, m_program);
        m_files.push_back({file, std::move(document), std::move(record), std::nullopt});
        return;
    }
    base::Result<evidence::SheetProofs> proofs = evidence::readSheetProofs(document);
    base::Result<CompletionRecord> record =
        proofs ? evidence::verifyRecord(proofs.value().recordDocument, m_program) : proofs.error();
    evidence::Json inner = proofs ? proofs.value().recordDocument : evidence::Json::object();
    m_files.push_back({file, std::move(inner), std::move(record), std::move(proofs)});
}

void RecordCheck::addSupersession(const File& file, Found& found) const
{
    const CompletionRecord& record = file.record.value();
    if (record.supersedes) {
        found.json["supersedes"] = record.supersedes->id;
        found.text += "  It supersedes the record " + record.supersedes->id + ".\n";
    }
    for (const File& other : m_files) {
        if (!other.record) {
            continue;
        }
        const CompletionRecord& theirs = other.record.value();
        if (record.supersedes && theirs.id == record.supersedes->id) {
            const bool same =
                evidence::recordDigest(other.document) == record.supersedes->digest && theirs.student == record.student;
            found.good = found.good && same;
            found.text += same ? "  That is " + other.name + ", which no longer stands.\n"
                               : "  " + other.name + " has that id, and is another record.\n";
        }
        if (theirs.supersedes && theirs.supersedes->id == record.id &&
            theirs.supersedes->digest == evidence::recordDigest(file.document)) {
            found.json["supersededBy"] = theirs.id;
            found.text += "  It is superseded by " + other.name + ": that one stands, and this no longer does.\n";
        }
    }
}

/// The decision that the record cites is in the journal, counts, and says the same about the same head.
bool RecordCheck::isDecided(const Journal& journal, const CompletionRecord& record)
{
    if (!holds(journal.ledger, record.entry) || !holds(journal.ledger, record.head)) {
        return false;
    }
    const journal::Feed& feed = *journal.ledger.feed(record.entry.feed);
    const journal::KeptEntry& kept = *feed.find(record.entry.seq, record.entry.hash);
    const journal::Decoded entry = journal::decode(record.entry.feed, record.entry.seq, kept);
    return saysSame(entry.payload, record) &&
           journal.authority.judge(entry).standing == trust::Judgment::Standing::Counts;
}

std::set<keys::Hash> RecordCheck::attestations(const Journal& journal, const keys::Id& student)
{
    std::set<keys::Hash> hashes;
    for (const auto& [id, feed] : journal.ledger.feeds()) {
        if (id.stream == student) {
            journal::eachEntry(feed, journal::ofKind({journal::Kind::Attestation}), [&](const journal::Decoded& entry) {
                if (journal.authority.judge(entry).standing == trust::Judgment::Standing::Counts) {
                    hashes.insert(entry.position.hash);
                }
            });
        }
    }
    return hashes;
}

void RecordCheck::addSheets(const File& file, const Journal* journal, Found& found)
{
    const CompletionRecord& record = file.record.value();
    const std::set<keys::Hash> signatures =
        journal == nullptr ? std::set<keys::Hash>() : attestations(*journal, record.student);
    found.json["proven"] = nlohmann::ordered_json::array();
    for (const evidence::SheetProof& proof : file.proofs->value().proofs) {
        if (!evidence::isProven(record, proof)) {
            found.text += "  Not proven: sheet " + shortId(proof.sheet.sheet) +
                          " is not among the sheets of this record, or was changed.\n";
            found.good = false;
            continue;
        }
        found.text += sheetText(proof.sheet);
        found.json["proven"].push_back(keys::hex(proof.sheet.sheet.view()));
        const std::vector<evidence::ProvenSignature>& named = proof.sheet.signatures;
        if (journal != nullptr && !std::all_of(named.begin(), named.end(), [&](const auto& signature) {
                return signatures.contains(signature.entry);
            })) {
            found.text += "    The journal given here does not hold these signatures.\n";
            found.good = false;
        }
    }
}

RecordCheck::Found RecordCheck::check(const File& file, const Journal* journal) const
{
    Found found;
    found.text =
        file.name + (file.proofs ? ": proofs of sheets, with their completion record.\n" : ": a completion record.\n");
    if (!file.record) {
        found.text += "  It does not verify. " + file.record.error().sentence + "\n";
        found.json = {{"file", file.name}, {"verified", false}, {"why", file.record.error().sentence}};
        found.good = false;
        return found;
    }
    const CompletionRecord& record = file.record.value();
    found.json = {{"file", file.name}, {"record", recordJson(record)}};
    found.text += recordText(record);
    addSupersession(file, found);
    if (journal != nullptr) {
        const bool decided = isDecided(*journal, record);
        found.good = found.good && decided;
        found.json["inJournal"] = decided;
        found.text += decided ? "  The journal holds the director's decision that it cites.\n"
                              : "  The journal given here does not hold the decision that it cites.\n";
    }
    if (file.proofs) {
        addSheets(file, journal, found);
    }
    found.json["verified"] = found.good;
    return found;
}

bool RecordCheck::report(Answer& answer, const merge::Ledger* journal) const
{
    std::optional<Journal> view;
    if (journal != nullptr) {
        view.emplace(Journal{*journal, journal->authority()});
    }
    bool good = true;
    answer.json["records"] = nlohmann::ordered_json::array();
    for (const File& file : m_files) {
        Found found = check(file, view ? &*view : nullptr);
        good = good && found.good;
        answer.text += found.text;
        answer.json["records"].push_back(std::move(found.json));
    }
    return good;
}

} // namespace peelpack::cli
