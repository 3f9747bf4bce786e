#pragma once

#include "core/base/result.h"

#include <string>
#include <vector>

namespace peelpack::cli {

/// A student of a class list.
struct ListedStudent {
    std::string name;
    std::string className;
};

/// A class list: CSV (RFC 4180, UTF-8) with a header row that names the columns `name` and `class`, in any order; other
/// columns are passed over. BadInput names line and mend: a column is missing, a cell is empty, a name stands twice.
base::Result<std::vector<ListedStudent>> readClassList(const std::string& file);

/// A file name for each that says the name, each once, without what means something in a path: "Ines
/// Duarte.invitation".
std::vector<std::string> invitationNames(const std::vector<ListedStudent>& students);

} // namespace peelpack::cli
