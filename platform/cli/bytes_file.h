#pragma once

#include "core/base/result.h"
#include "sync/keys/bytes.h"
#include "sync/keys/secret.h"

#include <string>

namespace peelpack::cli {

/// A whole file of at most `most` bytes; "-" is standard input.
base::Result<keys::Bytes> readBytes(const std::string& file, std::size_t most);
/// A file with a secret in it (a signing card, an invitation), straight into locked memory; at most 4096 bytes.
base::Result<keys::Secret> readSecretFile(const std::string& file);
/// A new file, whole or not at all, for its owner alone, and on the disk before this returns. No copy of the bytes is
/// left in memory. Refused when there is a file already.
base::Result<bool> writeNewFile(const std::string& file, keys::ByteView bytes);

} // namespace peelpack::cli
