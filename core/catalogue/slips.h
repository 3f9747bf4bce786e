#pragma once

#include <cstddef>
#include <string_view>

namespace peelpack::catalogue {

/// How many slips of typing a word of this length may have: none up to five letters, one up to eight, two in longer
/// ones.
std::size_t slipsAllowed(std::size_t length);

/// The fewest slips (a letter too many, missing, wrong, or two neighbors swapped) between what was typed and the word,
/// or between it and the beginning of the word when `partly`; `most` + 1 when there are more than `most`.
std::size_t slipsBetween(std::string_view typed, std::string_view word, bool partly, std::size_t most);

} // namespace peelpack::catalogue
