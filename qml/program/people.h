#pragma once

#include "platform/session/enrolling.h"
#include "qml/parts/row_list.h"
#include "qml/program/program_desk.h"

#include <QStringList>

namespace peelpack::program {

/// Somebody with a role in the program.
struct PersonRow {
    Q_GADGET
    QML_VALUE_TYPE(personRow)
    Q_PROPERTY(QString id MEMBER id)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString detail MEMBER detail)
    Q_PROPERTY(QString heading MEMBER heading)

public:
    QString id; ///< 32 digits
    QString name;
    QString detail;
    QString heading; ///< of the group that begins here: a class; empty: it goes on
    bool operator==(const PersonRow&) const = default;
};
/// A phone or computer of one person.
struct DeviceRow {
    Q_GADGET
    QML_VALUE_TYPE(deviceRow)
    Q_PROPERTY(QString id MEMBER id)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString detail MEMBER detail)
    Q_PROPERTY(bool mayEnd MEMBER mayEnd)

public:
    QString id; ///< its key's digits
    QString title;
    QString detail;
    bool mayEnd = false;
    bool operator==(const DeviceRow&) const = default;
};

class PersonRows : public parts::RowList<PersonRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};
class DeviceRows : public parts::RowList<DeviceRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};

/// "director", "instructor" ... in the language of the app.
QString roleName(journal::Role role);

/// Who is in the program, and one of them with their devices.
class People : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made when a vault of staff opens")
    Q_PROPERTY(peelpack::program::PersonRows* students READ students CONSTANT)
    Q_PROPERTY(peelpack::program::PersonRows* staff READ staff CONSTANT)
    Q_PROPERTY(QString name READ name NOTIFY changed)
    Q_PROPERTY(QString what READ what NOTIFY changed)
    Q_PROPERTY(QString person READ person NOTIFY changed)
    Q_PROPERTY(bool mayInviteAgain READ mayInviteAgain NOTIFY changed)
    Q_PROPERTY(bool endsByCode READ endsByCode NOTIFY changed)
    Q_PROPERTY(peelpack::program::DeviceRows* devices READ devices CONSTANT)
    Q_PROPERTY(QString error READ error NOTIFY changed)

public:
    explicit People(ProgramDesk& desk, QObject* parent = nullptr);

    /// By class, then name.
    [[nodiscard]] PersonRows* students() { return &m_students; }
    /// Director, instructors, coordinators, contacts.
    [[nodiscard]] PersonRows* staff() { return &m_staff; }
    /// Of the one person.
    [[nodiscard]] const QString& name() const { return m_name; }
    /// "student · Spring class"
    [[nodiscard]] const QString& what() const { return m_what; }
    [[nodiscard]] const QString& person() const { return m_person; }
    [[nodiscard]] bool mayInviteAgain() const { return m_mayInviteAgain; }
    /// Another director in use, whom only the program code ends.
    [[nodiscard]] bool endsByCode() const { return m_endsByCode; }
    [[nodiscard]] DeviceRows* devices() { return &m_devices; }
    [[nodiscard]] const QString& error() const { return m_error; }

    /// When the page is shown.
    Q_INVOKABLE void read();
    Q_INVOKABLE void show(const QString& person);
    /// Ends one device of the person that is shown: lost, or they have left.
    Q_INVOKABLE void end(const QString& device, const QString& reason);
    /// Ends all devices of the director that is shown.
    Q_INVOKABLE void endDirector(const QString& code);

Q_SIGNALS:
    void changed();

private:
    [[nodiscard]] QString detailOf(const session::Person& person);

    ProgramDesk& m_desk;
    PersonRows m_students;
    PersonRows m_staff;
    QString m_person;
    QString m_name;
    QString m_what;
    bool m_mayInviteAgain = false;
    bool m_endsByCode = false;
    DeviceRows m_devices;
    QString m_error;
};

} // namespace peelpack::program
