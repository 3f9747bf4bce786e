#include "platform/vault/unlock_rules.h"
#include "platform/vault/vault_error.h"
#include "tests/sync/support/catch.h"

#include <limits>
#include <map>

// The rules of passphrases and PINs, without a vault.
namespace peelpack::test {

using vault::Fault;
using vault::SecretKind;
using vault::WrongTries;

TEST_CASE("Five wrong tries are free, then the wait doubles from 30 seconds, and ten disable", "[vault][unlock]")
{
    constexpr std::int64_t at = 1'800'000'000;
    for (const std::uint32_t count : {0U, 1U, 4U}) {
        CHECK(WrongTries{count, at}.waitLeft(at) == 0);
    }
    std::int64_t wait = 30;
    for (std::uint32_t count = 5; count < WrongTries::most; ++count, wait *= 2) {
        const WrongTries tries{count, at};
        INFO(count);
        CHECK_FALSE(tries.disabled());
        CHECK(tries.waitLeft(at) == wait);
        CHECK(tries.waitLeft(at + wait - 1) == 1);
        CHECK(tries.waitLeft(at + wait) == 0);
        CHECK(tries.waitLeft(at - 1'000'000) == wait);
    }
    CHECK(WrongTries{WrongTries::most, at}.disabled());
}

TEST_CASE("No time that a file or a clock may claim makes a wait longer than it was", "[vault][unlock]")
{
    using Limits = std::numeric_limits<std::int64_t>;
    for (const std::int64_t lastAt : {Limits::min(), std::int64_t{-1}, std::int64_t{0}, Limits::max()}) {
        for (const std::int64_t now : {Limits::min(), std::int64_t{-1}, std::int64_t{0}, Limits::max()}) {
            const std::int64_t wait = WrongTries{6, lastAt}.waitLeft(now);
            INFO(lastAt << " " << now);
            CHECK(wait >= 0);
            CHECK(wait <= 60);
            CHECK((now < lastAt || lastAt == now) == (wait == 60));
        }
    }
}

TEST_CASE("Weak passphrases and PINs are refused with a sentence, others are taken", "[vault][unlock]")
{
    const std::string tooLong(201, 'x');
    for (const std::string secret : {"", "short", "sevench", "password", "PassWord", "  password", "aaaaaaaa",
                                     "abababab", "12345678", "00481973", "letmein1", "\xFF\xFEwords of nothing"}) {
        INFO(secret);
        const auto answer = vault::checkNewSecret(SecretKind::Passphrase, secret);
        REQUIRE_FALSE(answer.ok());
        CHECK(answer.error().fault == Fault::WeakSecret);
        CHECK(answer.error().sentence.ends_with('.'));
    }
    CHECK_FALSE(vault::checkNewSecret(SecretKind::Passphrase, tooLong + "abc").ok());
    for (const std::string secret : {"four odd words", "tr4ybl0w", "Überall genäht", "a passphrase with spaces"}) {
        INFO(secret);
        CHECK(vault::checkNewSecret(SecretKind::Passphrase, secret).ok());
    }
    for (const std::string pin : {"", "12345", "1234567890123", "12345a", "123456", "654321", "111111", "121212",
                                  "112233", "147258", "      "}) {
        INFO(pin);
        const auto answer = vault::checkNewSecret(SecretKind::Pin, pin);
        REQUIRE_FALSE(answer.ok());
        CHECK(answer.error().fault == Fault::WeakSecret);
    }
    for (const std::string pin : {"271828", "90417365", "314159265358"}) {
        INFO(pin);
        CHECK(vault::checkNewSecret(SecretKind::Pin, pin).ok());
    }
}

TEST_CASE("Every fault has a code for callers that only tell reading from writing from input", "[vault]")
{
    using base::ErrorCode;
    const std::map<Fault, ErrorCode> expected{
        {Fault::WrongSecret, ErrorCode::BadValue},   {Fault::MustWait, ErrorCode::BadValue},
        {Fault::Disabled, ErrorCode::BadValue},      {Fault::MarkMissing, ErrorCode::BadValue},
        {Fault::WeakSecret, ErrorCode::BadValue},    {Fault::Damaged, ErrorCode::BadInput},
        {Fault::NotAVault, ErrorCode::BadInput},     {Fault::Newer, ErrorCode::BadInput},
        {Fault::InUse, ErrorCode::CannotRead},       {Fault::Exists, ErrorCode::CannotWrite},
        {Fault::NotThere, ErrorCode::CannotRead},    {Fault::CannotRead, ErrorCode::CannotRead},
        {Fault::CannotWrite, ErrorCode::CannotWrite}};
    for (const auto& [fault, code] : expected) {
        const base::Error error = vault::asError({fault, "A sentence."});
        CHECK(error.code == code);
        CHECK(error.sentence == "A sentence.");
    }
}

} // namespace peelpack::test
