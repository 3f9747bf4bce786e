#include "platform/demo/journal_world.h"

#include "platform/demo/need.h"

#include <algorithm>

namespace peelpack::demo {

Student& World::student(std::string_view name)
{
    return *std::find_if(students.begin(), students.end(), [&](const Student& other) { return other.name == name; });
}

keys::Bytes parcelOf(const session::Session& from, base::Result<session::Recipients> to)
{
    return std::move(need(session::makeParcels(from, need(std::move(to)))).front());
}

session::IntakeReport take(session::Session& into, const std::vector<keys::Bytes>& files)
{
    std::vector<session::OfferedFile> offered;
    offered.reserve(files.size());
    for (const keys::Bytes& file : files) {
        offered.push_back({"a parcel", file});
    }
    session::IntakeReport report = need(session::takeIn(into, std::move(offered)));
    for (const session::FileOutcome& file : report.files) {
        if (!file.used || file.waits) {
            throw Stopped{{base::ErrorCode::BadInput, "A parcel of the invented program cannot be taken in: " +
                                                          (file.used ? "something is missing." : file.whyNot)}};
        }
    }
    return report;
}

void exchange(World& world)
{
    std::vector<keys::Bytes> parcels;
    parcels.reserve(world.staff.size());
    for (const Staff& from : world.staff) {
        parcels.push_back(parcelOf(from.home.session(), session::toColleagues(from.home.session())));
    }
    for (std::size_t into = 0; into < world.staff.size(); ++into) {
        std::vector<keys::Bytes> others;
        for (std::size_t from = 0; from < parcels.size(); ++from) {
            if (from != into) {
                others.push_back(parcels[from]);
            }
        }
        take(world.staff[into].home.session(), others);
    }
}

std::string fileNameOf(std::string_view name)
{
    std::string file;
    for (const char c : name) {
        if (c >= 'A' && c <= 'Z') {
            file += static_cast<char>(c - 'A' + 'a');
        } else if (c >= 'a' && c <= 'z') {
            file += c;
        } else if (c == ' ') {
            file += '-';
        }
    }
    return file;
}

} // namespace peelpack::demo
