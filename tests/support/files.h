#pragma once

#include <string>
#include <vector>

namespace peelpack::support {

/// A whole file of the project, by its path from the root ("fixtures/..."). Ends the test program when it cannot be
/// read.
std::string projectFile(const std::string& path);

/// The rows of a tab-separated file of the project, the header row left out, each cell by cell.
std::vector<std::vector<std::string>> tableRows(const std::string& path);

} // namespace peelpack::support
