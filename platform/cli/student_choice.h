#pragma once

#include "platform/cli/arguments.h"
#include "platform/session/directory.h"
#include "platform/session/sheets.h"

#include <string>
#include <vector>

namespace peelpack::cli {

/// --student, --class.
std::vector<OptionSpec> studentOptions();

/// In a student's vault the student; else those of --student or --class, or all, by name.
base::Result<std::vector<keys::Id>> chosenStudents(const session::Session& session, const Arguments& arguments);

/// The sheet of that short id among the chosen students. NotFound; BadValue when several fit.
base::Result<session::SheetPlace> chosenSheet(const session::Session& session, const Arguments& arguments,
                                              const std::string& shortName);

} // namespace peelpack::cli
