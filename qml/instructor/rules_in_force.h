#pragma once

#include "qml/instructor/staff_desk.h"

#include <QQmlEngine>
#include <QStringList>

namespace peelpack::instructor {

/// A line for each target and limit of a set.
QStringList targetLines(const requirement::RequirementSet& set);
/// A line for each strength of signature and how it counts; empty: as usual while no policy is known.
QStringList signatureLines(const std::optional<journal::Policy>& policy);

/// What the program requires and who may sign, as they are in force. Only to be read.
class RulesInForce : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the staff's desk")
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString term READ term NOTIFY changed)
    Q_PROPERTY(QStringList targets READ targets NOTIFY changed)
    Q_PROPERTY(QStringList signatures READ signatures NOTIFY changed)
    Q_PROPERTY(QStringList staff READ staff NOTIFY changed)
    Q_PROPERTY(QStringList preceptors READ preceptors NOTIFY changed)
    Q_PROPERTY(QString changes READ changes NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)

public:
    explicit RulesInForce(StaffDesk& desk, QObject* parent = nullptr);

    [[nodiscard]] const QString& title() const { return m_title; }
    [[nodiscard]] const QString& term() const { return m_term; }
    [[nodiscard]] const QStringList& targets() const { return m_targets; }
    /// How each strength of signature counts.
    [[nodiscard]] const QStringList& signatures() const { return m_signatures; }
    [[nodiscard]] const QStringList& staff() const { return m_staff; }
    /// Those for whom somebody vouches.
    [[nodiscard]] const QStringList& preceptors() const { return m_preceptors; }
    /// How many changes of requirements there were and are to come.
    [[nodiscard]] const QString& changes() const { return m_changes; }
    [[nodiscard]] const QString& error() const { return m_error; }

    /// Reads them anew, when the page is shown.
    Q_INVOKABLE void read();

Q_SIGNALS:
    void changed();

private:
    void readChanges();
    void readPeople();

    StaffDesk& m_desk;
    QString m_title;
    QString m_term;
    QStringList m_targets;
    QStringList m_signatures;
    QStringList m_staff;
    QStringList m_preceptors;
    QString m_changes;
    QString m_error;
};

} // namespace peelpack::instructor
