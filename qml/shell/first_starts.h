#pragma once

#include "qml/shell/joining.h"
#include "qml/shell/setting_up.h"
#include "qml/shell/starting_to_sign.h"
#include "qml/shell/taking_over.h"

namespace peelpack::shell {

/// The ways in which a phone that nobody has used begins. One of them is gone through; then all are let go.
class FirstStarts : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the app")
    Q_PROPERTY(peelpack::shell::Joining* joining READ joining CONSTANT)
    Q_PROPERTY(peelpack::shell::StartingToSign* signing READ signing CONSTANT)
    Q_PROPERTY(peelpack::shell::SettingUp* settingUp READ settingUp CONSTANT)
    Q_PROPERTY(peelpack::shell::TakingOver* takingOver READ takingOver CONSTANT)

public:
    explicit FirstStarts(Surroundings& surroundings, QObject* parent = nullptr)
        : QObject(parent), m_joining(surroundings), m_signing(surroundings), m_settingUp(surroundings),
          m_takingOver(surroundings)
    {
        for (FirstStart* start : {static_cast<FirstStart*>(&m_joining), static_cast<FirstStart*>(&m_settingUp),
                                  static_cast<FirstStart*>(&m_takingOver)}) {
            connect(start, &FirstStart::finished, this, [this, start] { Q_EMIT made(start); });
        }
        connect(&m_signing, &FirstStart::finished, this, &FirstStarts::readyToSign);
    }

    [[nodiscard]] Joining* joining() { return &m_joining; }
    [[nodiscard]] StartingToSign* signing() { return &m_signing; }
    [[nodiscard]] SettingUp* settingUp() { return &m_settingUp; }
    [[nodiscard]] TakingOver* takingOver() { return &m_takingOver; }

Q_SIGNALS:
    /// Its vault belongs to somebody of a program, and can be taken.
    void made(peelpack::shell::FirstStart* start);
    /// A preceptor's own phone has its key.
    void readyToSign();

private:
    Joining m_joining;
    StartingToSign m_signing;
    SettingUp m_settingUp;
    TakingOver m_takingOver;
};

} // namespace peelpack::shell
