#pragma once

#include "platform/cli/case_file.h"
#include "platform/session/case_book.h"

#include <string>
#include <vector>

namespace peelpack::cli {

/// True when a file is a vault and not a table.
bool isVaultFile(const std::string& file);

/// A line for each sheet that could not be counted because nobody has logged its procedure.
void complainOfNotLogged(const session::CaseBook& book);

/// Unlocks the vault that the first operand names and reads its sheets: the student's own, or all students'.
base::Result<CaseInput> readVaultCases(const Arguments& arguments);

} // namespace peelpack::cli
