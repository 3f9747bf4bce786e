#pragma once

#include "core/base/result.h"
#include "sync/keys/bytes.h"

#include <string>

namespace peelpack::cli {

/// A whole file of at most `most` bytes; "-" is standard input.
base::Result<keys::Bytes> readBytes(const std::string& file, std::size_t most);
/// A new file, whole or not at all. Refused when there is one already.
base::Result<bool> writeNewFile(const std::string& file, keys::ByteView bytes);

} // namespace peelpack::cli
