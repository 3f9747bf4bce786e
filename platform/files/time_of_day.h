#pragma once

#include "core/record/sheet_content.h"

#include <optional>
#include <string>

namespace peelpack::files {

/// "07:30"; empty when it is no time of day.
std::optional<record::MinuteOfDay> minuteOf(const std::string& text);

} // namespace peelpack::files
