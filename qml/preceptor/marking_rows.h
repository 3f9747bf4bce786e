#pragma once

#include "qml/parts/row_list.h"

#include <QQmlEngine>

namespace peelpack::preceptor {

/// One skill as the preceptor marks it. `mark`: 0 not marked, 1 Yes, 2 No, 3 N/A.
struct MarkingRow {
    Q_GADGET
    QML_VALUE_TYPE(markingRow)
    Q_PROPERTY(int skill MEMBER skill)
    Q_PROPERTY(QString label MEMBER label)
    Q_PROPERTY(QString help MEMBER help)
    Q_PROPERTY(bool firstScrub MEMBER firstScrub)
    Q_PROPERTY(int mark MEMBER mark)
    Q_PROPERTY(QString reason MEMBER reason)
    Q_PROPERTY(bool asksWhy MEMBER asksWhy)
    Q_PROPERTY(QString before MEMBER before)

public:
    int skill = 0;
    QString label;
    QString help;
    bool firstScrub = false;
    int mark = 0;
    QString reason;       ///< of N/A
    bool asksWhy = false; ///< N/A on a first-scrub skill, without a reason
    QString before;       ///< what another preceptor marked; empty: nobody did
    bool operator==(const MarkingRow&) const = default;
};

class MarkingRows : public parts::RowList<MarkingRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};

} // namespace peelpack::preceptor
