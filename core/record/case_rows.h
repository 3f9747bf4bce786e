#pragma once

#include "core/record/sheet_record.h"

#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace peelpack::record {

/// What a program says about rows. Both are always given.
struct RowRules {
    /// The categories in which the catalogue files a procedure; empty when it does not know it.
    std::function<catalogue::CategoryList(std::string_view procedure)> categoriesOf;
    /// Whether the policy in force accepts a signature of this strength, which was confirmed with the preceptor or not.
    std::function<bool(sheet::Strength strength, bool confirmed)> counts;
};

/// Short names for the sheets of one student, and for the operations that several of them share: the first 8 digits of
/// the id, and as many more as it takes to tell them apart.
struct ShortNames {
    std::map<base::Id, std::string> sheets;
    std::map<base::Id, std::string> operations; ///< only shared ones
};
ShortNames shortNames(const StudentRecord& student);

/// The sheets of one student, lent, by their short names: as the rows of a tally name them.
using SheetsByName = std::map<std::string, const SheetRecord*, std::less<>>;
SheetsByName sheetsByName(const StudentRecord& student, const ShortNames& names);

/// A sheet as rows for the tally, one for each procedure (counting rules, section 2). None for a sheet that is
/// withdrawn, void or returned and not answered.
std::vector<sheet::CaseRow> caseRows(const SheetRecord& sheet, std::string_view studentName, const ShortNames& names,
                                     const RowRules& rules);
/// All sheets of a student.
std::vector<sheet::CaseRow> caseRows(const StudentRecord& student, const RowRules& rules);

} // namespace peelpack::record
