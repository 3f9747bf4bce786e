#pragma once

#include "core/record/case_rows.h"

#include <nlohmann/json.hpp>

#include <string>

namespace peelpack::cli {

/// One line of a list: short id, date, how it stands, what was done.
std::string sheetLine(const record::SheetRecord& sheet, const std::string& shortName);
/// Everything about a sheet, with its whole history.
std::string sheetText(const record::SheetRecord& sheet, const std::string& shortName);
/// Both for machines.
nlohmann::ordered_json sheetJson(const record::SheetRecord& sheet, const std::string& shortName, bool withHistory);

} // namespace peelpack::cli
