#pragma once

#include "core/base/result.h"
#include "sync/keys/bytes.h"
#include "sync/keys/secret.h"
#include "sync/keys/sign.h"

#include <string_view>

namespace peelpack::keys {

/// What a preceptor's signing card carries (FORMAT.md section 10). Without the PIN it signs nothing, and the PIN
/// without it neither. Hold it only for the seconds of signing.
struct SigningCard {
    static constexpr std::size_t codeBytes = 56;
    static constexpr std::size_t secretBytes = 16;

    Id programStream; ///< tells a card of another program apart; not secret
    Id card;
    std::uint32_t epoch = 0; ///< counts the replacements of a lost card
    Secret secret;

    /// BadInput for anything that is not exactly a card's bytes.
    static base::Result<SigningCard> fromCode(ByteView code);
    /// The QR code's bytes, in locked memory because the secret is in them.
    [[nodiscard]] Secret code() const;
};

/// The key of card and PIN. Costs 64 MiB and some tenths of a second. BadValue when the card is of another program or
/// the PIN has a form that no PIN has. A wrong PIN gives another key, which only the roster's public half tells.
base::Result<SigningKey> cardKey(const SigningCard& card, const VerifyKey& program, std::string_view pin);

/// As cardKey, and BadValue "wrong PIN" unless the public half is the roster's.
base::Result<SigningKey> cardKeyFor(const SigningCard& card, const VerifyKey& program, std::string_view pin,
                                    const VerifyKey& roster);

/// The id of the program stream, the same on every staff device of the program (FORMAT.md section 1).
Id programStream(const VerifyKey& program);

} // namespace peelpack::keys
