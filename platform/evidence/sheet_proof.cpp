#include "platform/evidence/sheet_proof.h"
#include "platform/evidence/did_key.h"

#include "platform/evidence/jcs.h"
#include "platform/evidence/members.h"
#include "platform/evidence/merkle.h"

#include <algorithm>

namespace peelpack::evidence {
namespace {

constexpr std::size_t mostSheets = 100'000;
constexpr std::size_t mostCasesOfSheet = 8;
constexpr std::size_t mostSignatures = 64;
constexpr std::size_t longestPath = 64;
constexpr std::size_t longestSource = 1600; // bytes: 400 characters of the journal

Json sheetJson(const ProvenSheet& sheet)
{
    Json cases = Json::array();
    for (const ProvenCase& one : sheet.cases) {
        cases.push_back(
            {{"procedure", one.procedure}, {"role", one.role}, {"category", one.category}, {"target", one.target}});
    }
    Json signatures = Json::array();
    for (const ProvenSignature& one : sheet.signatures) {
        signatures.push_back({{"name", one.name},
                              {"credential", one.credential},
                              {"strength", one.strength},
                              {"entry", keys::hex(one.entry.view())}});
    }
    Json json{{"sheet", keys::hex(sheet.sheet.view())},
              {"date", sheet.date.iso()},
              {"site", sheet.site},
              {"cases", std::move(cases)},
              {"signed", std::move(signatures)},
              {"initialed", {{"name", sheet.initialedBy}, {"date", sheet.initialed.iso()}}}};
    if (sheet.imported) {
        json["imported"] = {{"attested", false},
                            {"source", sheet.imported->source},
                            {"preceptor", sheet.imported->preceptor},
                            {"credential", sheet.imported->credential}};
    }
    return json;
}

ProvenSheet readSheet(Members& parent)
{
    Members members(parent.object("sheet"), "A sheet",
                    {"sheet", "date", "site", "cases", "signed", "imported", "initialed"});
    ProvenSheet sheet;
    sheet.sheet = members.bytes<keys::Id>("sheet");
    sheet.date = members.date("date");
    sheet.site = members.note("site");
    for (const Json& item : members.list("cases", 1, mostCasesOfSheet)) {
        Members one(item, "A case", {"procedure", "role", "category", "target"});
        sheet.cases.push_back({one.text("procedure"), one.text("role"), one.text("category"), one.text("target")});
        members.add(one);
    }
    for (const Json& item : members.list("signed", 0, mostSignatures)) {
        Members one(item, "A signature", {"name", "credential", "strength", "entry"});
        sheet.signatures.push_back(
            {one.text("name"), one.note("credential"), one.text("strength"), one.bytes<keys::Hash>("entry")});
        members.add(one);
    }
    if (members.has("imported")) {
        Members imported(members.object("imported"), "imported", {"attested", "source", "preceptor", "credential"});
        imported.exactly("attested", false);
        sheet.imported = {imported.text("source", longestSource), imported.note("preceptor"),
                          imported.note("credential")};
        members.add(imported);
        if (!sheet.signatures.empty()) {
            members.refuse("imported");
        }
    }
    Members initialed(members.object("initialed"), "initialed", {"name", "date"});
    sheet.initialedBy = initialed.text("name");
    sheet.initialed = initialed.date("date");
    members.add(initialed);
    parent.add(members);
    return sheet;
}

SheetProof readProof(const Json& item, Members& parent)
{
    Members members(item, "A proof", {"index", "salt", "sheet", "path"});
    SheetProof proof;
    proof.index = members.number("index", mostSheets);
    proof.salt = members.bytes<Salt>("salt");
    proof.sheet = readSheet(members);
    for (const Json& digest : members.list("path", 0, longestPath)) {
        proof.path.push_back(
            members.hex<Digest>(digest.is_string() ? digest.get<std::string>() : std::string(), "path"));
    }
    parent.add(members);
    return proof;
}

/// Of the salt, then the canonical form of what the leaf says. Empty when that is not I-JSON.
std::optional<Digest> digestOf(const Salt& salt, const ProvenSheet& sheet)
{
    const base::Result<std::string> text = canonical(sheetJson(sheet));
    if (!text) {
        return std::nullopt;
    }
    keys::Bytes leaf(salt.bytes.begin(), salt.bytes.end());
    keys::append(leaf, keys::bytesOf(text.value()));
    return leafDigest(leaf);
}

} // namespace

base::Result<SheetTree> plant(const std::vector<ProvenSheet>& sheets, keys::RandomSource& random)
{
    std::vector<std::pair<Digest, SheetProof>> leaves;
    for (const ProvenSheet& sheet : sheets) {
        SheetProof proof;
        random.fill(proof.salt.bytes);
        proof.sheet = sheet;
        const std::optional<Digest> digest = digestOf(proof.salt, sheet);
        if (!digest) {
            return base::Error{base::ErrorCode::BadValue, "A text on a sheet cannot stand in a record."};
        }
        leaves.emplace_back(*digest, std::move(proof));
    }
    std::sort(leaves.begin(), leaves.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<Digest> digests;
    digests.reserve(leaves.size());
    for (const auto& [digest, proof] : leaves) {
        digests.push_back(digest);
    }
    SheetTree tree{treeRoot(digests), {}};
    for (std::size_t i = 0; i < leaves.size(); ++i) {
        SheetProof& proof = tree.proofs.emplace_back(std::move(leaves[i].second));
        proof.index = static_cast<std::uint32_t>(i);
        proof.path = inclusionPath(digests, i);
    }
    return tree;
}

Json proofsDocument(const Json& record, std::span<const SheetProof> proofs)
{
    Json sheets = Json::array();
    for (const SheetProof& proof : proofs) {
        Json path = Json::array();
        for (const Digest& digest : proof.path) {
            path.push_back(keys::hex(digest.view()));
        }
        sheets.push_back({{"index", proof.index},
                          {"salt", keys::hex(proof.salt.view())},
                          {"sheet", sheetJson(proof.sheet)},
                          {"path", std::move(path)}});
    }
    return {{"type", sheetProofsType}, {"record", record}, {"sheets", std::move(sheets)}};
}

bool isSheetProofs(const Json& document)
{
    const auto type = document.is_object() ? document.find("type") : document.end();
    return document.is_object() && type != document.end() && *type == sheetProofsType;
}

base::Result<SheetProofs> readSheetProofs(const Json& document)
{
    Members members(document, "The file", {"type", "record", "sheets"});
    members.exactly("type", sheetProofsType);
    SheetProofs read{members.object("record"), {}};
    for (const Json& item : members.list("sheets", 1, mostSheets)) {
        read.proofs.push_back(readProof(item, members));
    }
    if (!members.fault().empty()) {
        return base::Error{base::ErrorCode::BadInput, members.fault()};
    }
    return read;
}

bool isProven(const CompletionRecord& record, const SheetProof& proof)
{
    const bool targetsKnown =
        std::all_of(proof.sheet.cases.begin(), proof.sheet.cases.end(), [&](const ProvenCase& one) {
            return std::any_of(record.targets.begin(), record.targets.end(),
                               [&](const TargetMet& target) { return target.id == one.target; });
        });
    const std::optional<Digest> leaf = digestOf(proof.salt, proof.sheet);
    return targetsKnown && leaf && isIncluded(record.sheetsRoot, record.sheets, proof.index, *leaf, proof.path);
}

namespace {

/// The key that a record names as its issuer's; empty when it names none.
std::optional<keys::VerifyKey> issuerOf(const Json& record)
{
    const auto issuer = record.is_object() ? record.find("issuer") : record.end();
    const bool named = record.is_object() && issuer != record.end() && issuer->is_string();
    return named ? keyOfDid(issuer->get<std::string>()) : std::nullopt;
}

} // namespace

base::Result<Json> proofOfOne(const Json& proofs, std::string_view digits)
{
    constexpr std::size_t leastDigits = 4;
    const base::Result<SheetProofs> read = readSheetProofs(proofs);
    if (!read) {
        return read.error();
    }
    std::vector<SheetProof> chosen;
    for (const SheetProof& proof : read.value().proofs) {
        if (keys::hex(proof.sheet.sheet.view()).starts_with(digits)) {
            chosen.push_back(proof);
        }
    }
    if (chosen.size() != 1 || digits.size() < leastDigits) {
        return base::Error{chosen.empty() ? base::ErrorCode::NotFound : base::ErrorCode::BadValue,
                           "Name one sheet by the first digits of its id, at least 4; \"peelpack check\" lists them."};
    }
    const Json& recordDocument = read.value().recordDocument;
    const std::optional<keys::VerifyKey> issuer = issuerOf(recordDocument);
    const auto record = issuer ? verifyRecord(recordDocument, *issuer) : base::Result<CompletionRecord>(base::Error{});
    if (!record || !isProven(record.value(), chosen.front())) {
        return base::Error{base::ErrorCode::BadInput, "It was changed; this sheet cannot be proved with it."};
    }
    return proofsDocument(recordDocument, chosen);
}

} // namespace peelpack::evidence
