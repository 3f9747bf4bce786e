#include "tests/platform/support/consistency.h"

#include <algorithm>
#include <bit>

namespace peelpack::test {
namespace {

using evidence::Digest;
using evidence::nodeDigest;

std::vector<Digest> subProof(std::span<const Digest> leaves, std::size_t size, bool whole)
{
    if (size == leaves.size()) {
        return whole ? std::vector<Digest>() : std::vector<Digest>{evidence::treeRoot(leaves)};
    }
    const std::size_t left = std::bit_ceil(leaves.size()) / 2;
    const bool inLeft = size <= left;
    std::vector<Digest> proof =
        inLeft ? subProof(leaves.first(left), size, whole) : subProof(leaves.subspan(left), size - left, false);
    proof.push_back(evidence::treeRoot(inLeft ? leaves.subspan(left) : leaves.first(left)));
    return proof;
}

} // namespace

bool isConsistent(std::uint64_t size1, std::uint64_t size2, keys::ByteView root1, keys::ByteView root2,
                  std::span<const Digest> proof)
{
    if (size1 == 0 || size1 > size2) {
        return false;
    }
    if (size1 == size2) {
        return proof.empty() && std::ranges::equal(root1, root2);
    }
    const auto older = Digest::from(root1);
    const auto newer = Digest::from(root2);
    if (!older || !newer) {
        return false;
    }
    std::vector<Digest> path(proof.begin(), proof.end());
    if (std::has_single_bit(size1)) {
        path.insert(path.begin(), *older);
    }
    if (path.empty()) {
        return false;
    }
    std::uint64_t at = size1 - 1;
    std::uint64_t last = size2 - 1;
    while (at % 2 == 1) {
        at /= 2;
        last /= 2;
    }
    Digest first = path.front();
    Digest second = path.front();
    for (std::size_t i = 1; i < path.size(); ++i) {
        if (last == 0) {
            return false;
        }
        if (at % 2 == 1 || at == last) {
            first = nodeDigest(path[i].view(), first.view());
            second = nodeDigest(path[i].view(), second.view());
            while (at % 2 == 0 && at != 0) {
                at /= 2;
                last /= 2;
            }
        } else {
            second = nodeDigest(second.view(), path[i].view());
        }
        at /= 2;
        last /= 2;
    }
    return last == 0 && first == *older && second == *newer;
}

std::vector<Digest> consistencyProof(std::span<const Digest> leaves, std::size_t size1)
{
    return subProof(leaves, size1, true);
}

} // namespace peelpack::test
