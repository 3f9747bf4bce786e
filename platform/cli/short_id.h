#pragma once

#include "sync/keys/bytes.h"

#include <string>

namespace peelpack::cli {

/// Digits of an id or entry hash that a line shows.
inline constexpr std::size_t shortDigits = 8;

inline std::string shortId(const keys::Id& id)
{
    return keys::hex(id.view()).substr(0, shortDigits);
}

} // namespace peelpack::cli
