#pragma once

#include <QString>

namespace peelpack::app {

/// Where this person's app keeps things; the folders are made when they are missing.
struct Places {
    QString vaultFile;    ///< peelpack/journal.peelvault in XDG_DATA_HOME
    QString settingsFile; ///< peelpack/app.ini in XDG_CONFIG_HOME
};

Places usualPlaces();

} // namespace peelpack::app
