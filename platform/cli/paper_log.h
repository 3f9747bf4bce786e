#pragma once

#include "core/catalogue/catalogue.h"
#include "core/sheet/sheet_reader.h"
#include "platform/session/importing.h"

#include <string>
#include <vector>

namespace peelpack::cli {

/// A sheet of a paper log that can be imported, and where it stands in the file.
struct PaperLogSheet {
    std::size_t line = 0; ///< of its first row
    std::string student;  ///< as written there
    session::PaperSheet sheet;
};

struct PaperLog {
    std::vector<PaperLogSheet> sheets; ///< by student, date and id
    sheet::ReadReport report;
};

/// A paper log as a case-sheet file: every row with imported = Y and a role, none with marks, a signature or an
/// initial. A row that is refused takes its whole sheet with it: what is imported stays. `checked`: what looks like a
/// patient identifier is none. BadInput: the file cannot be read at all.
base::Result<PaperLog> readPaperLog(const std::string& file, const catalogue::Catalogue& catalogue,
                                    const std::string& source, bool checked);

} // namespace peelpack::cli
