#pragma once

#include "qml/instructor/checks.h"
#include "qml/instructor/pending_acts.h"
#include "qml/parts/row_list.h"

#include <QStringList>

namespace peelpack::instructor {

/// A sheet that waits, as the list shows it. `seal` as in PackSeal::State.
struct WaitingRow {
    Q_GADGET
    QML_VALUE_TYPE(waitingRow)
    Q_PROPERTY(QString key MEMBER key)
    Q_PROPERTY(QString student MEMBER student)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString detail MEMBER detail)
    Q_PROPERTY(QString standing MEMBER standing)
    Q_PROPERTY(QString role MEMBER role)
    Q_PROPERTY(QString specialty MEMBER specialty)
    Q_PROPERTY(QString remark MEMBER remark)
    Q_PROPERTY(bool grave MEMBER grave)
    Q_PROPERTY(bool roleCounts MEMBER roleCounts)
    Q_PROPERTY(bool looked MEMBER looked)
    Q_PROPERTY(int seal MEMBER seal)

public:
    QString key;
    QString student;
    QString title;
    QString detail;
    QString standing;
    QString role;
    QString specialty;
    QString remark; ///< what is asked about it; empty: nothing
    bool grave = false;
    bool roleCounts = false;
    bool looked = false; ///< it was on screen, and is initialed with the others that were
    int seal = 0;
    bool operator==(const WaitingRow&) const = default;
};

class WaitingRows : public parts::RowList<WaitingRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};

/// The sheets that wait for an instructor, and which of them is being looked at.
class CheckList : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the staff's desk")
    Q_PROPERTY(peelpack::instructor::WaitingRows* rows READ rows CONSTANT)
    Q_PROPERTY(QString current READ current NOTIFY changed)
    Q_PROPERTY(int at READ at NOTIFY changed)
    Q_PROPERTY(QString text READ text WRITE setText NOTIFY changed)
    Q_PROPERTY(int group READ group WRITE setGroup NOTIFY changed)
    Q_PROPERTY(QStringList groups READ groups CONSTANT)
    Q_PROPERTY(int order READ order WRITE setOrder NOTIFY changed)
    Q_PROPERTY(QStringList orders READ orders CONSTANT)
    Q_PROPERTY(int ofClass READ ofClass WRITE setOfClass NOTIFY changed)
    Q_PROPERTY(QStringList classes READ classes NOTIFY changed)
    Q_PROPERTY(QString summary READ summary NOTIFY changed)
    Q_PROPERTY(QString place READ place NOTIFY changed)
    Q_PROPERTY(QStringList aboutPreceptors READ aboutPreceptors NOTIFY changed)
    Q_PROPERTY(int looked READ looked NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)

public:
    CheckList(StaffDesk& desk, Checks& checks, PendingActs& pending, QObject* parent = nullptr);

    enum Group { All, Asked, Reviews, Weak, Plain };

    [[nodiscard]] WaitingRows* rows() { return &m_rows; }
    /// Key of the sheet that is looked at; empty: none.
    [[nodiscard]] const QString& current() const { return m_current; }
    /// Its place in the rows; -1: not among them.
    [[nodiscard]] int at() const { return m_at; }
    [[nodiscard]] const QString& text() const { return m_text; }
    void setText(const QString& text);
    [[nodiscard]] int group() const { return m_group; }
    void setGroup(int group);
    [[nodiscard]] static QStringList groups();
    [[nodiscard]] int order() const { return m_order; }
    void setOrder(int order);
    [[nodiscard]] static QStringList orders();
    [[nodiscard]] int ofClass() const { return m_ofClass; }
    void setOfClass(int ofClass);
    /// The first one is all.
    [[nodiscard]] const QStringList& classes() const { return m_classes; }
    /// "23 sheets wait", or how far the reading is.
    [[nodiscard]] const QString& summary() const { return m_summary; }
    /// "Sheet 9 of 23"
    [[nodiscard]] QString place() const;
    /// What is asked about a preceptor's signatures on all sheets, once somebody wanted to know.
    [[nodiscard]] const QStringList& aboutPreceptors() const { return m_aboutPreceptors; }
    /// Plain sheets that were on screen and wait still.
    [[nodiscard]] int looked() const { return m_looked; }
    [[nodiscard]] const QString& error() const { return m_error; }

    Q_INVOKABLE void askAboutPreceptors();
    Q_INVOKABLE void show(const QString& key);
    /// To the next one (1) or the one before (-1). False: there is none.
    Q_INVOKABLE bool step(int by);
    Q_INVOKABLE void leave() { show({}); }
    /// Initials every plain sheet that was on screen.
    Q_INVOKABLE bool initialLooked();
    /// To what stands now where the one at `from` was: it was decided.
    void moveOn(int from);
    void read();
    /// How one sheet is shown, whether it waits or not.
    [[nodiscard]] WaitingRow rowOf(const Student& student, const record::SheetRecord& sheet,
                                   const std::vector<questions::SheetQuestion>& asked) const;

Q_SIGNALS:
    void changed();

private:
    /// Progress only changes the summary; all rows are made once everybody was read, and again when a sheet changed.
    void onDesk();
    void summarize();
    void noteSeen();
    [[nodiscard]] bool fits(const Student& student, const record::SheetRecord& sheet,
                            const std::vector<questions::SheetQuestion>& asked, bool plain) const;
    [[nodiscard]] bool wasSeen(const SheetKey& key, const record::SheetRecord& sheet) const;
    void readClasses();

    StaffDesk& m_desk;
    Checks& m_checks;
    PendingActs& m_pending;
    WaitingRows m_rows;
    QString m_current;
    int m_at = -1;
    QString m_text;
    int m_group = All;
    int m_order = 0;
    int m_ofClass = 0;
    QStringList m_classes;
    QString m_summary;
    int m_looked = 0;
    int m_all = 0;             ///< that wait, whatever is filtered
    std::uint64_t m_stamp = 0; ///< of the desk, when the rows were made
    QString m_error;
    QStringList m_aboutPreceptors;
    std::map<SheetKey, std::size_t> m_seen; ///< with the length of the history that was on screen
};

} // namespace peelpack::instructor
