#include "sync/keys/shared_bytes.h"

namespace peelpack::keys {

SharedBytes::SharedBytes(Bytes bytes)
{
    if (!bytes.empty()) {
        const auto owner = std::make_shared<const Bytes>(std::move(bytes));
        m_data = {owner, owner->data()};
        m_size = owner->size();
    }
}

SharedBytes SharedBytes::copyOf(ByteView view)
{
    if (view.empty()) {
        return {};
    }
    const auto owner = std::make_shared_for_overwrite<std::uint8_t[]>(view.size());
    std::copy(view.begin(), view.end(), owner.get());
    return {{owner, owner.get()}, view.size()};
}

std::span<std::uint8_t> SharedBlocks::room(std::size_t size)
{
    if (m_block == nullptr || size > m_size - m_used) {
        m_size = std::max(size, blockBytes);
        m_used = 0;
        m_block = std::make_shared_for_overwrite<std::uint8_t[]>(m_size);
    }
    return {m_block.get() + m_used, size};
}

SharedBytes SharedBlocks::keep(std::size_t size)
{
    if (size == 0) {
        return {};
    }
    const std::size_t at = m_used;
    m_used += size;
    return {{m_block, m_block.get() + at}, size};
}

} // namespace peelpack::keys
