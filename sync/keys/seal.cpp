#include "sync/keys/seal.h"

#include <sodium.h>

namespace peelpack::keys {
namespace {

const base::Error wrongLength{base::ErrorCode::BadValue, "A sealing key has 32 bytes and a nonce 24."};

} // namespace

base::Result<OpeningKey> OpeningKey::fromSeed(ByteView seed)
{
    if (seed.size() != seedBytes) {
        return base::Error{base::ErrorCode::BadValue, "A sealing seed has 32 bytes."};
    }
    SealKey sealKey;
    crypto_scalarmult_curve25519_base(sealKey.bytes.data(), seed.data());
    return OpeningKey(Secret(seed), sealKey);
}

base::Result<Secret> OpeningKey::agree(const SealKey& other) const
{
    Secret shared(crypto_scalarmult_curve25519_BYTES);
    if (crypto_scalarmult_curve25519(shared.writable().data(), m_secret.view().data(), other.bytes.data()) != 0) {
        return base::Error{base::ErrorCode::BadValue, "The other side's sealing key is of small order and is refused."};
    }
    return shared;
}

bool usable(const SealKey& key)
{
    const auto any = OpeningKey::fromSeed(Bytes(OpeningKey::seedBytes, 1));
    return any && any.value().agree(key).ok();
}

base::Result<Bytes> aeadSeal(ByteView key, ByteView nonce, ByteView associated, ByteView plain)
{
    if (key.size() != aeadKeyBytes || nonce.size() != aeadNonceBytes) {
        return wrongLength;
    }
    Bytes sealed(plain.size() + aeadTagBytes);
    crypto_aead_xchacha20poly1305_ietf_encrypt(sealed.data(), nullptr, plain.data(), plain.size(), associated.data(),
                                               associated.size(), nullptr, nonce.data(), key.data());
    return sealed;
}

namespace {

bool decrypt(std::span<std::uint8_t> plain, ByteView key, ByteView nonce, ByteView associated, ByteView sealed)
{
    std::uint8_t none = 0;
    return crypto_aead_xchacha20poly1305_ietf_decrypt(plain.empty() ? &none : plain.data(), nullptr, nullptr,
                                                      sealed.data(), sealed.size(), associated.data(),
                                                      associated.size(), nonce.data(), key.data()) == 0;
}

} // namespace

bool aeadOpenInto(std::span<std::uint8_t> plain, ByteView key, ByteView nonce, ByteView associated, ByteView sealed)
{
    return key.size() == aeadKeyBytes && nonce.size() == aeadNonceBytes &&
           sealed.size() == plain.size() + aeadTagBytes && decrypt(plain, key, nonce, associated, sealed);
}

base::Result<Secret> aeadOpen(ByteView key, ByteView nonce, ByteView associated, ByteView sealed)
{
    if (key.size() != aeadKeyBytes || nonce.size() != aeadNonceBytes) {
        return wrongLength;
    }
    const base::Error damaged{base::ErrorCode::BadInput, "The sealed bytes were damaged, or the key is another."};
    if (sealed.size() < aeadTagBytes) {
        return damaged;
    }
    Secret plain(sealed.size() - aeadTagBytes);
    if (!decrypt(plain.writable(), key, nonce, associated, sealed)) {
        return damaged;
    }
    return plain;
}

} // namespace peelpack::keys
