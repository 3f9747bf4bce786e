#include "platform/demo/journal_split.h"

#include "platform/demo/journal_setup.h"
#include "platform/demo/journal_term.h"
#include "platform/demo/journal_troubles.h"
#include "platform/demo/need.h"
#include "platform/files/text_file.h"

#include <fstream>

namespace peelpack::demo {
namespace {

constexpr std::size_t mostVaultBytes = std::size_t{64} << 20U;

/// The same file with other contents: its install mark stays good.
void setBack(const std::string& file, const std::string& contents)
{
    std::ofstream out(file, std::ios::binary | std::ios::trunc);
    out.write(contents.data(), static_cast<std::streamsize>(contents.size()));
    out.close();
    if (!out) {
        throw Stopped{{base::ErrorCode::CannotWrite, "Cannot write " + file + "."}};
    }
}

keys::Bytes oneHistory(World& world, Student& student, std::size_t week)
{
    student.home.begin(world.marks, world.look(), world.random);
    const DemoCase& one = tell(world, student, week);
    sign(world, student, world.preceptors[one.preceptor], {&one});
    keys::Bytes parcel = parcelOf(student.home.session(), session::toStaff(student.home.session()));
    student.home.close();
    return parcel;
}

} // namespace

void splitTheRecord(World& world, std::size_t week)
{
    Student& student = world.student(trouble::forked);
    student.home.close();
    const std::string before = need(files::readWholeFile(student.home.file(), mostVaultBytes));
    world.splitParcels.push_back(oneHistory(world, student, week));
    setBack(student.home.file(), before);
    world.splitParcels.push_back(oneHistory(world, student, week));
    student.parcel = world.splitParcels.back();
    student.home.begin(world.marks, world.look(), world.random);
}

void findTheSplit(World& world, std::size_t week)
{
    Student& student = world.student(trouble::forked);
    session::Session& desk = world.instructorOf(student);
    world.clock.set(world.day(week, Friday), 16);
    const session::IntakeReport found = take(desk, world.splitParcels);
    const session::Directory directory(desk);
    const session::IntakeReport heard =
        take(student.home.session(), {parcelOf(desk, session::toStudent(desk, *directory.person(student.person)))});
    if (found.forks.empty() || !heard.ownRecordSplit || !student.home.session().writeBar().stands()) {
        throw Stopped{{base::ErrorCode::BadValue, "The split record was not noticed."}};
    }
}

void goOnAfterTheSplit(World& world, std::size_t week)
{
    Student& student = world.student(trouble::forked);
    session::Session& desk = world.instructorOf(student);
    world.clock.set(world.day(week, Saturday), 14);
    std::vector<session::Writing> admitted;
    const DemoCase& first = student.cases[student.cases.size() - 2];
    for (const auto& item : desk.ledger().feeds()) {
        const journal::FeedId& id = item.first;
        const journal::Feed& feed = item.second;
        if (id.stream != student.person || !feed.forked()) {
            continue;
        }
        feed.eachSegment([&](std::uint32_t from, const journal::Segment& segment) {
            std::vector<session::Writing> ofSegment;
            bool isFirst = false;
            for (std::uint32_t i = 0; i < segment.entries.size() && from >= feed.count(); ++i) {
                const journal::Decoded entry = journal::decode(id, from + i, segment.entries[i]);
                const auto* opened = std::get_if<journal::SheetOpened>(&entry.payload);
                isFirst = isFirst || (opened != nullptr && opened->sheet == first.sheet);
                ofSegment.push_back(
                    {student.person,
                     journal::Admit{entry.position, "The student showed the signed sheet of the day."}});
            }
            if (isFirst) {
                admitted = std::move(ofSegment);
            }
        });
    }
    need(desk.append(admitted));
    student.home.close();
    admitInto(world, desk, student.home, student.name, journal::Role::Student, {student.className}, student.person);
}

} // namespace peelpack::demo
