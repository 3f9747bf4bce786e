#include "core/base/string_pool.h"

#include <algorithm>
#include <functional>

namespace peelpack::base {
namespace {

constexpr std::size_t blockBytes = std::size_t{256} * 1024;

std::size_t slotOf(std::string_view text, std::size_t slotCount)
{
    return std::hash<std::string_view>{}(text) & (slotCount - 1);
}

} // namespace

std::uint32_t StringPool::intern(std::string_view text)
{
    if ((m_texts.size() + 1) * 2 > m_slots.size()) {
        grow();
    }
    std::size_t slot = slotOf(text, m_slots.size());
    while (m_slots[slot] != freeSlot) {
        if (m_texts[m_slots[slot]] == text) {
            return m_slots[slot];
        }
        slot = (slot + 1) & (m_slots.size() - 1);
    }
    const auto number = static_cast<std::uint32_t>(m_texts.size());
    m_slots[slot] = number;
    m_texts.push_back(keep(text));
    return number;
}

std::string_view StringPool::keep(std::string_view text)
{
    if (m_blockLeft < text.size() || m_blocks.empty()) {
        m_blocks.emplace_back();
        m_blockLeft = std::max(blockBytes, text.size());
        m_blocks.back().reserve(m_blockLeft);
    }
    std::vector<char>& block = m_blocks.back();
    const std::size_t start = block.size();
    block.insert(block.end(), text.begin(), text.end());
    m_blockLeft -= text.size();
    return {block.data() + start, text.size()};
}

void StringPool::grow()
{
    m_slots.assign(std::max<std::size_t>(64, m_slots.size() * 2), freeSlot);
    for (std::uint32_t number = 0; number < m_texts.size(); ++number) {
        std::size_t slot = slotOf(m_texts[number], m_slots.size());
        while (m_slots[slot] != freeSlot) {
            slot = (slot + 1) & (m_slots.size() - 1);
        }
        m_slots[slot] = number;
    }
}

} // namespace peelpack::base
