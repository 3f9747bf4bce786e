#include "sync/keys/hash.h"

#include <array>
#include <cstdlib>
#include <sodium.h>

namespace peelpack::keys {
namespace {

void mustHash(std::span<std::uint8_t> out, Personal personal, std::initializer_list<ByteView> pieces, ByteView key = {})
{
    if (!blake2b(out, personal, pieces, key)) {
        std::abort(); // only a wrong constant of this library leads here
    }
}

} // namespace

bool blake2b(std::span<std::uint8_t> out, Personal personal, std::initializer_list<ByteView> pieces, ByteView key)
{
    if (out.size() < crypto_generichash_blake2b_BYTES_MIN || out.size() > crypto_generichash_blake2b_BYTES_MAX ||
        key.size() > crypto_generichash_blake2b_KEYBYTES_MAX ||
        (!personal.empty() && personal.size() != crypto_generichash_blake2b_PERSONALBYTES)) {
        return false;
    }
    std::array<std::uint8_t, crypto_generichash_blake2b_PERSONALBYTES> personalBytes{};
    std::copy(personal.begin(), personal.end(), personalBytes.begin());
    crypto_generichash_blake2b_state state;
    if (crypto_generichash_blake2b_init_salt_personal(&state, key.empty() ? nullptr : key.data(), key.size(),
                                                      out.size(), nullptr, personalBytes.data()) != 0) {
        return false;
    }
    for (const ByteView piece : pieces) {
        crypto_generichash_blake2b_update(&state, piece.data(), piece.size());
    }
    const bool done = crypto_generichash_blake2b_final(&state, out.data(), out.size()) == 0;
    sodium_memzero(&state, sizeof(state));
    return done;
}

Hash hash(Personal personal, std::initializer_list<ByteView> pieces)
{
    Hash result;
    mustHash(result.bytes, personal, pieces);
    return result;
}

Id shortHash(Personal personal, std::initializer_list<ByteView> pieces)
{
    Id result;
    mustHash(result.bytes, personal, pieces);
    return result;
}

Secret keyedHash(Personal personal, std::initializer_list<ByteView> pieces, ByteView key)
{
    Secret result(Hash::size);
    mustHash(result.writable(), personal, pieces, key);
    return result;
}

Hash authenticator(Personal personal, std::initializer_list<ByteView> pieces, ByteView key)
{
    Hash result;
    mustHash(result.bytes, personal, pieces, key);
    return result;
}

bool sameHash(const Hash& left, const Hash& right)
{
    return sodium_memcmp(left.bytes.data(), right.bytes.data(), Hash::size) == 0;
}

} // namespace peelpack::keys
