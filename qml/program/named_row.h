#pragma once

#include "qml/parts/row_list.h"

#include <QObject>
#include <QQmlEngine>
#include <QString>

namespace peelpack::program {

/// One of a rule's list: a site, a credential.
struct NamedRow {
    Q_GADGET
    QML_VALUE_TYPE(namedRow)
    Q_PROPERTY(int index MEMBER index)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString detail MEMBER detail)

public:
    int index = 0;
    QString name;
    QString detail;
    bool operator==(const NamedRow&) const = default;
};

class NamedRows : public parts::RowList<NamedRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};

} // namespace peelpack::program
