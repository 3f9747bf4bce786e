#pragma once

#include "platform/cli/vault_access.h"
#include "platform/session/signing.h"

#include <optional>
#include <string>
#include <vector>

namespace peelpack::cli {

/// --procedure, --date, --surgeon, --site, --room, --start, --end, --canceled.
std::vector<OptionSpec> headOptions();
/// --marks, --mark.
std::vector<OptionSpec> markOptions();

/// `before` with what the options change. BadUsage names the option.
base::Result<journal::Head> headFrom(const Arguments& arguments, const journal::Head& before);
/// The procedures given; `before` when none is given.
std::vector<std::string> proceduresFrom(const Arguments& arguments, const std::vector<std::string>& before);
/// Ten letters of --marks (Y, N, A for N/A, - for not seen; in the order of the skills), then each --mark SKILL=MARK or
/// SKILL=NA:why.
base::Result<std::vector<journal::SkillMark>> marksFrom(const Arguments& arguments);

/// Puts a mark among others, in the order of the skills; one of the same skill is replaced.
void setMark(std::vector<journal::SkillMark>& marks, journal::SkillMark mark);

/// True when an option that headOptions() lists was given.
bool changesHead(const Arguments& arguments);

/// BadInput when something looks like a patient identifier and --checked does not say that it is none: what is written
/// to a journal stays, so it is asked before. The text is not repeated.
base::Result<bool> screened(const Arguments& arguments, const std::vector<std::string>& texts);
OptionSpec checkedOption();

/// "Y", "N", "NA", "" of ten marks, "YYNA..." as one word for a line.
std::string marksInLetters(const sheet::Marks& marks);

/// Choices from --under CATEGORY (in the order of the procedures) and --joined; BadUsage names what is wrong.
base::Result<std::vector<journal::Choice>> choicesFrom(const Arguments& arguments, std::size_t procedures);
std::vector<OptionSpec> choiceOptions();

/// The rows of a case-sheet file as drafts, a sheet each. BadInput names line, column and mend; nothing is left out.
base::Result<std::vector<journal::Draft>> draftsFromCsv(const std::string& file);

} // namespace peelpack::cli
