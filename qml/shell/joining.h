#pragma once

#include "platform/session/setup.h"
#include "platform/vault/sqlite_vault.h"
#include "qml/shell/surroundings.h"

#include <QObject>
#include <QQmlEngine>

#include <optional>

namespace peelpack::shell {

/// The first start: an invitation is read, a vault made, and the answer shown to whoever invited.
class Joining : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the app")
    Q_PROPERTY(bool invited READ invited NOTIFY changed)
    Q_PROPERTY(bool joined READ joined NOTIFY changed)
    Q_PROPERTY(QString program READ program NOTIFY changed)
    Q_PROPERTY(QString vaultCode READ vaultCode NOTIFY changed)
    Q_PROPERTY(QString digits READ digits NOTIFY changed)
    Q_PROPERTY(QByteArray reply READ reply NOTIFY changed)
    Q_PROPERTY(bool busy READ busy NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)

public:
    explicit Joining(Surroundings& surroundings, QObject* parent = nullptr);

    [[nodiscard]] bool invited() const { return m_invitation.has_value(); }
    [[nodiscard]] bool joined() const { return !m_reply.isEmpty(); }
    /// The first digits of the program's id, to be compared with the paper.
    [[nodiscard]] QString program() const;
    /// Shown once, to be written down.
    [[nodiscard]] QString vaultCode() const { return m_vaultCode; }
    [[nodiscard]] QString digits() const { return m_digits; }
    [[nodiscard]] QByteArray reply() const { return m_reply; }
    [[nodiscard]] bool busy() const { return m_busy; }
    [[nodiscard]] QString error() const { return m_error; }

    /// An invitation's bytes, from its QR code or file.
    Q_INVOKABLE void read(const QByteArray& code);
    /// The same, typed or pasted as text (RFC 4648, base64 or base64url).
    Q_INVOKABLE void readText(const QString& text);
    Q_INVOKABLE void drop();
    /// Makes the vault; `pin`: it opens with a PIN, which is weaker than a passphrase.
    Q_INVOKABLE void join(const QString& name, const QString& secret, const QString& again, bool pin);
    /// The vault that was made, once; null when there is none.
    std::unique_ptr<vault::SqliteVault> takeVault();
    /// The code is on paper: it is not shown again.
    Q_INVOKABLE void finish();

Q_SIGNALS:
    void changed();
    void finished();

private:
    void fail(QString sentence);

    Surroundings& m_surroundings;
    std::optional<keys::Invitation> m_invitation;
    std::unique_ptr<vault::SqliteVault> m_vault;
    QString m_vaultCode;
    QString m_digits;
    QByteArray m_reply;
    bool m_busy = false;
    QString m_error;
};

} // namespace peelpack::shell
