#include "tests/sync/support/events.h"

#include "sync/merge/student_events.h"
#include "tests/sync/support/catch.h"

#include <algorithm>

namespace peelpack::test {

record::StudentEvents eventsOf(const World& world)
{
    return merge::studentEvents(world.all.authority(), world.all, world.studentId);
}

const record::Event& eventAt(const record::StudentEvents& events, const journal::Position& position)
{
    const auto found = std::find_if(events.events.begin(), events.events.end(), [&](const record::Event& event) {
        return event.entry.bytes == position.hash.bytes;
    });
    REQUIRE(found != events.events.end());
    return *found;
}

record::SheetRecord sheetOf(const record::StudentEvents& events, const keys::Id& sheet)
{
    const record::StudentRecord student = record::recordOf(events);
    const auto found = std::find_if(student.sheets.begin(), student.sheets.end(),
                                    [&](const record::SheetRecord& one) { return one.id.bytes == sheet.bytes; });
    REQUIRE(found != student.sheets.end());
    return *found;
}

journal::Act actAbout(const keys::Id& sheet, const keys::Hash& standsOn, const journal::Position& about,
                      std::string reason)
{
    return {sheet, standsOn, about.hash, std::move(reason)};
}

keys::DeviceKey secondDevice(World& world, std::uint8_t seed)
{
    keys::DeviceKey device = deviceOf(seed);
    const journal::FeedId old = world.feedOf(world.student, world.studentId);
    const journal::Feed& feed = *world.all.feed(old);
    journal::Grant grant = world.grant(world.studentId, journal::Role::Student, device);
    grant.continues = journal::Position{old, feed.count() - 1, feed.head().hash};
    grant.name = "Newer Name";
    world.append(world.instructor, world.studentId, grant);
    return device;
}

} // namespace peelpack::test
