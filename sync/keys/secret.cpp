#include "sync/keys/secret.h"

#include <cstring>
#include <new>
#include <sodium.h>
#include <utility>

namespace peelpack::keys {

Secret::Secret(std::size_t size) : m_size(size)
{
    if (size == 0) {
        return;
    }
    if (sodium_init() < 0) {
        throw std::bad_alloc();
    }
    m_data.reset(static_cast<std::uint8_t*>(sodium_malloc(size)));
    if (!m_data) {
        throw std::bad_alloc();
    }
    sodium_memzero(m_data.get(), size);
}

Secret::Secret(ByteView bytes) : Secret(bytes.size())
{
    if (!bytes.empty()) {
        std::memcpy(m_data.get(), bytes.data(), bytes.size());
    }
}

Secret::Secret(Secret&& other) noexcept : m_data(std::move(other.m_data)), m_size(std::exchange(other.m_size, 0)) {}

Secret& Secret::operator=(Secret&& other) noexcept
{
    m_data = std::move(other.m_data);
    m_size = std::exchange(other.m_size, 0);
    return *this;
}

bool Secret::equals(ByteView other) const
{
    return other.size() == m_size && (m_size == 0 || sodium_memcmp(m_data.get(), other.data(), m_size) == 0);
}

void Secret::Release::operator()(std::uint8_t* data) const
{
    sodium_free(data);
}

void wipe(std::span<std::uint8_t> bytes)
{
    if (!bytes.empty()) {
        sodium_memzero(bytes.data(), bytes.size());
    }
}

} // namespace peelpack::keys
