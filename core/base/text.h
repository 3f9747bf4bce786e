#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace peelpack::base {

/// Offset of the first byte that is not part of well-formed UTF-8 (RFC 3629: no overlong forms, no surrogates, nothing
/// above U+10FFFF); std::string_view::npos when the whole text is well formed.
std::size_t firstInvalidUtf8(std::string_view text);

/// The text as two people would agree it is the same name: ASCII and Latin-1 letters in lower case, runs of white space
/// (also U+00A0) one space, none at the ends. Other characters stay. Needs well-formed UTF-8.
std::string foldCaseAndSpaces(std::string_view text);

/// Without ASCII spaces and tabs at both ends.
std::string_view trimmed(std::string_view text);

/// The pieces between separators; an empty text has one empty piece.
std::vector<std::string_view> split(std::string_view text, char separator);

/// "1 case", "2 cases".
std::string counted(std::size_t count, std::string_view singular, std::string_view plural);

/// "a", "a and b", "a, b and c" with the word given ("and", "or").
std::string listed(const std::vector<std::string>& items, std::string_view word);
std::string listed(const std::vector<std::string_view>& items, std::string_view word);

} // namespace peelpack::base
