#pragma once

#include "qml/instructor/checked_sheet.h"

namespace peelpack::instructor {

/// A change of the sheet that is looked at, while it is put together: old and new side by side. The preceptor's marks
/// stay in the journal beside it.
class Amending : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the staff's desk")
    Q_PROPERTY(bool open READ isOpen NOTIFY changed)
    Q_PROPERTY(bool hasMarks MEMBER m_hasMarks NOTIFY changed)
    Q_PROPERTY(QList<int> marks READ marks NOTIFY changed)
    Q_PROPERTY(QStringList skills READ skills NOTIFY changed)
    Q_PROPERTY(QString procedures READ procedures WRITE setProcedures NOTIFY changed)
    Q_PROPERTY(QString date READ date WRITE setDate NOTIFY changed)
    Q_PROPERTY(QString surgeon READ surgeon WRITE setSurgeon NOTIFY changed)
    Q_PROPERTY(QString site READ site WRITE setSite NOTIFY changed)
    Q_PROPERTY(QString room READ room WRITE setRoom NOTIFY changed)
    Q_PROPERTY(bool canceled READ canceled WRITE setCanceled NOTIFY changed)
    Q_PROPERTY(QStringList changes READ changes NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)

public:
    Amending(StaffDesk& desk, CheckedSheet& sheet, QObject* parent = nullptr);

    [[nodiscard]] bool isOpen() const { return m_open; }
    /// By skill, as ThreeWay has them: 0 not marked, 1 Yes, 2 No, 3 N/A.
    [[nodiscard]] QList<int> marks() const;
    [[nodiscard]] static QStringList skills();
    /// One a line, or with semicolons between.
    [[nodiscard]] const QString& procedures() const { return m_procedures; }
    void setProcedures(const QString& procedures) { put(m_procedures, procedures); }
    /// "2026-03-12"
    [[nodiscard]] const QString& date() const { return m_date; }
    void setDate(const QString& date) { put(m_date, date); }
    [[nodiscard]] const QString& surgeon() const { return m_surgeon; }
    void setSurgeon(const QString& surgeon) { put(m_surgeon, surgeon); }
    [[nodiscard]] const QString& site() const { return m_site; }
    void setSite(const QString& site) { put(m_site, site); }
    [[nodiscard]] const QString& room() const { return m_room; }
    void setRoom(const QString& room) { put(m_room, room); }
    [[nodiscard]] bool canceled() const { return m_canceled; }
    void setCanceled(bool canceled) { put(m_canceled, canceled); }
    /// "Cut suture: Yes becomes No", a line for each change.
    [[nodiscard]] QStringList changes() const;
    /// What cannot be taken as it is; empty: nothing.
    [[nodiscard]] QString problem() const;

    Q_INVOKABLE void begin();
    Q_INVOKABLE void drop();
    Q_INVOKABLE void mark(int skill, int mark);
    /// True when it was decided; else see the sheet's `error`.
    Q_INVOKABLE bool done(const QString& reason);

Q_SIGNALS:
    void changed();

private:
    template <class Value>
    void put(Value& member, const Value& value)
    {
        if (member != value) {
            member = value;
            Q_EMIT changed();
        }
    }
    [[nodiscard]] journal::Head head() const;
    [[nodiscard]] std::vector<std::string> procedureList() const;

    StaffDesk& m_desk;
    CheckedSheet& m_sheet;
    bool m_open = false;
    keys::Id m_student;
    record::Content m_before;
    bool m_hasMarks = true; ///< false: imported from a paper log
    sheet::Marks m_marks;
    QString m_procedures;
    QString m_date;
    QString m_surgeon;
    QString m_site;
    QString m_room;
    bool m_canceled = false;
};

} // namespace peelpack::instructor
