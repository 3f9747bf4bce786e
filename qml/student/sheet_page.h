#pragma once

#include "qml/student/sheet_row.h"
#include "qml/student/waiting_list.h"

#include <QVariantList>

namespace peelpack::student {

/// A specialty under which a procedure of the sheet may count.
struct PlaceRow {
    Q_GADGET
    QML_VALUE_TYPE(placeRow)
    Q_PROPERTY(int procedure MEMBER procedure)
    Q_PROPERTY(QString procedureName MEMBER procedureName)
    Q_PROPERTY(QString category MEMBER category)
    Q_PROPERTY(QString label MEMBER label)
    Q_PROPERTY(QString words MEMBER words)
    Q_PROPERTY(QString hint MEMBER hint)
    Q_PROPERTY(int count MEMBER count)
    Q_PROPERTY(bool outlined MEMBER outlined)
    Q_PROPERTY(bool chosen MEMBER chosen)

public:
    int procedure = 0; ///< index in the sheet
    QString procedureName;
    QString category; ///< id
    QString label;
    QString words; ///< how many are counted there in this role
    QString hint;  ///< why it helps most; empty: it does not
    int count = 0;
    bool outlined = false;
    bool chosen = false; ///< logged there, or would be
    bool operator==(const PlaceRow&) const = default;
};

class PlaceRows : public parts::RowList<PlaceRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};

/// A mark as it stands, and what became of a request about it.
struct MarkRow {
    Q_GADGET
    QML_VALUE_TYPE(studentMarkRow)
    Q_PROPERTY(int skill MEMBER skill)
    Q_PROPERTY(QString label MEMBER label)
    Q_PROPERTY(QString mark MEMBER mark)
    Q_PROPERTY(QString note MEMBER note)
    Q_PROPERTY(bool canAsk MEMBER canAsk)

public:
    int skill = 0;
    QString label;
    QString mark;
    QString note;        ///< why N/A; a request and its answer; two signers who differ
    bool canAsk = false; ///< a mark review can be asked for
    bool operator==(const MarkRow&) const = default;
};

class MarkRows : public parts::RowList<MarkRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};

/// One case sheet: what was signed, the role and why, where it counts best, and what the student can still do.
class SheetPage : public QObject {
    Q_OBJECT
    QML_NAMED_ELEMENT(SheetOfStudent)
    QML_UNCREATABLE("made by the student's desk")
    Q_PROPERTY(QString id READ id NOTIFY changed)
    Q_PROPERTY(peelpack::student::SheetRow row READ row NOTIFY changed)
    Q_PROPERTY(bool open READ isOpen NOTIFY changed)
    Q_PROPERTY(bool canSign READ canSign NOTIFY changed)
    Q_PROPERTY(bool canFile READ canFile NOTIFY changed)
    Q_PROPERTY(bool canWithdraw READ canWithdraw NOTIFY changed)
    Q_PROPERTY(bool marked READ marked NOTIFY changed)
    Q_PROPERTY(QString role READ role NOTIFY changed)
    Q_PROPERTY(QString why READ why NOTIFY changed)
    Q_PROPERTY(QString counts READ counts NOTIFY changed)
    Q_PROPERTY(QStringList signers READ signers NOTIFY changed)
    Q_PROPERTY(QStringList feedback READ feedback NOTIFY changed)
    Q_PROPERTY(QStringList history READ history NOTIFY changed)
    Q_PROPERTY(QString waitingFor READ waitingFor NOTIFY changed)
    Q_PROPERTY(QStringList preceptors READ preceptors NOTIFY changed)
    Q_PROPERTY(QString imported READ imported NOTIFY changed)
    Q_PROPERTY(QString original READ original NOTIFY changed)
    Q_PROPERTY(peelpack::student::PlaceRows* places READ places CONSTANT)
    Q_PROPERTY(peelpack::student::MarkRows* marks READ marks CONSTANT)
    Q_PROPERTY(QString error READ error NOTIFY changed)

public:
    SheetPage(Desk& desk, WaitingList& waitingFor, QObject* parent = nullptr);

    Q_INVOKABLE void show(const QString& id);

    [[nodiscard]] const QString& id() const { return m_id; }
    [[nodiscard]] const SheetRow& row() const { return m_row; }
    [[nodiscard]] bool isOpen() const { return m_open; }
    [[nodiscard]] bool canSign() const { return m_canSign; }
    [[nodiscard]] bool canFile() const { return m_canFile; }
    [[nodiscard]] bool canWithdraw() const { return m_canWithdraw; }
    [[nodiscard]] bool marked() const { return m_marked; }
    [[nodiscard]] const QString& role() const { return m_role; }
    [[nodiscard]] const QString& why() const { return m_why; }
    /// Where it counts now, or why not.
    [[nodiscard]] const QString& counts() const { return m_counts; }
    [[nodiscard]] const QStringList& signers() const { return m_signers; }
    [[nodiscard]] const QStringList& feedback() const { return m_feedback; }
    [[nodiscard]] const QStringList& history() const { return m_history; }
    [[nodiscard]] QString waitingFor() const { return m_waiting; }
    /// Names from the program's list, for "waiting for"; only of a sheet that is open.
    [[nodiscard]] const QStringList& preceptors() const { return m_preceptors; }
    /// What an instructor changed, as it was signed; empty: nothing.
    /// Where it comes from, when it was imported: then it has no marks.
    [[nodiscard]] const QString& imported() const { return m_imported; }
    [[nodiscard]] const QString& original() const { return m_original; }
    [[nodiscard]] PlaceRows* places() { return &m_places; }
    [[nodiscard]] MarkRows* marks() { return &m_marks; }
    [[nodiscard]] const QString& error() const { return m_error; }

    /// True when it was done; else see `error`.
    Q_INVOKABLE bool file(int procedure, const QString& category);
    Q_INVOKABLE bool askReview(int skill, const QString& reason);
    Q_INVOKABLE bool withdraw(const QString& reason);
    Q_INVOKABLE bool cancelBeforeIncision();
    Q_INVOKABLE bool waitFor(const QString& preceptor);

Q_SIGNALS:
    void changed();

private:
    void refresh();
    void readPreceptors(const record::SheetRecord& sheet);
    void readMarks(const record::SheetRecord& sheet);
    void readPlaces(const record::SheetRecord& sheet, role::Outcome outcome);
    void readCounting(const record::SheetRecord& sheet);
    bool write(const journal::Payload& payload);

    Desk& m_desk;
    WaitingList& m_waitingFor;
    QString m_id;
    SheetRow m_row;
    bool m_open = false;
    bool m_canSign = false;
    bool m_canFile = false;
    bool m_canWithdraw = false;
    bool m_marked = false;
    QString m_role;
    QString m_why;
    QString m_counts;
    QStringList m_signers;
    QStringList m_feedback;
    QStringList m_history;
    QString m_waiting;
    QStringList m_preceptors;
    QString m_imported;
    QString m_original;
    PlaceRows m_places;
    MarkRows m_marks;
    QString m_error;
};

} // namespace peelpack::student
