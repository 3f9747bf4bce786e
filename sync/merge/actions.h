#pragma once

#include "sync/merge/ledger.h"

#include <map>
#include <vector>

namespace peelpack::merge {

/// One instructor action on a sheet, with who wrote it.
struct Action {
    journal::Decoded entry;
    journal::Role role = journal::Role::Instructor;
    keys::Id person;
    std::uint32_t epoch = 0; ///< of a director, else 0

    [[nodiscard]] const journal::Act& act() const { return *journal::actOf(entry.payload); }
};

/// All actions on one sheet that count. They form a tree by what each stands on.
struct SheetActions {
    std::vector<Action> inForce; ///< from the first to the one in force; empty: no action
    std::vector<Action> beside;  ///< other branches, and actions that stand on one that is not here; by hash
};

/// The tree of the actions on one sheet, which count, walked as FORMAT.md section 7 says.
SheetActions walkOf(std::vector<Action> actions);

/// The actions in one student's stream, by sheet: the same on every device that holds the same entries (FORMAT.md
/// section 7). No clock decides anything.
std::map<keys::Id, SheetActions> actionsOf(const trust::Authority& authority, const Ledger& ledger,
                                           const keys::Id& student);

/// True when the action in force is an initial and everybody who attested the sheet is the person who initialed it:
/// that does not count alone.
bool initialedOnlyByAttester(const trust::Authority& authority, const Ledger& ledger, const keys::Id& student,
                             const keys::Id& sheet);

} // namespace peelpack::merge
