#pragma once

#include "platform/vault/unlock_rules.h"
#include "platform/vault/vault_error.h"
#include "sync/keys/random.h"
#include "sync/keys/secret.h"

namespace peelpack::vault {

/// What wraps the data key.
enum class SlotKind : std::uint8_t { Passphrase = 1, Pin = 2, VaultCode = 3 };

/// The data key wrapped under a passphrase or PIN together with the install mark, or under the vault code. The
/// commitment tells a wrong secret from damage, the mark's check a missing mark from a wrong secret.
struct Slot {
    SlotKind kind = SlotKind::Passphrase;
    keys::Bytes salt;      ///< 16 bytes; zero for the vault code
    keys::Id markCheck;    ///< zero for the vault code
    keys::Hash commitment; ///< of the wrapping key
    keys::Bytes sealed;    ///< the data key: nonce, ciphertext, tag
    keys::Id checksum;     ///< over all of it, against accidents

    [[nodiscard]] keys::Id rightChecksum(const keys::Id& vault) const;
    bool operator==(const Slot&) const = default;
};

/// Stretches the secret (Argon2id, 64 MiB, 3 passes). CannotRead: no memory for it.
Result<Slot> wrapUnderSecret(SecretKind kind, const keys::Id& vault, keys::ByteView secret, const keys::Secret& mark,
                             const keys::Secret& dataKey, keys::RandomSource& random);
/// `code` has 16 bytes.
Slot wrapUnderCode(const keys::Id& vault, keys::ByteView code, const keys::Secret& dataKey, keys::RandomSource& random);

/// The data key. Damaged, MarkMissing (the mark is another, or empty), WrongSecret, in this order.
Result<keys::Secret> unwrapWithSecret(const Slot& slot, const keys::Id& vault, keys::ByteView secret,
                                      const keys::Secret& mark);
/// The data key. Damaged, WrongSecret.
Result<keys::Secret> unwrapWithCode(const Slot& slot, const keys::Id& vault, keys::ByteView code);

} // namespace peelpack::vault
