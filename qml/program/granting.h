#pragma once

#include "platform/session/setup.h"
#include "qml/program/program_desk.h"

namespace peelpack::program {

/// The answer to an invitation comes back: whose it is, six digits to compare, and the grant.
class Granting : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made when a vault of staff opens")
    Q_PROPERTY(bool matched READ matched NOTIFY changed)
    Q_PROPERTY(QString name READ name NOTIFY changed)
    Q_PROPERTY(QString what READ what NOTIFY changed)
    Q_PROPERTY(QString digits READ digits NOTIFY changed)
    Q_PROPERTY(QString done READ done NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)

public:
    explicit Granting(ProgramDesk& desk, QObject* parent = nullptr) : QObject(parent), m_desk(desk) {}

    /// An answer was read, and fits an invitation that is open here.
    [[nodiscard]] bool matched() const { return m_reply.has_value(); }
    /// Who was invited, as what, and the digits that their phone must show, too.
    [[nodiscard]] const QString& name() const { return m_name; }
    [[nodiscard]] const QString& what() const { return m_what; }
    [[nodiscard]] const QString& digits() const { return m_digits; }
    /// Who was let in last, in a sentence.
    [[nodiscard]] const QString& done() const { return m_done; }
    [[nodiscard]] const QString& error() const { return m_error; }

    Q_INVOKABLE void read(const QByteArray& code);
    /// The same, pasted as text.
    Q_INVOKABLE void readText(const QString& text);
    /// The digits are the same on both devices. True: they are in.
    Q_INVOKABLE bool grant();
    /// They differ: nothing is granted.
    Q_INVOKABLE void refuse();
    Q_INVOKABLE void forget();

Q_SIGNALS:
    void changed();

private:
    void fail(const QString& sentence);

    ProgramDesk& m_desk;
    std::optional<keys::InvitationReply> m_reply;
    QString m_name;
    QString m_what;
    QString m_digits;
    QString m_done;
    QString m_error;
};

} // namespace peelpack::program
