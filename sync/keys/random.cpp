#include "sync/keys/random.h"

#include <cstdlib>
#include <sodium.h>

namespace peelpack::keys {

Id RandomSource::id()
{
    Id id;
    fill(id.bytes);
    return id;
}

Secret RandomSource::secret(std::size_t size)
{
    Secret secret(size);
    fill(secret.writable());
    return secret;
}

void SystemRandom::fill(std::span<std::uint8_t> bytes)
{
    if (sodium_init() < 0) {
        std::abort(); // no source of randomness: going on would make guessable keys
    }
    randombytes_buf(bytes.data(), bytes.size());
}

} // namespace peelpack::keys
