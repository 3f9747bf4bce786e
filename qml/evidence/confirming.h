#pragma once

#include "core/questions/signing.h"
#include "qml/instructor/checks.h"
#include "qml/instructor/pending_acts.h"
#include "qml/parts/row_list.h"

#include <QStringList>

namespace peelpack::evidence_pages {

/// A signature that its preceptor is asked about.
struct ConfirmRow {
    Q_GADGET
    QML_VALUE_TYPE(confirmRow)
    Q_PROPERTY(QString preceptor MEMBER preceptor)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString words MEMBER words)
    Q_PROPERTY(QString state MEMBER state)
    Q_PROPERTY(QString key MEMBER key)
    Q_PROPERTY(bool open MEMBER open)

public:
    QString preceptor; ///< said where another one begins; empty: the same as above
    QString title;     ///< student and procedures
    QString words;     ///< day, site, room
    QString state;     ///< what the preceptor said; empty: nothing yet
    QString key;       ///< of the sheet
    bool open = true;  ///< it can be answered
    bool operator==(const ConfirmRow&) const = default;
};

class ConfirmRows : public parts::RowList<ConfirmRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};

/// Sheets to confirm: drawn at random, asked of their preceptors, and what they said kept. And what preceptors said is
/// not theirs.
class Confirming : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the staff's desk")
    Q_PROPERTY(QStringList classes READ classes NOTIFY changed)
    Q_PROPERTY(int ofClass READ ofClass WRITE setOfClass NOTIFY changed)
    Q_PROPERTY(QStringList counts READ counts CONSTANT)
    Q_PROPERTY(int count READ count WRITE setCount NOTIFY changed)
    Q_PROPERTY(QString summary READ summary NOTIFY changed)
    Q_PROPERTY(peelpack::evidence_pages::ConfirmRows* rows READ rows CONSTANT)
    Q_PROPERTY(peelpack::evidence_pages::ConfirmRows* denied READ denied CONSTANT)
    Q_PROPERTY(QString error READ error NOTIFY changed)

public:
    Confirming(instructor::StaffDesk& desk, instructor::PendingActs& pending, QObject* parent = nullptr);

    /// The first one is all.
    [[nodiscard]] QStringList classes() const;
    [[nodiscard]] int ofClass() const { return m_ofClass; }
    void setOfClass(int ofClass);
    [[nodiscard]] static QStringList counts();
    [[nodiscard]] int count() const { return m_count; }
    void setCount(int count);
    [[nodiscard]] const QString& summary() const { return m_summary; }
    [[nodiscard]] ConfirmRows* rows() { return &m_rows; }
    [[nodiscard]] ConfirmRows* denied() { return &m_denied; }
    [[nodiscard]] const QString& error() const { return m_error; }

    /// Draws anew; with the number that an earlier drawing had, the same ones again. Empty: a new number.
    Q_INVOKABLE void draw(const QString& number);
    /// The preceptor of a row says that it is theirs, or that it is not. True when it was kept.
    Q_INVOKABLE bool confirm(int row, const QString& how);
    Q_INVOKABLE bool deny(int row);

Q_SIGNALS:
    void changed();

private:
    struct Found {
        instructor::SheetKey key;
        const record::SheetRecord* sheet = nullptr;
        const record::Signer* signer = nullptr;
    };
    [[nodiscard]] std::optional<Found> find(const base::EntryHash& entry) const;
    /// What was drawn, to be decided on; empty: it cannot be, and error() says why.
    std::optional<Found> drawnAt(int row);
    void read();
    void readDenied();
    bool decide(base::Result<session::Writing> made, const instructor::SheetKey& key, const QString& what);
    bool refuse(const QString& why);

    instructor::StaffDesk& m_desk;
    instructor::PendingActs& m_pending;
    instructor::Checks m_checks;
    int m_ofClass = 0;
    int m_count = 1;
    std::vector<questions::Signing> m_drawn;
    QString m_summary;
    ConfirmRows m_rows;
    ConfirmRows m_denied;
    QString m_error;
};

} // namespace peelpack::evidence_pages
