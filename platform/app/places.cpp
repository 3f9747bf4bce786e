#include "platform/app/places.h"

#include <QDir>
#include <QStandardPaths>

namespace peelpack::app {
namespace {

QString folder(QStandardPaths::StandardLocation location)
{
    QString path = QStandardPaths::writableLocation(location) + QStringLiteral("/peelpack");
    QDir().mkpath(path);
    return path;
}

} // namespace

Places usualPlaces()
{
    return {folder(QStandardPaths::GenericDataLocation) + QStringLiteral("/journal.peelvault"),
            folder(QStandardPaths::GenericConfigLocation) + QStringLiteral("/app.ini")};
}

} // namespace peelpack::app
