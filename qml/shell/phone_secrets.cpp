#include "qml/shell/phone.h"

#include "qml/words/bridge.h"
#include "qml/words/words.h"
#include "sync/keys/code.h"

namespace peelpack::shell {

bool Phone::opensWithPin() const
{
    if (demo()) {
        return true;
    }
    if (m_vault == nullptr) {
        return false;
    }
    const auto kind = m_vault->secretKind();
    return kind && kind.value() == vault::SecretKind::Pin;
}

void Phone::unlock(const QString& secret)
{
    later([this, secret] {
        auto vault =
            vault::SqliteVault::open(m_surroundings.vaultFile, keys::bytesOf(words::secret(secret)),
                                     m_surroundings.marks, m_surroundings.random, m_surroundings.clock().seconds);
        if (!vault) {
            m_error = words::why(vault.error());
            return;
        }
        openVault(std::move(vault).value());
    });
}

void Phone::unlockWithCode(const QString& code)
{
    later([this, code] {
        const base::Result<keys::Secret> bytes =
            keys::codeFromText(keys::CodeSort::Vault, code.trimmed().toStdString());
        if (!bytes) {
            m_error = words::why(bytes.error());
            return;
        }
        auto vault = vault::SqliteVault::openWithCode(m_surroundings.vaultFile, bytes.value().view(),
                                                      m_surroundings.marks, m_surroundings.random);
        if (!vault) {
            m_error = words::why(vault.error());
            return;
        }
        openVault(std::move(vault).value());
    });
}

QString Phone::checkSecret(const QString& secret)
{
    if (m_demo) {
        return secret == QLatin1String(demo::phoneDemoPin)
                   ? QString()
                   : tr("That is not the demo's PIN: it is %1.").arg(QLatin1String(demo::phoneDemoPin));
    }
    if (m_vault == nullptr) {
        return tr("The phone is locked.");
    }
    const auto right = m_vault->check(keys::bytesOf(words::secret(secret)), m_surroundings.clock().seconds);
    return words::problem(right);
}

void Phone::changeSecret(const QString& now, const QString& next, const QString& again, bool pin)
{
    if (m_vault == nullptr) {
        m_error = demo() ? tr("The demo's PIN stays as it is.") : tr("The phone is locked.");
        Q_EMIT changed();
        return;
    }
    if (next != again) {
        m_error = tr("The two new PINs or passphrases differ.");
        Q_EMIT changed();
        return;
    }
    later([this, now, next, pin] {
        m_error = checkSecret(now);
        if (!m_error.isEmpty()) {
            return;
        }
        const auto changedNow = m_vault->changeSecret(pin ? vault::SecretKind::Pin : vault::SecretKind::Passphrase,
                                                      keys::bytesOf(words::secret(next)));
        m_error = words::problem(changedNow);
        m_notice = changedNow ? tr("Changed. From now on the new one opens this phone.") : QString();
    });
}

void Phone::makeVaultCode(const QString& now)
{
    if (m_vault == nullptr) {
        m_error = demo() ? tr("The demo has no vault code.") : tr("The phone is locked.");
        Q_EMIT changed();
        return;
    }
    later([this, now] {
        m_error = checkSecret(now);
        if (!m_error.isEmpty()) {
            return;
        }
        const auto code = m_vault->changeCode();
        if (!code) {
            m_error = words::why(code.error());
            return;
        }
        m_newVaultCode = words::shown(keys::codeText(keys::CodeSort::Vault, code.value().view()));
    });
}

void Phone::forgetVaultCode()
{
    m_newVaultCode.fill(QLatin1Char('0'));
    m_newVaultCode.clear();
    Q_EMIT changed();
}

} // namespace peelpack::shell
