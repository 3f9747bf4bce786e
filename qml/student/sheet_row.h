#pragma once

#include "qml/parts/row_list.h"
#include "qml/student/desk.h"

#include <QQmlEngine>

namespace peelpack::student {

/// A case sheet as a list shows it. `seal` as in PackSeal::State.
struct SheetRow {
    Q_GADGET
    QML_VALUE_TYPE(sheetRow)
    Q_PROPERTY(QString id MEMBER id)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString detail MEMBER detail)
    Q_PROPERTY(QString standing MEMBER standing)
    Q_PROPERTY(QString role MEMBER role)
    Q_PROPERTY(QString specialty MEMBER specialty)
    Q_PROPERTY(QString remark MEMBER remark)
    Q_PROPERTY(bool grave MEMBER grave)
    Q_PROPERTY(bool roleCounts MEMBER roleCounts)
    Q_PROPERTY(int seal MEMBER seal)

public:
    QString id; ///< 32 digits
    QString title;
    QString detail;
    QString standing;
    QString role; ///< empty while nobody has marked it
    QString specialty;
    QString remark; ///< what the student should know or do; empty: nothing
    bool grave = false;
    bool roleCounts = false;
    int seal = 0;
    bool operator==(const SheetRow&) const = default;
};

/// For QML: a list of sheets.
class SheetRows : public parts::RowList<SheetRow> {
    Q_OBJECT
    QML_ANONYMOUS

public:
    using RowList::RowList;
};

/// `waitingFor`: the preceptor for whom an open sheet waits; may be empty.
SheetRow sheetRow(const Desk& desk, const record::SheetRecord& sheet, const QString& waitingFor);

/// As in PackSeal::State.
int sealOf(const record::SheetRecord& sheet);

/// Where the first procedure is filed, or will be while nothing is logged; empty when nobody knows.
std::optional<catalogue::Category> categoryOf(const catalogue::Catalogue& catalogue, const record::SheetRecord& sheet);

} // namespace peelpack::student
