#pragma once

#include "platform/evidence/merkle.h"

#include <span>

namespace peelpack::test {

/// What the tree must answer when it has grown, as RFC 9162 section 2.1.4.2 checks it: that the `size1` leaves under
/// `root1` are the first of the `size2` leaves under `root2`. Roots of equal sizes are compared, whatever bytes they
/// are. Nothing in the product needs such proofs; the published ones check its tree digests once more.
[[nodiscard]] bool isConsistent(std::uint64_t size1, std::uint64_t size2, keys::ByteView root1, keys::ByteView root2,
                                std::span<const evidence::Digest> proof);

/// Section 2.1.4.1: the proof itself. `size1` is at least 1 and at most the number of leaves.
std::vector<evidence::Digest> consistencyProof(std::span<const evidence::Digest> leaves, std::size_t size1);

} // namespace peelpack::test
