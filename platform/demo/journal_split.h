#pragma once

#include "platform/demo/journal_world.h"

/// A student's phone is set back to an older state with its keys, and writes on: two histories with the same key.
namespace peelpack::demo {

/// Each history opens and signs a sheet and makes a parcel.
void splitTheRecord(World& world, std::size_t week);
/// The instructor takes in both and holds the evidence; the phone hears of it and stops signing.
void findTheSplit(World& world, std::size_t week);
/// New keys, granted where both histories were still one; the instructor lets the first history's sheet count.
void goOnAfterTheSplit(World& world, std::size_t week);

} // namespace peelpack::demo
