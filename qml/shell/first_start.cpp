#include "qml/shell/first_start.h"

#include "qml/parts/after_frame.h"
#include "qml/words/bridge.h"
#include "sync/keys/code.h"

#include <QFile>

namespace peelpack::shell {

void FirstStart::fail(QString sentence)
{
    m_error = std::move(sentence);
    Q_EMIT changed();
}

void FirstStart::make(const Secret& secret, const Use& use)
{
    if (m_busy) {
        return;
    }
    if (secret.once != secret.again) {
        fail(secret.pin ? tr("The two PINs differ.") : tr("The two passphrases differ."));
        return;
    }
    m_busy = true;
    fail({});
    parts::afterFrame(this, [this, secret, use] {
        m_busy = false;
        makeNow(secret, use);
    });
}

void FirstStart::makeNow(const Secret& secret, const Use& use)
{
    const std::string typed = words::secret(secret.once);
    auto made = vault::SqliteVault::make(m_surroundings.vaultFile,
                                         secret.pin ? vault::SecretKind::Pin : vault::SecretKind::Passphrase,
                                         keys::bytesOf(typed), m_surroundings.marks, m_surroundings.random);
    if (!made) {
        fail(words::why(made.error()));
        return;
    }
    vault::MadeVault parts = std::move(made).value();
    if (const base::Result<bool> used = use(parts.vault); !used) {
        parts.vault.reset();
        for (const char* end : {"", "-wal", "-shm"}) {
            QFile::remove(QString::fromStdString(m_surroundings.vaultFile + end));
        }
        fail(words::why(used.error()));
        return;
    }
    m_vault = std::move(parts.vault);
    m_vaultCode = words::shown(keys::codeText(keys::CodeSort::Vault, parts.code.view()));
    fail({});
}

std::unique_ptr<vault::SqliteVault> FirstStart::takeVault()
{
    return std::move(m_vault);
}

void FirstStart::finish()
{
    m_vaultCode.fill(QLatin1Char('0'));
    m_vaultCode.clear();
    Q_EMIT changed();
    Q_EMIT finished();
}

} // namespace peelpack::shell
