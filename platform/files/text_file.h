#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <functional>
#include <string>
#include <string_view>

namespace peelpack::files {

/// Reads a file piece by piece (about 1 MiB each); "-" is standard input. `take` answers false to stop early. The error
/// names the file and what the system said.
base::Result<std::size_t> readPieces(const std::string& file, const std::function<bool(std::string_view)>& take);

/// A whole file of at most `most` bytes.
base::Result<std::string> readWholeFile(const std::string& file, std::size_t most);

/// Writes a whole file so that it is either there in full or not at all; an old one is replaced only by the full new
/// one.
base::Result<std::size_t> writeWholeFile(const std::string& file, std::string_view text);

/// Unicode normalization form C, for texts that people typed on different devices.
std::string normalized(std::string_view text);

} // namespace peelpack::files
