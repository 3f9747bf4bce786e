#include "platform/evidence/merkle.h"

#include <bit>

namespace peelpack::evidence {
namespace {

/// Leaves in the left part of a tree of two leaves and more: the largest power of two below their number.
std::size_t leftSize(std::size_t size)
{
    return std::bit_ceil(size) / 2;
}

} // namespace

Digest leafDigest(keys::ByteView leaf)
{
    constexpr std::array<std::uint8_t, 1> mark{0};
    return sha256({mark, leaf});
}

Digest nodeDigest(keys::ByteView left, keys::ByteView right)
{
    constexpr std::array<std::uint8_t, 1> mark{1};
    return sha256({mark, left, right});
}

Digest treeRoot(std::span<const Digest> leaves)
{
    if (leaves.empty()) {
        return sha256({});
    }
    if (leaves.size() == 1) {
        return leaves.front();
    }
    const std::size_t left = leftSize(leaves.size());
    return nodeDigest(treeRoot(leaves.first(left)).view(), treeRoot(leaves.subspan(left)).view());
}

std::vector<Digest> inclusionPath(std::span<const Digest> leaves, std::size_t index)
{
    if (leaves.size() <= 1) {
        return {};
    }
    const std::size_t left = leftSize(leaves.size());
    const bool inLeft = index < left;
    std::vector<Digest> path =
        inLeft ? inclusionPath(leaves.first(left), index) : inclusionPath(leaves.subspan(left), index - left);
    path.push_back(treeRoot(inLeft ? leaves.subspan(left) : leaves.first(left)));
    return path;
}

bool isIncluded(const Digest& root, std::uint64_t size, std::uint64_t index, const Digest& leaf,
                std::span<const Digest> path)
{
    if (index >= size) {
        return false;
    }
    std::uint64_t at = index;
    std::uint64_t last = size - 1;
    Digest above = leaf;
    for (const Digest& beside : path) {
        if (last == 0) {
            return false;
        }
        if (at % 2 == 1 || at == last) {
            above = nodeDigest(beside.view(), above.view());
            while (at % 2 == 0 && at != 0) {
                at /= 2;
                last /= 2;
            }
        } else {
            above = nodeDigest(above.view(), beside.view());
        }
        at /= 2;
        last /= 2;
    }
    return last == 0 && above == root;
}

} // namespace peelpack::evidence
