#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace peelpack::sheet {

/// What the student did in one case, as it is counted. A sheet may also have no role (not every skill marked,
/// canceled).
enum class Role : std::uint8_t { First, Second, Observed };

/// The id in files: "first", "second", "observed".
std::string_view id(Role role);
/// In words: "first scrub", "second scrub", "observation".
std::string_view inWords(Role role);
/// Empty when no role has that id.
std::optional<Role> roleFromId(std::string_view id);

} // namespace peelpack::sheet
