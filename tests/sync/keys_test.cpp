#include "sync/keys/code.h"
#include "sync/keys/invitation.h"
#include "sync/keys/password.h"
#include "tests/sync/support/catch.h"
#include "tests/sync/support/world.h"

#include <algorithm>
#include <set>

namespace peelpack::test {
namespace {

std::string textOf(const keys::Secret& secret)
{
    return {secret.view().begin(), secret.view().end()};
}

keys::Bytes copyOf(const keys::Secret& secret)
{
    return {secret.view().begin(), secret.view().end()};
}

} // namespace

TEST_CASE("A secret is owned by one, empty after it moved, and compared as a whole", "[keys]")
{
    const keys::Bytes bytes{1, 2, 3};
    keys::Secret one(bytes);
    CHECK(one.equals(bytes));
    CHECK_FALSE(one.equals(keys::ByteView(bytes).first(2)));
    CHECK_FALSE(one.equals(keys::Bytes{1, 2, 4}));
    const keys::Secret two = std::move(one);
    CHECK(one.empty()); // NOLINT(bugprone-use-after-move): this is what is tested
    CHECK(two.equals(bytes));
    CHECK(keys::Secret(4).equals(keys::Bytes{0, 0, 0, 0}));
    static_assert(!std::is_copy_constructible_v<keys::Secret>);
    keys::Bytes buffer{5, 6};
    keys::wipe(buffer);
    CHECK(buffer == keys::Bytes{0, 0});
}

TEST_CASE("The system's randomness fills every byte and does not repeat", "[keys]")
{
    keys::SystemRandom random;
    std::set<keys::Id> seen;
    for (int i = 0; i < 1000; ++i) {
        seen.insert(random.id());
    }
    CHECK(seen.size() == 1000);
    CHECK(random.secret(32).size() == 32);
}

TEST_CASE("A device key comes from its seeds, and a public half of another seed is refused", "[keys]")
{
    SeededRandom random(3);
    const keys::DeviceSeeds seeds = keys::newDeviceSeeds(random);
    const auto key = keys::deviceKey(seeds);
    REQUIRE(key.ok());
    const keys::VerifyKey& verify = key.value().signing.verifyKey();
    const keys::SealKey& seal = key.value().opening.sealKey();
    CHECK(keys::deviceKey(seeds, verify, seal).ok());
    CHECK_FALSE(keys::deviceKey(seeds, deviceOf(1).signing.verifyKey(), seal).ok());
    CHECK_FALSE(keys::deviceKey(seeds, verify, deviceOf(1).opening.sealKey()).ok());
    CHECK(keys::SigningKey::fromStored(seeds.signing.view(), verify).ok());
    CHECK_FALSE(keys::SigningKey::fromStored(seeds.signing.view(), deviceOf(1).signing.verifyKey()).ok());
    CHECK_FALSE(keys::SigningKey::fromSeed(keys::Bytes(31)).ok());
    CHECK_FALSE(keys::OpeningKey::fromSeed(keys::Bytes(33)).ok());
}

TEST_CASE("Attack 19: keys of small order or outside the group are not usable", "[keys][attack]")
{
    // The eight points of small order of edwards25519 in canonical form, after RFC 8032 section 5.1 (y = 0, 1, -1 and
    // the two of order 8, with both signs where they differ), and a y that is not below the prime.
    const std::vector<std::string> weak{"0100000000000000000000000000000000000000000000000000000000000000",
                                        "ecffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff7f",
                                        "0000000000000000000000000000000000000000000000000000000000000080",
                                        "0000000000000000000000000000000000000000000000000000000000000000",
                                        "c7176a703d4dd84fba3c0b760d10670f2a2053fa2c39ccc64ec7fd7792ac037a",
                                        "c7176a703d4dd84fba3c0b760d10670f2a2053fa2c39ccc64ec7fd7792ac03fa",
                                        "26e8958fc2b227b045c3f489f2ef98f0d5dfac05d3c63339b13802886d53fc05",
                                        "26e8958fc2b227b045c3f489f2ef98f0d5dfac05d3c63339b13802886d53fc85",
                                        "eeffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff7f"};
    for (const std::string& point : weak) {
        INFO(point);
        const keys::VerifyKey key = *keys::VerifyKey::from(*keys::fromHex(point));
        CHECK_FALSE(keys::usable(key));
        keys::Signature zero;
        std::copy(key.bytes.begin(), key.bytes.end(), zero.bytes.begin());
        CHECK_FALSE(keys::verify(key, keys::bytesOf("anything"), zero));
    }
    CHECK(keys::usable(deviceOf(1).signing.verifyKey()));

    World world;
    journal::Grant grant = world.grant(idOf(1), journal::Role::Student, world.student);
    grant.device = *keys::VerifyKey::from(*keys::fromHex(weak[0]));
    CHECK(journal::encode(grant).reason() == journal::Reason::UnusableKey);
}

TEST_CASE("Codes: written, typed back in any dress, and every slip is noticed", "[keys]")
{
    SeededRandom random(9);
    for (int round = 0; round < 50; ++round) {
        const keys::Secret code = random.secret(keys::codeSecretBytes);
        constexpr std::array sorts{keys::CodeSort::Program, keys::CodeSort::Vault, keys::CodeSort::Card};
        for (const keys::CodeSort sort : sorts) {
            const std::string text = textOf(keys::codeText(sort, code.view()));
            CHECK(text.size() == keys::codeTextLength);
            const auto back = keys::codeFromText(sort, text);
            REQUIRE(back.ok());
            CHECK(back.value().equals(code.view()));
            for (const keys::CodeSort other : sorts) {
                CHECK(keys::codeFromText(other, text).ok() == (other == sort));
            }
        }
    }
    const keys::Secret code = random.secret(keys::codeSecretBytes);
    const std::string text = textOf(keys::codeText(keys::CodeSort::Program, code.view()));
    std::string dressed;
    for (const char c : text) {
        dressed += c == '-' ? ' ' : static_cast<char>(std::tolower(c));
    }
    std::replace(dressed.begin(), dressed.end(), '0', 'o');
    std::replace(dressed.begin(), dressed.end(), '1', 'l');
    CHECK(keys::codeFromText(keys::CodeSort::Program, dressed).ok());

    const std::string alphabet = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    std::size_t slips = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] == '-') {
            continue;
        }
        for (const char c : alphabet) {
            std::string wrong = text;
            wrong[i] = c;
            if (c != text[i]) {
                const auto result = keys::codeFromText(keys::CodeSort::Program, wrong);
                REQUIRE_FALSE(result.ok());
                CHECK(result.error().sentence.find("Group " + std::to_string(i / 6 + 1)) != std::string::npos);
                ++slips;
            }
        }
        if (i + 1 < text.size() && text[i + 1] != '-' && text[i] != text[i + 1]) {
            std::string swapped = text;
            std::swap(swapped[i], swapped[i + 1]);
            CHECK_FALSE(keys::codeFromText(keys::CodeSort::Program, swapped).ok());
        }
    }
    CHECK(slips == 35 * 31);
    const std::string exchanged = text.substr(6, 6) + text.substr(0, 6) + text.substr(12);
    CHECK_FALSE(keys::codeFromText(keys::CodeSort::Program, exchanged).ok());
    CHECK_FALSE(keys::codeFromText(keys::CodeSort::Program, text.substr(1)).ok());
    CHECK_FALSE(keys::codeFromText(keys::CodeSort::Program, text + "A").ok());
    CHECK_FALSE(keys::codeFromText(keys::CodeSort::Program, "").ok());
    CHECK(keys::codeText(keys::CodeSort::Program, keys::Bytes(15)).empty());
}

TEST_CASE("A program code re-creates the program key; a vault code opens one vault only", "[keys]")
{
    SeededRandom random(2);
    const keys::Secret code = random.secret(keys::codeSecretBytes);
    CHECK(keys::programKey(code.view()).value().verifyKey() == keys::programKey(code.view()).value().verifyKey());
    CHECK(keys::programKey(code.view()).value().verifyKey() !=
          keys::programKey(random.secret(keys::codeSecretBytes).view()).value().verifyKey());
    CHECK_FALSE(keys::programKey(keys::Bytes(15)).ok());
    const keys::Secret one = keys::vaultCodeKey(code.view(), idOf(1)).value();
    CHECK(one.equals(keys::vaultCodeKey(code.view(), idOf(1)).value().view()));
    CHECK_FALSE(one.equals(keys::vaultCodeKey(code.view(), idOf(2)).value().view()));
    CHECK_FALSE(keys::vaultCodeKey(keys::Bytes(17), idOf(1)).ok());
}

TEST_CASE("A signing card signs with its PIN only, in its program only, in its epoch only", "[keys]")
{
    const World world;
    SeededRandom random(4);
    keys::SigningCard card;
    card.programStream = world.programStream;
    card.card = idOf(0x42);
    card.epoch = 1;
    card.secret = random.secret(keys::SigningCard::secretBytes);
    const auto key = keys::cardKey(card, world.program, "271828");
    REQUIRE(key.ok());
    const keys::VerifyKey roster = key.value().verifyKey();

    const auto scanned = keys::SigningCard::fromCode(card.code().view());
    REQUIRE(scanned.ok());
    CHECK(keys::cardKeyFor(scanned.value(), world.program, "271828", roster).ok());
    CHECK_FALSE(keys::cardKeyFor(scanned.value(), world.program, "271829", roster).ok());

    keys::SigningCard later = keys::SigningCard::fromCode(card.code().view()).value();
    later.epoch = 2;
    CHECK_FALSE(keys::cardKeyFor(later, world.program, "271828", roster).ok());
    CHECK_FALSE(keys::cardKey(card, signerOf(0x77).verifyKey(), "271828").ok());
    keys::Bytes code = copyOf(card.code());
    CHECK_FALSE(keys::SigningCard::fromCode(keys::ByteView(code).first(55)).ok());
    code[0] = 'X';
    CHECK_FALSE(keys::SigningCard::fromCode(code).ok());
}

TEST_CASE("PINs that are guessed first are refused", "[keys]")
{
    for (const char* pin : {"271828", "900718", "123457", "112233445566"}) {
        INFO(pin);
        CHECK(keys::checkPin(pin).ok());
    }
    for (const char* pin : {"", "27182", "2718281828459", "27182a", "111111", "123456", "654321", "27 828"}) {
        INFO(pin);
        CHECK_FALSE(keys::checkPin(pin).ok());
    }
}

TEST_CASE("An invitation is answered by who has it, once it is read right, and before it expires", "[keys]")
{
    const World world;
    SeededRandom random(6);
    keys::Invitation invitation;
    invitation.program = world.program;
    invitation.inviterDevice = world.instructor.signing.verifyKey();
    invitation.inviterSeal = world.instructor.opening.sealKey();
    invitation.person = world.studentId;
    invitation.role = 4;
    invitation.secret = random.secret(keys::Invitation::secretBytes);
    invitation.expiry = 1000;
    const auto read = keys::Invitation::fromCode(invitation.code().view());
    REQUIRE(read.ok());
    const keys::InvitationReply reply = keys::answer(read.value(), world.student);
    const auto returned = keys::InvitationReply::fromCode(reply.code());
    REQUIRE(returned.ok());
    CHECK(keys::check(invitation, returned.value(), 1000).ok());
    CHECK_FALSE(keys::check(invitation, returned.value(), 1001).ok());
    CHECK(keys::comparisonDigits(invitation, reply) == keys::comparisonDigits(read.value(), returned.value()));
    CHECK(keys::comparisonDigits(invitation, reply).size() == 6);

    keys::InvitationReply changed = reply;
    changed.seal = deviceOf(9).opening.sealKey();
    CHECK_FALSE(keys::check(invitation, changed, 0).ok());
    changed = reply;
    changed.device = deviceOf(9).signing.verifyKey();
    CHECK_FALSE(keys::check(invitation, changed, 0).ok());
    changed = reply;
    changed.signature.bytes[3] ^= 1U;
    CHECK_FALSE(keys::check(invitation, changed, 0).ok());
    changed = reply;
    changed.person = idOf(9);
    CHECK_FALSE(keys::check(invitation, changed, 0).ok());

    keys::Invitation other = keys::Invitation::fromCode(invitation.code().view()).value();
    other.secret = random.secret(keys::Invitation::secretBytes);
    CHECK_FALSE(keys::check(other, reply, 0).ok());
    other = keys::Invitation::fromCode(invitation.code().view()).value();
    other.role = 1; // a student's invitation does not make an instructor
    CHECK_FALSE(keys::check(other, reply, 0).ok());
    keys::Bytes code = copyOf(invitation.code());
    code[4 + 32 + 32 + 32 + 16] = 5;
    CHECK_FALSE(keys::Invitation::fromCode(code).ok());
}

} // namespace peelpack::test
