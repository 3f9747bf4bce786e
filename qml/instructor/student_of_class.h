#pragma once

#include "qml/instructor/check_list.h"
#include "qml/student/tally_page.h"

namespace peelpack::instructor {

/// How often a skill was Yes, month after month.
struct TrendRow {
    Q_GADGET
    QML_VALUE_TYPE(trendRow)
    Q_PROPERTY(QString label MEMBER label)
    Q_PROPERTY(QList<int> yes MEMBER yes)
    Q_PROPERTY(QList<int> marked MEMBER marked)
    Q_PROPERTY(QString words MEMBER words)

public:
    QString label;
    QList<int> yes;    ///< by month
    QList<int> marked; ///< Yes or No, by month
    QString words;     ///< "Jan: 6 of 10 · Feb: 9 of 12"
    bool operator==(const TrendRow&) const = default;
};

class TrendRows : public parts::RowList<TrendRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};

/// One student: the tally at each level, every sheet, how the skills went over the term, and the feedback.
class StudentOfClass : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the staff's desk")
    Q_PROPERTY(QString id READ id NOTIFY changed)
    Q_PROPERTY(QString name READ name NOTIFY changed)
    Q_PROPERTY(QString ofClass READ ofClass NOTIFY changed)
    Q_PROPERTY(int level READ level WRITE setLevel NOTIFY changed)
    Q_PROPERTY(QStringList levels READ levels NOTIFY changed)
    Q_PROPERTY(QString next READ next NOTIFY changed)
    Q_PROPERTY(QString decision READ decision NOTIFY changed)
    Q_PROPERTY(QStringList otherSets READ otherSets NOTIFY changed)
    Q_PROPERTY(QString outside READ outside NOTIFY changed)
    Q_PROPERTY(QStringList feedback READ feedback NOTIFY changed)
    Q_PROPERTY(QStringList toAsk READ toAsk NOTIFY changed)
    Q_PROPERTY(peelpack::student::CountRows* counts READ counts CONSTANT)
    Q_PROPERTY(peelpack::instructor::TrendRows* trends READ trends CONSTANT)
    Q_PROPERTY(peelpack::instructor::WaitingRows* sheets READ sheets CONSTANT)

public:
    StudentOfClass(StaffDesk& desk, Checks& checks, CheckList& list, QObject* parent = nullptr);

    static constexpr int mostMonths = 6;

    Q_INVOKABLE void show(const QString& id);

    [[nodiscard]] const QString& id() const { return m_id; }
    [[nodiscard]] const QString& name() const { return m_name; }
    [[nodiscard]] const QString& ofClass() const { return m_ofClass; }
    /// 0 recorded, 1 signed, 2 initialed.
    [[nodiscard]] int level() const { return m_level; }
    void setLevel(int level);
    /// "Recorded: 83 of 120" and so on.
    [[nodiscard]] const QStringList& levels() const { return m_levels; }
    /// What to ask for next; empty: nothing is short.
    [[nodiscard]] const QString& next() const { return m_next; }
    /// That the student is complete, as the director decided; empty: nothing was decided.
    [[nodiscard]] const QString& decision() const { return m_decision; }
    /// Where requirements were or will be changed for this student: both tallies, a line a change.
    [[nodiscard]] const QStringList& otherSets() const { return m_otherSets; }
    [[nodiscard]] const QString& outside() const { return m_outside; }
    /// "Mar 12, L. Brandt: Good anticipation.", the latest first.
    [[nodiscard]] const QStringList& feedback() const { return m_feedback; }
    /// What clocks and receipts say that does not fit, about no sheet in particular as well.
    [[nodiscard]] const QStringList& toAsk() const { return m_toAsk; }
    [[nodiscard]] student::CountRows* counts() { return &m_counts; }
    [[nodiscard]] TrendRows* trends() { return &m_trends; }
    [[nodiscard]] WaitingRows* sheets() { return &m_sheets; }

Q_SIGNALS:
    void changed();

private:
    void refresh();
    void readTally(const Student& student);
    void readTrends(const Student& student);
    void readSheets(const Student& student);

    StaffDesk& m_desk;
    Checks& m_checks;
    CheckList& m_list;
    QString m_id;
    QString m_name;
    QString m_ofClass;
    int m_level = 0;
    QStringList m_levels;
    QString m_next;
    QString m_decision;
    QStringList m_otherSets;
    QString m_outside;
    QStringList m_feedback;
    QStringList m_toAsk;
    student::CountRows m_counts;
    TrendRows m_trends;
    WaitingRows m_sheets;
};

} // namespace peelpack::instructor
