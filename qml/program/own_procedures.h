#pragma once

#include "core/catalogue/catalogue.h"
#include "qml/program/named_row.h"
#include "qml/program/program_desk.h"

namespace peelpack::program {

/// The program's own procedures over the shipped catalogue; for the director another table of them, read back before it
/// is signed.
class OwnProcedures : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made when a vault of staff opens")
    Q_PROPERTY(bool mayChange READ mayChange CONSTANT)
    Q_PROPERTY(peelpack::program::NamedRows* inForce READ inForce CONSTANT)
    Q_PROPERTY(QString file READ file NOTIFY changed)
    Q_PROPERTY(peelpack::program::NamedRows* inFile READ inFile CONSTANT)
    Q_PROPERTY(bool misfits READ misfits NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)
    Q_PROPERTY(QString done READ done NOTIFY changed)

public:
    explicit OwnProcedures(ProgramDesk& desk, QObject* parent = nullptr);

    [[nodiscard]] bool mayChange();
    /// The detail says the categories, and what was so before the table.
    [[nodiscard]] NamedRows* inForce() { return &m_inForce; }
    /// Its name; empty: none was chosen.
    [[nodiscard]] const QString& file() const { return m_file; }
    /// What is in it; empty while it cannot be read: see `error`.
    [[nodiscard]] NamedRows* inFile() { return &m_inFile; }
    /// The table in force does not fit the shipped catalogue.
    [[nodiscard]] bool misfits();
    [[nodiscard]] const QString& error() const { return m_error; }
    [[nodiscard]] const QString& done() const { return m_done; }

    /// When the page is shown.
    Q_INVOKABLE void read();
    Q_INVOKABLE void open(const QString& name, const QByteArray& bytes);
    /// Signs what was read, in place of the table that is in force.
    Q_INVOKABLE void takeIn();
    Q_INVOKABLE void takeAway();
    /// Leaves the file.
    Q_INVOKABLE void forget();
    /// The table in force; empty: there is none.
    Q_INVOKABLE QByteArray table();
    /// A table without rows, to be filled in.
    Q_INVOKABLE static QByteArray emptyTable();

Q_SIGNALS:
    void changed();

private:
    [[nodiscard]] std::vector<NamedRow> rowsOf(const catalogue::Catalogue& laid);
    void write(const std::string& table, const QString& done);

    ProgramDesk& m_desk;
    NamedRows m_inForce;
    QString m_file;
    std::string m_text;
    NamedRows m_inFile;
    QString m_error;
    QString m_done;
};

} // namespace peelpack::program
