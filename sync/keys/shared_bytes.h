#pragma once

#include "sync/keys/bytes.h"

#include <memory>

namespace peelpack::keys {

/// Bytes of any length that nobody changes any more. A copy costs nothing: copies share one place, which lives as long
/// as any of them. Empty means no bytes.
class SharedBytes {
public:
    SharedBytes() = default;
    /// Takes the bytes over.
    SharedBytes(Bytes bytes); // NOLINT(google-explicit-constructor): whoever has bytes has bytes that can be shared
    static SharedBytes copyOf(ByteView view);

    [[nodiscard]] Bytes toBytes() const { return {begin(), end()}; }
    [[nodiscard]] const std::uint8_t* data() const { return m_data.get(); }
    [[nodiscard]] std::size_t size() const { return m_size; }
    [[nodiscard]] bool empty() const { return m_size == 0; }
    [[nodiscard]] const std::uint8_t* begin() const { return data(); }
    [[nodiscard]] const std::uint8_t* end() const { return data() + m_size; }

    /// By content.
    friend bool operator==(const SharedBytes& left, const SharedBytes& right)
    {
        return std::equal(left.begin(), left.end(), right.begin(), right.end());
    }

private:
    friend class SharedBlocks;

    SharedBytes(std::shared_ptr<const std::uint8_t> data, std::size_t size) : m_data(std::move(data)), m_size(size) {}

    std::shared_ptr<const std::uint8_t> m_data;
    std::size_t m_size = 0;
};

/// Sets many small pieces aside in few large blocks, one after another. A block lives as long as any piece of it.
class SharedBlocks {
public:
    static constexpr std::size_t blockBytes = std::size_t{256} * 1024; ///< a larger piece has a block of its own

    /// Room for a piece, its content not defined; until the next call of either function.
    std::span<std::uint8_t> room(std::size_t size);
    /// Keeps the first `size` bytes of the room that was asked for last; at most as many as it has. Without this the
    /// room is used again.
    SharedBytes keep(std::size_t size);

private:
    std::shared_ptr<std::uint8_t[]> m_block; // NOLINT(modernize-avoid-c-arrays): memory that is not set to zero first
    std::size_t m_size = 0;
    std::size_t m_used = 0;
};

} // namespace peelpack::keys
