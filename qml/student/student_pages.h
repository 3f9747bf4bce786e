#pragma once

#include "qml/student/missing_sets.h"
#include "qml/student/new_sheet.h"
#include "qml/student/parcels.h"
#include "qml/student/sheet_list.h"
#include "qml/student/sheet_page.h"
#include "qml/student/tally_page.h"
#include "qml/student/today.h"

namespace peelpack::student {

/// The student's pages over one unlocked journal; gone with it when the phone is locked.
class StudentPages : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made when a student's vault opens")
    Q_PROPERTY(QString name READ name NOTIFY changed)
    Q_PROPERTY(QString bar READ bar NOTIFY changed)
    Q_PROPERTY(peelpack::student::Today* today READ today CONSTANT)
    Q_PROPERTY(peelpack::student::NewSheet* newSheet READ newSheet CONSTANT)
    Q_PROPERTY(peelpack::student::SheetList* sheets READ sheets CONSTANT)
    Q_PROPERTY(peelpack::student::SheetPage* sheet READ sheet CONSTANT)
    Q_PROPERTY(peelpack::student::TallyPage* tally READ tally CONSTANT)
    Q_PROPERTY(peelpack::student::MissingSets* missingSets READ missingSets CONSTANT)
    Q_PROPERTY(peelpack::student::Parcels* parcels READ parcels CONSTANT)

public:
    explicit StudentPages(Desk& desk, QObject* parent = nullptr);

    [[nodiscard]] QString name() const { return m_desk.name(); }
    /// Why this phone may not sign at the moment; empty: it may.
    [[nodiscard]] QString bar() const;
    [[nodiscard]] Today* today() { return &m_today; }
    [[nodiscard]] NewSheet* newSheet() { return &m_newSheet; }
    [[nodiscard]] SheetList* sheets() { return &m_sheets; }
    [[nodiscard]] SheetPage* sheet() { return &m_sheet; }
    [[nodiscard]] TallyPage* tally() { return &m_tally; }
    [[nodiscard]] MissingSets* missingSets() { return &m_missingSets; }
    [[nodiscard]] Parcels* parcels() { return &m_parcels; }

Q_SIGNALS:
    void changed();

private:
    Desk& m_desk;
    WaitingList m_waitingFor;
    Today m_today;
    NewSheet m_newSheet;
    SheetList m_sheets;
    SheetPage m_sheet;
    TallyPage m_tally;
    MissingSets m_missingSets;
    Parcels m_parcels;
};

} // namespace peelpack::student
