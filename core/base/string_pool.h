#pragma once

#include <cstdint>
#include <deque>
#include <string_view>
#include <vector>

namespace peelpack::base {

/// Each different text once, numbered from 0 in the order of arrival. Views stay good as long as the pool.
class StringPool {
public:
    StringPool() = default;
    StringPool(const StringPool&) = delete;
    StringPool& operator=(const StringPool&) = delete;
    StringPool(StringPool&&) = default;
    StringPool& operator=(StringPool&&) = default;
    ~StringPool() = default;

    /// The text's number; a new text is copied in.
    std::uint32_t intern(std::string_view text);
    /// Only for a number that intern() gave.
    [[nodiscard]] std::string_view at(std::uint32_t number) const { return m_texts[number]; }
    [[nodiscard]] std::uint32_t size() const { return static_cast<std::uint32_t>(m_texts.size()); }

private:
    std::string_view keep(std::string_view text);
    void grow();

    static constexpr std::uint32_t freeSlot = UINT32_MAX;

    std::deque<std::vector<char>> m_blocks;
    std::size_t m_blockLeft = 0;
    std::vector<std::string_view> m_texts;
    std::vector<std::uint32_t> m_slots;
};

} // namespace peelpack::base
