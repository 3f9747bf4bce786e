#pragma once

#include "qml/instructor/amending.h"
#include "qml/instructor/class_board.h"
#include "qml/instructor/rules_in_force.h"
#include "qml/instructor/staff_parcels.h"
#include "qml/instructor/student_of_class.h"
#include "qml/student/missing_sets.h"

namespace peelpack::instructor {

/// The instructor's pages over one unlocked journal; gone with it when it is locked.
class StaffPages : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made when a vault of staff opens")
    Q_PROPERTY(QString name READ name NOTIFY changed)
    Q_PROPERTY(QString bar READ bar NOTIFY changed)
    Q_PROPERTY(peelpack::instructor::CheckList* list READ list CONSTANT)
    Q_PROPERTY(peelpack::instructor::CheckedSheet* sheet READ sheet CONSTANT)
    Q_PROPERTY(peelpack::instructor::Amending* amending READ amending CONSTANT)
    Q_PROPERTY(peelpack::instructor::PendingActs* pending READ pending CONSTANT)
    Q_PROPERTY(peelpack::instructor::ClassBoard* board READ board CONSTANT)
    Q_PROPERTY(peelpack::instructor::StudentOfClass* student READ student CONSTANT)
    Q_PROPERTY(peelpack::instructor::StaffParcels* parcels READ parcels CONSTANT)
    Q_PROPERTY(peelpack::student::MissingSets* missingSets READ missingSets CONSTANT)
    Q_PROPERTY(peelpack::instructor::RulesInForce* rules READ rules CONSTANT)

public:
    explicit StaffPages(StaffDesk& desk, QObject* parent = nullptr);

    [[nodiscard]] QString name() const { return m_desk.name(); }
    /// Why nothing can be signed here at the moment; empty: it can.
    [[nodiscard]] QString bar() const;
    [[nodiscard]] CheckList* list() { return &m_list; }
    [[nodiscard]] CheckedSheet* sheet() { return &m_sheet; }
    [[nodiscard]] Amending* amending() { return &m_amending; }
    [[nodiscard]] PendingActs* pending() { return &m_pending; }
    [[nodiscard]] ClassBoard* board() { return &m_board; }
    [[nodiscard]] StudentOfClass* student() { return &m_student; }
    [[nodiscard]] StaffParcels* parcels() { return &m_parcels; }
    [[nodiscard]] student::MissingSets* missingSets() { return &m_missingSets; }
    [[nodiscard]] RulesInForce* rules() { return &m_rules; }

Q_SIGNALS:
    void changed();

private:
    StaffDesk& m_desk;
    Checks m_checks;
    PendingActs m_pending;
    CheckList m_list;
    CheckedSheet m_sheet;
    Amending m_amending;
    ClassBoard m_board;
    StudentOfClass m_student;
    StaffParcels m_parcels;
    RulesInForce m_rules;
    student::MissingSets m_missingSets;
};

} // namespace peelpack::instructor
