#pragma once

#include "core/record/sheet_record.h"
#include "tests/sync/support/world.h"

/// What tests ask about the events of the World's first student.
namespace peelpack::test {

inline const keys::Id firstSheet = idOf(0x51);
inline const keys::Id secondSheet = idOf(0x52);

record::StudentEvents eventsOf(const World& world);
/// Fails the test when there is none.
const record::Event& eventAt(const record::StudentEvents& events, const journal::Position& position);
/// Folded; fails the test when there is none.
record::SheetRecord sheetOf(const record::StudentEvents& events, const keys::Id& sheet);

journal::Act actAbout(const keys::Id& sheet, const keys::Hash& standsOn, const journal::Position& about,
                      std::string reason = {});

/// The second device of the student, "Newer Name", granted as the continuation of the first one's record.
keys::DeviceKey secondDevice(World& world, std::uint8_t seed);

} // namespace peelpack::test
