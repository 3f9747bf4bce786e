#pragma once

#include "core/record/sheet_record.h"
#include "core/role/classifier.h"

#include <string>

namespace peelpack::record {

/// The outcome of a sheet as it stands: from its marks, or for one from a paper log the role written there.
role::Outcome outcomeOf(const SheetRecord& sheet, const role::RoleRules& rules);
/// Why, in one sentence to the student.
std::string whyOf(const SheetRecord& sheet, const role::RoleRules& rules);

} // namespace peelpack::record
