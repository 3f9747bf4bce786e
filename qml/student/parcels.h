#pragma once

#include "qml/light/code_reading.h"
#include "qml/light/running_codes.h"
#include "qml/student/desk.h"

#include <QQmlEngine>
#include <QStringList>

namespace peelpack::student {

/// What goes to the instructor and what comes back.
class Parcels : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the student's desk")
    Q_PROPERTY(QString onlyHere READ onlyHere NOTIFY changed)
    Q_PROPERTY(QString with READ with NOTIFY changed)
    Q_PROPERTY(QString suggestedName READ suggestedName NOTIFY changed)
    Q_PROPERTY(QStringList report READ report NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)
    Q_PROPERTY(peelpack::light::RunningCodes* codes READ codes CONSTANT)
    Q_PROPERTY(peelpack::light::CodeReading* reading READ reading CONSTANT)

public:
    explicit Parcels(Desk& desk, QObject* parent = nullptr);

    /// What would be lost with this phone; empty: nothing.
    [[nodiscard]] QString onlyHere() const { return m_onlyHere; }
    /// "With your instructor up to Mar 12"; empty: nothing yet.
    [[nodiscard]] QString with() const { return m_with; }
    [[nodiscard]] QString suggestedName() const;
    /// What the last file brought, a fact a line.
    [[nodiscard]] const QStringList& report() const { return m_report; }
    [[nodiscard]] const QString& error() const { return m_error; }
    [[nodiscard]] light::RunningCodes* codes() { return &m_codes; }
    /// What it reads is taken in.
    [[nodiscard]] light::CodeReading* reading() { return &m_reading; }

    /// The sealed parcel for the staff; empty: see `error`.
    Q_INVOKABLE QByteArray pack();
    /// The same as codes for the staff's camera, which are ready then; false: see `error`.
    Q_INVOKABLE bool packAsCodes();
    Q_INVOKABLE void takeIn(const QString& name, const QByteArray& bytes);

Q_SIGNALS:
    void changed();

private:
    void refresh();

    Desk& m_desk;
    QString m_onlyHere;
    QString m_with;
    QStringList m_report;
    QString m_error;
    light::RunningCodes m_codes;
    light::CodeReading m_reading;
};

} // namespace peelpack::student
