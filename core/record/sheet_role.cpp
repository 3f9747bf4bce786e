#include "core/record/sheet_role.h"

namespace peelpack::record {

role::Outcome outcomeOf(const SheetRecord& sheet, const role::RoleRules& rules)
{
    const bool canceled = sheet.content.head.canceled;
    return sheet.imported ? role::classify(sheet.imported->said.role, canceled)
                          : role::classify(sheet.content.marks.marks, canceled, rules);
}

std::string whyOf(const SheetRecord& sheet, const role::RoleRules& rules)
{
    const bool canceled = sheet.content.head.canceled;
    return sheet.imported ? role::reasonOnPaper(canceled) : role::reason(sheet.content.marks.marks, canceled, rules);
}

} // namespace peelpack::record
