#include "tests/sync/support/sign_again.h"

#include <sodium.h>

namespace peelpack::test {
namespace {

using Scalar = std::array<std::uint8_t, crypto_core_ed25519_SCALARBYTES>;

Scalar reducedDigest(std::initializer_list<keys::ByteView> pieces)
{
    crypto_hash_sha512_state state;
    crypto_hash_sha512_init(&state);
    for (const keys::ByteView piece : pieces) {
        crypto_hash_sha512_update(&state, piece.data(), piece.size());
    }
    std::array<std::uint8_t, crypto_hash_sha512_BYTES> digest{};
    crypto_hash_sha512_final(&state, digest.data());
    Scalar scalar{};
    crypto_core_ed25519_scalar_reduce(scalar.data(), digest.data());
    return scalar;
}

/// The secret scalar of RFC 8032, section 5.1.5.
Scalar secretScalar(keys::ByteView seed)
{
    std::array<std::uint8_t, crypto_hash_sha512_BYTES> digest{};
    crypto_hash_sha512(digest.data(), seed.data(), seed.size());
    Scalar scalar{};
    std::copy_n(digest.begin(), scalar.size(), scalar.begin());
    scalar.front() &= 0xF8U;
    scalar.back() = static_cast<std::uint8_t>((scalar.back() & 0x7FU) | 0x40U);
    return scalar;
}

} // namespace

keys::Signature signAgain(keys::ByteView seed, keys::ByteView message, keys::ByteView nonce)
{
    const Scalar secret = secretScalar(seed);
    const Scalar chosen = reducedDigest({keys::bytesOf("nonce"), seed, nonce, message});
    keys::VerifyKey key;
    crypto_scalarmult_ed25519_base_noclamp(key.bytes.data(), secret.data());
    keys::Signature signature;
    crypto_scalarmult_ed25519_base_noclamp(signature.bytes.data(), chosen.data());
    const Scalar challenge =
        reducedDigest({keys::ByteView(signature.bytes).first(keys::VerifyKey::size), key.view(), message});
    Scalar product{};
    crypto_core_ed25519_scalar_mul(product.data(), challenge.data(), secret.data());
    crypto_core_ed25519_scalar_add(signature.bytes.data() + keys::VerifyKey::size, product.data(), chosen.data());
    return signature;
}

} // namespace peelpack::test
