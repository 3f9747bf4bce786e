#pragma once

#include "sync/keys/bytes.h"
#include "sync/keys/random.h"
#include "sync/keys/secret.h"
#include "sync/keys/shared_bytes.h"

#include <array>
#include <optional>
#include <string_view>

namespace peelpack::vault {

/// Seals the rows of one vault under its data key: 24 random bytes of nonce, ciphertext, 16 bytes of tag. The place of
/// a row is bound to it, so that a row moved elsewhere or to another vault does not open.
class Sealer {
public:
    static constexpr std::size_t overheadBytes = 40;

    Sealer(const keys::Id& vault, keys::Secret dataKey, keys::RandomSource& random)
        : m_vault(vault), m_dataKey(std::move(dataKey)), m_random(random)
    {
    }

    [[nodiscard]] const keys::Id& vault() const { return m_vault; }
    [[nodiscard]] const keys::Secret& dataKey() const { return m_dataKey; }

    /// `place` tells rows apart: what table, what number.
    [[nodiscard]] keys::Bytes seal(keys::ByteView place, keys::ByteView plain) const;
    /// Empty when the row is damaged, or belongs elsewhere.
    [[nodiscard]] std::optional<keys::Bytes> open(keys::ByteView place, keys::ByteView sealed) const;
    /// The same, kept among others in a block.
    [[nodiscard]] std::optional<keys::SharedBytes> open(keys::ByteView place, keys::ByteView sealed,
                                                        keys::SharedBlocks& blocks) const;

private:
    [[nodiscard]] bool openInto(std::span<std::uint8_t> plain, keys::ByteView place, keys::ByteView sealed) const;

    keys::Id m_vault;
    keys::Secret m_dataKey;
    keys::RandomSource& m_random;
};

/// The place of row `number` of entries: its number, feed number and seq.
std::array<std::uint8_t, 17> entryPlace(std::uint64_t number, std::uint32_t feed, std::uint32_t seq);
/// The place of a row of another table.
keys::Bytes namedPlace(std::string_view table, std::string_view name);

/// What is known of all rows of entries together: how many, and a digest over each one's place and tag. It is sealed in
/// the same transaction as the rows, so that a missing, extra or exchanged row shows.
struct Chain {
    std::uint64_t rows = 0;
    keys::Hash digest;

    void add(keys::ByteView place, keys::ByteView sealed);
    [[nodiscard]] keys::Bytes bytes() const;
    static std::optional<Chain> from(keys::ByteView bytes);
    bool operator==(const Chain&) const = default;
};

} // namespace peelpack::vault
