#include "qml/shell/starting_to_sign.h"

#include "qml/parts/after_frame.h"
#include "qml/words/bridge.h"

namespace peelpack::shell {
namespace {

constexpr qsizetype mostName = 80;
constexpr qsizetype mostCredential = 40;

} // namespace

void StartingToSign::fail(QString sentence)
{
    m_error = std::move(sentence);
    Q_EMIT changed();
}

void StartingToSign::make(const QString& name, const QString& credential, const QString& secret, const QString& again,
                          bool pin)
{
    if (m_busy || made()) {
        return;
    }
    const session::SignerName owner{words::line(name, mostName), words::line(credential, mostCredential)};
    if (owner.name.empty()) {
        fail(tr("Write your name as it stands under what you sign."));
        return;
    }
    if (const QString differs = whyNotSame(secret, again, pin); !differs.isEmpty()) {
        fail(differs);
        return;
    }
    m_busy = true;
    fail({});
    parts::afterFrame(this, [this, owner, secret, pin] {
        m_busy = false;
        auto made = makeVault(m_surroundings, secret, pin);
        if (!made) {
            fail(words::why(made.error()));
            return;
        }
        NewVault fresh = std::move(made).value();
        m_vault = fresh.vault.get();
        auto own = session::PreceptorVault::open(std::move(fresh.vault), m_surroundings.clock);
        if (!own) {
            fail(words::why(own.error()));
            return;
        }
        m_own = std::move(own).value();
        m_vaultCode = fresh.code;
        fail(words::problem(m_own->setOwner(owner)));
    });
}

StartingToSign::Made StartingToSign::take()
{
    return {std::move(m_own), std::exchange(m_vault, nullptr)};
}

void StartingToSign::finish()
{
    m_vaultCode.fill(QLatin1Char('0'));
    m_vaultCode.clear();
    Q_EMIT finished();
}

} // namespace peelpack::shell
