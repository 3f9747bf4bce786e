#include "platform/vault/unlock_rules.h"

#include "core/base/text.h"
#include "sync/keys/password.h"

#include <algorithm>
#include <array>
#include <set>

namespace peelpack::vault {
namespace {

// From memory of published lists of leaked PINs and passwords; no source at hand.
constexpr std::array commonPins = std::to_array<std::string_view>(
    {"112233", "121212", "123123", "123321", "123654", "131313", "147258", "159753", "159357", "212121",
     "232323", "252525", "258456", "321321", "456456", "520520", "654123", "696969", "741852", "753951",
     "789456", "789789", "852456", "987123", "101010", "102030", "142536", "147852", "246810", "252627"});
constexpr std::array commonPassphrases = std::to_array<std::string_view>(
    {"password",  "passw0rd", "password1",     "password123", "qwertyui", "qwerty123", "iloveyou",
     "sunshine",  "princess", "football",      "baseball",    "welcome1", "letmein1",  "trustno1",
     "abcd1234",  "1q2w3e4r", "1qaz2wsx",      "asdfghjk",    "peelpack", "surgery1",  "operating",
     "scrubtech", "student1", "administrator", "changeme",    "computer"});

} // namespace

std::int64_t WrongTries::waitLeft(std::int64_t now) const
{
    constexpr std::int64_t firstWait = 30;
    if (count < withoutWait) {
        return 0;
    }
    const std::int64_t wait = firstWait << std::min<std::uint32_t>(count - withoutWait, most);
    if (now < lastAt) {
        return wait;
    }
    // Unsigned: a damaged file may claim any time.
    const std::uint64_t waited = static_cast<std::uint64_t>(now) - static_cast<std::uint64_t>(lastAt);
    return waited >= static_cast<std::uint64_t>(wait) ? 0 : wait - static_cast<std::int64_t>(waited);
}

Result<bool> checkNewSecret(SecretKind kind, std::string_view secret)
{
    const auto refuse = [](const std::string& why) { return VaultError{Fault::WeakSecret, why}; };
    if (kind == SecretKind::Pin) {
        const base::Result<bool> form = keys::checkPin(secret);
        if (!form) {
            return refuse(form.error().sentence);
        }
        if (std::find(commonPins.begin(), commonPins.end(), secret) != commonPins.end()) {
            return refuse("That PIN is guessed first; choose digits without a pattern.");
        }
        return true;
    }
    constexpr std::size_t least = 8;
    constexpr std::size_t most = 200;
    constexpr std::size_t leastDifferent = 4;
    if (secret.size() < least) {
        return refuse("A passphrase has at least 8 characters; a few words that do not belong together are good.");
    }
    if (secret.size() > most || base::firstInvalidUtf8(secret) != std::string_view::npos) {
        return refuse("A passphrase has at most 200 characters.");
    }
    const std::string folded = base::foldCaseAndSpaces(secret);
    const bool common =
        std::find(commonPassphrases.begin(), commonPassphrases.end(), folded) != commonPassphrases.end();
    if (common || std::set(secret.begin(), secret.end()).size() < leastDifferent) {
        return refuse("That passphrase is guessed first; take a few words that do not belong together.");
    }
    const bool digits = std::all_of(secret.begin(), secret.end(), [](char c) { return c >= '0' && c <= '9'; });
    if (digits) {
        return refuse("A passphrase has more than digits; digits alone are a PIN, which is weaker.");
    }
    return true;
}

} // namespace peelpack::vault
