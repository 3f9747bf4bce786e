#pragma once

#include "qml/instructor/pending_acts.h"
#include "qml/instructor/split_words.h"

namespace peelpack::evidence_pages {

/// An entry that does not count until somebody admits it.
struct AsideRow {
    Q_GADGET
    QML_VALUE_TYPE(asideRow)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString words MEMBER words)
    Q_PROPERTY(QString why MEMBER why)
    Q_PROPERTY(bool admissible MEMBER admissible)

public:
    QString title; ///< whose record, and what it is
    QString words; ///< when, as it claims
    QString why;   ///< it does not count
    bool admissible = false;
    bool operator==(const AsideRow&) const = default;
};

class AsideRows : public parts::RowList<AsideRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};

/// What does not count yet: after a split, from a device or with a card that was ended; and the records that split.
class Aside : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the staff's desk")
    Q_PROPERTY(peelpack::evidence_pages::AsideRows* rows READ rows CONSTANT)
    Q_PROPERTY(peelpack::instructor::SplitRows* splits READ splits CONSTANT)
    Q_PROPERTY(int more READ more NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)
    Q_PROPERTY(QString done READ done NOTIFY changed)

public:
    Aside(instructor::StaffDesk& desk, instructor::PendingActs& pending, QObject* parent = nullptr);

    static constexpr std::size_t mostRows = 100;

    [[nodiscard]] AsideRows* rows() { return &m_rows; }
    [[nodiscard]] instructor::SplitRows* splits() { return &m_splits; }
    /// Entries beyond those that are listed.
    [[nodiscard]] int more() const { return m_more; }
    [[nodiscard]] const QString& error() const { return m_error; }
    [[nodiscard]] const QString& done() const { return m_done; }

    Q_INVOKABLE void read();
    /// Lets the entry of a row count. True when it was written.
    Q_INVOKABLE bool admit(int row, const QString& reason);

Q_SIGNALS:
    void changed();

private:
    instructor::StaffDesk& m_desk;
    instructor::PendingActs& m_pending;
    std::vector<journal::Position> m_entries; ///< by row
    AsideRows m_rows;
    instructor::SplitRows m_splits;
    int m_more = 0;
    QString m_error;
    QString m_done;
};

} // namespace peelpack::evidence_pages
