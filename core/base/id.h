#pragma once

#include <algorithm>
#include <array>
#include <compare>
#include <cstddef>
#include <cstdint>
#include <string>

namespace peelpack::base {

/// Exactly N bytes that name something; each Tag is a type of its own, so that an entry is never taken for a sheet.
/// Default is all zero and names nothing. Ordered as bytes.
template <std::size_t N, class Tag>
struct Name {
    static constexpr std::size_t size = N;
    std::array<std::uint8_t, N> bytes{};

    [[nodiscard]] constexpr bool isZero() const
    {
        return std::all_of(bytes.begin(), bytes.end(), [](std::uint8_t byte) { return byte == 0; });
    }

    /// The first digits in lower-case hexadecimal; all of them unless fewer are asked for.
    [[nodiscard]] std::string hex(std::size_t digits = 2 * N) const
    {
        constexpr const char* values = "0123456789abcdef";
        std::string text(std::min(digits, 2 * N), '0');
        for (std::size_t i = 0; i < text.size(); ++i) {
            text[i] = values[i % 2 == 0 ? bytes[i / 2] >> 4U : bytes[i / 2] & 15U];
        }
        return text;
    }

    auto operator<=>(const Name&) const = default; // NOLINT(modernize-use-nullptr): a false alarm of version 14
};

/// A person, sheet or operation.
using Id = Name<16, struct RecordIdTag>;
/// One entry of a journal.
using EntryHash = Name<32, struct EntryHashTag>;
/// The key of a card or phone that signs, by its public half.
using SignerKey = Name<32, struct SignerKeyTag>;

} // namespace peelpack::base
