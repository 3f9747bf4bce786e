#pragma once

#include "platform/session/sheet_rules.h"

#include <QString>

namespace peelpack::preceptor {

/// Which signatures count by the program's rules, and who may sign which role: said before anything is marked.
QString rulesInWords(const session::Session& session);
/// What the program says about somebody with this credential who is about to sign; empty: nothing.
QString inWords(const session::MaySignHere& may, const QString& credential);

} // namespace peelpack::preceptor
