#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace peelpack::files {

/// One row of a table, its cells in the order in which the columns were asked for; NFC, defused cells as they were.
struct TableRow {
    std::size_t line = 0;
    std::vector<std::string> cells; ///< empty where the row has none

    /// An error that names the file and this line.
    [[nodiscard]] base::Error error(const std::string& file, const std::string& sentence) const;
};

struct TableColumn {
    std::string name;
    bool required = false; ///< the header row has to name it
};

/// A table: CSV (RFC 4180, UTF-8) with a header row that names the columns, in any order; other columns are passed
/// over. BadInput names line and mend.
base::Result<std::vector<TableRow>> readTable(const std::string& file, std::string_view text,
                                              const std::vector<TableColumn>& columns);

} // namespace peelpack::files
