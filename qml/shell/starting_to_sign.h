#pragma once

#include "platform/session/preceptor_vault.h"
#include "qml/shell/new_vault.h"

#include <QObject>
#include <QQmlEngine>

namespace peelpack::shell {

/// The first start of a preceptor's own phone: who signs, what opens it, and the vault with the signing key.
class StartingToSign : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the app")
    Q_PROPERTY(bool made READ made NOTIFY changed)
    Q_PROPERTY(QString vaultCode READ vaultCode NOTIFY changed)
    Q_PROPERTY(bool busy READ busy NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)

public:
    explicit StartingToSign(Surroundings& surroundings, QObject* parent = nullptr)
        : QObject(parent), m_surroundings(surroundings)
    {
    }

    [[nodiscard]] bool made() const { return m_own != nullptr; }
    /// Shown once, to be written down.
    [[nodiscard]] const QString& vaultCode() const { return m_vaultCode; }
    [[nodiscard]] bool busy() const { return m_busy; }
    [[nodiscard]] const QString& error() const { return m_error; }

    Q_INVOKABLE void make(const QString& name, const QString& credential, const QString& secret, const QString& again,
                          bool pin);
    /// The code is on paper: it is not shown again.
    Q_INVOKABLE void finish();
    /// What was made, once; nothing when nothing was.
    struct Made {
        std::unique_ptr<session::PreceptorVault> own;
        vault::SqliteVault* vault = nullptr; ///< in `own`
    };
    Made take();

Q_SIGNALS:
    void changed();
    void finished();

private:
    void fail(QString sentence);

    Surroundings& m_surroundings;
    std::unique_ptr<session::PreceptorVault> m_own;
    vault::SqliteVault* m_vault = nullptr;
    QString m_vaultCode;
    bool m_busy = false;
    QString m_error;
};

} // namespace peelpack::shell
