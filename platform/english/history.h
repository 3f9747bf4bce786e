#pragma once

#include "core/record/sheet_record.h"

#include <string>

namespace peelpack::english {

/// "Signed by L. Brandt, CST (card): 10 marks."
std::string inWords(const record::Happening& happening);

} // namespace peelpack::english
