#include "tests/support/shipped_sets.h"

#include "platform/files/requirement_json.h"

#include <cstdlib>
#include <iostream>

namespace peelpack::support {

requirement::RequirementSet shippedSet(const std::string& id)
{
    base::Result<requirement::RequirementSet> set = files::requirementSet(id);
    if (!set) {
        std::cerr << set.error().sentence << '\n';
        std::abort();
    }
    return std::move(set).value();
}

} // namespace peelpack::support
