#pragma once

#include "core/record/event.h"
#include "sync/merge/ledger.h"

#include <functional>
#include <map>

namespace peelpack::merge {

/// What the ledger's entries say about one student's sheets, for core/record to fold: everything in the student's
/// stream, forks and entries that do not count included. The same for equal sets of entries. Empty events: nothing is
/// held.
record::StudentEvents studentEvents(const trust::Authority& authority, const Ledger& ledger, const keys::Id& student);

/// The same for every student who was granted a device, and for every stream that holds something about sheets: one
/// after another by id, so that the events of one are in memory at a time.
void eachStudent(const trust::Authority& authority, const Ledger& ledger,
                 const std::function<void(record::StudentEvents)>& onStudent);
/// All of them at once.
std::map<keys::Id, record::StudentEvents> allStudents(const trust::Authority& authority, const Ledger& ledger);

} // namespace peelpack::merge
