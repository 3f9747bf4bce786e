#include "qml/shell/starting_to_sign.h"

#include "qml/words/bridge.h"

namespace peelpack::shell {
namespace {

constexpr qsizetype mostCredential = 40;

} // namespace

void StartingToSign::make(const QString& name, const QString& credential, const QString& secret, const QString& again,
                          bool pin)
{
    if (made()) {
        return;
    }
    const session::SignerName owner{words::line(name, mostName), words::line(credential, mostCredential)};
    if (owner.name.empty()) {
        fail(tr("Write your name as it stands under what you sign."));
        return;
    }
    FirstStart::make({secret, again, pin},
                     [this, owner](std::unique_ptr<vault::SqliteVault>& vault) -> base::Result<bool> {
                         vault::SqliteVault* kept = vault.get();
                         auto opened = session::PreceptorVault::open(std::move(vault), surroundings().clock);
                         if (!opened) {
                             return opened.error();
                         }
                         std::unique_ptr<session::PreceptorVault> own = std::move(opened).value();
                         if (const base::Result<bool> named = own->setOwner(owner); !named) {
                             return named.error();
                         }
                         m_own = std::move(own);
                         m_vault = kept;
                         return true;
                     });
}

StartingToSign::Made StartingToSign::take()
{
    return {std::move(m_own), std::exchange(m_vault, nullptr)};
}

} // namespace peelpack::shell
