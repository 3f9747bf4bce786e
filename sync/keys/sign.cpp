#include "sync/keys/sign.h"

#include <sodium.h>

namespace peelpack::keys {

base::Result<SigningKey> SigningKey::fromSeed(ByteView seed)
{
    if (seed.size() != seedBytes) {
        return base::Error{base::ErrorCode::BadValue, "A signing seed has 32 bytes."};
    }
    Secret secret(crypto_sign_ed25519_SECRETKEYBYTES);
    VerifyKey verifyKey;
    crypto_sign_ed25519_seed_keypair(verifyKey.bytes.data(), secret.writable().data(), seed.data());
    return SigningKey(std::move(secret), verifyKey);
}

base::Result<SigningKey> SigningKey::fromStored(ByteView seed, const VerifyKey& stored)
{
    auto key = fromSeed(seed);
    if (key && key.value().verifyKey() != stored) {
        return base::Error{base::ErrorCode::BadValue,
                           "The stored public key does not belong to the stored seed; nothing is signed with it."};
    }
    return key;
}

Signature SigningKey::sign(ByteView message) const
{
    Signature signature;
    crypto_sign_ed25519_detached(signature.bytes.data(), nullptr, message.data(), message.size(),
                                 m_secret.view().data());
    return signature;
}

bool verify(const VerifyKey& key, ByteView message, const Signature& signature)
{
    return crypto_sign_ed25519_verify_detached(signature.bytes.data(), message.data(), message.size(),
                                               key.bytes.data()) == 0;
}

bool usable(const VerifyKey& key)
{
    return crypto_core_ed25519_is_valid_point(key.bytes.data()) == 1;
}

bool UsableKeys::usable(const VerifyKey& key)
{
    if (m_known.contains(key)) {
        return true;
    }
    if (!keys::usable(key)) {
        return false;
    }
    m_known.insert(key);
    return true;
}

} // namespace peelpack::keys
