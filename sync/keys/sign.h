#pragma once

#include "core/base/result.h"
#include "sync/keys/bytes.h"
#include "sync/keys/secret.h"

#include <set>

namespace peelpack::keys {

/// An Ed25519 key that can sign (RFC 8032). The public half is always derived here from the seed: signing with a public
/// half from elsewhere would give the secret away.
class SigningKey {
public:
    static constexpr std::size_t seedBytes = 32;

    /// BadValue when the seed does not have 32 bytes.
    static base::Result<SigningKey> fromSeed(ByteView seed);
    /// As fromSeed; also BadValue when the public half that was stored beside the seed is not the seed's.
    static base::Result<SigningKey> fromStored(ByteView seed, const VerifyKey& stored);

    [[nodiscard]] const VerifyKey& verifyKey() const { return m_verifyKey; }
    [[nodiscard]] Signature sign(ByteView message) const;

private:
    SigningKey(Secret secret, const VerifyKey& verifyKey) : m_secret(std::move(secret)), m_verifyKey(verifyKey) {}

    Secret m_secret; // seed, then public half, as libsodium wants it
    VerifyKey m_verifyKey;
};

/// Strict: false for an S that is not below the group order, for an R or public key that is not canonical or of small
/// order, and for every signature that does not fit (FORMAT.md section 1).
[[nodiscard]] bool verify(const VerifyKey& key, ByteView message, const Signature& signature);

/// False for a point that is not on the curve, not canonical, of small order or outside the main subgroup. Checked once
/// when a key is first taken in.
[[nodiscard]] bool usable(const VerifyKey& key);

/// Remembers which keys were found usable, so that a key that signed much is checked once: it costs as much as
/// verifying a signature.
class UsableKeys {
public:
    [[nodiscard]] bool usable(const VerifyKey& key);

private:
    std::set<VerifyKey> m_known;
};

} // namespace peelpack::keys
