#include "sync/keys/hash.h"
#include "sync/keys/password.h"
#include "sync/keys/seal.h"
#include "sync/keys/sign.h"
#include "tests/sync/support/catch.h"

#include <fstream>
#include <nlohmann/json.hpp>

// Where the vectors come from and under which terms: fixtures/vectors/README.md.
namespace peelpack::keys {
namespace {

using Json = nlohmann::json;

Json load(const std::string& name)
{
    std::ifstream file(std::string(PEELPACK_FIXTURES) + "/vectors/" + name);
    REQUIRE(file.good());
    return Json::parse(file);
}

Bytes bytesIn(const Json& object, const char* name)
{
    const auto bytes = fromHex(object.at(name).get<std::string>());
    REQUIRE(bytes.has_value());
    return *bytes;
}

} // namespace

TEST_CASE("Ed25519 signs and verifies as RFC 8032 section 7.1 and the published known answers say", "[vectors]")
{
    std::size_t cases = 0;
    for (const Json& item : load("ed25519_rfc8032_and_kat.json")) {
        INFO(item.at("name").get<std::string>());
        const auto key = SigningKey::fromSeed(bytesIn(item, "seed"));
        REQUIRE(key.ok());
        const Bytes message = bytesIn(item, "message");
        const Signature expected = *Signature::from(bytesIn(item, "signature"));
        CHECK(key.value().verifyKey() == *VerifyKey::from(bytesIn(item, "public")));
        CHECK(key.value().sign(message) == expected);
        CHECK(verify(key.value().verifyKey(), message, expected));
        Signature flipped = expected;
        flipped.bytes[40] ^= 1U;
        CHECK_FALSE(verify(key.value().verifyKey(), message, flipped));
        ++cases;
    }
    CHECK(cases == 36);
}

TEST_CASE("Attack 19: Ed25519 verification accepts and refuses what C2SP Wycheproof says", "[vectors][attack]")
{
    std::size_t valid = 0;
    std::size_t invalid = 0;
    const Json file = load("wycheproof_ed25519_test.json");
    for (const Json& group : file.at("testGroups")) {
        const VerifyKey key = *VerifyKey::from(bytesIn(group.at("publicKey"), "pk"));
        for (const Json& item : group.at("tests")) {
            INFO("tcId " << item.at("tcId") << " " << item.at("comment").get<std::string>());
            const auto signature = Signature::from(bytesIn(item, "sig"));
            const bool accepted = signature && verify(key, bytesIn(item, "msg"), *signature);
            CHECK(accepted == (item.at("result") == "valid"));
            ++(item.at("result") == "valid" ? valid : invalid);
        }
    }
    CHECK(valid == 88);
    CHECK(invalid == 63);
}

TEST_CASE("Attack 19: X25519 agrees as C2SP Wycheproof says and refuses every all-zero result", "[vectors][attack]")
{
    std::size_t agreed = 0;
    std::size_t refused = 0;
    const Json file = load("wycheproof_x25519_test.json");
    for (const Json& group : file.at("testGroups")) {
        for (const Json& item : group.at("tests")) {
            INFO("tcId " << item.at("tcId") << " " << item.at("comment").get<std::string>());
            const auto key = OpeningKey::fromSeed(bytesIn(item, "private"));
            REQUIRE(key.ok());
            const Bytes shared = bytesIn(item, "shared");
            const bool zero = std::all_of(shared.begin(), shared.end(), [](std::uint8_t byte) { return byte == 0; });
            const auto result = key.value().agree(*SealKey::from(bytesIn(item, "public")));
            REQUIRE(result.ok() != zero);
            if (zero) {
                ++refused;
            } else {
                CHECK(result.value().equals(shared));
                ++agreed;
            }
        }
    }
    CHECK(agreed == 487);
    CHECK(refused == 31);
}

TEST_CASE("XChaCha20-Poly1305 seals and opens as C2SP Wycheproof says", "[vectors]")
{
    std::size_t opened = 0;
    std::size_t refused = 0;
    std::size_t wrongNonce = 0;
    const Json file = load("wycheproof_xchacha20_poly1305_test.json");
    for (const Json& group : file.at("testGroups")) {
        for (const Json& item : group.at("tests")) {
            INFO("tcId " << item.at("tcId") << " " << item.at("comment").get<std::string>());
            const Bytes key = bytesIn(item, "key");
            const Bytes nonce = bytesIn(item, "iv");
            const Bytes associated = bytesIn(item, "aad");
            Bytes sealed = bytesIn(item, "ct");
            append(sealed, bytesIn(item, "tag"));
            const auto plain = aeadOpen(key, nonce, associated, sealed);
            if (item.at("result") == "valid") {
                REQUIRE(plain.ok());
                CHECK(plain.value().equals(bytesIn(item, "msg")));
                const auto again = aeadSeal(key, nonce, associated, bytesIn(item, "msg"));
                REQUIRE(again.ok());
                CHECK(again.value() == sealed);
                ++opened;
            } else {
                CHECK_FALSE(plain.ok());
                wrongNonce += nonce.size() != aeadNonceBytes ? 1U : 0U;
                ++refused;
            }
        }
    }
    CHECK(opened == 246);
    CHECK(refused == 69);
    CHECK(wrongNonce == 9);
}

TEST_CASE("BLAKE2b gives the known answers of its authors and of RFC 7693", "[vectors]")
{
    const Json file = load("blake2b.json");
    const auto check = [&](const char* set, std::size_t size, const Bytes& key) {
        std::size_t length = 0;
        for (const Json& expected : file.at(set)) {
            INFO(set << " " << length);
            Bytes message(length);
            for (std::size_t i = 0; i < length; ++i) {
                message[i] = static_cast<std::uint8_t>(i);
            }
            Bytes out(size);
            REQUIRE(
                blake2b(out, {}, {ByteView(message).first(length / 2), ByteView(message).subspan(length / 2)}, key));
            CHECK(hex(out) == expected.get<std::string>());
            ++length;
        }
        CHECK(length == 256);
    };
    check("unkeyed_64", 64, {});
    check("keyed_64", 64, bytesIn(file, "key"));
    check("unkeyed_32", 32, {});
    check("keyed_32", 32, bytesIn(file, "key_32"));

    Bytes abc(64); // RFC 7693, appendix A
    REQUIRE(blake2b(abc, {}, {bytesOf("abc")}));
    CHECK(hex(abc) == file.at("abc_64").get<std::string>());
}

TEST_CASE("BLAKE2b refuses lengths outside the algorithm, and a personalization changes the result", "[keys]")
{
    Bytes out(32);
    CHECK_FALSE(blake2b(std::span<std::uint8_t>(out).first(15), {}, {}));
    Bytes tooLong(65);
    CHECK_FALSE(blake2b(tooLong, {}, {}));
    CHECK_FALSE(blake2b(out, "short", {}));
    CHECK_FALSE(blake2b(out, {}, {}, tooLong));
    CHECK(hash("peelpack.entry.1", {bytesOf("x")}) != hash("peelpack.certs.1", {bytesOf("x")}));
}

TEST_CASE("Argon2id gives the answers of libsodium's and the reference implementation's tests", "[vectors]")
{
    const Json file = load("argon2id.json");
    std::size_t matched = 0;
    std::size_t refused = 0;
    const auto check = [&](const Json& item, const Bytes& password, const Bytes& salt, std::uint64_t passes) {
        const auto lanes = item.at("lanes").get<unsigned>();
        const PasswordCost cost{item.at("memory_kib").get<std::uint64_t>() * 1024, passes};
        const Bytes tag = bytesIn(item, "tag_hex");
        const bool within = cost.memoryBytes <= highestCost.memoryBytes && cost.passes <= highestCost.passes &&
                            salt.size() == passwordSaltBytes && tag.size() >= 16;
        const auto result = stretch(password, salt, cost, tag.size());
        INFO(item.dump());
        REQUIRE(result.ok() == within);
        if (within && lanes == 1) {
            CHECK(result.value().equals(tag));
            ++matched;
        } else {
            ++refused;
        }
    };
    const auto asBytes = [](const std::string& text) { return Bytes(text.begin(), text.end()); };
    for (const Json& item : file.at("libargon2_argon2id_v19")) {
        check(item, asBytes(item.at("password")), asBytes(item.at("salt")), item.at("iterations"));
    }
    for (const Json& item : file.at("libsodium_argon2id")) {
        check(item, bytesIn(item, "password_hex"), bytesIn(item, "salt_hex"), item.at("opslimit"));
    }
    for (const Json& item : file.at("generated_with_debian_argon2_cli")) {
        check(item, asBytes(item.at("password_utf8")), asBytes(item.at("salt_ascii")), item.at("iterations"));
    }
    CHECK(matched + refused == 24);
    CHECK(matched == 15); // the rest has a salt of 8 bytes or a cost above the ceiling, and is refused unrun
}

TEST_CASE("Attack 12: a cost of one TiB or a billion passes is refused before it is run", "[keys][attack]")
{
    const Bytes salt(passwordSaltBytes);
    CHECK_FALSE(stretch(bytesOf("123457"), salt, {1ULL << 40U, 1}).ok());
    CHECK_FALSE(stretch(bytesOf("123457"), salt, {8192, 1'000'000'000}).ok());
    CHECK_FALSE(stretch(bytesOf("123457"), salt, {UINT64_MAX, UINT64_MAX}).ok());
    CHECK_FALSE(stretch(bytesOf("123457"), salt, {highestCost.memoryBytes + 1, 1}).ok());
    CHECK_FALSE(stretch(bytesOf("123457"), salt, {0, 0}).ok());
    CHECK(stretch(bytesOf("123457"), salt, {8192, 1}).ok());
}

} // namespace peelpack::keys
