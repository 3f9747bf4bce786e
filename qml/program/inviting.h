#pragma once

#include "platform/session/enrolling.h"
#include "qml/parts/row_list.h"
#include "qml/program/program_desk.h"

#include <QStringList>

namespace peelpack::program {

/// An invitation that was given out and not answered.
struct OpenInvitationRow {
    Q_GADGET
    QML_VALUE_TYPE(openInvitationRow)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString detail MEMBER detail)

public:
    QString name;
    QString detail;
    bool operator==(const OpenInvitationRow&) const = default;
};
class OpenInvitationRows : public parts::RowList<OpenInvitationRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};

/// "student · Spring class · until Mar 12"
QString describe(const session::OpenInvitation& open, base::Date today);

/// One person is invited, and the invitation given out: shown, saved, copied. What it shows is a secret, and is wiped
/// when the page is left.
class Inviting : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made when a vault of staff opens")
    Q_PROPERTY(QStringList roles READ roles NOTIFY changed)
    Q_PROPERTY(QStringList classes READ classes NOTIFY changed)
    Q_PROPERTY(peelpack::program::OpenInvitationRows* open READ open CONSTANT)
    Q_PROPERTY(QString name READ name NOTIFY changed)
    Q_PROPERTY(QString what READ what NOTIFY changed)
    Q_PROPERTY(QByteArray code READ code NOTIFY changed)
    Q_PROPERTY(QString text READ text NOTIFY changed)
    Q_PROPERTY(QString fileName READ fileName NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)

public:
    explicit Inviting(ProgramDesk& desk, QObject* parent = nullptr);

    /// Those that this person may invite; the student first.
    [[nodiscard]] QStringList roles();
    /// That are known, to choose from.
    [[nodiscard]] QStringList classes();
    [[nodiscard]] OpenInvitationRows* open() { return &m_open; }
    /// Of the invitation that is shown.
    [[nodiscard]] const QString& name() const { return m_name; }
    [[nodiscard]] const QString& what() const { return m_what; }
    [[nodiscard]] const QByteArray& code() const { return m_code; }
    /// For typing or pasting.
    [[nodiscard]] const QString& text() const { return m_text; }
    [[nodiscard]] QString fileName() const;
    [[nodiscard]] const QString& error() const { return m_error; }

    /// When the page is shown.
    Q_INVOKABLE void read();
    /// `role`: a place in `roles`. `scopes`: classes or sites, with semicolons between. True: it is shown now.
    Q_INVOKABLE bool invite(int role, const QString& name, const QString& scopes);
    /// Somebody who is known, for another phone.
    Q_INVOKABLE bool inviteAgain(const QString& person);
    /// An open one once more.
    Q_INVOKABLE void show(int index);
    Q_INVOKABLE void copyText() const;
    /// Takes the one that is shown back. True: it is gone.
    Q_INVOKABLE bool withdraw();
    /// The page is left.
    Q_INVOKABLE void forget();

Q_SIGNALS:
    void changed();

private:
    bool made(const base::Result<session::OpenInvitation>& invitation);
    void show(const session::OpenInvitation& invitation);

    ProgramDesk& m_desk;
    OpenInvitationRows m_open;
    QString m_name;
    QString m_what;
    QByteArray m_code;
    QString m_text;
    QString m_error;
};

} // namespace peelpack::program
