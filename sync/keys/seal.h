#pragma once

#include "core/base/result.h"
#include "sync/keys/bytes.h"
#include "sync/keys/secret.h"

namespace peelpack::keys {

/// An X25519 key that can open what was sealed to its public half (RFC 7748).
class OpeningKey {
public:
    static constexpr std::size_t seedBytes = 32;

    /// BadValue when the seed does not have 32 bytes.
    static base::Result<OpeningKey> fromSeed(ByteView seed);

    [[nodiscard]] const SealKey& sealKey() const { return m_sealKey; }
    /// The 32 shared bytes; BadValue when they are all zero, which happens with a public key of small order.
    [[nodiscard]] base::Result<Secret> agree(const SealKey& other) const;

private:
    OpeningKey(Secret secret, const SealKey& sealKey) : m_secret(std::move(secret)), m_sealKey(sealKey) {}

    Secret m_secret;
    SealKey m_sealKey;
};

/// False for a public key of small order: nothing can be sealed to it. Checked once when a key is first taken in.
[[nodiscard]] bool usable(const SealKey& key);

inline constexpr std::size_t aeadKeyBytes = 32;
inline constexpr std::size_t aeadNonceBytes = 24;
inline constexpr std::size_t aeadTagBytes = 16;

/// XChaCha20-Poly1305: ciphertext, then the tag. BadValue when key or nonce has another length.
base::Result<Bytes> aeadSeal(ByteView key, ByteView nonce, ByteView associated, ByteView plain);
/// BadValue for a wrong length of key or nonce; BadInput when the tag does not fit.
base::Result<Secret> aeadOpen(ByteView key, ByteView nonce, ByteView associated, ByteView sealed);
/// The same into ordinary memory, for what is not a key: `plain` has as many bytes as `sealed` without its tag. False:
/// nothing was opened, and what `plain` holds is not defined.
[[nodiscard]] bool aeadOpenInto(std::span<std::uint8_t> plain, ByteView key, ByteView nonce, ByteView associated,
                                ByteView sealed);

} // namespace peelpack::keys
