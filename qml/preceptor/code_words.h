#pragma once

#include "sync/journal/reason.h"

#include <QString>

/// Why a code that was scanned or opened is not the one that is wanted, in a sentence that says what to do.
namespace peelpack::preceptor {

/// Of a student's sheet, shown to a preceptor's own phone.
QString whyNoRequest(journal::Reason reason);
/// Of the answer, shown back.
QString whyNoAnswer(journal::Reason reason);

} // namespace peelpack::preceptor
