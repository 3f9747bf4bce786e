#pragma once

#include "tests/sync/support/world.h"

#include <string>

namespace peelpack::test {

/// The worked example of FORMAT.md section 12, made anew: the text between its two marks.
struct Example {
    std::string text;
    keys::Bytes exported; ///< the one volume of the example's export
    keys::Bytes parcel;   ///< the same volume, sealed to the instructor
};
Example makeExample();

} // namespace peelpack::test
