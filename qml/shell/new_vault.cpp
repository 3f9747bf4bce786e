#include "qml/shell/new_vault.h"

#include "qml/shell/joining.h"
#include "qml/words/bridge.h"
#include "sync/keys/code.h"

namespace peelpack::shell {

QString whyNotSame(const QString& secret, const QString& again, bool pin)
{
    if (secret == again) {
        return {};
    }
    return pin ? Joining::tr("The two PINs differ.") : Joining::tr("The two passphrases differ.");
}

vault::Result<NewVault> makeVault(Surroundings& surroundings, const QString& secret, bool pin)
{
    const std::string typed = words::secret(secret);
    auto made =
        vault::SqliteVault::make(surroundings.vaultFile, pin ? vault::SecretKind::Pin : vault::SecretKind::Passphrase,
                                 keys::bytesOf(typed), surroundings.marks, surroundings.random);
    if (!made) {
        return made.error();
    }
    vault::MadeVault parts = std::move(made).value();
    return NewVault{std::move(parts.vault), words::shown(keys::codeText(keys::CodeSort::Vault, parts.code.view()))};
}

} // namespace peelpack::shell
