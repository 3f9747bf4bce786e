#pragma once

#include "qml/student/desk.h"

#include <QMap>

namespace peelpack::student {

/// For which preceptor an open sheet waits: somebody who has left before they could sign. The student's own note on
/// this phone, not part of the journal.
class WaitingList {
public:
    explicit WaitingList(Desk& desk);

    /// Empty: for nobody in particular.
    [[nodiscard]] QString of(const record::SheetRecord& sheet) const;
    /// An empty name takes the note away. Why it could not be kept; empty: kept.
    QString note(const QString& sheet, const QString& preceptor);

private:
    Desk& m_desk;
    QMap<QString, QString> m_names; ///< by id of the sheet
};

} // namespace peelpack::student
