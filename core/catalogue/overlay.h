#pragma once

#include "core/catalogue/catalogue.h"

#include <string_view>
#include <vector>

/// A program's own table over a catalogue, before it is put in force.
namespace peelpack::catalogue {

/// As Catalogue::withOverlay, and more is asked: a procedure that the table adds or changes can be meant by its name
/// and by each synonym, which no other procedure has. The error names the procedure and the mend.
base::Result<Catalogue> checkedOverlay(const Catalogue& shipped, std::string_view table);

/// A procedure that a table adds or changes.
struct OverlayRow {
    const Procedure* procedure = nullptr; ///< as it is with the table; lives as long as that catalogue
    const Procedure* before = nullptr;    ///< as it is without; null: the table adds it
};
/// In the order of the catalogue; a row of a table that changes nothing is none.
std::vector<OverlayRow> overlayRows(const Catalogue& shipped, const Catalogue& laid);

} // namespace peelpack::catalogue
