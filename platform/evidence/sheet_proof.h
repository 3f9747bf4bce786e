#pragma once

#include "platform/evidence/completion_record.h"
#include "sync/keys/random.h"

#include <array>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// One leaf of a completion record's tree is one sheet with a counted case. What a leaf says, its salt and its path
/// stand in a file of their own, which the student keeps: each sheet can be shown to an outsider and proven to be among
/// those of the record, without showing another. The salt is random and shown only with its sheet, so that nobody can
/// try out what the hidden sheets say; leaves stand in the order of their digests, so that a place says nothing either.
namespace peelpack::evidence {

inline constexpr const char* sheetProofsType = "SheetProofs";
inline constexpr std::size_t saltBytes = 16;
using Salt = keys::FixedBytes<saltBytes, struct SaltTag>;

/// A counted case of a sheet: what was done, in which role and where it counts. Ids as in files.
struct ProvenCase {
    std::string procedure;
    std::string role;     ///< "first", "second"
    std::string category; ///< "general", ...
    std::string target;   ///< of the requirement set
    bool operator==(const ProvenCase&) const = default;
};

/// A preceptor's signature over marks of the sheet.
struct ProvenSignature {
    std::string name;
    std::string credential; ///< may be empty
    std::string strength;   ///< "own-phone", "card", ...
    keys::Hash entry;       ///< in the student's journal
    bool operator==(const ProvenSignature&) const = default;
};

/// Where a sheet comes from that nobody attested: an earlier paper log.
struct ProvenImport {
    std::string source;
    std::string preceptor;  ///< as written there; may be empty
    std::string credential; ///< may be empty
    bool operator==(const ProvenImport&) const = default;
};

/// What a leaf says. No surgeon, room, time of day, mark or feedback: nothing that a completion does not need.
struct ProvenSheet {
    keys::Id sheet;
    base::Date date;
    std::string site;              ///< may be empty
    std::vector<ProvenCase> cases; ///< at least one
    std::vector<ProvenSignature> signatures;
    std::optional<ProvenImport> imported; ///< then there are no signatures
    std::string initialedBy;
    base::Date initialed;
    bool operator==(const ProvenSheet&) const = default;
};

/// A sheet with what proves that it is a leaf.
struct SheetProof {
    std::uint32_t index = 0; ///< among the leaves
    Salt salt;
    ProvenSheet sheet;
    std::vector<Digest> path;
    bool operator==(const SheetProof&) const = default;
};

/// The tree over sheets, each with a salt of its own.
struct SheetTree {
    Digest root;
    std::vector<SheetProof> proofs; ///< by index
};
/// BadValue: a text is not well formed.
base::Result<SheetTree> plant(const std::vector<ProvenSheet>& sheets, keys::RandomSource& random);

/// A file of proofs, with the record that they belong to, so that it can be verified by itself.
Json proofsDocument(const Json& record, std::span<const SheetProof> proofs);
bool isSheetProofs(const Json& document);

struct SheetProofs {
    Json recordDocument; ///< not verified yet
    std::vector<SheetProof> proofs;
};
/// From a document that may be hostile. BadInput: it is none of this version.
base::Result<SheetProofs> readSheetProofs(const Json& document);
/// Whether the sheet is among those of the record, and counts under targets that the record names.
[[nodiscard]] bool isProven(const CompletionRecord& record, const SheetProof& proof);

/// The proof of one sheet out of a file of proofs, with the record and no other sheet. `digits`: the first of the
/// sheet's id, at least 4. NotFound, BadValue: they name no sheet, or several. BadInput: no file of proofs, or one that
/// was changed.
base::Result<Json> proofOfOne(const Json& proofs, std::string_view digits);

} // namespace peelpack::evidence
