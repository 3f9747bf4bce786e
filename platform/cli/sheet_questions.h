#pragma once

#include "core/catalogue/catalogue.h"
#include "core/record/sheet_record.h"
#include "platform/session/session.h"

#include <nlohmann/json.hpp>

#include <set>
#include <string>
#include <vector>

namespace peelpack::cli {

/// Why an instructor should look at a sheet before initialing it; empty: nothing stands out. `repudiated`: as
/// isRepudiated() says.
std::vector<std::string> sheetQuestions(const record::SheetRecord& sheet, bool repudiated,
                                        const catalogue::Catalogue& catalogue);

/// A signature in effect of which the preceptor says that it is not theirs; `repudiated`: those of the student.
bool isRepudiated(const record::SheetRecord& sheet, const std::set<base::EntryHash>& repudiated);

/// What clocks and receipts say that does not fit together, about one student's records: adds to both.
void askAboutTimes(const session::Session& session, const keys::Id& student, nlohmann::ordered_json& list,
                   std::string& lines);

} // namespace peelpack::cli
