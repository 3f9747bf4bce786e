#pragma once

#include "core/base/result.h"
#include "core/catalogue/catalogue.h"
#include "core/requirement/requirement_set.h"

#include <string>
#include <vector>

namespace peelpack::files {

/// A whole shipped file, by its path below core/data ("catalogue.tsv"). The error says that the program is damaged.
base::Result<std::string> shippedText(const std::string& path);

/// The shipped catalogue.
base::Result<catalogue::Catalogue> shippedCatalogue();

/// The ids of the shipped requirement sets, in the order of the counting rules.
const std::vector<std::string>& shippedSetIds();

/// The set that a command uses when none is named: the revised 6th edition's. It rules nobody: the director decides.
inline constexpr const char* usualSetId = "spread10";

} // namespace peelpack::files
