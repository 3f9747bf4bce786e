#pragma once

#include "qml/student/sheet_row.h"
#include "qml/student/waiting_list.h"

namespace peelpack::student {

/// All sheets of the student, the latest first, with filters and a search over what is on them.
class SheetList : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the student's desk")
    Q_PROPERTY(peelpack::student::SheetRows* rows READ rows CONSTANT)
    Q_PROPERTY(QString text READ text WRITE setText NOTIFY changed)
    Q_PROPERTY(int state READ state WRITE setState NOTIFY changed)
    Q_PROPERTY(int role READ role WRITE setRole NOTIFY changed)
    Q_PROPERTY(int specialty READ specialty WRITE setSpecialty NOTIFY changed)
    Q_PROPERTY(QStringList states READ states CONSTANT)
    Q_PROPERTY(QStringList roles READ roles CONSTANT)
    Q_PROPERTY(QStringList specialties READ specialties CONSTANT)
    Q_PROPERTY(QString summary READ summary NOTIFY changed)

public:
    SheetList(Desk& desk, const WaitingList& waitingFor, QObject* parent = nullptr);

    [[nodiscard]] SheetRows* rows() { return &m_rows; }
    [[nodiscard]] const QString& text() const { return m_text; }
    void setText(const QString& text);
    /// Indexes into the lists; 0: all.
    [[nodiscard]] int state() const { return m_state; }
    void setState(int state);
    [[nodiscard]] int role() const { return m_role; }
    void setRole(int role);
    [[nodiscard]] int specialty() const { return m_specialty; }
    void setSpecialty(int specialty);
    [[nodiscard]] static QStringList states();
    [[nodiscard]] static QStringList roles();
    [[nodiscard]] static QStringList specialties();
    /// "12 of 140 sheets"
    [[nodiscard]] QString summary() const;

Q_SIGNALS:
    void changed();

private:
    void read();
    void filter();
    [[nodiscard]] bool fits(const record::SheetRecord& sheet) const;

    Desk& m_desk;
    const WaitingList& m_waitingFor;
    SheetRows m_rows;
    std::vector<const record::SheetRecord*> m_sheets; ///< the latest first
    QString m_text;
    int m_state = 0;
    int m_role = 0;
    int m_specialty = 0;
};

} // namespace peelpack::student
