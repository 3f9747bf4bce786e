#include "qml/words/bridge.h"

#include "platform/files/text_file.h"

namespace peelpack::words {

QByteArray toArray(keys::ByteView bytes)
{
    return {reinterpret_cast<const char*>(bytes.data()), static_cast<qsizetype>(bytes.size())};
}

keys::Bytes toBytes(const QByteArray& array)
{
    return {array.begin(), array.end()};
}

QString shown(const keys::Secret& code)
{
    return QString::fromLatin1(toArray(code.view()));
}

std::string line(const QString& text, qsizetype most)
{
    return files::normalized(text.simplified().left(most).toStdString());
}

std::string secret(const QString& text)
{
    return files::normalized(text.toStdString());
}

std::optional<QByteArray> pastedCode(const QString& text)
{
    constexpr qsizetype mostText = 4096;
    QByteArray letters;
    for (const QChar letter : text.left(mostText)) {
        if (!letter.isSpace()) {
            letters.append(letter.toLatin1());
        }
    }
    letters.replace('-', '+').replace('_', '/');
    const auto decoded = QByteArray::fromBase64Encoding(letters, QByteArray::AbortOnBase64DecodingErrors);
    return letters.isEmpty() || !decoded ? std::nullopt : std::optional(decoded.decoded);
}

QString codeAsText(const QByteArray& code)
{
    return QString::fromLatin1(code.toBase64(QByteArray::Base64UrlEncoding | QByteArray::OmitTrailingEquals));
}

} // namespace peelpack::words
