#pragma once

#include <cstddef>
#include <string_view>

namespace peelpack::evidence {

/// The code point that starts at `at` in well-formed UTF-8; moves `at` behind it.
inline char32_t nextCodePoint(std::string_view text, std::size_t& at)
{
    constexpr unsigned startOfTwo = 0xC0;
    constexpr unsigned startOfThree = 0xE0;
    constexpr unsigned startOfFour = 0xF0;
    constexpr unsigned bitsOfFollower = 6;
    constexpr unsigned maskOfFollower = 0x3F;
    const unsigned first = static_cast<unsigned char>(text[at]);
    const unsigned size = 1U + (first >= startOfTwo) + (first >= startOfThree) + (first >= startOfFour);
    char32_t point = size == 1 ? first : first & (0xFFU >> (size + 1));
    for (unsigned i = 1; i < size; ++i) {
        point = (point << bitsOfFollower) | (static_cast<unsigned char>(text[at + i]) & maskOfFollower);
    }
    at += size;
    return point;
}

} // namespace peelpack::evidence
