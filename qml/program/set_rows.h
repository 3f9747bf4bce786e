#pragma once

#include "qml/parts/row_list.h"

#include <QObject>
#include <QQmlEngine>
#include <QStringList>

namespace peelpack::program {

/// A shipped requirement set, to be chosen.
struct SetRow {
    Q_GADGET
    QML_VALUE_TYPE(setRow)
    Q_PROPERTY(QString id MEMBER id)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QStringList asks MEMBER asks)
    Q_PROPERTY(bool chosen MEMBER chosen)

public:
    QString id;
    QString title;
    QStringList asks; ///< its targets and limits, a line each
    bool chosen = false;
    bool operator==(const SetRow&) const = default;
};

/// The shipped requirement sets.
class SetRows : public parts::RowList<SetRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;

    /// Says them in the language of the app; one of them is chosen, or none.
    void read(const QString& chosen);
    void choose(const QString& id);
    /// Null: none of them is.
    [[nodiscard]] const SetRow* chosen() const;
};

} // namespace peelpack::program
