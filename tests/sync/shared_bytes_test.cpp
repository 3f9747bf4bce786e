#include "sync/keys/shared_bytes.h"
#include "tests/sync/support/catch.h"

#include <algorithm>
#include <vector>

namespace peelpack::test {
namespace {

using keys::SharedBlocks;
using keys::SharedBytes;

SharedBytes filled(SharedBlocks& blocks, std::size_t size, std::uint8_t fill)
{
    const std::span<std::uint8_t> room = blocks.room(size);
    REQUIRE(room.size() == size);
    std::fill(room.begin(), room.end(), fill);
    return blocks.keep(size);
}

} // namespace

TEST_CASE("Shared bytes are equal by content, and a copy shares its place", "[keys]")
{
    const SharedBytes bytes(keys::Bytes{1, 2, 3});
    const SharedBytes same = bytes;
    CHECK(same.data() == bytes.data());
    CHECK(SharedBytes::copyOf(bytes).data() != bytes.data());
    CHECK(SharedBytes::copyOf(bytes) == bytes);
    CHECK(bytes.toBytes() == keys::Bytes{1, 2, 3});
    CHECK(bytes != SharedBytes(keys::Bytes{1, 2}));
    CHECK(SharedBytes().empty());
    CHECK(SharedBytes(keys::Bytes{}) == SharedBytes::copyOf({}));
}

TEST_CASE("Pieces of blocks keep what they hold, whatever comes after them and however large it is", "[keys]")
{
    std::vector<SharedBytes> pieces;
    std::vector<std::size_t> sizes;
    {
        SharedBlocks blocks;
        for (std::size_t i = 0; i < 400; ++i) {
            sizes.push_back(i % 50 == 49 ? SharedBlocks::blockBytes + i : i * 7);
            static_cast<void>(blocks.room(sizes.back() + 1)); // asked for, and not kept
            pieces.push_back(filled(blocks, sizes.back(), static_cast<std::uint8_t>(i)));
        }
    }
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        CHECK(pieces[i] == keys::Bytes(sizes[i], static_cast<std::uint8_t>(i)));
    }
}

} // namespace peelpack::test
