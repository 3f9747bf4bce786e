#pragma once

#include "sync/keys/bytes.h"

#include <cstddef>
#include <memory>

namespace peelpack::keys {

/// Secret bytes in memory that the system does not write to swap, with guard pages around it, wiped when it is let go.
/// Moves, never copies; a moved-from secret is empty. Throws std::bad_alloc when there is no such memory left, as any
/// container does. Not for sharing between threads.
class Secret {
public:
    /// `size` zero bytes; 0 is an empty secret.
    explicit Secret(std::size_t size = 0);
    /// A copy of bytes that the caller wipes.
    explicit Secret(ByteView bytes);

    Secret(Secret&& other) noexcept;
    Secret& operator=(Secret&& other) noexcept;
    Secret(const Secret&) = delete;
    Secret& operator=(const Secret&) = delete;
    ~Secret() = default;

    [[nodiscard]] std::size_t size() const { return m_size; }
    [[nodiscard]] bool empty() const { return m_size == 0; }
    [[nodiscard]] ByteView view() const { return {m_data.get(), m_size}; }
    [[nodiscard]] std::span<std::uint8_t> writable() { return {m_data.get(), m_size}; }

    /// In constant time; lengths are not secret.
    [[nodiscard]] bool equals(ByteView other) const;

private:
    struct Release {
        void operator()(std::uint8_t* data) const;
    };
    std::unique_ptr<std::uint8_t, Release> m_data;
    std::size_t m_size = 0;
};

/// Overwrites bytes in a way that the compiler does not remove.
void wipe(std::span<std::uint8_t> bytes);

} // namespace peelpack::keys
