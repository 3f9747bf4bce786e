#pragma once

#include "sync/keys/bytes.h"

#include <algorithm>
#include <bit>
#include <concepts>
#include <cstring>
#include <type_traits>

namespace peelpack::keys {

/// The bytes of a number, least significant first.
template <std::integral T>
std::array<std::uint8_t, sizeof(T)> littleEndian(T value)
{
    if constexpr (std::endian::native == std::endian::little) {
        return std::bit_cast<std::array<std::uint8_t, sizeof(T)>>(value);
    }
    std::array<std::uint8_t, sizeof(T)> bytes{};
    auto rest = static_cast<std::uint64_t>(static_cast<std::make_unsigned_t<T>>(value));
    for (auto& byte : bytes) {
        byte = static_cast<std::uint8_t>(rest & 0xFFU);
        rest >>= 8U;
    }
    return bytes;
}

/// Reads numbers and fixed bytes from the front of a view. Reading past the end sets failed(), gives zeros from then on
/// and never touches memory outside the view; so a parser checks once at the end.
class Reader {
public:
    explicit Reader(ByteView bytes) : m_left(bytes) {}

    template <std::integral T>
    T number()
    {
        const ByteView bytes = view(sizeof(T));
        if (bytes.empty()) {
            return T{};
        }
        if constexpr (std::endian::native == std::endian::little) {
            T value{};
            std::memcpy(&value, bytes.data(), sizeof(T));
            return value;
        } else {
            std::uint64_t value = 0;
            for (std::size_t i = 0; i < sizeof(T); ++i) {
                value |= static_cast<std::uint64_t>(bytes[i]) << (8U * i);
            }
            return static_cast<T>(static_cast<std::make_unsigned_t<T>>(value));
        }
    }

    template <class Fixed>
    Fixed fixed()
    {
        Fixed value;
        const ByteView bytes = view(Fixed::size);
        std::copy(bytes.begin(), bytes.end(), value.bytes.begin());
        return value;
    }

    /// The next `count` bytes; none when fewer are left.
    ByteView view(std::size_t count)
    {
        if (count > m_left.size()) {
            m_failed = true;
            m_left = {};
            return {};
        }
        const ByteView result = m_left.first(count);
        m_left = m_left.subspan(count);
        return result;
    }

    [[nodiscard]] std::size_t left() const { return m_left.size(); }
    [[nodiscard]] bool failed() const { return m_failed; }

private:
    ByteView m_left;
    bool m_failed = false;
};

} // namespace peelpack::keys
