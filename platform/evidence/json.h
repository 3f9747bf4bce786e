#pragma once

#include "core/base/result.h"

#include <nlohmann/json.hpp>

#include <string_view>

/// Evidence for outsiders: standards that others have verifiers for, over the journal's keys. Knows no session, no Qt.
namespace peelpack::evidence {

/// JSON whose members keep the order in which they were put.
using Json = nlohmann::ordered_json;

/// I-JSON (RFC 7493), strictly, because what is signed must be read by everybody alike: well-formed UTF-8 without byte
/// order mark, no surrogate that stands alone, no noncharacter, no member twice in one object, numbers within what an
/// IEEE 754 double holds, and whole numbers as fitsDouble() wants them. At most 64 levels deep. BadInput says what is
/// wrong.
base::Result<Json> parseJson(std::string_view text);

/// True for text that may stand in I-JSON (RFC 7493 section 2.1).
bool isPlainText(std::string_view text);

/// True when no reader takes this whole number for another: at most 2^53, or written as ECMAScript writes the double
/// nearest to it.
bool fitsDouble(std::int64_t number);
bool fitsDouble(std::uint64_t number);

} // namespace peelpack::evidence
