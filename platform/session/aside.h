#pragma once

#include "platform/session/session.h"

#include <string>
#include <vector>

namespace peelpack::session {

/// An entry that is there and does not count until an instructor admits it: it came after a split, from a device that
/// was ended, or was signed with a card that was revoked.
struct AsideEntry {
    journal::Position entry;
    journal::Reason why = journal::Reason::None;
    keys::Id student;   ///< in whose record it stands
    std::string writer; ///< whose device wrote it; empty: nobody granted it
    journal::Time time; ///< as it claims
    journal::Payload payload;
    bool admissible = false; ///< of the student's own device; else the person writes it again
};

/// In the records of students, by feed and position; those that somebody admitted are gone from it.
std::vector<AsideEntry> asideEntries(const Session& session);
/// What lets an entry count that is aside, to be written alone or with others. BadValue: not staff, no reason, or
/// nothing that can be admitted.
base::Result<Writing> admitting(const Session& session, const journal::Position& entry, std::string reason);
/// Writes it at once.
base::Result<journal::Position> admitEntry(Session& session, const journal::Position& entry, std::string reason);

} // namespace peelpack::session
