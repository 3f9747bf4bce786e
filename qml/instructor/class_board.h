#pragma once

#include "qml/instructor/checks.h"
#include "qml/parts/row_list.h"

#include <QQmlEngine>
#include <QStringList>
#include <QVariantList>

namespace peelpack::instructor {

/// A student on the class board.
struct BoardRow {
    Q_GADGET
    QML_VALUE_TYPE(boardRow)
    Q_PROPERTY(QString id MEMBER id)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString ofClass MEMBER ofClass)
    Q_PROPERTY(QStringList targets MEMBER targets)
    Q_PROPERTY(QList<int> needed MEMBER needed)
    Q_PROPERTY(QList<bool> outlined MEMBER outlined)
    Q_PROPERTY(int required MEMBER required)
    Q_PROPERTY(QList<int> placed MEMBER placed)
    Q_PROPERTY(int counted MEMBER counted)
    Q_PROPERTY(int missing MEMBER missing)
    Q_PROPERTY(int waiting MEMBER waiting)
    Q_PROPERTY(int toCheck MEMBER toCheck)
    Q_PROPERTY(QString lastSheet MEMBER lastSheet)
    Q_PROPERTY(QString state MEMBER state)
    Q_PROPERTY(bool read MEMBER read)

public:
    QString id; ///< 32 digits
    QString name;
    QString ofClass;
    QStringList targets; ///< of the set in force for the student, as they are said
    QList<int> needed;   ///< by target
    QList<bool> outlined;
    int required = 0;
    QList<int> placed; ///< by target
    int counted = 0;
    int missing = 0;   ///< cases short of the whole set
    int waiting = 0;   ///< sheets that wait for an instructor
    int toCheck = 0;   ///< of them, with a question
    QString lastSheet; ///< day of the latest operation; empty: none
    QString state;     ///< in words, what of it matters most; empty: nothing
    bool read = false; ///< counted already
    bool operator==(const BoardRow&) const = default;
};

class BoardRows : public parts::RowList<BoardRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};

/// Students by targets: who has what, who is short, who waits.
class ClassBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the staff's desk")
    Q_PROPERTY(peelpack::instructor::BoardRows* rows READ rows CONSTANT)
    Q_PROPERTY(QStringList targets READ targets NOTIFY changed)
    Q_PROPERTY(QString text READ text WRITE setText NOTIFY changed)
    Q_PROPERTY(int ofClass READ ofClass WRITE setOfClass NOTIFY changed)
    Q_PROPERTY(QStringList classes READ classes NOTIFY changed)
    Q_PROPERTY(int order READ order WRITE setOrder NOTIFY changed)
    Q_PROPERTY(QStringList orders READ orders CONSTANT)
    Q_PROPERTY(QString summary READ summary NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)

public:
    ClassBoard(StaffDesk& desk, Checks& checks, QObject* parent = nullptr);

    [[nodiscard]] BoardRows* rows() { return &m_rows; }
    /// Of the set in force for all students who are shown; empty where it is not the same for all.
    [[nodiscard]] const QStringList& targets() const { return m_targets; }
    [[nodiscard]] const QString& text() const { return m_text; }
    void setText(const QString& text);
    [[nodiscard]] int ofClass() const { return m_ofClass; }
    void setOfClass(int ofClass);
    /// The first one is all.
    [[nodiscard]] const QStringList& classes() const { return m_classes; }
    [[nodiscard]] int order() const { return m_order; }
    void setOrder(int order);
    [[nodiscard]] static QStringList orders();
    [[nodiscard]] const QString& summary() const { return m_summary; }
    [[nodiscard]] QString error() const { return m_desk.setError(); }
    void read();

Q_SIGNALS:
    void changed();

private:
    [[nodiscard]] BoardRow rowOf(const Student& student) const;
    const BoardRow& madeRow(const Student& student);
    void readSets();

    StaffDesk& m_desk;
    Checks& m_checks;
    BoardRows m_rows;
    std::map<const requirement::RequirementSet*, BoardRow> m_sets; ///< what a set says of a row
    QStringList m_targets;
    std::map<keys::Id, std::pair<std::uint64_t, BoardRow>> m_made; ///< with the stamp of the student
    QString m_text;
    QStringList m_classes;
    int m_ofClass = 0;
    int m_order = 0;
    QString m_summary;
};

} // namespace peelpack::instructor
