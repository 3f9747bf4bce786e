#pragma once

#include "qml/parts/row_list.h"
#include "qml/student/desk.h"

#include <QQmlEngine>
#include <QStringList>

namespace peelpack::student {

/// A procedure that can be taken into a sheet.
struct ProcedureRow {
    Q_GADGET
    QML_VALUE_TYPE(procedureRow)
    Q_PROPERTY(QString id MEMBER id)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString matched MEMBER matched)
    Q_PROPERTY(QString specialty MEMBER specialty)
    Q_PROPERTY(bool favorite MEMBER favorite)

public:
    QString id;
    QString name;
    QString matched;   ///< the shorthand or other wording that fitted; empty when it is the name
    QString specialty; ///< "Neurosurgery or orthopedics"
    bool favorite = false;
    bool operator==(const ProcedureRow&) const = default;
};

class ProcedureRows : public parts::RowList<ProcedureRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};

/// A case sheet while it is written. Everything that is typed is kept at once on this phone, so that it is there again
/// after the app was killed; in the journal it is only once it is saved.
class NewSheet : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the student's desk")
    Q_PROPERTY(QString query READ query WRITE setQuery NOTIFY searched)
    Q_PROPERTY(peelpack::student::ProcedureRows* hits READ hits CONSTANT)
    Q_PROPERTY(bool searching READ searching NOTIFY searched)
    Q_PROPERTY(QStringList procedures READ procedures NOTIFY changed)
    Q_PROPERTY(bool onePathology READ onePathology WRITE setOnePathology NOTIFY changed)
    Q_PROPERTY(bool canceled READ canceled WRITE setCanceled NOTIFY changed)
    Q_PROPERTY(QString surgeon READ surgeon WRITE setSurgeon NOTIFY changed)
    Q_PROPERTY(QString site READ site WRITE setSite NOTIFY changed)
    Q_PROPERTY(QString room READ room WRITE setRoom NOTIFY changed)
    Q_PROPERTY(QString start READ start WRITE setStart NOTIFY changed)
    Q_PROPERTY(QString end READ end WRITE setEnd NOTIFY changed)
    Q_PROPERTY(int daysAgo READ daysAgo WRITE setDaysAgo NOTIFY changed)
    Q_PROPERTY(QString day READ day NOTIFY changed)
    Q_PROPERTY(QString whenAndWhere READ whenAndWhere NOTIFY changed)
    Q_PROPERTY(QStringList surgeons READ surgeons NOTIFY changed)
    Q_PROPERTY(QStringList sites READ sites NOTIFY changed)
    Q_PROPERTY(QString duplicate READ duplicate NOTIFY changed)
    Q_PROPERTY(QString identifiers READ identifiers NOTIFY changed)
    Q_PROPERTY(bool ready READ ready NOTIFY changed)
    Q_PROPERTY(bool begun READ begun NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)

public:
    explicit NewSheet(Desk& desk, QObject* parent = nullptr);

    [[nodiscard]] const QString& query() const { return m_draft.query; }
    void setQuery(const QString& query);
    /// What fits the query, favorites and what the student does often first; without a query the favorites, then the
    /// student's own latest and most frequent.
    [[nodiscard]] ProcedureRows* hits() { return &m_hits; }
    [[nodiscard]] bool searching() const { return !m_draft.query.trimmed().isEmpty(); }

    [[nodiscard]] const QStringList& procedures() const { return m_draft.procedures; }
    /// Makes a procedure of the catalogue a favorite, or no longer one; kept on this phone.
    Q_INVOKABLE void favor(const QString& id, bool favorite);
    Q_INVOKABLE void take(const QString& name);
    /// What was typed, for a procedure that the catalogue does not have.
    Q_INVOKABLE void takeTyped();
    Q_INVOKABLE void remove(int index);

    [[nodiscard]] bool onePathology() const { return m_draft.onePathology; }
    void setOnePathology(bool one);
    [[nodiscard]] bool canceled() const { return m_draft.canceled; }
    void setCanceled(bool canceled);
    [[nodiscard]] const QString& surgeon() const { return m_draft.surgeon; }
    void setSurgeon(const QString& surgeon);
    [[nodiscard]] const QString& site() const { return m_draft.site; }
    void setSite(const QString& site);
    [[nodiscard]] const QString& room() const { return m_draft.room; }
    void setRoom(const QString& room);
    [[nodiscard]] const QString& start() const { return m_draft.start; }
    void setStart(const QString& start);
    [[nodiscard]] const QString& end() const { return m_draft.end; }
    void setEnd(const QString& end);
    [[nodiscard]] int daysAgo() const { return m_draft.daysAgo; }
    void setDaysAgo(int days);
    [[nodiscard]] QString day() const;
    [[nodiscard]] QString whenAndWhere() const;
    /// Of earlier sheets, the latest first.
    [[nodiscard]] QStringList surgeons() const { return m_surgeons; }
    [[nodiscard]] QStringList sites() const { return m_sites; }

    /// A sheet of this day has one of the procedures already; a warning, never a refusal.
    [[nodiscard]] QString duplicate() const;
    /// Something looks as if it could point at the patient.
    [[nodiscard]] QString identifiers() const;
    [[nodiscard]] bool ready() const { return !m_draft.procedures.isEmpty(); }
    [[nodiscard]] bool begun() const { return m_draft != m_fresh; }
    [[nodiscard]] const QString& error() const { return m_error; }

    /// Opens the sheet in the journal. Its id; empty: see `error`.
    Q_INVOKABLE QString save();
    Q_INVOKABLE void discard();

Q_SIGNALS:
    void changed();
    void searched();

private:
    struct Draft {
        QString query;
        QStringList procedures;
        bool onePathology = false;
        bool canceled = false;
        QString surgeon;
        QString site;
        QString room;
        QString start;
        QString end;
        int daysAgo = 0;
        bool operator==(const Draft&) const = default;
    };

    void restore();
    void begin();
    void keep();
    void search();
    void gatherEarlier();
    [[nodiscard]] base::Date date() const;
    template <class Value>
    void put(Value& member, const Value& value);

    Desk& m_desk;
    Draft m_draft;
    Draft m_fresh;
    ProcedureRows m_hits;
    QStringList m_favorites; ///< ids of the catalogue, the latest first
    QStringList m_recent;
    QStringList m_surgeons;
    QStringList m_sites;
    QString m_error;
};

} // namespace peelpack::student
