#include "platform/cli/commands.h"
#include "sync/merge/contents.h"

#include "core/base/text.h"
#include "platform/cli/answer.h"
#include "platform/cli/bytes_file.h"
#include "platform/cli/program_option.h"
#include "platform/cli/record_check.h"
#include "platform/cli/short_id.h"
#include "platform/cli/vault_access.h"
#include "platform/cli/vault_rows.h"
#include "platform/session/refusal.h"
#include "sync/parcel/parcel.h"
#include "sync/parcel/volume.h"

#include <map>
#include <optional>
#include <span>

namespace peelpack::cli {
namespace {

/// What is verified from nothing: the batches, for a vault what was damaged in it, and evidence for outsiders.
struct Material {
    keys::VerifyKey program;
    std::vector<keys::Bytes> volumes;
    std::vector<std::string> damage;
    RecordCheck records;
    bool vault = false;

    [[nodiscard]] bool hasJournal() const { return vault || !volumes.empty(); }
};

base::Result<bool> readFiles(const Arguments& arguments, std::span<const std::string> names, Material& material)
{
    std::unique_ptr<session::Session> session;
    for (const std::string& file : names) {
        base::Result<keys::Bytes> bytes = readBytes(file, parcel::mostParcelBytes);
        if (!bytes) {
            return bytes.error();
        }
        if (looksLikeJson(bytes.value())) {
            base::Result<evidence::Json> document = evidenceIn(file, bytes.value());
            if (!document) {
                return document.error();
            }
            material.records.take(file, std::move(document).value());
            continue;
        }
        if (!parcel::isParcel(bytes.value())) {
            material.volumes.push_back(std::move(bytes).value());
            continue;
        }
        if (!session) {
            base::Result<OpenedVault> opened = openVault(arguments);
            if (!opened) {
                return base::Error{opened.error().code,
                                   "A parcel is sealed; it is checked with the vault that it is for. " +
                                       opened.error().sentence};
            }
            session = std::move(std::move(opened).value().session);
        }
        const base::Result<const keys::DeviceKey*> device = session->device();
        if (!device) {
            return device.error();
        }
        auto volume = parcel::open(bytes.value(), device.value()->opening);
        if (!volume) {
            return base::Error{base::ErrorCode::BadInput,
                               file + ": " + std::string(journal::sentence(volume.reason()))};
        }
        material.volumes.push_back(std::move(volume).value());
    }
    return true;
}

base::Result<bool> readVault(const Arguments& arguments, Material& material)
{
    const base::Result<OpenedVault> opened = openVault(arguments, arguments.operands.front());
    if (!opened) {
        return opened.error();
    }
    const session::Session& session = *opened.value().session;
    material.vault = true;
    material.damage = session.damage();
    auto volumes = parcel::writeVolumes(session.program(), merge::contents(session.ledger()));
    if (!volumes) {
        return session::refused(volumes.reason());
    }
    material.volumes = std::move(volumes).value();
    return true;
}

/// A director's decision that a student has met the requirements.
struct Completion {
    keys::Id student;
    std::string requirementSet;
    std::string exception; ///< "118 of 120; reason"; empty: nothing was short
};

std::optional<Completion> completionIn(const journal::Decoded& entry)
{
    const keys::Id& student = entry.position.feed.stream;
    if (const auto* plain = std::get_if<journal::Complete>(&entry.payload)) {
        return Completion{student, plain->requirementSet, {}};
    }
    if (const auto* exception = std::get_if<journal::CompleteByException>(&entry.payload)) {
        return Completion{student, exception->requirementSet,
                          std::to_string(exception->counted) + " of " + std::to_string(exception->required) + "; " +
                              exception->reason};
    }
    return std::nullopt;
}

struct Counts {
    std::size_t entries = 0;
    std::size_t aside = 0;
    std::size_t refused = 0;
    std::map<std::string, std::size_t> attestations; ///< by strength
    std::map<std::string, std::size_t> whyNot;       ///< of entries that are aside or refused
    std::vector<Completion> completions;             ///< that count
};

Counts countEntries(const trust::Authority& authority, const merge::Ledger& ledger)
{
    Counts counts;
    for (const auto& [id, feed] : ledger.feeds()) {
        journal::eachEntry(feed, nullptr, [&](const journal::Decoded& entry) {
            ++counts.entries;
            const trust::Judgment judgment = authority.judge(entry);
            if (judgment.standing != trust::Judgment::Standing::Counts) {
                ++(judgment.standing == trust::Judgment::Standing::Aside ? counts.aside : counts.refused);
                ++counts.whyNot[std::string(journal::sentence(judgment.reason))];
            } else if (std::optional<Completion> completion = completionIn(entry)) {
                counts.completions.push_back(std::move(*completion));
            }
            if (const auto* attestation = std::get_if<journal::Attestation>(&entry.payload)) {
                const auto statement = journal::decodeStatement(attestation->statement);
                const sheet::Strength strength =
                    statement ? authority.strengthOf(statement.value()) : sheet::Strength::None;
                const std::string_view name = sheet::id(strength);
                ++counts.attestations[name.empty() ? "unknown signer" : std::string(name)];
            }
        });
    }
    return counts;
}

/// The journal as verified, and what was found in it.
struct Verified {
    Answer answer;
    merge::Ledger ledger;
};

Verified verifyJournal(const Material& material)
{
    Answer answer;
    std::size_t faults = 0;
    const auto fault = [&](const std::string& sentence) {
        answer.text += sentence + "\n";
        answer.json["faults"].push_back(sentence);
        ++faults;
    };
    answer.json["program"] = keys::hex(material.program.view());
    answer.json["faults"] = nlohmann::ordered_json::array();
    for (const std::string& damage : material.damage) {
        fault(damage);
    }
    std::vector<merge::Batch> batches;
    std::map<std::uint16_t, std::size_t> numbers;
    std::uint16_t of = 0;
    for (const keys::Bytes& bytes : material.volumes) {
        auto volume = parcel::readVolume(material.program, bytes);
        if (!volume) {
            fault("A volume cannot be used. " + std::string(journal::sentence(volume.reason())));
            continue;
        }
        ++numbers[volume.value().number];
        of = std::max(of, volume.value().of);
        batches.push_back(std::move(volume).value().batch);
    }
    for (std::uint16_t number = 1; number <= of; ++number) {
        if (!numbers.contains(number)) {
            fault("Volume " + std::to_string(number) + " of " + std::to_string(of) + " is missing.");
        }
    }
    merge::TakenAll taken = merge::takeAll(merge::Ledger(material.program), batches);
    for (const auto& [batch, reason] : taken.unusable) {
        fault("A volume cannot be used. " + std::string(journal::sentence(reason)));
    }
    std::vector<merge::StatedHead> heads;
    for (std::size_t i = 0; i < batches.size(); ++i) {
        heads.insert(heads.end(), batches[i].heads.begin(), batches[i].heads.end());
        for (const merge::Finding& finding : taken.reports[i].findings) {
            if (finding.verdict == journal::Verdict::Refused || finding.verdict == journal::Verdict::Gap) {
                fault("Entry " + std::to_string(finding.seq) + " of device " +
                      keys::hex(finding.feed.device.view()).substr(0, 8) + ": " +
                      std::string(journal::sentence(finding.reason)));
            }
        }
    }
    const trust::Authority authority = taken.ledger.authority();
    for (const merge::StatedHead& head : heads) {
        const journal::Feed* feed = taken.ledger.feed(head.feed);
        if (feed == nullptr || !feed->holdsAny(head.count - 1)) {
            fault("A record ends before entry " + std::to_string(head.count - 1) +
                  ", which its own device signed: cut off.");
        }
    }
    for (const trust::ReceiptRecord& receipt : authority.receipts()) {
        const journal::Position& covered = receipt.covered;
        const journal::Feed* feed = taken.ledger.feed(covered.feed);
        if (feed == nullptr || feed->find(covered.seq, covered.hash) == nullptr) {
            fault("A receipt names entry " + std::to_string(covered.seq) + " of device " +
                  keys::hex(covered.feed.device.view()).substr(0, 8) +
                  (feed == nullptr || !feed->holdsAny(covered.seq) ? ", which is not here: cut off."
                                                                   : ", and another stands at its place."));
        }
    }
    answer.json["forks"] = nlohmann::ordered_json::array();
    std::size_t forks = 0;
    for (const auto& [id, feed] : taken.ledger.feeds()) {
        for (const journal::ForkEvidence& evidence : feed.evidence()) {
            ++forks;
            answer.json["forks"].push_back({{"device", keys::hex(id.device.view())},
                                            {"entry", evidence.seq},
                                            {"evidence", keys::hex(journal::toBytes(evidence))}});
            answer.text += "The record of device " + keys::hex(id.device.view()).substr(0, 8) + " split at entry " +
                           std::to_string(evidence.seq) + "; both versions are here.\n";
        }
    }
    const Counts counts = countEntries(authority, taken.ledger);
    answer.json["entries"] = counts.entries;
    answer.json["aside"] = counts.aside;
    answer.json["refused"] = counts.refused;
    answer.json["attestations"] = counts.attestations;
    answer.json["receipts"] = authority.receipts().size();
    answer.json["certificates"] = taken.ledger.certificates().size();
    answer.json["feeds"] = taken.ledger.feeds().size();
    for (const auto& [why, count] : counts.whyNot) {
        answer.text += base::counted(count, "entry does", "entries do") + " not count: " + why + "\n";
    }
    answer.text += base::counted(counts.entries, "entry", "entries") + " of " +
                   base::counted(taken.ledger.feeds().size(), "record", "records") + ", " +
                   base::counted(taken.ledger.certificates().size(), "certificate", "certificates") + ", " +
                   base::counted(authority.receipts().size(), "receipt", "receipts") + ", " +
                   base::counted(forks, "split", "splits") + ".\n";
    for (const auto& [strength, count] : counts.attestations) {
        answer.text += "  signed (" + strength + "): " + std::to_string(count) + "\n";
    }
    answer.json["completions"] = nlohmann::ordered_json::array();
    for (const Completion& completion : counts.completions) {
        answer.json["completions"].push_back({{"student", keys::hex(completion.student.view())},
                                              {"requirementSet", completion.requirementSet},
                                              {"exception", completion.exception}});
        answer.text += "  completed under " + completion.requirementSet + ": student " + shortId(completion.student) +
                       (completion.exception.empty() ? "" : ", by exception (" + completion.exception + ")") + "\n";
    }
    answer.json["verified"] = faults == 0;
    answer.text += faults == 0 ? "Everything verifies.\n" : base::counted(faults, "fault", "faults") + ".\n";
    answer.code = faults == 0 ? Done : AnswerIsNo;
    return {std::move(answer), std::move(taken.ledger)};
}

base::Result<Answer> check(const Arguments& arguments)
{
    const base::Result<keys::VerifyKey> program = programGiven(arguments);
    if (!program) {
        return program.error();
    }
    Material material{program.value(), {}, {}, RecordCheck(program.value()), false};
    std::span<const std::string> names = arguments.operands;
    if (isVaultFile(names.front())) {
        if (const base::Result<bool> read = readVault(arguments, material); !read) {
            return read.error();
        }
        names = names.subspan(1);
    }
    if (const base::Result<bool> read = readFiles(arguments, names, material); !read) {
        return read.error();
    }
    Answer answer;
    std::optional<merge::Ledger> journal;
    if (material.hasJournal()) {
        auto [found, ledger] = verifyJournal(material);
        answer = std::move(found);
        journal = std::move(ledger);
    } else {
        answer.json["program"] = keys::hex(material.program.view());
    }
    if (!material.records.empty() && !material.records.report(answer, journal ? &*journal : nullptr)) {
        answer.code = AnswerIsNo;
    }
    answer.json["verified"] = answer.code == Done;
    return answer;
}

} // namespace

Command checkCommand()
{
    return {
        {"check",
         "Verify a vault, a parcel, the volumes of an export, completion records or proofs of their sheets from "
         "nothing, with only the program's id.",
         {"FILE..."},
         withVaultOptions({programOption()}),
         "peelpack check spring.export --program 55c5df15...\n  exit 0: everything verifies; 1: something does not\n"
         "  with a record beside the export also: whether the journal holds the decision that it cites"},
        [](const Arguments& arguments) { return give(arguments, check(arguments)); }};
}

} // namespace peelpack::cli
