#pragma once

#include "platform/demo/journal_setup.h"

namespace peelpack::demo {

/// The term from its first Monday to its last Sunday: cases, hand-overs, parcels, what instructors do, and the
/// troubles.
void liveThroughTheTerm(World& world, const JournalProgress& progress);

/// A student opens a sheet of theirs at the time of the clock.
void open(Student& student, DemoCase& one);
/// A preceptor signs opened sheets in one sitting, with the newest card or on their own phone.
void sign(World& world, Student& student, const Preceptor& preceptor, const std::vector<const DemoCase*>& sheets);
/// What the preceptor marks on one of them.
session::SheetMarks marksOf(const DemoCase& one);

} // namespace peelpack::demo
