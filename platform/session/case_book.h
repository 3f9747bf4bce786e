#pragma once

#include "core/catalogue/catalogue.h"
#include "core/sheet/sheet_reader.h"
#include "platform/session/sheets.h"

#include <string>
#include <vector>

namespace peelpack::session {

/// The sheets of students as the tally reads them. What the policy in force does not accept is not attested there.
struct CaseBook {
    sheet::SheetReader::Reading reading;
    /// Short ids of sheets with a procedure that is neither logged nor in the catalogue: it has no category and is left
    /// out.
    std::vector<std::string> notLogged;
};
/// By the same path as a case-sheet file, so that a vault and a file are counted alike. The catalogue must outlive the
/// book.
base::Result<CaseBook> caseBook(const Session& session, const catalogue::Catalogue& catalogue,
                                const std::vector<record::StudentRecord>& students);
/// Of one student, whose record is not copied.
base::Result<CaseBook> caseBook(const Session& session, const catalogue::Catalogue& catalogue,
                                const record::StudentRecord& student);

} // namespace peelpack::session
