#include "platform/evidence/digest.h"

#include <sodium.h>

namespace peelpack::evidence {

Digest sha256(std::initializer_list<keys::ByteView> pieces)
{
    static_assert(Digest::size == crypto_hash_sha256_BYTES);
    crypto_hash_sha256_state state;
    crypto_hash_sha256_init(&state);
    for (const keys::ByteView piece : pieces) {
        crypto_hash_sha256_update(&state, piece.data(), piece.size());
    }
    Digest digest;
    crypto_hash_sha256_final(&state, digest.bytes.data());
    return digest;
}

} // namespace peelpack::evidence
