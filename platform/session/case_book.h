#pragma once

#include "core/catalogue/catalogue.h"
#include "core/sheet/sheet_reader.h"
#include "core/tally/tally.h"
#include "platform/session/sheets.h"

#include <functional>
#include <span>
#include <string>
#include <vector>

namespace peelpack::session {

/// The sheets of students as the tally reads them. What the policy in force does not accept is not attested there.
struct CaseBook {
    sheet::SheetReader::Reading reading;
    /// What each student is called in the book, in the order given: the name, and where two have the same name or one
    /// has none, the first digits of the id.
    std::vector<std::string> names;
    /// Short ids of sheets with a procedure that is neither logged nor in the catalogue: it has no category and is left
    /// out.
    std::vector<std::string> notLogged;

    /// The tally of a student, by their place in the order given; that of no sheets when none can be counted.
    [[nodiscard]] tally::StudentTally tally(tally::Tallier& tallier, std::size_t student,
                                            const tally::Wanted& wanted = {}) const;
};
/// Every row of these students' sheets, in their order; a row without a category is of a procedure that is neither
/// logged nor in the catalogue.
void eachCaseRow(const Session& session, const catalogue::Catalogue& catalogue,
                 std::span<const record::StudentRecord> students,
                 const std::function<void(const sheet::CaseRow&)>& onRow);

/// By the same path as a case-sheet file, so that a vault and a file are counted alike. The catalogue must outlive the
/// book.
base::Result<CaseBook> caseBook(const Session& session, const catalogue::Catalogue& catalogue,
                                std::span<const record::StudentRecord> students);
/// Of one student, whose record is not copied.
base::Result<CaseBook> caseBook(const Session& session, const catalogue::Catalogue& catalogue,
                                const record::StudentRecord& student);

/// eachCaseRow() and caseBook() by rules that were read before.
void eachCaseRow(const record::RowRules& rules, std::span<const record::StudentRecord> students,
                 const std::function<void(const sheet::CaseRow&)>& onRow);
base::Result<CaseBook> caseBook(const record::RowRules& rules, const catalogue::Catalogue& catalogue,
                                std::span<const record::StudentRecord> students);

} // namespace peelpack::session
