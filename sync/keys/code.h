#pragma once

#include "core/base/result.h"
#include "sync/keys/secret.h"
#include "sync/keys/sign.h"

#include <string_view>

namespace peelpack::keys {

/// What a typed code is for; a code of one sort is refused as the other.
enum class CodeSort : std::uint8_t { Program, Vault, Card };

inline constexpr std::size_t codeSecretBytes = 16;
/// 7 groups of 5 symbols and 6 hyphens.
inline constexpr std::size_t codeTextLength = 41;

/// A code as it is shown once and typed back, in locked memory (ASCII, no zero at the end). Empty when `code` does not
/// have 16 bytes.
Secret codeText(CodeSort sort, ByteView code);
/// The 16 bytes. BadInput says which group is mistyped, or that it is the other sort of code.
base::Result<Secret> codeFromText(CodeSort sort, std::string_view text);

/// The program key that a program code re-creates. BadValue when the code does not have 16 bytes.
base::Result<SigningKey> programKey(ByteView code);
/// The key that a vault code gives for one vault. BadValue when the code does not have 16 bytes.
base::Result<Secret> vaultCodeKey(ByteView code, const Id& vault);

} // namespace peelpack::keys
