#pragma once

#include "sync/keys/bytes.h"

#include <optional>
#include <string>
#include <string_view>

namespace peelpack::evidence {

/// Bytes as text in base58btc with the multibase prefix "z" (W3C Controlled Identifiers 1.0, section 2.4). Short bytes
/// only (keys, signatures): the work grows with the square of the length.
std::string multibase(keys::ByteView bytes);

/// Empty for another base, another character, or more than 128 characters.
std::optional<keys::Bytes> fromMultibase(std::string_view text);

} // namespace peelpack::evidence
