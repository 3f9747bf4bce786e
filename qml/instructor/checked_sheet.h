#pragma once

#include "platform/session/acts.h"
#include "qml/instructor/check_list.h"
#include "qml/instructor/sheet_rows.h"

namespace peelpack::instructor {

/// The sheet that is looked at, beside what the student logged, and what can be decided about it. Every decision goes
/// through PendingActs; one that needs a reason is not made without.
class CheckedSheet : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the staff's desk")
    Q_PROPERTY(QString key READ key NOTIFY changed)
    Q_PROPERTY(peelpack::instructor::WaitingRow row READ row NOTIFY changed)
    Q_PROPERTY(QString why READ why NOTIFY changed)
    Q_PROPERTY(QStringList questions READ questions NOTIFY changed)
    Q_PROPERTY(QStringList differences READ differences NOTIFY changed)
    Q_PROPERTY(QStringList signers READ signers NOTIFY changed)
    Q_PROPERTY(QStringList feedback READ feedback NOTIFY changed)
    Q_PROPERTY(QStringList history READ history NOTIFY changed)
    Q_PROPERTY(QString imported READ imported NOTIFY changed)
    Q_PROPERTY(QString original READ original NOTIFY changed)
    Q_PROPERTY(peelpack::instructor::CheckedMarkRows* marks READ marks CONSTANT)
    Q_PROPERTY(peelpack::instructor::BesideRows* beside READ beside CONSTANT)
    Q_PROPERTY(peelpack::instructor::AskedReviewRows* reviews READ reviews CONSTANT)
    Q_PROPERTY(peelpack::instructor::OtherSheetRows* others READ others CONSTANT)
    Q_PROPERTY(peelpack::instructor::FilingRows* filings READ filings CONSTANT)
    Q_PROPERTY(bool canAct READ canAct NOTIFY changed)
    Q_PROPERTY(bool canInitial READ canInitial NOTIFY changed)
    Q_PROPERTY(bool asksToConfirm READ asksToConfirm NOTIFY changed)
    Q_PROPERTY(QString needsReason READ needsReason NOTIFY changed)
    Q_PROPERTY(QString bar READ bar NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)

public:
    CheckedSheet(StaffDesk& desk, Checks& checks, CheckList& list, PendingActs& pending, QObject* parent = nullptr);

    static constexpr qsizetype mostReason = 400; ///< letters

    [[nodiscard]] const QString& key() const { return m_key; }
    [[nodiscard]] const WaitingRow& row() const { return m_row; }
    /// Why the role is what it is.
    [[nodiscard]] const QString& why() const { return m_why; }
    [[nodiscard]] const QStringList& questions() const { return m_questions; }
    [[nodiscard]] const QStringList& differences() const { return m_differences; }
    [[nodiscard]] const QStringList& signers() const { return m_signers; }
    [[nodiscard]] const QStringList& feedback() const { return m_feedback; }
    [[nodiscard]] const QStringList& history() const { return m_history; }
    /// What instructors changed, as it was; empty: nothing.
    /// Where it comes from, when it was imported: then it has no marks.
    [[nodiscard]] const QString& imported() const { return m_imported; }
    [[nodiscard]] const QString& original() const { return m_original; }
    [[nodiscard]] CheckedMarkRows* marks() { return &m_marks; }
    [[nodiscard]] BesideRows* beside() { return &m_beside; }
    [[nodiscard]] AskedReviewRows* reviews() { return &m_reviews; }
    [[nodiscard]] OtherSheetRows* others() { return &m_others; }
    [[nodiscard]] FilingRows* filings() { return &m_filings; }
    [[nodiscard]] bool canAct() const { return m_canAct; }
    [[nodiscard]] bool canInitial() const { return m_canInitial; }
    /// The signature counts only once somebody confirmed it with the preceptor.
    [[nodiscard]] bool asksToConfirm() const { return m_asksToConfirm; }
    /// Why initialing needs a reason; empty: it needs none.
    [[nodiscard]] const QString& needsReason() const { return m_needsReason; }
    /// Why nothing, or no initial, can be given; empty: it can.
    [[nodiscard]] const QString& bar() const { return m_bar; }
    [[nodiscard]] const QString& error() const { return m_error; }
    /// Null while none is looked at.
    [[nodiscard]] std::optional<session::SheetPlace> place();

    /// True when it was decided; else see `error`.
    Q_INVOKABLE bool initial(const QString& reason, bool confirmed);
    Q_INVOKABLE bool giveBack(const QString& question);
    Q_INVOKABLE bool voidSheet(const QString& reason);
    Q_INVOKABLE bool acceptReview(int skill, const QString& reason);
    Q_INVOKABLE bool refile(int procedure, const QString& category, const QString& reason);
    bool amend(const session::SheetChange& change, const QString& reason);
    /// What in a reason looks like a patient identifier, in a sentence; empty: nothing.
    Q_INVOKABLE [[nodiscard]] QString suspicion(const QString& text) const;

Q_SIGNALS:
    void changed();

private:
    void refresh();
    void readMarks(const record::SheetRecord& sheet);
    void readBeside(const record::SheetRecord& sheet);
    void readReviews(const Student& student, const record::SheetRecord& sheet);
    void readOthers(const Student& owner, const record::SheetRecord& sheet);
    void readFilings(const record::SheetRecord& sheet);
    void readWords(const Student& student, const record::SheetRecord& sheet);
    void readRights(const SheetKey& key, const record::SheetRecord& sheet);
    bool decide(base::Result<session::Writing> made, const QString& what);
    bool refuse(const QString& why);
    /// The reason as one line; empty and an error said when there is none.
    std::string reasonFrom(const QString& text);

    StaffDesk& m_desk;
    Checks& m_checks;
    CheckList& m_list;
    PendingActs& m_pending;
    QString m_key;
    WaitingRow m_row;
    QString m_why;
    QStringList m_questions;
    QStringList m_differences;
    QStringList m_signers;
    QStringList m_feedback;
    QStringList m_history;
    QString m_imported;
    QString m_original;
    CheckedMarkRows m_marks;
    BesideRows m_beside;
    AskedReviewRows m_reviews;
    OtherSheetRows m_others;
    FilingRows m_filings;
    bool m_canAct = false;
    bool m_canInitial = false;
    bool m_asksToConfirm = false;
    QString m_needsReason;
    QString m_bar;
    QString m_error;
};

} // namespace peelpack::instructor
