#pragma once

#include "qml/program/named_row.h"
#include "qml/program/program_desk.h"
#include "sync/journal/rule_payloads.h"

#include <QStringList>

namespace peelpack::program {

/// The sites of the program with their rule about phones, and one of them while it is changed.
class SiteList : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made when a vault of staff opens")
    Q_PROPERTY(bool mayChange READ mayChange CONSTANT)
    Q_PROPERTY(peelpack::program::NamedRows* rows READ rows CONSTANT)
    Q_PROPERTY(QStringList phoneRules READ phoneRules NOTIFY changed)
    Q_PROPERTY(bool editing READ editing NOTIFY changed)
    Q_PROPERTY(bool isNew READ isNew NOTIFY changed)
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY changed)
    Q_PROPERTY(int phones READ phones WRITE setPhones NOTIFY changed)
    Q_PROPERTY(QString note READ note WRITE setNote NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)

public:
    explicit SiteList(ProgramDesk& desk, QObject* parent = nullptr);

    [[nodiscard]] bool mayChange();
    /// By name; the detail is the rule about phones and the note.
    [[nodiscard]] NamedRows* rows() { return &m_rows; }
    /// To choose from: nothing said, in the core, in the lounge only, not at all.
    [[nodiscard]] static QStringList phoneRules();
    [[nodiscard]] bool editing() const { return m_editing; }
    [[nodiscard]] bool isNew() const { return m_before.empty(); }
    [[nodiscard]] const QString& name() const { return m_name; }
    void setName(const QString& name);
    /// Index into phoneRules.
    [[nodiscard]] int phones() const { return static_cast<int>(m_phones); }
    void setPhones(int rule);
    [[nodiscard]] const QString& note() const { return m_note; }
    void setNote(const QString& note);
    [[nodiscard]] const QString& error() const { return m_error; }

    /// When the page is shown.
    Q_INVOKABLE void read();
    /// Another site; or one of the rows.
    Q_INVOKABLE void begin();
    Q_INVOKABLE void change(int row);
    Q_INVOKABLE void leave();
    Q_INVOKABLE void sign();
    /// Takes the site that is changed off the list.
    Q_INVOKABLE void remove();

Q_SIGNALS:
    void changed();

private:
    void begin(const journal::Site& site);
    void write(std::vector<journal::Site> sites);

    ProgramDesk& m_desk;
    NamedRows m_rows;
    bool m_editing = false;
    std::string m_before; ///< the name that it has on the list; empty: a new one
    QString m_name;
    journal::PhoneRule m_phones = journal::PhoneRule::NotSaid;
    QString m_note;
    QString m_error;
};

} // namespace peelpack::program
