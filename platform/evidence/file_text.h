#pragma once

#include "platform/evidence/json.h"

#include <string>

namespace peelpack::evidence {

/// A document as it stands in a file that people may look into.
inline std::string fileText(const Json& document)
{
    return document.dump(2) + "\n";
}

} // namespace peelpack::evidence
