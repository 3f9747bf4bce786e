#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <string>

namespace peelpack::vault {

/// Why a vault could not be used. Closed: a caller may switch over it.
enum class Fault : std::uint8_t {
    WrongSecret, ///< not the passphrase, PIN or vault code
    MustWait,    ///< too many wrong tries; the sentence says how long
    Disabled,    ///< so many wrong tries that only the vault code opens it
    MarkMissing, ///< the install mark is not on this device: a copy, or a restored backup
    WeakSecret,  ///< a new passphrase or PIN that the rules refuse
    Damaged,     ///< it is a vault, and a part that is needed does not hold
    NotAVault,   ///< the file is something else
    Newer,       ///< made by a newer Peelpack
    InUse,       ///< another Peelpack has it open
    Exists,      ///< there is a file of that name already
    NotThere,    ///< there is no such file
    CannotRead,
    CannotWrite, ///< also: no space left; nothing was changed
};

/// A closed code for the program and a sentence for the person (US English, ends with a period, names no person).
struct VaultError {
    Fault fault = Fault::CannotRead;
    std::string sentence;
};

template <class T>
using Result = base::Result<T, VaultError>;

/// For callers that only tell reading from writing from input.
base::Error asError(const VaultError& error);

} // namespace peelpack::vault
