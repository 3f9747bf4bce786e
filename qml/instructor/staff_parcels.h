#pragma once

#include "platform/session/intake.h"
#include "qml/instructor/pending_acts.h"
#include "qml/instructor/split_words.h"
#include "qml/light/code_reading.h"
#include "qml/light/running_codes.h"
#include "qml/parts/row_list.h"

#include <QByteArrayList>
#include <QStringList>

namespace peelpack::instructor {

/// What became of one file.
struct TakenFileRow {
    Q_GADGET
    QML_VALUE_TYPE(takenFileRow)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString words MEMBER words)
    Q_PROPERTY(bool grave MEMBER grave)

public:
    QString name;
    QString words;
    bool grave = false; ///< it could not be used, or not all of it
    bool operator==(const TakenFileRow&) const = default;
};

/// A student to whom a parcel goes back.
struct AnswerRow {
    Q_GADGET
    QML_VALUE_TYPE(answerRow)
    Q_PROPERTY(QString id MEMBER id)
    Q_PROPERTY(QString student MEMBER student)
    Q_PROPERTY(QString words MEMBER words)

public:
    QString id; ///< 32 digits
    QString student;
    QString words;
    bool operator==(const AnswerRow&) const = default;
};

class TakenFileRows : public parts::RowList<TakenFileRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};
class AnswerRows : public parts::RowList<AnswerRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};

/// Parcels in, file after file, with a plain report; and the parcels that go back.
class StaffParcels : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the staff's desk")
    Q_PROPERTY(bool busy READ busy NOTIFY changed)
    Q_PROPERTY(QString progress READ progress NOTIFY changed)
    Q_PROPERTY(QString summary READ summary NOTIFY changed)
    Q_PROPERTY(QStringList remarks READ remarks NOTIFY changed)
    Q_PROPERTY(peelpack::instructor::TakenFileRows* files READ files CONSTANT)
    Q_PROPERTY(peelpack::instructor::SplitRows* splits READ splits CONSTANT)
    Q_PROPERTY(peelpack::instructor::AnswerRows* answers READ answers CONSTANT)
    Q_PROPERTY(QString error READ error NOTIFY changed)
    Q_PROPERTY(peelpack::light::RunningCodes* codes READ codes CONSTANT)
    Q_PROPERTY(peelpack::light::CodeReading* reading READ reading CONSTANT)

public:
    StaffParcels(StaffDesk& desk, PendingActs& pending, QObject* parent = nullptr);

    [[nodiscard]] bool busy() const { return !m_queue.empty(); }
    /// "File 3 of 12"; empty: nothing is going on.
    [[nodiscard]] QString progress() const;
    /// What all files brought together; empty: nothing was taken in yet.
    [[nodiscard]] const QString& summary() const { return m_summary; }
    /// Older copies, records without a receipt, our own record split: a sentence each.
    [[nodiscard]] const QStringList& remarks() const { return m_remarks; }
    [[nodiscard]] TakenFileRows* files() { return &m_files; }
    [[nodiscard]] SplitRows* splits() { return &m_splits; }
    /// Students for whom there is something that they do not have yet.
    [[nodiscard]] AnswerRows* answers() { return &m_answers; }
    [[nodiscard]] const QString& error() const { return m_error; }
    [[nodiscard]] light::RunningCodes* codes() { return &m_codes; }
    /// What it reads is taken in.
    [[nodiscard]] light::CodeReading* reading() { return &m_reading; }

    Q_INVOKABLE void takeIn(const QStringList& names, const QByteArrayList& files);
    /// What was taken in stays; the files that are left are not looked at.
    Q_INVOKABLE void cancel();
    /// The parcel of one student (32 digits), or for the other staff ("staff"); empty: see `error`.
    Q_INVOKABLE QByteArray packFor(const QString& id);
    /// The same parcel as codes for a camera, which are ready then; false: see `error`.
    Q_INVOKABLE bool packAsCodesFor(const QString& id);
    /// Whose parcel it is, in words.
    Q_INVOKABLE [[nodiscard]] QString whoIs(const QString& id) const;
    Q_INVOKABLE [[nodiscard]] QString nameFor(const QString& id) const;
    /// It left the app: what is in it counts as given.
    Q_INVOKABLE void given(const QStringList& ids);

Q_SIGNALS:
    void changed();

private:
    void takeNext();
    void finish();
    void add(const session::IntakeReport& report, const QString& name);
    void readAnswers();
    [[nodiscard]] std::uint32_t ownCount(const keys::Id& student) const;
    [[nodiscard]] std::map<keys::Id, std::uint32_t> givenCounts() const;

    StaffDesk& m_desk;
    PendingActs& m_pending;
    std::vector<session::OfferedFile> m_queue; ///< still to be taken in, the last first
    std::size_t m_total = 0;
    std::size_t m_taken = 0;
    std::size_t m_receipts = 0;
    std::vector<TakenFileRow> m_fileRows;
    std::vector<SplitRow> m_splitRows;
    TakenFileRows m_files;
    SplitRows m_splits;
    AnswerRows m_answers;
    QString m_summary;
    QStringList m_remarks;
    QString m_error;
    light::RunningCodes m_codes;
    light::CodeReading m_reading;
};

} // namespace peelpack::instructor
