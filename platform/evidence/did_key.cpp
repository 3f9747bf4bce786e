#include "platform/evidence/did_key.h"

#include "platform/evidence/multibase.h"
#include "sync/keys/sign.h"

#include <sodium.h>

namespace peelpack::evidence {
namespace {

constexpr std::string_view scheme = "did:key:";
/// Multicodec ed25519-pub, 0xed, as an unsigned varint.
constexpr std::array<std::uint8_t, 2> ed25519Public{0xED, 0x01};
/// Multicodec x25519-pub, 0xec.
constexpr std::array<std::uint8_t, 2> x25519Public{0xEC, 0x01};

std::string coded(keys::ByteView codec, keys::ByteView key)
{
    keys::Bytes bytes(codec.begin(), codec.end());
    keys::append(bytes, key);
    return multibase(bytes);
}

std::string keyText(const keys::VerifyKey& key)
{
    return coded(ed25519Public, key.view());
}

} // namespace

std::string didOf(const keys::VerifyKey& key)
{
    return std::string(scheme) + keyText(key);
}

std::string methodOf(const keys::VerifyKey& key)
{
    return didOf(key) + "#" + keyText(key);
}

std::optional<keys::VerifyKey> keyOfDid(std::string_view did)
{
    if (!did.starts_with(scheme)) {
        return std::nullopt;
    }
    const std::optional<keys::Bytes> bytes = fromMultibase(did.substr(scheme.size()));
    if (!bytes || bytes->size() < ed25519Public.size() ||
        !std::equal(ed25519Public.begin(), ed25519Public.end(), bytes->begin())) {
        return std::nullopt;
    }
    const auto key = keys::VerifyKey::from(keys::ByteView(*bytes).subspan(ed25519Public.size()));
    return key && keys::usable(*key) ? key : std::nullopt;
}

std::optional<keys::VerifyKey> keyOfMethod(std::string_view method)
{
    const std::optional<keys::VerifyKey> key = keyOfDid(method.substr(0, method.find('#')));
    return key && methodOf(*key) == method ? key : std::nullopt;
}

std::optional<keys::SealKey> agreementKeyOf(const keys::VerifyKey& key)
{
    keys::SealKey other;
    const bool made = crypto_sign_ed25519_pk_to_curve25519(other.bytes.data(), key.bytes.data()) == 0;
    return made ? std::optional(other) : std::nullopt;
}

std::string agreementText(const keys::SealKey& key)
{
    return coded(x25519Public, key.view());
}

} // namespace peelpack::evidence
