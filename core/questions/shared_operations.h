#pragma once

#include "core/record/sheet_record.h"

#include <string>
#include <vector>

namespace peelpack::questions {

/// Where and when one sheet says that its student was.
struct OperationPlace {
    base::Id student;
    base::Id sheet;
    base::Date date;
    std::string site; ///< without case and spaces, as all texts here; empty: not said
    std::string room; ///< empty: not said
    std::string surgeon;
    std::vector<std::string> procedures;
    record::MinuteOfDay start = record::notSaid;
    record::MinuteOfDay end = record::notSaid; ///< before `start`: the next day
};

/// Of a sheet as it counts now.
OperationPlace placeOf(const base::Id& student, const record::SheetRecord& sheet);

/// Two sheets of different students that seem to be of one operation: same date, site and room, all of them said, and
/// times that overlap. Where one of the times is not said: a procedure in common, and no two surgeons.
bool isOneOperation(const OperationPlace& one, const OperationPlace& other);

/// The sheets of a group stand for one operation, each with at least one other of the group.
using SharedOperation = std::vector<const OperationPlace*>;
/// All groups of at least two, lent from `places`; by date, site and room. Time: n log n and the square of one room's
/// sheets of a day.
std::vector<SharedOperation> sharedOperations(const std::vector<OperationPlace>& places);

} // namespace peelpack::questions
