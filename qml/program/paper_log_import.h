#pragma once

#include "platform/session/paper_log.h"
#include "qml/parts/row_list.h"
#include "qml/program/program_desk.h"

#include <QStringList>

namespace peelpack::program {

/// What of a paper log is imported for one student.
struct ImportRow {
    Q_GADGET
    QML_VALUE_TYPE(importRow)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString summary MEMBER summary)
    Q_PROPERTY(QStringList sheets MEMBER sheets)

public:
    QString name;
    QString summary;    ///< how many, in which roles, and from when to when
    QStringList sheets; ///< "Mar 12 · Appendectomy · First scrub · General"
    bool operator==(const ImportRow&) const = default;
};

class ImportRows : public parts::RowList<ImportRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};

/// An earlier paper log of a class: read from a file, shown as it will be, and only then imported.
class PaperLogImport : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made when a vault of staff opens")
    Q_PROPERTY(QString source READ source WRITE setSource NOTIFY changed)
    Q_PROPERTY(QStringList owners READ owners NOTIFY changed)
    Q_PROPERTY(int owner READ owner WRITE setOwner NOTIFY changed)
    Q_PROPERTY(QString file READ file NOTIFY changed)
    Q_PROPERTY(peelpack::program::ImportRows* students READ students CONSTANT)
    Q_PROPERTY(int sheets READ sheets NOTIFY changed)
    Q_PROPERTY(QStringList alreadyHere READ alreadyHere NOTIFY changed)
    Q_PROPERTY(QString refusedLine READ refusedLine NOTIFY changed)
    Q_PROPERTY(QStringList refused READ refused NOTIFY changed)
    Q_PROPERTY(QStringList warnings READ warnings NOTIFY changed)
    Q_PROPERTY(bool suspected READ suspected NOTIFY changed)
    Q_PROPERTY(bool checked READ checked WRITE setChecked NOTIFY changed)
    Q_PROPERTY(QStringList report READ report NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)

public:
    explicit PaperLogImport(ProgramDesk& desk, QObject* parent = nullptr) : QObject(parent), m_desk(desk) {}

    /// "paper log of spring, page 3"; stays with each sheet.
    [[nodiscard]] const QString& source() const { return m_source; }
    void setSource(const QString& source);
    /// Whose the log is: the first, of whoever is named in each row; then each student.
    [[nodiscard]] const QStringList& owners() const { return m_owners; }
    [[nodiscard]] int owner() const { return m_owner; }
    void setOwner(int index);
    /// Its name; empty: none was chosen.
    [[nodiscard]] const QString& file() const { return m_file; }
    [[nodiscard]] ImportRows* students() { return &m_students; }
    /// Of all students, that will be imported.
    [[nodiscard]] int sheets() const { return static_cast<int>(m_plan.sheets()); }
    /// Sheets that are left out because they were imported before, a line each.
    [[nodiscard]] const QStringList& alreadyHere() const { return m_alreadyHere; }
    /// "Refused: 3 of 12 rows"; empty: nothing is.
    [[nodiscard]] const QString& refusedLine() const { return m_refusedLine; }
    /// Line, column, reason and mend of each; and what is taken as it is but looks wrong.
    [[nodiscard]] const QStringList& refused() const { return m_refused; }
    [[nodiscard]] const QStringList& warnings() const { return m_warnings; }
    /// Something is refused because it looks like a patient identifier, or would be if it were not `checked`: somebody
    /// looked at it, and it is none.
    [[nodiscard]] bool suspected() const { return m_plan.suspected || m_checked; }
    [[nodiscard]] bool checked() const { return m_checked; }
    void setChecked(bool checked);
    /// After importing: what was done, a line each.
    [[nodiscard]] const QStringList& report() const { return m_report; }
    [[nodiscard]] const QString& error() const { return m_error; }

    /// When the page is shown: nothing is chosen.
    Q_INVOKABLE void begin();
    /// True: the source is said as it has to be, and a file can be chosen; else see `error`.
    Q_INVOKABLE bool ready();
    Q_INVOKABLE void open(const QString& name, const QByteArray& csv);
    /// Imports what was shown, student by student.
    Q_INVOKABLE void importThem();
    /// Leaves the file; source and owner stay.
    Q_INVOKABLE void forget();

Q_SIGNALS:
    void changed();

private:
    void readFile();
    void show(const sheet::ReadReport& report);
    [[nodiscard]] std::string sourceText() const;

    ProgramDesk& m_desk;
    QString m_source;
    QStringList m_owners;
    std::vector<keys::Id> m_ids; ///< of the owners after the first
    int m_owner = 0;
    QString m_file;
    QByteArray m_csv;
    bool m_checked = false;
    session::ImportPlan m_plan;
    ImportRows m_students;
    QStringList m_alreadyHere;
    QString m_refusedLine;
    QStringList m_refused;
    QStringList m_warnings;
    QStringList m_report;
    QString m_error;
};

} // namespace peelpack::program
