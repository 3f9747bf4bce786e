#include "platform/evidence/did_key.h"
#include "platform/evidence/jcs.h"
#include "platform/evidence/multibase.h"
#include "platform/evidence/proof.h"
#include "platform/evidence/sheet_proof.h"
#include "tests/support/catch.h"
#include "tests/sync/support/world.h"

namespace peelpack::evidence {
namespace {

using test::idOf;

const keys::SigningKey& programKey()
{
    static const keys::SigningKey key = test::signerOf(0x77);
    return key;
}

ProvenSheet sheetNumber(std::uint8_t number)
{
    return {idOf(number),
            *base::Date::fromIso("2027-03-12"),
            "North Campus",
            {{"Open appendectomy", "first", "general", "first-general"}},
            {{"Invented Preceptor", "CST", "card", {}}},
            std::nullopt,
            "Invented Instructor",
            *base::Date::fromIso("2027-03-14")};
}

struct Made {
    CompletionRecord record;
    std::vector<SheetProof> proofs;
    Json document;
};

CompletionRecord recordOver(const SheetTree& tree)
{
    CompletionRecord record;
    record.id = randomUrn(idOf(0xA1));
    record.program = programKey().verifyKey();
    record.student = idOf(0x30);
    record.name = "Invented Student";
    record.requirementSet = "small";
    record.setDigest.bytes.fill(7);
    record.level = "initialed";
    record.targets = {{"first-general", 3, 3}, {"second-general", 2, 2}};
    record.date = *base::Date::fromIso("2027-05-20");
    record.issued = "2027-05-20T14:03:00Z";
    record.sheets = static_cast<std::uint32_t>(tree.proofs.size());
    record.sheetsRoot = tree.root;
    record.head = {{test::deviceOf(0x31).signing.verifyKey(), record.student}, 40, {}};
    record.entry = {{test::deviceOf(0x11).signing.verifyKey(), record.student}, 2, {}};
    return record;
}

Made make()
{
    test::SeededRandom random(9);
    std::vector<ProvenSheet> sheets;
    for (std::uint8_t i = 1; i <= 5; ++i) {
        sheets.push_back(sheetNumber(i));
    }
    const auto tree = plant(sheets, random);
    REQUIRE(tree.ok());
    const CompletionRecord record = recordOver(tree.value());
    auto document = issue(record, programKey());
    REQUIRE(document.ok());
    return {record, tree.value().proofs, std::move(document).value()};
}

bool verifies(const Json& document)
{
    return verifyRecord(document, programKey().verifyKey()).ok();
}

/// The document changed and signed again by the program key, so that only its sense is left to notice it.
bool verifiesSignedAgain(Json document)
{
    document.erase("proof");
    const auto again = withProof(document, document.value("validFrom", ""), programKey());
    return again && verifies(again.value());
}

/// A flattened document with the last letter or the number at a place exchanged.
Json changedAt(Json flat, const std::string& place)
{
    Json& value = flat[place];
    if (value.is_string()) {
        std::string text = value.get<std::string>();
        text.back() = text.back() == '1' ? '2' : '1';
        value = text;
    } else {
        value = value.get<std::uint32_t>() + 1;
    }
    return flat;
}

} // namespace

TEST_CASE("A record is a credential of the W3C's data model 2.0 that reads back as it was", "[record]")
{
    const Made made = make();
    // W3C Verifiable Credentials Data Model 2.0, sections 4.3 to 4.9.
    CHECK(made.document.at("@context").at(0) == "https://www.w3.org/ns/credentials/v2");
    CHECK(made.document.at("type").at(0) == "VerifiableCredential");
    CHECK(made.document.at("issuer") == didOf(programKey().verifyKey()));
    CHECK(made.document.at("credentialSubject").at("id") == urnOf(made.record.student));
    CHECK(isDateTime(made.document.at("validFrom").get<std::string>()));
    CHECK(urnOf(idOf(0xFF)) == "urn:uuid:ffffffff-ffff-8fff-bfff-ffffffffffff"); // RFC 9562 sections 4.1, 5.8
    CHECK(randomUrn(idOf(0x00)) == "urn:uuid:00000000-0000-4000-8000-000000000000");
    const auto read = verifyRecord(made.document, programKey().verifyKey());
    REQUIRE(read.ok());
    CHECK(read.value() == made.record);
    const auto other = verifyRecord(made.document, test::signerOf(0x78).verifyKey());
    REQUIRE_FALSE(other.ok());
    CHECK(other.error().code == base::ErrorCode::BadValue);
}

TEST_CASE("Every member of a record that is changed, or taken away, is noticed", "[record]")
{
    const Made made = make();
    const Json flat = made.document.flatten();
    std::size_t tried = 0;
    for (const auto& [place, value] : flat.items()) {
        INFO(place);
        const Json changed = changedAt(flat, place);
        CHECK_FALSE(verifies(changed.unflatten()));
        Json without = flat;
        without.erase(place);
        CHECK_FALSE(verifies(without.unflatten()));
        ++tried;
    }
    CHECK(tried == 39);
}

TEST_CASE("A record whose parts contradict one another is refused although the program key signed it", "[record]")
{
    const Json good = make().document;
    REQUIRE(verifiesSignedAgain(good));
    const auto changed = [&](const char* pointer, const Json& value) {
        Json document = good;
        document[Json::json_pointer(pointer)] = value;
        return verifiesSignedAgain(document);
    };
    CHECK_FALSE(changed("/credentialSubject/counted", 4));
    CHECK_FALSE(changed("/credentialSubject/required", 6));
    CHECK_FALSE(changed("/credentialSubject/level", "attested"));
    CHECK_FALSE(changed("/credentialSubject/targets/0/placed", 4));
    CHECK_FALSE(changed("/credentialSubject/targets/1/target", "first-general"));
    CHECK_FALSE(changed("/credentialSubject/exception", {{"reason", "Nothing is short."}}));
    CHECK_FALSE(changed("/credentialSubject/sheets/count", 6));
    CHECK_FALSE(changed("/credentialSubject/sheets/count", 0));
    CHECK_FALSE(changed("/credentialSubject/decided", "2027-02-30"));
    CHECK_FALSE(changed("/credentialSubject/id", urnOf(idOf(0x31))));
    CHECK_FALSE(changed("/credentialSubject/fitness", "good"));
    CHECK_FALSE(changed("/journal/decision/stream", keys::hex(idOf(0x31).view())));
    CHECK_FALSE(changed("/journal/decision/device", good.at("journal").at("head").at("device")));
    CHECK_FALSE(changed("/issuer", didOf(test::signerOf(0x78).verifyKey())));
    CHECK_FALSE(changed("/id", "urn:uuid:not-one"));
    CHECK_FALSE(changed("/validUntil", "2028-05-20T14:03:00Z"));
    CHECK_FALSE(changed("/supersedes", {{"record", good.at("id")}, {"digest", std::string(64, '0')}}));
    CHECK(changed("/supersedes", {{"record", randomUrn(idOf(0xA2))}, {"digest", std::string(64, '0')}}));
    CHECK(changed("/credentialSubject/name", "Somebody Else")); // whose name it is, only the program can know
}

TEST_CASE("A proof that leaves the contexts out does not make a record", "[record]")
{
    Json document = make().document;
    Json proof = document["proof"];
    document.erase("proof");
    proof.erase("@context");
    proof.erase("proofValue");
    keys::Bytes bytes;
    for (const Json* part : {&proof, &document}) {
        keys::append(bytes, sha256({keys::bytesOf(canonical(*part).value())}).view());
    }
    proof["proofValue"] = multibase(programKey().sign(bytes).view());
    document["proof"] = proof;
    CHECK(verifyProof(document).ok()); // the cryptosuite leaves it to who signs
    CHECK_FALSE(verifies(document));
}

TEST_CASE("An exception without a reason, and cases that are short without an exception, cannot be issued", "[record]")
{
    CompletionRecord record = make().record;
    record.targets[1].placed = 1;
    record.sheets = 4;
    CHECK_FALSE(issue(record, programKey()).ok());
    record.exception = "";
    CHECK_FALSE(issue(record, programKey()).ok());
    record.exception = "The site closed its rooms for a month.";
    const auto issued = issue(record, programKey());
    REQUIRE(issued.ok());
    CHECK(verifyRecord(issued.value(), record.program).value().exception == record.exception);
    Json without = issued.value();
    without["credentialSubject"].erase("exception");
    CHECK_FALSE(verifiesSignedAgain(without));
    Json empty = issued.value();
    empty["credentialSubject"]["exception"]["reason"] = "";
    CHECK_FALSE(verifiesSignedAgain(empty));
    CHECK_FALSE(issue(record, test::signerOf(0x78)).ok());
}

TEST_CASE("One sheet is proven without the others, and with nothing changed", "[record]")
{
    const Made made = make();
    REQUIRE(made.proofs.size() == 5);
    for (const SheetProof& proof : made.proofs) {
        const Json document = proofsDocument(made.document, {&proof, 1});
        const auto read = readSheetProofs(document);
        REQUIRE(read.ok());
        REQUIRE(read.value().proofs.size() == 1);
        CHECK(read.value().proofs.front() == proof);
        CHECK(isProven(made.record, read.value().proofs.front()));
        for (const SheetProof& other : made.proofs) {
            const std::string hidden = keys::hex(other.sheet.sheet.view());
            CHECK((document.dump().find(hidden) != std::string::npos) == (other.index == proof.index));
            CHECK((document.dump().find(keys::hex(other.salt.view())) != std::string::npos) ==
                  (other.index == proof.index));
        }
        const Json flat = document.at("sheets").at(0).flatten();
        for (const auto& [place, value] : flat.items()) {
            INFO(place);
            const Json changed = changedAt(flat, place);
            Json file = document;
            file["sheets"][0] = changed.unflatten();
            const auto changedProofs = readSheetProofs(file);
            CHECK((!changedProofs || !isProven(made.record, changedProofs.value().proofs.front())));
        }
    }
}

TEST_CASE("Salts are fresh for each sheet and each record, and the place of a leaf follows from nothing else",
          "[record]")
{
    test::SeededRandom random(1);
    const std::vector<ProvenSheet> same(40, sheetNumber(1));
    const auto first = plant(same, random);
    const auto second = plant(same, random);
    REQUIRE(first.ok());
    REQUIRE(second.ok());
    CHECK(first.value().root != second.value().root);
    std::set<Salt> salts;
    for (const SheetTree* tree : {&first.value(), &second.value()}) {
        for (const SheetProof& proof : tree->proofs) {
            salts.insert(proof.salt);
        }
    }
    CHECK(salts.size() == 80);

    std::vector<ProvenSheet> sheets;
    for (std::uint8_t i = 1; i <= 40; ++i) {
        sheets.push_back(sheetNumber(i));
    }
    const auto tree = plant(sheets, random);
    REQUIRE(tree.ok());
    std::size_t inOrder = 0;
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        inOrder += tree.value().proofs[i].sheet == sheets[i] ? 1U : 0U;
    }
    CHECK(inOrder < 10);
}

TEST_CASE("A leaf of an imported sheet says that nobody attested it, and cannot say otherwise", "[record]")
{
    test::SeededRandom random(1);
    ProvenSheet sheet = sheetNumber(1);
    sheet.signatures.clear();
    sheet.imported = {"paper log of spring, page 3", "Invented Preceptor", ""};
    const auto tree = plant({sheet, sheetNumber(2)}, random);
    REQUIRE(tree.ok());
    const Json document = proofsDocument(make().document, tree.value().proofs);
    const auto read = readSheetProofs(document);
    REQUIRE(read.ok());
    CHECK(read.value().proofs == tree.value().proofs);
    const std::size_t at = tree.value().proofs[0].sheet.imported ? 0 : 1;
    const Json& leaf = document["sheets"][at]["sheet"];
    CHECK(leaf["imported"] == Json{{"attested", false},
                                   {"source", "paper log of spring, page 3"},
                                   {"preceptor", "Invented Preceptor"},
                                   {"credential", ""}});
    CHECK(leaf["signed"].empty());
    CHECK_FALSE(document["sheets"][1 - at]["sheet"].contains("imported")); // as before there were imports
    const auto refused = [&](const auto& change) {
        Json file = document;
        change(file["sheets"][at]["sheet"]);
        return !readSheetProofs(file).ok();
    };
    CHECK(refused([](Json& one) { one["imported"]["attested"] = true; }));
    CHECK(refused([](Json& one) { one["imported"].erase("attested"); }));
    CHECK(refused([](Json& one) { one["imported"]["source"] = ""; }));
    CHECK(refused([](Json& one) { one["imported"]["by"] = "Somebody"; }));
    CHECK(refused([&](Json& one) { one["signed"] = document["sheets"][1 - at]["sheet"]["signed"]; }));
}

TEST_CASE("A record's digest does not depend on how its JSON is laid out", "[record]")
{
    const Json document = make().document;
    const auto spaced = parseJson(document.dump(4));
    const auto sorted = parseJson(nlohmann::json::parse(document.dump()).dump());
    REQUIRE(spaced.ok());
    REQUIRE(sorted.ok());
    CHECK(recordDigest(spaced.value()) == recordDigest(document));
    CHECK(recordDigest(sorted.value()) == recordDigest(document));
    CHECK(verifies(sorted.value()));
    Json other = document;
    other["proof"]["proofValue"] = "z1";
    CHECK(recordDigest(other) != recordDigest(document));
}

} // namespace peelpack::evidence
