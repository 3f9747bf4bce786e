#pragma once

#include "sync/keys/bytes.h"
#include "sync/keys/secret.h"

#include <initializer_list>
#include <string_view>

namespace peelpack::keys {

/// What a hash is for: 16 ASCII characters, or empty for none (RFC 7693, personalization).
using Personal = std::string_view;

/// BLAKE2b over the pieces one after another, as FORMAT.md section 1 writes H(n, p, m; k): `out` has 16 to 64 bytes,
/// `key` none to 64. False when a length is outside that or the personalization is neither 0 nor 16 characters.
[[nodiscard]] bool blake2b(std::span<std::uint8_t> out, Personal personal, std::initializer_list<ByteView> pieces,
                           ByteView key = {});

/// 32 bytes without a key. `personal` is one of this library's own, 16 characters.
Hash hash(Personal personal, std::initializer_list<ByteView> pieces);
/// 16 bytes without a key.
Id shortHash(Personal personal, std::initializer_list<ByteView> pieces);
/// 32 bytes with a key of 1 to 64 bytes, into locked memory.
Secret keyedHash(Personal personal, std::initializer_list<ByteView> pieces, ByteView key);
/// 32 bytes with a key; the result is not secret (a code that others compare).
Hash authenticator(Personal personal, std::initializer_list<ByteView> pieces, ByteView key);
/// In constant time.
bool sameHash(const Hash& left, const Hash& right);

} // namespace peelpack::keys
