#pragma once

#include "core/base/result.h"
#include "core/catalogue/catalogue.h"
#include "core/requirement/requirement_set.h"
#include "core/sheet/sheet_reader.h"
#include "core/tally/candidate.h"
#include "platform/cli/arguments.h"
#include "platform/session/program_rules.h"

#include <nlohmann/json.hpp>

#include <functional>
#include <map>
#include <string>
#include <vector>

namespace peelpack::cli {

/// The options of every command that reads the catalogue: --catalogue.
OptionSpec catalogueOption();
/// The shipped catalogue with the table of --catalogue, if given, laid over it.
base::Result<catalogue::Catalogue> catalogueFor(const Arguments& arguments);
/// With --catalogue the same; else the shipped one with the program's own table over it. A table that does not fit is
/// said on standard error and left out.
base::Result<catalogue::Catalogue> catalogueFor(const Arguments& arguments, const session::Session& session);

/// What `role` and `tally` work on.
struct CaseInput {
    std::string file;
    requirement::RequirementSet set; ///< of a vault without --set: everybody's, or the policy's where they differ
    sheet::SheetReader::Reading reading;
    tally::AcceptedStrengths accepted = tally::usualStrengths; ///< signatures that reach the level attested
    /// Of a vault's students by their names in the book; empty: everybody is counted under `set`.
    std::map<std::string, session::SetsAround, std::less<>> setsAround;
    /// All of those that are at hand, by name and digest: two may have one name.
    std::map<std::pair<std::string, std::optional<keys::Hash>>, requirement::RequirementSet> sets;

    /// The set under which a student is counted.
    [[nodiscard]] const requirement::RequirementSet& setFor(std::string_view student) const;
    /// Null: it is not at hand.
    [[nodiscard]] const requirement::RequirementSet* find(const session::SetByName& named) const;
    /// What is said of a student's sets; null where everybody is counted under `set`.
    [[nodiscard]] const session::SetsAround* around(std::string_view student) const;
};

/// Reads the file that the first operand names, under --catalogue and --set, showing progress; a vault is unlocked, and
/// counted under the set in force in its program when --set is not given. The error names the file. `onRow`: sees each
/// row of a file that is taken, although its sheet may be refused later; empty: nobody wants to.
base::Result<CaseInput> readCaseInput(const Arguments& arguments,
                                      const std::function<void(const sheet::CaseRow&)>& onRow = {});

/// Refusals and warnings as lines on standard error: file, line, column, reason, mend. `rest`: what becomes of what is
/// not refused.
void complainOf(const std::string& file, const sheet::ReadReport& report,
                std::string_view rest = "what is left is counted");

/// [{"line", "column", "reason", "mend"}, ...]
nlohmann::ordered_json findingsJson(const std::vector<sheet::Finding>& findings);

} // namespace peelpack::cli
