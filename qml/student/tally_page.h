#pragma once

#include "qml/parts/row_list.h"
#include "qml/student/desk.h"

#include <QQmlEngine>
#include <QStringList>

namespace peelpack::student {

/// A count with its name: a target, or a category in a target.
struct CountRow {
    Q_GADGET
    QML_VALUE_TYPE(countRow)
    Q_PROPERTY(QString label MEMBER label)
    Q_PROPERTY(QString words MEMBER words)
    Q_PROPERTY(int count MEMBER count)
    Q_PROPERTY(int needed MEMBER needed)
    Q_PROPERTY(bool outlined MEMBER outlined)
    Q_PROPERTY(bool isTarget MEMBER isTarget)

public:
    QString label;
    QString words; ///< "38 of 60", or "15" for a category
    int count = 0;
    int needed = 0;        ///< 0 for a category
    bool outlined = false; ///< second scrub
    bool isTarget = true;
    bool operator==(const CountRow&) const = default;
};

/// A case that does not count, and why.
struct NotCountedRow {
    Q_GADGET
    QML_VALUE_TYPE(notCountedRow)
    Q_PROPERTY(QString sheet MEMBER sheet)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString why MEMBER why)

public:
    QString sheet; ///< 32 digits
    QString title;
    QString why;
    bool operator==(const NotCountedRow&) const = default;
};

class CountRows : public parts::RowList<CountRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};
class NotCountedRows : public parts::RowList<NotCountedRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};

/// What to ask for next; empty when nothing is short.
QString nextInWords(const std::vector<tally::Need>& needs);
/// Each target with the specialties in it that have a case.
std::vector<CountRow> countRows(const requirement::RequirementSet& set, const tally::Count& count);

/// The tally: each target of the set in force with its specialties, what to ask for next, why a case does not count.
class TallyPage : public QObject {
    Q_OBJECT
    QML_NAMED_ELEMENT(TallyOfStudent)
    QML_UNCREATABLE("made by the student's desk")
    Q_PROPERTY(QString summary READ summary NOTIFY changed)
    Q_PROPERTY(QString setTitle READ setTitle NOTIFY changed)
    Q_PROPERTY(QString next READ next NOTIFY changed)
    Q_PROPERTY(QStringList otherSets READ otherSets NOTIFY changed)
    Q_PROPERTY(QString completion READ completion NOTIFY changed)
    Q_PROPERTY(QStringList completionLines READ completionLines NOTIFY changed)
    Q_PROPERTY(QString left READ left NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)
    Q_PROPERTY(peelpack::student::CountRows* counts READ counts CONSTANT)
    Q_PROPERTY(peelpack::student::NotCountedRows* notCounted READ notCounted CONSTANT)

public:
    explicit TallyPage(Desk& desk, QObject* parent = nullptr);

    [[nodiscard]] QString summary() const { return m_summary; }
    [[nodiscard]] QString setTitle() const { return m_setTitle; }
    [[nodiscard]] QString next() const { return m_next; }
    /// Where requirements were or will be changed for this student: both tallies, a line a change.
    [[nodiscard]] const QStringList& otherSets() const { return m_otherSets; }
    /// That the director marked the student complete, or complete by exception; empty: not so far.
    [[nodiscard]] const QString& completion() const { return m_completion; }
    /// By whom, on which day and under which set; of an exception how many cases counted, and the reason.
    [[nodiscard]] const QStringList& completionLines() const { return m_completionLines; }
    /// Sheets that are outside the count: observations, unmarked, canceled, without a specialty.
    [[nodiscard]] QString left() const { return m_left; }
    [[nodiscard]] QString error() const { return m_error; }
    [[nodiscard]] CountRows* counts() { return &m_counts; }
    [[nodiscard]] NotCountedRows* notCounted() { return &m_notCounted; }

Q_SIGNALS:
    void changed();

private:
    void refresh();
    void readCompletion();

    Desk& m_desk;
    CountRows m_counts;
    NotCountedRows m_notCounted;
    QString m_summary;
    QString m_setTitle;
    QString m_next;
    QStringList m_otherSets;
    QString m_completion;
    QStringList m_completionLines;
    QString m_left;
    QString m_error;
};

} // namespace peelpack::student
