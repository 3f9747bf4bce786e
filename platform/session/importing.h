#pragma once

#include "platform/session/directory.h"
#include "platform/session/sheets.h"

#include <string>
#include <vector>

namespace peelpack::session {

/// A sheet of an earlier paper log, as staff write it down. It carries no marks.
struct PaperSheet {
    std::vector<std::string> procedures; ///< as performed, 1 to 8
    journal::Head head;
    std::vector<journal::Choice> choices; ///< one for each procedure
    sheet::Role role = sheet::Role::Observed;
    std::string preceptor; ///< may be empty
    std::string credential;
    std::string operation; ///< equal on two sheets of a student: one operation; empty: the sheet is one
};

/// Such a sheet where it stands in a file.
struct PaperLogSheet {
    std::size_t line = 0; ///< of its first row
    std::string student;  ///< as written there
    PaperSheet sheet;
};

/// Where sheets come from, such as "paper log of spring, page 3", has at most so many characters.
inline constexpr std::size_t mostSource = 400;

/// Whether such a sheet can be written; the sentence says what is wrong with it.
base::Result<bool> importable(const PaperSheet& sheet, const std::string& source);

/// For each sheet whether the record holds it already from this source, with the same date and procedures, as it was
/// imported. As many as are there: two like ones that came in together are two.
std::vector<bool> importedAlready(const record::StudentRecord& student, const std::vector<PaperSheet>& sheets,
                                  const std::string& source);

/// What of a paper log is imported for one student, and what is left out because it is here already.
struct ImportFor {
    Person student;
    std::vector<PaperLogSheet> sheets;
    std::vector<PaperLogSheet> alreadyHere;
};
ImportFor importFor(const Session& session, const Person& student, std::vector<PaperLogSheet> sheets,
                    const std::string& source);
/// As below.
base::Result<std::vector<keys::Id>> importSheets(Session& session, const ImportFor& planned, const std::string& source);

/// Imports sheets of one student in one transaction; `source`: where they come from. Answers their ids, in order.
/// BadValue: not staff, or a sheet that cannot be written.
base::Result<std::vector<keys::Id>> importSheets(Session& session, const keys::Id& student,
                                                 const std::vector<PaperSheet>& sheets, const std::string& source);

} // namespace peelpack::session
