#pragma once

#include <string>

namespace peelpack::vault {

/// Makes sure that the file's name is on the disk in its folder: after it was made or renamed. Where the system cannot
/// do that, it does nothing.
void syncFolderOf(const std::string& file);

} // namespace peelpack::vault
