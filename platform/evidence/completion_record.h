#pragma once

#include "core/base/date.h"
#include "platform/evidence/digest.h"
#include "platform/evidence/json.h"
#include "sync/journal/feed_id.h"
#include "sync/keys/sign.h"

#include <optional>
#include <string>
#include <vector>

/// The completion record: what the program says, for outsiders, about a student who has met the requirements. A W3C
/// Verifiable Credential (Data Model 2.0) of the type CompletionRecord, issued by the did:key of the program key, with
/// an eddsa-jcs-2022 proof; whoever knows the program's id can verify it off line, with any software for those
/// standards.
///
/// Its terms are in the vocabulary `urn:uuid:5d0c6a1e-8f0b-4f0e-9b7e-2c61a4d0f3b8#`. A random UUID is nobody else's and
/// needs no registry, and nothing can be fetched from it: a verifier off line sees as much as one on line. A name under
/// a domain would be an owner's to change.
///
/// It goes with an entry of the journal: every record cites the director's entry that says the same (kind 38, or 39
/// with an exception) and, as that entry does, the head of the student's feed on which it was decided. The journal does
/// not name the record; a director can write it again from the same entry.
namespace peelpack::evidence {

inline constexpr const char* recordType = "CompletionRecord";

/// One line of the requirement set, and how much of it was met.
struct TargetMet {
    std::string id;
    std::uint32_t required = 0;
    std::uint32_t placed = 0; ///< at most `required`
    bool operator==(const TargetMet&) const = default;
};

/// The record that this one replaces.
struct Superseded {
    std::string id; ///< its urn
    Digest digest;  ///< of its canonical form with proof, recordDigest()
    bool operator==(const Superseded&) const = default;
};

struct CompletionRecord {
    std::string id;          ///< "urn:uuid:", random
    keys::VerifyKey program; ///< that issued it
    keys::Id student;        ///< person id; the stream of `head`
    std::string name;        ///< as granted
    std::string requirementSet;
    keys::Hash setDigest;                 ///< BLAKE2b-256 of the set's file, as in the policy in force
    std::string level;                    ///< "initialed": the only one that supports a completion
    std::vector<TargetMet> targets;       ///< as in the set, at least one
    base::Date date;                      ///< where it was decided
    std::string issued;                   ///< "2027-05-20T14:03:00Z"
    std::optional<std::string> exception; ///< the director's reason; set exactly when something is short
    std::uint32_t sheets = 0;             ///< leaves of the tree: the sheets with a counted case
    Digest sheetsRoot;
    journal::Position head;  ///< of the student's feed
    journal::Position entry; ///< of the director
    std::optional<Superseded> supersedes;

    [[nodiscard]] std::uint32_t required() const;
    [[nodiscard]] std::uint32_t counted() const;
    bool operator==(const CompletionRecord&) const = default;
};

/// As a document, signed. BadValue: the record contradicts itself, or the key is not the program's.
base::Result<Json> issue(const CompletionRecord& record, const keys::SigningKey& programKey);

/// Whether a document says that it is a completion record.
bool isRecord(const Json& document);
/// The record in a document that may be hostile: form, sense, proof, and that this program signed it. BadInput: it is
/// not a record of this version. BadValue: it is one, and does not verify.
base::Result<CompletionRecord> verifyRecord(const Json& document, const keys::VerifyKey& program);
/// By which a later record names it: SHA-256 of the canonical form, with proof. The document must be I-JSON.
Digest recordDigest(const Json& document);

/// "urn:uuid:..." of 16 random bytes (RFC 9562, version 4).
std::string randomUrn(const keys::Id& random);
/// The student's urn: the person id, which is random, with the bits of RFC 9562 version 8 in it; the same in every
/// record of a person.
std::string urnOf(const keys::Id& person);

} // namespace peelpack::evidence
