#include "platform/evidence/did_key.h"
#include "platform/evidence/jcs.h"
#include "platform/evidence/merkle.h"
#include "platform/evidence/multibase.h"
#include "platform/evidence/proof.h"
#include "tests/platform/support/consistency.h"
#include "tests/support/catch.h"

#include <sodium.h>

#include <bit>
#include <charconv>
#include <fstream>
#include <sstream>

// Published vectors through the project's own functions. Under which terms: fixtures/README.md.
namespace peelpack::evidence {
namespace {

std::string load(const std::string& name)
{
    std::ifstream file(std::string(PEELPACK_FIXTURES) + "/vectors/" + name);
    REQUIRE(file.good());
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

Json loadJson(const std::string& name)
{
    return Json::parse(load(name));
}

keys::Bytes bytesOf(const Json& hex)
{
    const auto bytes = keys::fromHex(hex.get<std::string>());
    REQUIRE(bytes.has_value());
    return *bytes;
}

keys::Bytes fromBase64(const Json& text)
{
    const std::string in = text.is_null() ? std::string() : text.get<std::string>();
    if (in.empty()) {
        return {};
    }
    keys::Bytes out(in.size());
    std::size_t size = 0;
    REQUIRE(sodium_base642bin(out.data(), out.size(), in.data(), in.size(), nullptr, &size, nullptr,
                              sodium_base64_VARIANT_ORIGINAL) == 0);
    out.resize(size);
    return out;
}

double doubleOf(std::string_view bits)
{
    std::uint64_t value = 0;
    const auto [end, error] = std::from_chars(bits.data(), bits.data() + bits.size(), value, 16);
    REQUIRE(end == bits.data() + bits.size());
    return std::bit_cast<double>(value);
}

} // namespace

TEST_CASE("Canonical JSON is that of cyberphone/json-canonicalization 19d51d7f, testdata", "[vectors]")
{
    std::size_t cases = 0;
    for (const Json& item : loadJson("rfc8785_jcs.json")) {
        INFO(item.at("name"));
        const auto input = parseJson(item.at("input_utf8").get<std::string>());
        REQUIRE(input.ok());
        const auto output = canonical(input.value());
        REQUIRE(output.ok());
        CHECK(output.value() == item.at("output_utf8").get<std::string>());
        CHECK(keys::hex(keys::bytesOf(output.value())) == item.at("output_hex").get<std::string>());
        const auto again = parseJson(output.value());
        REQUIRE(again.ok());
        CHECK(canonical(again.value()).value() == output.value());
        ++cases;
    }
    CHECK(cases == 6);
}

TEST_CASE("Numbers are written as cyberphone/json-canonicalization 19d51d7f says, the first 1,000 of es6testfile100m",
          "[vectors]")
{
    std::istringstream lines(load("rfc8785_es6_numbers_first1000.csv"));
    std::size_t cases = 0;
    for (std::string line; std::getline(lines, line); ++cases) {
        INFO(line);
        const std::size_t comma = line.find(',');
        const auto written = ecmaNumber(doubleOf(std::string_view(line).substr(0, comma)));
        REQUIRE(written.ok());
        CHECK(written.value() == line.substr(comma + 1));
    }
    CHECK(cases == 1000);
}

TEST_CASE("Numbers are written, and refused, as RFC 8785 appendix B says (the table from memory)", "[vectors]")
{
    const std::vector<std::pair<std::string_view, std::string>> table{
        {"0000000000000000", "0"},
        {"8000000000000000", "0"},
        {"0000000000000001", "5e-324"},
        {"8000000000000001", "-5e-324"},
        {"7fefffffffffffff", "1.7976931348623157e+308"},
        {"ffefffffffffffff", "-1.7976931348623157e+308"},
        {"4340000000000000", "9007199254740992"},
        {"c340000000000000", "-9007199254740992"},
        {"4430000000000000", "295147905179352830000"},
        {"44b52d02c7e14af5", "9.999999999999997e+22"},
        {"44b52d02c7e14af6", "1e+23"},
        {"44b52d02c7e14af7", "1.0000000000000001e+23"},
        {"444b1ae4d6e2ef4e", "999999999999999700000"},
        {"444b1ae4d6e2ef4f", "999999999999999900000"},
        {"444b1ae4d6e2ef50", "1e+21"},
        {"3eb0c6f7a0b5ed8c", "9.999999999999997e-7"},
        {"3eb0c6f7a0b5ed8d", "0.000001"},
        {"41b3de4355555553", "333333333.3333332"},
        {"41b3de4355555554", "333333333.33333325"},
        {"41b3de4355555555", "333333333.3333333"},
        {"41b3de4355555556", "333333333.3333334"},
        {"41b3de4355555557", "333333333.33333343"},
        {"becbf647612f3696", "-0.0000033333333333333333"},
        {"43143ff3c1cb0959", "1424953923781206.2"},
    };
    for (const auto& [bits, text] : table) {
        INFO(bits);
        const double number = doubleOf(bits);
        REQUIRE(ecmaNumber(number).ok());
        CHECK(ecmaNumber(number).value() == text);
        const auto readBack = parseJson("[" + text + "]");
        REQUIRE(readBack.ok());
        CHECK(canonical(readBack.value()).value() == "[" + text + "]");
    }
    CHECK_FALSE(ecmaNumber(doubleOf("7fffffffffffffff")).ok());
    CHECK_FALSE(ecmaNumber(doubleOf("7ff0000000000000")).ok());
    CHECK_FALSE(canonical(Json(doubleOf("fff0000000000000"))).ok());
}

TEST_CASE("What is not I-JSON (RFC 7493 sections 2.1 to 2.3) is refused", "[json]")
{
    const std::vector<std::string> refused{
        R"({"a":1,"a":2})",            // a member twice
        R"({"a":{"b":1,"\u0062":2}})", // also when one is escaped
        R"(["\ud800"])",               // half a pair
        R"(["\udc00\ud800"])",         // the halves the wrong way round
        R"({"\udead":1})",             // as a name: RFC 8785 section 3.1
        "[\"\xED\xA0\x80\"]",          // a surrogate in UTF-8
        "[\"\xC0\xAF\"]",              // overlong
        R"(["\ufffe"])",               // noncharacters
        "[\"\xEF\xB7\x90\"]",          //
        R"(["\ud83f\udfff"])",         //
        "[1e400]",                     // larger than a double
        "[NaN]",
        "[Infinity]",
        "[9007199254740993]", // 2^53 + 1: a double holds its neighbor
        "[-9007199254740993]",
        "[-9223372036854775808]", // ECMAScript writes -9223372036854776000
        "[100000000000000000001]",
        "\xEF\xBB\xBF[]", // byte order mark
        "[1,]",
        "[01]",
        "{} {}",
        "['a']",
        "[\"\t\"]",
        "",
        std::string(100, '[') + std::string(100, ']'),
    };
    for (const std::string& text : refused) {
        INFO(text);
        CHECK_FALSE(parseJson(text).ok());
    }
    for (const char* text : {"[9007199254740992]", "[-9223372036854776000]", "[1e21]", "[\"\\ud83d\\ude02\"]", "3"}) {
        INFO(text);
        CHECK(parseJson(text).ok());
    }
    CHECK_FALSE(canonical(Json("\xED\xA0\x80")).ok());
    CHECK_FALSE(canonical(Json{{"\xFF", 1}}).ok());
}

TEST_CASE("did:key names are those of w3c-ccg/did-method-key f5abee84, test-vectors", "[vectors]")
{
    std::size_t cases = 0;
    for (const Json& item : loadJson("did_key_ed25519_x25519.json")) {
        const auto did = item.at("did").get<std::string>();
        INFO(did);
        const auto key = keys::SigningKey::fromSeed(bytesOf(item.at("seed_hex")));
        REQUIRE(key.ok());
        const keys::VerifyKey& half = key.value().verifyKey();
        CHECK(keys::hex(half.view()) == item.at("ed25519_public_hex").get<std::string>());
        CHECK(didOf(half) == did);
        CHECK(keyOfDid(did) == half);
        CHECK(methodOf(half) == did + "#" + did.substr(std::string_view("did:key:").size()));
        CHECK(keyOfMethod(methodOf(half)) == half);
        const auto agreement = agreementKeyOf(half);
        REQUIRE(agreement.has_value());
        CHECK(keys::hex(agreement->view()) == item.at("x25519_public_hex").get<std::string>());
        CHECK(agreementText(*agreement) == item.at("x25519_multibase").get<std::string>());
        CHECK_FALSE(keyOfDid("did:key:" + agreementText(*agreement)).has_value()); // another sort of key
        ++cases;
    }
    CHECK(cases == 5);
    for (const std::string& wrong : {std::string("did:key:z6MkiTBz1ymuepAQ4HEHYSF1H8quG5GLVVQR3djdX3mDooWq"), // a bit
                                     std::string("did:key:z6MkiTBz1ymuepAQ4HEHYSF1H8quG5GLVVQR3djdX3mDooW"),
                                     std::string("did:key:m7QE7aie8zqakLWKjqNAqbw1zZTIVdx3iQ6Y6wEihi1naKQ"), // base64
                                     std::string("did:web:z6MkiTBz1ymuepAQ4HEHYSF1H8quG5GLVVQR3djdX3mDooWp"),
                                     std::string("did:key:z6Mk0"), std::string("did:key:z"), std::string()}) {
        INFO(wrong);
        const auto key = keyOfDid(wrong);
        CHECK((!key || didOf(*key) != "did:key:z6MkiTBz1ymuepAQ4HEHYSF1H8quG5GLVVQR3djdX3mDooWp"));
        CHECK_FALSE(keyOfMethod(wrong).has_value()); // a did is not a method of it
    }
    const keys::Bytes zeros(3);
    CHECK(fromMultibase(multibase(zeros)) == zeros);
    CHECK(multibase(zeros) == "z111");
}

TEST_CASE("Tree digests and inclusion proofs are those of transparency-dev/merkle 417fb0c3, testdata, and RFC 9162",
          "[vectors]")
{
    const Json file = loadJson("merkle_rfc6962_rfc9162.json");
    const auto digest = [](const keys::Bytes& bytes) { return Digest::from(bytes); };
    std::size_t proven = 0;
    std::size_t refused = 0;
    for (const Json& item : file.at("inclusion")) {
        INFO(item.at("file"));
        std::vector<Digest> path;
        const auto root = digest(fromBase64(item.at("root")));
        const auto leaf = digest(fromBase64(item.at("leafHash")));
        bool formed = root && leaf;
        for (const Json& node : item.at("proof").is_null() ? Json::array() : item.at("proof")) {
            const auto one = digest(fromBase64(node));
            formed = formed && one;
            path.push_back(one.value_or(Digest()));
        }
        const bool included = formed && isIncluded(*root, item.at("treeSize"), item.at("leafIdx"), *leaf, path);
        CHECK(included != item.at("wantErr").get<bool>());
        ++(included ? proven : refused);
    }
    CHECK(proven == 6);
    CHECK(refused == 92);

    const Json& hasher = file.at("hasher");
    const auto ascii = [&](std::size_t i, const char* name) {
        return keys::bytesOf(hasher.at(i).at(name).get_ref<const std::string&>());
    };
    const std::vector<Digest> made{treeRoot({}), leafDigest(ascii(1, "leaf_ascii")), leafDigest(ascii(2, "leaf_ascii")),
                                   nodeDigest(ascii(3, "left_ascii"), ascii(3, "right_ascii"))};
    REQUIRE(hasher.size() == made.size());
    for (std::size_t i = 0; i < made.size(); ++i) {
        INFO(hasher.at(i).at("desc"));
        CHECK(keys::hex(made[i].view()) == hasher.at(i).at("want").get<std::string>());
    }
    const Json& tree = file.at("tree8");
    std::vector<Digest> leaves;
    CHECK(keys::hex(treeRoot(leaves).view()) == tree.at("roots_by_size").at("0").get<std::string>());
    for (const Json& leaf : tree.at("leaves_hex")) {
        leaves.push_back(leafDigest(bytesOf(leaf)));
        const Digest root = treeRoot(leaves);
        CHECK(keys::hex(root.view()) == tree.at("roots_by_size").at(std::to_string(leaves.size())).get<std::string>());
        for (std::size_t i = 0; i < leaves.size(); ++i) {
            CHECK(isIncluded(root, leaves.size(), i, leaves[i], inclusionPath(leaves, i)));
        }
    }
    CHECK(leaves.size() == 8);
}

TEST_CASE("Trees grow as the consistency proofs of transparency-dev/merkle 417fb0c3, testdata, and RFC 9162 say",
          "[vectors]")
{
    const Json file = loadJson("merkle_rfc6962_rfc9162.json");
    std::size_t proven = 0;
    std::size_t refused = 0;
    for (const Json& item : file.at("consistency")) {
        INFO(item.at("file"));
        std::vector<Digest> proof;
        bool formed = true;
        for (const Json& node : item.at("proof").is_null() ? Json::array() : item.at("proof")) {
            const auto one = Digest::from(fromBase64(node));
            formed = formed && one;
            proof.push_back(one.value_or(Digest()));
        }
        const keys::Bytes root1 = fromBase64(item.at("root1"));
        const keys::Bytes root2 = fromBase64(item.at("root2"));
        const bool consistent = formed && test::isConsistent(item.at("size1"), item.at("size2"), root1, root2, proof);
        CHECK(consistent != item.at("wantErr").get<bool>());
        ++(consistent ? proven : refused);
    }
    CHECK(proven == 6);
    CHECK(refused == 92);

    // The tree of eight leaves: each size of it is the beginning of each later one, by the roots that the file holds.
    const Json& tree = file.at("tree8");
    std::vector<Digest> leaves;
    for (const Json& leaf : tree.at("leaves_hex")) {
        leaves.push_back(leafDigest(bytesOf(leaf)));
    }
    const auto rootOf = [&](std::size_t size) { return bytesOf(tree.at("roots_by_size").at(std::to_string(size))); };
    for (std::size_t size2 = 1; size2 <= leaves.size(); ++size2) {
        const std::span<const Digest> grown = std::span(leaves).first(size2);
        for (std::size_t size1 = 1; size1 <= size2; ++size1) {
            const std::vector<Digest> proof = test::consistencyProof(grown, size1);
            CHECK(test::isConsistent(size1, size2, rootOf(size1), rootOf(size2), proof));
            if (size1 < size2) {
                CHECK_FALSE(test::isConsistent(size1, size2, rootOf(size2), rootOf(size2), proof));
                CHECK_FALSE(test::isConsistent(size1, size2, rootOf(size1), rootOf(size1), proof));
            }
        }
    }
}

TEST_CASE("Each proof of trees up to 130 leaves holds for its own leaf and place only", "[merkle]")
{
    std::vector<Digest> leaves;
    for (std::uint8_t size = 1; size <= 130; ++size) {
        leaves.push_back(leafDigest({&size, 1}));
        const Digest root = treeRoot(leaves);
        for (std::size_t i = 0; i < leaves.size(); ++i) {
            const std::vector<Digest> path = inclusionPath(leaves, i);
            REQUIRE(isIncluded(root, size, i, leaves[i], path));
            const std::size_t other = (i + 1) % leaves.size();
            REQUIRE((other == i || !isIncluded(root, size, other, leaves[i], path)));
            REQUIRE((other == i || !isIncluded(root, size, i, leaves[other], path)));
        }
    }
}

TEST_CASE("Proofs are those of w3c/vc-di-eddsa abb673eb, eddsa-jcs-2022, step by step", "[vectors]")
{
    const Json file = loadJson("w3c_eddsa_jcs_2022.json");
    const auto text = [&](const char* name) { return file.at(name).get<std::string>(); };
    CHECK(canonical(file.at("unsigned.json")).value() == text("canonDocJCS.txt"));
    CHECK(canonical(file.at("proofConfigJCS.json")).value() == text("proofCanonJCS.txt"));
    const std::string document = keys::hex(sha256({keys::bytesOf(text("canonDocJCS.txt"))}).view());
    const std::string proof = keys::hex(sha256({keys::bytesOf(text("proofCanonJCS.txt"))}).view());
    CHECK(document == text("docHashJCS.txt"));
    CHECK(proof == text("proofHashJCS.txt"));
    CHECK(proof + document == text("combinedHashJCS.txt"));
    CHECK(multibase(*keys::fromHex(text("sigHexJCS.txt"))) == text("sigBTC58JCS.txt"));

    // Multicodec ed25519-priv is 0x1300, two bytes as a varint; then the seed.
    const auto seed = fromMultibase(file.at("keyPair.json").at("privateKeyMultibase").get<std::string>());
    REQUIRE(seed.has_value());
    const auto key = keys::SigningKey::fromSeed(keys::ByteView(*seed).subspan(2));
    REQUIRE(key.ok());
    CHECK(didOf(key.value().verifyKey()) ==
          "did:key:" + file.at("keyPair.json").at("publicKeyMultibase").get<std::string>());
    const auto made = withProof(file.at("unsigned.json"), "2023-02-24T23:36:38Z", key.value());
    REQUIRE(made.ok());
    CHECK(canonical(made.value()).value() == canonical(file.at("signedJCS.json")).value());

    const auto proven = verifyProof(file.at("signedJCS.json"));
    REQUIRE(proven.ok());
    CHECK(proven.value().signer == key.value().verifyKey());
    CHECK(proven.value().created == "2023-02-24T23:36:38Z");
}

TEST_CASE("A proof does not fit once any member of document or proof is changed, added or gone", "[proof]")
{
    const Json good = loadJson("w3c_eddsa_jcs_2022.json").at("signedJCS.json");
    REQUIRE(verifyProof(good).ok());
    const Json flat = good.flatten();
    std::size_t tried = 0;
    for (const auto& [place, value] : flat.items()) {
        INFO(place);
        Json changed = flat;
        changed[place] = value.get<std::string>() + "x";
        CHECK_FALSE(verifyProof(changed.unflatten()).ok());
        ++tried;
    }
    CHECK(tried == 19);
    for (const Json* object : {&good, &good.at("proof")}) {
        for (const auto& [name, value] : object->items()) {
            INFO(name);
            Json without = good;
            (object == &good ? without : without.at("proof")).erase(name);
            CHECK_FALSE(verifyProof(without).ok());
        }
    }
    Json more = good;
    more["validUntil"] = "2027-01-01T00:00:00Z";
    CHECK_FALSE(verifyProof(more).ok());
    Json moreInProof = good;
    moreInProof["proof"]["expires"] = "2027-01-01T00:00:00Z";
    CHECK_FALSE(verifyProof(moreInProof).ok());
    Json moreContext = good; // the standard alone would let this pass, and it would be unsigned
    moreContext["@context"].push_back("https://www.w3.org/ns/credentials/undefined-terms/v2");
    CHECK_FALSE(verifyProof(moreContext).ok());
    CHECK_FALSE(verifyProof(Json::array()).ok());
}

} // namespace peelpack::evidence
