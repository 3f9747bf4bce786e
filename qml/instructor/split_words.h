#pragma once

#include "qml/instructor/staff_desk.h"
#include "qml/parts/row_list.h"

#include <QQmlEngine>

namespace peelpack::instructor {

/// A record that split, with both versions.
struct SplitRow {
    Q_GADGET
    QML_VALUE_TYPE(splitRow)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString one MEMBER one)
    Q_PROPERTY(QString other MEMBER other)

public:
    QString title;
    QString one;
    QString other;
    bool operator==(const SplitRow&) const = default;
};

class SplitRows : public parts::RowList<SplitRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};

/// Whose device writes this feed.
QString writerInWords(const StaffDesk& desk, const journal::FeedId& feed);
/// "a case sheet opened, Tonsillectomy": what an entry of a student's record is.
QString entryInWords(const journal::Payload& payload);
SplitRow splitInWords(const StaffDesk& desk, const journal::ForkEvidence& fork);

} // namespace peelpack::instructor
