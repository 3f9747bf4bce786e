#include "sync/keys/password.h"

#include <sodium.h>

namespace peelpack::keys {

base::Result<Secret> stretch(ByteView password, ByteView salt, const PasswordCost& cost, std::size_t size)
{
    constexpr std::size_t leastBytes = 16;
    constexpr std::size_t mostBytes = 1024;
    if (cost.memoryBytes > highestCost.memoryBytes || cost.passes > highestCost.passes) {
        return base::Error{base::ErrorCode::BadValue,
                           "The cost asked for unlocking is above 64 MiB or 4 passes; this is not one of our files."};
    }
    if (cost.memoryBytes < crypto_pwhash_argon2id_MEMLIMIT_MIN || cost.passes < crypto_pwhash_argon2id_OPSLIMIT_MIN) {
        return base::Error{base::ErrorCode::BadValue, "The cost asked for unlocking is too low to protect anything."};
    }
    if (salt.size() != passwordSaltBytes || size < leastBytes || size > mostBytes) {
        return base::Error{base::ErrorCode::BadValue, "A salt has 16 bytes and a stretched key 16 to 1024."};
    }
    Secret result(size);
    if (crypto_pwhash_argon2id(result.writable().data(), size, reinterpret_cast<const char*>(password.data()),
                               password.size(), salt.data(), cost.passes, static_cast<std::size_t>(cost.memoryBytes),
                               crypto_pwhash_argon2id_ALG_ARGON2ID13) != 0) {
        return base::Error{base::ErrorCode::CannotRead,
                           "There is not enough memory to check the PIN; close other apps and try again."};
    }
    return result;
}

base::Result<bool> checkPin(std::string_view pin)
{
    constexpr std::size_t least = 6;
    constexpr std::size_t most = 12;
    bool alike = true;
    bool up = true;
    bool down = true;
    for (std::size_t i = 0; i < pin.size(); ++i) {
        if (pin[i] < '0' || pin[i] > '9') {
            return base::Error{base::ErrorCode::BadValue, "A PIN has digits only."};
        }
        if (i > 0) {
            alike = alike && pin[i] == pin[i - 1];
            up = up && pin[i] == pin[i - 1] + 1;
            down = down && pin[i] + 1 == pin[i - 1];
        }
    }
    if (pin.size() < least || pin.size() > most) {
        return base::Error{base::ErrorCode::BadValue, "A PIN has 6 to 12 digits."};
    }
    if (alike || up || down) {
        return base::Error{base::ErrorCode::BadValue, "That PIN is guessed first; choose digits without a pattern."};
    }
    return true;
}

} // namespace peelpack::keys
