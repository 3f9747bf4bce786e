#pragma once

#include "platform/session/preceptor_vault.h"
#include "qml/shell/first_start.h"

namespace peelpack::shell {

/// The first start of a preceptor's own phone: who signs, what opens it, and the vault with the signing key.
class StartingToSign : public FirstStart {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the app")
    Q_PROPERTY(bool made READ made NOTIFY changed)

public:
    explicit StartingToSign(Surroundings& surroundings, QObject* parent = nullptr) : FirstStart(surroundings, parent) {}

    [[nodiscard]] bool made() const { return m_own != nullptr; }

    Q_INVOKABLE void make(const QString& name, const QString& credential, const QString& secret, const QString& again,
                          bool pin);
    /// What was made, once; nothing when nothing was.
    struct Made {
        std::unique_ptr<session::PreceptorVault> own;
        vault::SqliteVault* vault = nullptr; ///< in `own`
    };
    Made take();

private:
    std::unique_ptr<session::PreceptorVault> m_own;
    vault::SqliteVault* m_vault = nullptr;
};

} // namespace peelpack::shell
