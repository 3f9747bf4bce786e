#pragma once

#include "sync/keys/bytes.h"
#include "sync/keys/secret.h"

namespace peelpack::keys {

/// Where random bytes come from. Passed in, so that a test can say what is random.
class RandomSource {
public:
    RandomSource() = default;
    RandomSource(const RandomSource&) = delete;
    RandomSource& operator=(const RandomSource&) = delete;
    RandomSource(RandomSource&&) = delete;
    RandomSource& operator=(RandomSource&&) = delete;
    virtual ~RandomSource() = default;

    /// Fills every byte.
    virtual void fill(std::span<std::uint8_t> bytes) = 0;

    Id id();
    Secret secret(std::size_t size);
};

/// The system's randomness, through libsodium. Safe on every thread.
class SystemRandom final : public RandomSource {
public:
    void fill(std::span<std::uint8_t> bytes) override;
};

} // namespace peelpack::keys
