#pragma once

#include "platform/evidence/json.h"

#include <string>

namespace peelpack::evidence {

/// The one way to write a JSON value (RFC 8785): no spaces, members by the UTF-16 code units of their names, numbers as
/// ECMAScript writes them. BadValue for what is not I-JSON: text that is not well formed, numbers that are not finite
/// or that a double does not hold.
base::Result<std::string> canonical(const Json& value);

/// A number as ECMAScript writes it (ECMA-262, Number::toString, radix 10). BadValue unless it is finite.
base::Result<std::string> ecmaNumber(double number);

} // namespace peelpack::evidence
