#pragma once

#include "core/sheet/case_row.h"

#include <string>

namespace peelpack::sheet {

/// The header line of a case-sheet file, with CRLF.
std::string headerLine();
/// One row, with CRLF. Cells that a spreadsheet would execute are defused; reading gives back an equal row.
std::string rowLine(const CaseRow& row);

} // namespace peelpack::sheet
