#pragma once

#include "platform/session/set_files.h"
#include "qml/parts/row_list.h"

#include <QObject>
#include <QQmlEngine>
#include <QStringList>

namespace peelpack::program {

/// A requirement set, to be chosen.
struct SetRow {
    Q_GADGET
    QML_VALUE_TYPE(setRow)
    Q_PROPERTY(QString id MEMBER id)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QStringList asks MEMBER asks)
    Q_PROPERTY(bool chosen MEMBER chosen)

public:
    QString id; ///< of a shipped set; of another the digits of its digest, as two may have one id
    QString title;
    QStringList asks; ///< its targets and limits, a line each; of one that does not ship, before them where it is from
    bool chosen = false;
    bool operator==(const SetRow&) const = default;
};

/// The shipped requirement sets, those that the vault keeps, and those that were opened from a file since.
class SetRows : public parts::RowList<SetRow> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the app")
    Q_PROPERTY(QStringList faults READ faults NOTIFY faultsChanged)

public:
    using RowList::RowList;

    /// What the rules name, as a row's id.
    static QString rowId(const std::string& id, const keys::Hash& digest);

    /// Offers these beside the shipped ones, and none that was opened before.
    void offer(std::vector<session::SetFile> kept);
    /// Says them in the language of the app.
    void read();
    /// Empty: none.
    void choose(const QString& id);
    /// The id that was chosen, although no row may have it: a set whose file is not at hand.
    [[nodiscard]] const QString& wanted() const { return m_wanted; }
    /// Null: none of the rows is chosen.
    [[nodiscard]] const SetRow* chosen() const;
    [[nodiscard]] const session::SetFile* chosenFile() const;

    /// What was wrong with the file that was opened last, line by line.
    [[nodiscard]] const QStringList& faults() const { return m_faults; }
    /// Offers the set in a file and chooses it, when it can be used; else see `faults`.
    void open(const QByteArray& file);

Q_SIGNALS:
    void faultsChanged();

private:
    QString m_wanted;
    QStringList m_faults;
    std::vector<session::SetFile> m_files = session::shippedSetFiles();
};

} // namespace peelpack::program
