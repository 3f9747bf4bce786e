#pragma once

#include "qml/program/program_desk.h"
#include "qml/program/rules_draft.h"

namespace peelpack::program {

/// The rules that were and are in force, and, for the director, others in the making.
class ProgramRules : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made when a vault of staff opens")
    Q_PROPERTY(bool mayChange READ mayChange CONSTANT)
    Q_PROPERTY(QStringList inForce READ inForce NOTIFY changed)
    Q_PROPERTY(QStringList older READ older NOTIFY changed)
    Q_PROPERTY(bool readingBack READ readingBack NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)
    Q_PROPERTY(QString done READ done NOTIFY changed)
    Q_PROPERTY(peelpack::program::RulesDraft* draft READ draft CONSTANT)

public:
    explicit ProgramRules(ProgramDesk& desk, QObject* parent = nullptr);

    [[nodiscard]] bool mayChange() { return m_desk.isDirector(); }
    /// Term, set and signatures, a line each; empty: none have come in.
    [[nodiscard]] const QStringList& inForce() const { return m_inForce; }
    /// A line for each of the rules before, the newest first.
    [[nodiscard]] const QStringList& older() const { return m_older; }
    /// The draft is complete, and is read back before it is signed.
    [[nodiscard]] bool readingBack() const { return m_readingBack; }
    [[nodiscard]] const QString& error() const { return m_error; }
    [[nodiscard]] const QString& done() const { return m_done; }
    [[nodiscard]] RulesDraft* draft() { return &m_draft; }

    /// When the page is shown.
    Q_INVOKABLE void read();
    /// A draft like the rules in force.
    Q_INVOKABLE void beginDraft();
    Q_INVOKABLE void readBack();
    Q_INVOKABLE void backToDraft();
    /// Signs what was read back. True: it is in force.
    Q_INVOKABLE bool sign();

Q_SIGNALS:
    void changed();

private:
    [[nodiscard]] QString lineOf(const journal::Policy& policy);

    ProgramDesk& m_desk;
    RulesDraft m_draft;
    QStringList m_inForce;
    QStringList m_older;
    bool m_readingBack = false;
    QString m_error;
    QString m_done;
};

} // namespace peelpack::program
