#pragma once

#include "platform/cli/vault_access.h"
#include "platform/session/directory.h"
#include "platform/session/sheets.h"

#include <string>
#include <vector>

namespace peelpack::cli {

/// --student, --class.
std::vector<OptionSpec> studentOptions();

/// In a student's vault the student; else those of --student or --class, or all, by name.
base::Result<std::vector<keys::Id>> chosenStudents(const session::Session& session, const Arguments& arguments);

/// An unlocked vault, and which of its students are meant.
struct ChosenVault {
    OpenedVault opened;
    std::vector<keys::Id> students;

    [[nodiscard]] const session::Session& session() const { return *opened.session; }
    /// Their sheets as they stand, in that order.
    [[nodiscard]] std::vector<record::StudentRecord> records() const { return session().recordsOf(students); }
};
/// As openVault(), then chosenStudents().
base::Result<ChosenVault> openChosen(const Arguments& arguments);
base::Result<ChosenVault> openChosen(const Arguments& arguments, const std::string& file);

/// The sheet of that short id among the chosen students. NotFound; BadValue when several fit.
base::Result<session::SheetPlace> chosenSheet(const session::Session& session, const Arguments& arguments,
                                              const std::string& shortName);

} // namespace peelpack::cli
