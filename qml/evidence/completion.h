#pragma once

#include "qml/instructor/pending_acts.h"

#include <QByteArrayList>
#include <QStringList>

#include <memory>

namespace peelpack::evidence_pages {

/// Whether a student has met the requirements, as the director says it; the record that outsiders verify; and the proof
/// of one of its sheets.
class Completion : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the staff's desk")
    Q_PROPERTY(QString student READ student NOTIFY changed)
    Q_PROPERTY(QString standing READ standing NOTIFY changed)
    Q_PROPERTY(QStringList targets READ targets NOTIFY changed)
    Q_PROPERTY(QStringList decisions READ decisions NOTIFY changed)
    Q_PROPERTY(QString earlier READ earlier NOTIFY changed)
    Q_PROPERTY(QString bar READ bar NOTIFY changed)
    Q_PROPERTY(bool complete READ complete NOTIFY changed)
    Q_PROPERTY(bool canDecide READ canDecide NOTIFY changed)
    Q_PROPERTY(bool decided READ decided NOTIFY changed)
    Q_PROPERTY(QString made READ made NOTIFY changed)
    Q_PROPERTY(QStringList sheets READ sheets NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)

public:
    Completion(instructor::StaffDesk& desk, instructor::PendingActs& pending, QObject* parent = nullptr);
    ~Completion() override;

    /// 32 digits.
    Q_INVOKABLE void show(const QString& student);

    [[nodiscard]] const QString& student() const { return m_student; }
    /// "118 of 120 cases count, as initialed."
    [[nodiscard]] const QString& standing() const { return m_standing; }
    [[nodiscard]] const QStringList& targets() const { return m_targets; }
    /// What was decided, the latest first; all but the first are superseded.
    [[nodiscard]] const QStringList& decisions() const { return m_decisions; }
    /// The record that was made before, which a new one supersedes; empty: none.
    [[nodiscard]] const QString& earlier() const { return m_earlier; }
    /// Why nothing can be decided here; empty: it can.
    [[nodiscard]] const QString& bar() const { return m_bar; }
    [[nodiscard]] bool complete() const;
    [[nodiscard]] bool canDecide() const { return m_bar.isEmpty(); }
    /// It was decided about just these sheets, and a record can be made.
    [[nodiscard]] bool decided() const { return m_decided; }
    /// What a record that was just made is called; empty: none was.
    [[nodiscard]] const QString& made() const { return m_made; }
    /// Of the proofs at hand, each of which can be shown alone.
    [[nodiscard]] const QStringList& sheets() const { return m_sheets; }
    [[nodiscard]] const QString& error() const { return m_error; }

    /// What is signed, line by line; `reason`: of an exception, else empty.
    Q_INVOKABLE [[nodiscard]] QStringList readBack(const QString& reason) const;
    Q_INVOKABLE bool decide(const QString& reason);
    /// With the program code as it is typed.
    Q_INVOKABLE bool makeRecord(const QString& code);
    /// Record, proofs and paper of what was made.
    Q_INVOKABLE [[nodiscard]] QStringList fileNames() const;
    Q_INVOKABLE [[nodiscard]] QByteArrayList files() const;
    /// A file of proofs that somebody keeps.
    Q_INVOKABLE void openProofs(const QByteArray& file);
    /// The proof of one of `sheets`; empty: see `error`.
    Q_INVOKABLE QByteArray proveSheet(int index);
    Q_INVOKABLE [[nodiscard]] QString proofName(int index) const;

Q_SIGNALS:
    void changed();

private:
    struct Known; ///< how the student stands, and what was made

    void read();
    void readDecisions();
    void readProofs();
    bool refuse(const QString& why);

    instructor::StaffDesk& m_desk;
    instructor::PendingActs& m_pending;
    std::unique_ptr<Known> m_known;
    QString m_id;
    QString m_student;
    QString m_standing;
    QStringList m_targets;
    QStringList m_decisions;
    QString m_earlier;
    QString m_bar;
    bool m_decided = false;
    QString m_made;
    QStringList m_sheets;
    QString m_error;
};

} // namespace peelpack::evidence_pages
