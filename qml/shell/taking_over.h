#pragma once

#include "qml/shell/first_start.h"

namespace peelpack::shell {

/// The first start of somebody who becomes the director of a program that exists, with its program code.
class TakingOver : public FirstStart {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the app")
    Q_PROPERTY(bool made READ made NOTIFY changed)
    Q_PROPERTY(QString program READ program NOTIFY changed)

public:
    explicit TakingOver(Surroundings& surroundings, QObject* parent = nullptr) : FirstStart(surroundings, parent) {}

    [[nodiscard]] bool made() const { return !m_program.isEmpty(); }
    /// The id of the program whose code it was, to be compared; empty before.
    [[nodiscard]] const QString& program() const { return m_program; }

    /// `number`: the how-manieth director of the program, from 2.
    Q_INVOKABLE void make(const QString& code, const QString& number, const QString& name, const QString& secret,
                          const QString& again, bool pin);

private:
    QString m_program;
};

} // namespace peelpack::shell
