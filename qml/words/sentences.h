#pragma once

#include "core/sheet/identifiers.h"

#include <QString>
#include <QStringList>

#include <span>
#include <string_view>

/// What the parts below the screens say in English sentences, said in the language of the app.
namespace peelpack::words {

/// An error, a reason or a notice of vault, keys, journal or session. A sentence that is not listed stays English: a
/// test holds the list against what those parts say.
QString said(std::string_view english);
/// The same of a sentence with what is wrong under it, a line each as "place: what; mend."
QStringList saidInLines(std::string_view english);
/// The sentences that said() knows, as the parts below say them, with %1, %2, ... for what is filled in.
std::span<const char* const> sentenceTexts();

/// "a phone number"
QString of(sheet::IdentifierKind kind);

} // namespace peelpack::words
