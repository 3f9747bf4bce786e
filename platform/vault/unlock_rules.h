#pragma once

#include "platform/vault/vault_error.h"

#include <cstdint>
#include <optional>
#include <string_view>

namespace peelpack::vault {

enum class SecretKind : std::uint8_t { Passphrase = 1, Pin = 2 };

/// Wrong tries of the passphrase or PIN since the last right one (NIST SP 800-63B-4, activation secrets: attempts are
/// limited). The vault's code is not counted: it has 128 random bits.
struct WrongTries {
    std::uint32_t count = 0;
    std::int64_t lastAt = 0; ///< seconds since 1970, UTC

    static constexpr std::uint32_t withoutWait = 5;
    static constexpr std::uint32_t most = 10;

    [[nodiscard]] bool disabled() const { return count >= most; }
    /// Seconds that are left to wait at `now`; 0: try. 30 after the fifth wrong try, doubled by each further one. A
    /// clock that was set back never shortens it and never makes it longer than it was at first.
    [[nodiscard]] std::int64_t waitLeft(std::int64_t now) const;
};

/// Whether a person may choose this passphrase (8 to 200 characters, not one of the first guesses) or PIN (6 to 12
/// digits, not one of the commonest). WeakSecret says what is wrong.
Result<bool> checkNewSecret(SecretKind kind, std::string_view secret);

} // namespace peelpack::vault
