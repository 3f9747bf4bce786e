#pragma once

#include "core/requirement/requirement_set.h"

#include <string>

namespace peelpack::support {

/// A shipped requirement set by id; ends the test program when it cannot be read.
requirement::RequirementSet shippedSet(const std::string& id);

} // namespace peelpack::support
