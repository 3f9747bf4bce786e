#pragma once

#include "platform/evidence/digest.h"

#include <span>
#include <vector>

namespace peelpack::evidence {

/// The tree of RFC 9162 section 2.1 over SHA-256: one number stands for a list of leaves, and a few more prove that one
/// leaf is among them without showing another.
Digest leafDigest(keys::ByteView leaf);
/// Of two digests, one after another.
Digest nodeDigest(keys::ByteView left, keys::ByteView right);
/// The root over leaf digests in order; of none: the digest of nothing.
Digest treeRoot(std::span<const Digest> leaves);
/// What else is needed to come from the leaf at `index` to the root (section 2.1.3.1), from the bottom up. `index` is
/// below the number of leaves.
std::vector<Digest> inclusionPath(std::span<const Digest> leaves, std::size_t index);
/// Section 2.1.3.2. False for an index outside the tree and for a path that is too short or too long.
[[nodiscard]] bool isIncluded(const Digest& root, std::uint64_t size, std::uint64_t index, const Digest& leaf,
                              std::span<const Digest> path);

} // namespace peelpack::evidence
