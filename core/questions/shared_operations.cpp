#include "core/questions/shared_operations.h"

#include "core/base/text.h"

#include <algorithm>
#include <numeric>
#include <tuple>

namespace peelpack::questions {
namespace {

constexpr int minutesInADay = 24 * 60;

auto roomOf(const OperationPlace& place)
{
    return std::tie(place.date, place.site, place.room);
}

bool saysTimes(const OperationPlace& place)
{
    return place.start != record::notSaid && place.end != record::notSaid;
}

int endOf(const OperationPlace& place)
{
    return place.end + (place.end < place.start ? minutesInADay : 0);
}

} // namespace

OperationPlace placeOf(const base::Id& student, const record::SheetRecord& sheet)
{
    const record::Head& head = sheet.content.head;
    OperationPlace place{student,
                         sheet.id,
                         head.date,
                         base::foldCaseAndSpaces(head.site),
                         base::foldCaseAndSpaces(head.room),
                         base::foldCaseAndSpaces(head.surgeon),
                         {},
                         head.start,
                         head.end};
    for (const std::string& procedure : sheet.content.procedures) {
        place.procedures.push_back(base::foldCaseAndSpaces(procedure));
    }
    return place;
}

bool isOneOperation(const OperationPlace& one, const OperationPlace& other)
{
    if (one.student == other.student || one.site.empty() || one.room.empty() || roomOf(one) != roomOf(other)) {
        return false;
    }
    if (saysTimes(one) && saysTimes(other)) {
        return one.start < endOf(other) && other.start < endOf(one);
    }
    const bool twoSurgeons = !one.surgeon.empty() && !other.surgeon.empty() && one.surgeon != other.surgeon;
    return !twoSurgeons && std::any_of(one.procedures.begin(), one.procedures.end(), [&](const std::string& procedure) {
        return std::find(other.procedures.begin(), other.procedures.end(), procedure) != other.procedures.end();
    });
}

std::vector<SharedOperation> sharedOperations(const std::vector<OperationPlace>& places)
{
    std::vector<const OperationPlace*> order;
    for (const OperationPlace& place : places) {
        if (!place.site.empty() && !place.room.empty()) {
            order.push_back(&place);
        }
    }
    std::sort(order.begin(), order.end(), [](const OperationPlace* a, const OperationPlace* b) {
        return std::tuple(roomOf(*a), a->start, a->student, a->sheet) <
               std::tuple(roomOf(*b), b->start, b->student, b->sheet);
    });
    std::vector<SharedOperation> groups;
    for (auto from = order.begin(); from != order.end();) {
        const auto to = std::find_if(from, order.end(),
                                     [&](const OperationPlace* place) { return roomOf(*place) != roomOf(**from); });
        const auto count = static_cast<std::size_t>(to - from);
        std::vector<std::size_t> group(count); // of each sheet of the room
        std::iota(group.begin(), group.end(), std::size_t{0});
        for (std::size_t i = 0; i < count; ++i) {
            for (std::size_t j = 0; j < i; ++j) {
                if (group[i] != group[j] &&
                    isOneOperation(*from[static_cast<std::ptrdiff_t>(i)], *from[static_cast<std::ptrdiff_t>(j)])) {
                    std::replace(group.begin(), group.end(), std::max(group[i], group[j]),
                                 std::min(group[i], group[j]));
                }
            }
        }
        for (std::size_t id = 0; id < count; ++id) {
            SharedOperation shared;
            for (std::size_t i = 0; i < count; ++i) {
                if (group[i] == id) {
                    shared.push_back(from[static_cast<std::ptrdiff_t>(i)]);
                }
            }
            if (shared.size() > 1) {
                groups.push_back(std::move(shared));
            }
        }
        from = to;
    }
    return groups;
}

} // namespace peelpack::questions
