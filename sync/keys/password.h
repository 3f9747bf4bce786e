#pragma once

#include "core/base/result.h"
#include "sync/keys/bytes.h"
#include "sync/keys/secret.h"

namespace peelpack::keys {

/// What Argon2id may cost. One lane.
struct PasswordCost {
    std::uint64_t memoryBytes = 0;
    std::uint64_t passes = 0;
};

/// What version 1 of the format uses (journal document, section 1).
inline constexpr PasswordCost standardCost{64ULL * 1024 * 1024, 3};
/// The most that a cost read from outside may ask for.
inline constexpr PasswordCost highestCost{64ULL * 1024 * 1024, 4};

inline constexpr std::size_t passwordSaltBytes = 16;

/// Argon2id version 0x13 (RFC 9106), `size` bytes (16 to 1024) into locked memory. BadValue, before anything is run or
/// set aside, when the cost is above highestCost or below 8 KiB and 1 pass, or a length is wrong. CannotRead when the
/// system has no memory for it.
base::Result<Secret> stretch(ByteView password, ByteView salt, const PasswordCost& cost, std::size_t size = 32);

/// A PIN that a person may choose: 6 to 12 digits, not all alike, not up or down by ones throughout. BadValue says what
/// is wrong.
base::Result<bool> checkPin(std::string_view pin);

} // namespace peelpack::keys
