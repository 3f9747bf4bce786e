#pragma once

#include "core/catalogue/catalogue.h"
#include "core/record/case_rows.h"
#include "core/sheet/case_row.h"
#include "platform/session/session.h"

namespace peelpack::session {

/// Where a sheet of the program is, and how it stands.
struct SheetPlace {
    keys::Id student;
    keys::Id sheet;
    record::SheetRecord record;
};

/// Opens a sheet in this student's own journal; its operation is new unless one of their sheets is named, which two
/// teams shared. Answers the sheet's id.
base::Result<keys::Id> openSheet(Session& session, const journal::Draft& draft,
                                 const std::optional<keys::Id>& sameOperationAs = std::nullopt);
/// Opens several in one transaction.
base::Result<std::vector<keys::Id>> openSheets(Session& session, const std::vector<journal::Draft>& drafts);

/// The sheet of that short name (first digits of the id, at least 4) among the student's. NotFound; BadValue when
/// several fit.
base::Result<SheetPlace> findSheet(const Session& session, const keys::Id& student, std::string_view shortName);

/// The sheet's id in the journal's words.
keys::Id idOf(const base::Id& id);
base::Id idOf(const keys::Id& id);
/// What a record holds, in the journal's words.
journal::Head headOf(const record::Head& head);
journal::Draft draftOf(const record::Content& content);
/// The head that a row of a case-sheet file gives its sheet; a time of day that is none is not said.
journal::Head headOfRow(const sheet::CaseRow& row);

/// The catalogue's categories and the policy in force, as the rows of a tally need them. The catalogue must outlive it.
record::RowRules rowRules(const Session& session, const catalogue::Catalogue& catalogue);

/// Entries of this student's own feeds that no instructor's receipt covers: only here, and lost with the phone.
std::size_t onlyHere(const Session& session);

} // namespace peelpack::session
