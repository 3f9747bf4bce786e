#pragma once

#include "core/record/event.h"
#include "sync/merge/ledger.h"

#include <map>
#include <string>
#include <vector>

namespace peelpack::merge {

/// Whose stream it is, and the feeds in it; lent from the ledger.
struct StudentStream {
    keys::Id student;
    std::string name; ///< as granted; empty: nobody granted this student a device
    std::vector<const journal::Feed*> feeds;
};

/// Of every student who was granted a device, and every other stream that is held; by id.
std::vector<StudentStream> studentStreams(const trust::Authority& authority, const Ledger& ledger);

/// What the ledger's entries say about one student's sheets, for core/record to fold: everything in the student's
/// stream, forks and entries that do not count included. The same for equal sets of entries. Empty events: nothing is
/// held. Several streams may be read at the same time.
record::StudentEvents studentEvents(const trust::Authority& authority, const StudentStream& stream);
record::StudentEvents studentEvents(const trust::Authority& authority, const Ledger& ledger, const keys::Id& student);

/// The same for every student who was granted a device, and for every stream that holds something about sheets.
std::map<keys::Id, record::StudentEvents> allStudents(const trust::Authority& authority, const Ledger& ledger);

} // namespace peelpack::merge
