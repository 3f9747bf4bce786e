#pragma once

#include "platform/session/setup.h"
#include "qml/shell/first_start.h"

#include <optional>

namespace peelpack::shell {

/// The first start: an invitation is read, a vault made, and the answer shown to whoever invited.
class Joining : public FirstStart {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the app")
    Q_PROPERTY(bool invited READ invited NOTIFY changed)
    Q_PROPERTY(bool joined READ joined NOTIFY changed)
    Q_PROPERTY(QString program READ program NOTIFY changed)
    Q_PROPERTY(QString digits READ digits NOTIFY changed)
    Q_PROPERTY(QByteArray reply READ reply NOTIFY changed)

public:
    explicit Joining(Surroundings& surroundings, QObject* parent = nullptr) : FirstStart(surroundings, parent) {}

    [[nodiscard]] bool invited() const { return m_invitation.has_value(); }
    [[nodiscard]] bool joined() const { return !m_reply.isEmpty(); }
    /// The first digits of the program's id, to be compared with the paper.
    [[nodiscard]] QString program() const;
    [[nodiscard]] QString digits() const { return m_digits; }
    [[nodiscard]] QByteArray reply() const { return m_reply; }

    /// An invitation's bytes, from its QR code or file.
    Q_INVOKABLE void read(const QByteArray& code);
    /// The same, typed or pasted as text (RFC 4648, base64 or base64url).
    Q_INVOKABLE void readText(const QString& text);
    Q_INVOKABLE void drop();
    /// The answer as text into the clipboard, for a message to the instructor. It holds no secret.
    Q_INVOKABLE void copyReply() const;
    /// Makes the vault; `pin`: it opens with a PIN, which is weaker than a passphrase.
    Q_INVOKABLE void join(const QString& name, const QString& secret, const QString& again, bool pin);

private:
    std::optional<keys::Invitation> m_invitation;
    QString m_digits;
    QByteArray m_reply;
};

} // namespace peelpack::shell
