#pragma once

#include "qml/words/sentences.h"
#include "sync/keys/secret.h"

#include <QByteArray>
#include <QString>

#include <optional>

/// The screens' texts and bytes as the journal's, and back.
namespace peelpack::words {

QByteArray toArray(keys::ByteView bytes);
keys::Bytes toBytes(const QByteArray& array);
/// A code in locked memory as it is shown (ASCII).
QString shown(const keys::Secret& code);
/// What somebody typed as one line of at most `most` letters, composed alike on every keyboard.
std::string line(const QString& text, qsizetype most);
/// The same of a passphrase or PIN, letter by letter.
std::string secret(const QString& text);
/// The bytes of a code that was typed or pasted as text (RFC 4648, base64 or base64url); spaces and line ends do not
/// matter. Empty: it is none.
std::optional<QByteArray> pastedCode(const QString& text);
/// A code as such a text.
QString codeAsText(const QByteArray& code);
/// The sentence of an error of any part, in the language of the app.
template <class Error>
QString why(const Error& error)
{
    return said(error.sentence);
}
/// The same of a result; empty: it went well.
template <class Result>
QString problem(const Result& result)
{
    return result ? QString() : why(result.error());
}

} // namespace peelpack::words
