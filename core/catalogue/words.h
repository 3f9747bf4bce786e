#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace peelpack::catalogue {

/// A word of a procedure's name or of what somebody typed, brought to one form.
struct Word {
    enum class Kind : unsigned char {
        Content,
        Side,  ///< left, right, bilateral: never decides what a procedure is
        Filler ///< with, of, status post
    };
    std::string typed;     ///< lower case, as it stands
    std::string canonical; ///< US spelling, singular, clipped speech written out
    Kind kind = Kind::Content;
};

/// The words of a text, in order. "I&D" stays one word; "w/", "s/p" and "b/l" are known; hyphens and commas separate.
std::vector<Word> wordsOf(std::string_view text);

/// Letters, digits and '&' only, lower case, without fillers, and without sides unless they are kept: equal for "I &
/// D", "i&d" and "right I and D".
std::string squeezed(const std::vector<Word>& words, bool keepSides);

} // namespace peelpack::catalogue
