#pragma once

#include "sync/keys/bytes.h"

#include <initializer_list>

namespace peelpack::evidence {

/// SHA-256 (FIPS 180-4); of another type than the journal's own hashes.
using Digest = keys::FixedBytes<32, struct DigestTag>;

/// Over the pieces one after another.
Digest sha256(std::initializer_list<keys::ByteView> pieces);

} // namespace peelpack::evidence
