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

} // namespace peelpack::words
