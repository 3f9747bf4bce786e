#pragma once

#include "core/tally/tally.h"
#include "platform/session/case_book.h"

#include <QStringList>

namespace peelpack::student {

/// For a student whom a change of requirements concerns: a line for the set before the one in force and one for the
/// next set, each with both tallies and the day of the change. `counted` cases count under the set in force.
QStringList otherSets(const session::Session& session, const keys::Id& student, const session::CaseBook& cases,
                      const requirement::RequirementSet& inForce, std::int32_t counted, tally::Level level);

} // namespace peelpack::student
