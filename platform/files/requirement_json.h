#pragma once

#include "core/base/result.h"
#include "core/requirement/requirement_set.h"

#include <string>
#include <string_view>

namespace peelpack::files {

/// A requirement set from its JSON text (counting rules, section 3), checked as a whole: unknown members, wrong types
/// and every rule of requirement::validate(). The error lists all that is wrong, each with its place and its mend, a
/// line each.
base::Result<requirement::RequirementSet> requirementSetFromJson(std::string_view text);

/// One of the shipped sets by id, or the set in a file. The error says which ids there are, or what is wrong in the
/// file.
base::Result<requirement::RequirementSet> requirementSet(const std::string& idOrFile);

} // namespace peelpack::files
