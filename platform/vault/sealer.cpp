#include "platform/vault/sealer.h"

#include "sync/keys/hash.h"
#include "sync/keys/little_endian.h"
#include "sync/keys/seal.h"

namespace peelpack::vault {
namespace {

keys::Bytes associatedData(const keys::Id& vault, keys::ByteView place)
{
    keys::Bytes bytes;
    bytes.reserve(keys::Id::size + place.size());
    keys::append(bytes, vault.view());
    keys::append(bytes, place);
    return bytes;
}

} // namespace

keys::Bytes Sealer::seal(keys::ByteView place, keys::ByteView plain) const
{
    keys::Bytes row(keys::aeadNonceBytes);
    m_random.fill(row);
    keys::append(row, keys::aeadSeal(m_dataKey.view(), row, associatedData(m_vault, place), plain).value());
    return row;
}

bool Sealer::openInto(std::span<std::uint8_t> plain, keys::ByteView place, keys::ByteView sealed) const
{
    return keys::aeadOpenInto(plain, m_dataKey.view(), sealed.first(keys::aeadNonceBytes),
                              associatedData(m_vault, place), sealed.subspan(keys::aeadNonceBytes));
}

std::optional<keys::Bytes> Sealer::open(keys::ByteView place, keys::ByteView sealed) const
{
    if (sealed.size() < overheadBytes) {
        return std::nullopt;
    }
    keys::Bytes plain(sealed.size() - overheadBytes);
    return openInto(plain, place, sealed) ? std::optional(std::move(plain)) : std::nullopt;
}

std::optional<keys::SharedBytes> Sealer::open(keys::ByteView place, keys::ByteView sealed,
                                              keys::SharedBlocks& blocks) const
{
    if (sealed.size() < overheadBytes) {
        return std::nullopt;
    }
    const std::span<std::uint8_t> plain = blocks.room(sealed.size() - overheadBytes);
    return openInto(plain, place, sealed) ? std::optional(blocks.keep(plain.size())) : std::nullopt;
}

std::array<std::uint8_t, 17> entryPlace(std::uint64_t number, std::uint32_t feed, std::uint32_t seq)
{
    std::array<std::uint8_t, 17> place{'e'};
    auto at = place.begin() + 1;
    const auto put = [&](const auto& bytes) { at = std::copy(bytes.begin(), bytes.end(), at); };
    put(keys::littleEndian(number));
    put(keys::littleEndian(feed));
    put(keys::littleEndian(seq));
    return place;
}

keys::Bytes namedPlace(std::string_view table, std::string_view name)
{
    keys::Bytes place{'t'};
    keys::append(place, keys::bytesOf(table));
    place.push_back(0);
    keys::append(place, keys::bytesOf(name));
    return place;
}

void Chain::add(keys::ByteView place, keys::ByteView sealed)
{
    const keys::ByteView tag = sealed.last(std::min(sealed.size(), keys::aeadTagBytes));
    digest = keys::hash("peelpack.vchain1", {digest.view(), place, tag});
    ++rows;
}

keys::Bytes Chain::bytes() const
{
    keys::Bytes bytes;
    keys::append(bytes, keys::littleEndian(rows));
    keys::append(bytes, digest.view());
    return bytes;
}

std::optional<Chain> Chain::from(keys::ByteView bytes)
{
    keys::Reader reader(bytes);
    Chain chain;
    chain.rows = reader.number<std::uint64_t>();
    chain.digest = reader.fixed<keys::Hash>();
    if (reader.failed() || reader.left() != 0) {
        return std::nullopt;
    }
    return chain;
}

} // namespace peelpack::vault
