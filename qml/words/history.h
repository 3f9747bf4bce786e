#pragma once

#include "core/record/sheet_record.h"

#include <QStringList>

namespace peelpack::words {

/// "Signed by L. Brandt, CST (signing card and PIN): 10 marks."
QString of(const record::Happening& happening);
/// A line for everything that ever happened to the sheet: when, who, what, why, and why it does not count.
QStringList history(const record::SheetRecord& sheet, base::Date today);

} // namespace peelpack::words
