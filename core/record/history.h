#pragma once

#include "core/record/sheet_record.h"

#include <cstddef>
#include <optional>
#include <vector>

/// The parts of the fold: what one sheet's events are before they become a record.
namespace peelpack::record {

/// The events of one sheet, lent.
struct SheetEvents {
    std::vector<Event*> student;    ///< in feed order
    std::vector<const Event*> acts; ///< in the order of StudentEvents
    std::vector<const Event*> imports;

    [[nodiscard]] const Act& act(std::size_t index) const { return std::get<Act>(acts[index]->what); }
    /// The writer of the act had seen an import and nothing of the student's.
    [[nodiscard]] bool sawImportOnly(const Act& act) const;
};

/// Indexes into SheetEvents::student of what the writers of the acts had seen; empty where that entry is not here.
using Sights = std::vector<std::optional<std::size_t>>;
Sights sightsOf(const SheetEvents& events);

/// Which events have no effect although they count, as indexes into SheetEvents::student.
struct WithoutEffect {
    std::vector<bool> afterInitial;
    std::vector<bool> requestOnly; ///< withdrawals that came after an initial
    const Event* import = nullptr; ///< the one in effect: then the student can only withdraw, and no act changes marks
};

/// Such an act has no effect on an imported sheet.
bool changesMarks(const Act& act);

/// Every event of the sheet in an order that hashes and feeds give: an act comes after what its writer had seen and
/// after the act on which it stands, and before what its writer had not seen. Imports come first.
std::vector<HistoryLine> historyOf(const SheetEvents& events, const Sights& sights, const WithoutEffect& without);

} // namespace peelpack::record
