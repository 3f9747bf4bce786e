#pragma once

#include "sync/journal/sheet_content.h"

#include <optional>
#include <string>

namespace peelpack::cli {

/// "07:30"; empty when it is no time of day.
std::optional<journal::MinuteOfDay> minuteOf(const std::string& text);

} // namespace peelpack::cli
