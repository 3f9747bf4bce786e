#pragma once

#include "platform/session/case_book.h"
#include "platform/session/program_rules.h"

#include <functional>
#include <span>
#include <string>

namespace peelpack::session {

/// How marks become a role under the set in force; as usual when it is not at hand.
role::RoleRules roleRulesInForce(const Session& session);

/// What of a journal the counting of sheets goes by; a value, so that the counting can be done on another thread. The
/// catalogue must outlive it.
struct CountingRules {
    requirement::RequirementSet set;
    record::RowRules rows;
};
/// BadValue, NotFound: the set in force is not at hand.
base::Result<CountingRules> countingRules(const Session& session, const catalogue::Catalogue& catalogue);

/// eachCaseRow() and caseBook() by rules that were read before.
void eachCaseRow(const record::RowRules& rules, std::span<const record::StudentRecord> students,
                 const std::function<void(const sheet::CaseRow&)>& onRow);
base::Result<CaseBook> caseBook(const record::RowRules& rules, const catalogue::Catalogue& catalogue,
                                std::span<const record::StudentRecord> students);

/// The rows as a case-sheet file (RFC 4180), and how many there are besides the header.
struct RowsFile {
    std::string text;
    std::size_t rows = 0;
};
RowsFile caseRowsFile(const record::RowRules& rules, std::span<const record::StudentRecord> students);

} // namespace peelpack::session
