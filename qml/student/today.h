#pragma once

#include "qml/student/sheet_row.h"
#include "qml/student/waiting_list.h"

namespace peelpack::student {

/// What the student needs to see first: what waits to be signed or answered, what came last, what to ask for next.
class Today : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the student's desk")
    Q_PROPERTY(QString day READ day NOTIFY changed)
    Q_PROPERTY(QString standing READ standing NOTIFY changed)
    Q_PROPERTY(QString next READ next NOTIFY changed)
    Q_PROPERTY(QString clinicalDay READ clinicalDay NOTIFY changed)
    Q_PROPERTY(QString onlyHere READ onlyHere NOTIFY changed)
    Q_PROPERTY(QString more READ more NOTIFY changed)
    Q_PROPERTY(peelpack::student::SheetRows* waiting READ waiting CONSTANT)
    Q_PROPERTY(peelpack::student::SheetRows* latest READ latest CONSTANT)

public:
    Today(Desk& desk, const WaitingList& waitingFor, QObject* parent = nullptr);

    [[nodiscard]] QString day() const;
    /// "83 of 120 counted"
    [[nodiscard]] QString standing() const { return m_standing; }
    /// What to ask for next, in a sentence; empty when nothing is short.
    [[nodiscard]] QString next() const { return m_next; }
    /// Today's clinical day, or the next one, with its site and the site's rule about phones, a line each where there
    /// are several on one day; empty: none is listed.
    [[nodiscard]] const QString& clinicalDay() const { return m_clinicalDay; }
    /// What would be lost with this phone; empty when everything is with an instructor.
    [[nodiscard]] QString onlyHere() const;
    /// How many more wait than are shown; empty: none.
    [[nodiscard]] const QString& more() const { return m_more; }
    /// The latest that wait, few enough for a page.
    [[nodiscard]] SheetRows* waiting() { return &m_waiting; }
    [[nodiscard]] SheetRows* latest() { return &m_latest; }

Q_SIGNALS:
    void changed();

private:
    void refresh();
    void readClinicalDay();

    Desk& m_desk;
    const WaitingList& m_waitingFor;
    SheetRows m_waiting;
    SheetRows m_latest;
    QString m_standing;
    QString m_next;
    QString m_more;
    QString m_clinicalDay;
};

} // namespace peelpack::student
