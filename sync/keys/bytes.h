#pragma once

#include <algorithm>
#include <array>
#include <compare>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace peelpack::keys {

/// Bytes of any length, owned. Empty means no bytes.
using Bytes = std::vector<std::uint8_t>;
/// Bytes of any length, lent.
using ByteView = std::span<const std::uint8_t>;

/// Exactly N bytes; each Tag is a type of its own, so that a key is never taken for a hash. Default is all zero.
/// Ordered as bytes.
template <std::size_t N, class Tag>
struct FixedBytes {
    static constexpr std::size_t size = N;
    std::array<std::uint8_t, N> bytes{};

    /// Empty when `view` does not have exactly N bytes.
    static std::optional<FixedBytes> from(ByteView view)
    {
        if (view.size() != N) {
            return std::nullopt;
        }
        FixedBytes result;
        std::copy(view.begin(), view.end(), result.bytes.begin());
        return result;
    }

    [[nodiscard]] ByteView view() const { return ByteView(bytes); }
    [[nodiscard]] bool isZero() const
    {
        return std::all_of(bytes.begin(), bytes.end(), [](std::uint8_t byte) { return byte == 0; });
    }

    auto operator<=>(const FixedBytes&) const = default; // NOLINT(modernize-use-nullptr): a false alarm of version 14
};

using VerifyKey = FixedBytes<32, struct VerifyKeyTag>; ///< public half of an Ed25519 key
using SealKey = FixedBytes<32, struct SealKeyTag>;     ///< public half of an X25519 key
using Signature = FixedBytes<64, struct SignatureTag>; ///< Ed25519
using Hash = FixedBytes<32, struct HashTag>;           ///< BLAKE2b-256
using Id = FixedBytes<16, struct IdTag>;               ///< 128 random bits: person, sheet, operation, card, stream

/// The bytes of an ASCII tag, without a zero at the end.
inline ByteView bytesOf(std::string_view text)
{
    return {reinterpret_cast<const std::uint8_t*>(text.data()), text.size()};
}

inline bool startsWith(ByteView bytes, std::string_view tag)
{
    const ByteView expected = bytesOf(tag);
    return bytes.size() >= expected.size() && std::equal(expected.begin(), expected.end(), bytes.begin());
}

inline void append(Bytes& target, ByteView view)
{
    target.insert(target.end(), view.begin(), view.end());
}

/// Has memory brought near that is read a little later: worth it where many entries are walked through once.
inline void readSoon(ByteView view)
{
#ifdef __GNUC__
    constexpr std::size_t lineBytes = 64;
    for (std::size_t at = 0; at < view.size(); at += lineBytes) {
        __builtin_prefetch(view.data() + at);
    }
#endif
}

/// Lower-case hexadecimal.
std::string hex(ByteView view);
/// Empty when `text` is not an even number of hexadecimal digits.
std::optional<Bytes> fromHex(std::string_view text);

} // namespace peelpack::keys
