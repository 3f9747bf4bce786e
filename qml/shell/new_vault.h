#pragma once

#include "platform/vault/sqlite_vault.h"
#include "qml/shell/surroundings.h"

namespace peelpack::shell {

/// A vault that was made on this phone, and its code as it is shown once.
struct NewVault {
    std::unique_ptr<vault::SqliteVault> vault;
    QString code;
};

/// What is wrong with two entries of a new PIN or passphrase; empty: they are the same.
QString whyNotSame(const QString& secret, const QString& again, bool pin);
/// `pin`: it opens with a PIN, which is weaker than a passphrase.
vault::Result<NewVault> makeVault(Surroundings& surroundings, const QString& secret, bool pin);

} // namespace peelpack::shell
