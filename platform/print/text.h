#pragma once

#include <QString>
#include <QStringList>

#include <string_view>

namespace peelpack::print {

/// UTF-8 across to Qt.
inline QString text(std::string_view words)
{
    return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

} // namespace peelpack::print
