#pragma once

#include "core/record/sheet_record.h"
#include "core/requirement/requirement_set.h"

#include <string>

/// How the trade's values are said in English, on the command line and on paper. The app says them in its language.
namespace peelpack::english {

/// "2026-03-12 14:05" of a claimed time, as it was there.
std::string timeInWords(const record::Time& time);
/// "2026-03-12, surgeon ..., at ..., room ..., 07:30 to 09:10".
std::string headInWords(const record::Head& head);
/// "signed (card)", "initialed", "imported, not attested", ...
std::string standingInWords(const record::SheetRecord& sheet);
/// Where an imported sheet comes from, and who imported it.
std::string importInWords(const record::ImportInEffect& import);
/// Where a sheet's procedures count, as it stands: "general and plastics".
std::string choicesInWords(const record::Content& content);
/// The part that does not count says why: "aside, not counted"; empty for what counts.
std::string_view inWords(record::Weight weight);
/// The name of whoever wrote an entry.
std::string writerName(const record::Writer& writer);

/// A target: "First scrub, specialties".
std::string targetLabel(const requirement::Target& target);
/// Categories in a sentence: "general and specialties"; `specialty` is how to call all eleven specialties together.
std::string categoriesInWords(catalogue::CategorySet categories, std::string_view specialty, std::string_view joint);

} // namespace peelpack::english
