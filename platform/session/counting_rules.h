#pragma once

#include "platform/session/case_book.h"
#include "platform/session/sets_in_force.h"

#include <span>
#include <string>

namespace peelpack::session {

/// What of a journal the counting of students' sheets goes by; a value, so that the counting can be done on another
/// thread. The catalogue must outlive it.
struct CountingRules {
    SetsInForce sets; ///< of the students, in their order
    record::RowRules rows;
};
/// BadValue, NotFound: a set in force is not at hand.
base::Result<CountingRules> countingRules(const Session& session, const catalogue::Catalogue& catalogue,
                                          std::span<const record::StudentRecord> students);

/// The rows as a case-sheet file (RFC 4180), and how many there are besides the header.
struct RowsFile {
    std::string text;
    std::size_t rows = 0;
};
RowsFile caseRowsFile(const record::RowRules& rules, std::span<const record::StudentRecord> students);

} // namespace peelpack::session
