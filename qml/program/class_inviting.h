#pragma once

#include "platform/session/class_list.h"
#include "platform/session/enrolling.h"
#include "qml/program/program_desk.h"

#include <QStringList>
#include <QVariantList>

namespace peelpack::program {

/// Everybody on a class list is invited. Lines that cannot be used are shown, and the others are not held up by them.
class ClassInviting : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made when a vault of staff opens")
    Q_PROPERTY(QString file READ file NOTIFY changed)
    Q_PROPERTY(QStringList listed READ listed NOTIFY changed)
    Q_PROPERTY(QStringList refused READ refused NOTIFY changed)
    Q_PROPERTY(int invited READ invited NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)

public:
    explicit ClassInviting(ProgramDesk& desk, QObject* parent = nullptr) : QObject(parent), m_desk(desk) {}

    /// The list's; empty: none was read.
    [[nodiscard]] const QString& file() const { return m_file; }
    /// "Ines Duarte · Spring class"
    [[nodiscard]] QStringList listed() const;
    /// "Line 4: the name is missing; fill it in."
    [[nodiscard]] QStringList refused() const;
    [[nodiscard]] int invited() const { return static_cast<int>(m_made.size()); }
    [[nodiscard]] const QString& error() const { return m_error; }

    Q_INVOKABLE void read(const QString& name, const QByteArray& csv);
    /// Invites those who are listed, each once.
    Q_INVOKABLE void invite();
    /// The invitations that were made now, as files.
    Q_INVOKABLE [[nodiscard]] QStringList fileNames() const;
    Q_INVOKABLE [[nodiscard]] QVariantList files() const;
    Q_INVOKABLE void forget();

Q_SIGNALS:
    void changed();

private:
    ProgramDesk& m_desk;
    QString m_file;
    session::ClassList m_list;
    std::vector<session::OpenInvitation> m_made;
    QString m_error;
};

} // namespace peelpack::program
