#pragma once

#include "qml/program/card_making.h"
#include "qml/program/class_inviting.h"
#include "qml/program/clinical_days.h"
#include "qml/program/granting.h"
#include "qml/program/inviting.h"
#include "qml/program/own_procedures.h"
#include "qml/program/paper_to_cut.h"
#include "qml/program/people.h"
#include "qml/program/preceptors.h"
#include "qml/program/program_rules.h"
#include "qml/program/requirement_changes.h"
#include "qml/program/signer_list.h"
#include "qml/program/site_list.h"
#include "qml/program/vouching.h"

#include <QVariantList>

namespace peelpack::program {

/// The program's pages over one unlocked journal of staff; gone with it when it is locked.
class ProgramPages : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made when a vault of staff opens")
    Q_PROPERTY(bool director READ isDirector CONSTANT)
    Q_PROPERTY(QString programId READ programId CONSTANT)
    Q_PROPERTY(int nextDirector READ nextDirector NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)
    Q_PROPERTY(peelpack::program::ProgramRules* rules READ rules CONSTANT)
    Q_PROPERTY(peelpack::program::RequirementChanges* requirements READ requirements CONSTANT)
    Q_PROPERTY(peelpack::program::ClinicalDayLists* days READ days CONSTANT)
    Q_PROPERTY(peelpack::program::SiteList* sites READ sites CONSTANT)
    Q_PROPERTY(peelpack::program::SignerList* signers READ signers CONSTANT)
    Q_PROPERTY(peelpack::program::OwnProcedures* procedures READ procedures CONSTANT)
    Q_PROPERTY(peelpack::program::People* people READ people CONSTANT)
    Q_PROPERTY(peelpack::program::Inviting* inviting READ inviting CONSTANT)
    Q_PROPERTY(peelpack::program::ClassInviting* classInviting READ classInviting CONSTANT)
    Q_PROPERTY(peelpack::program::Granting* granting READ granting CONSTANT)
    Q_PROPERTY(peelpack::program::Preceptors* preceptors READ preceptors CONSTANT)
    Q_PROPERTY(peelpack::program::Vouching* vouching READ vouching CONSTANT)
    Q_PROPERTY(peelpack::program::CardMaking* cardMaking READ cardMaking CONSTANT)
    Q_PROPERTY(peelpack::program::PaperToCut* paperToCut READ paperToCut CONSTANT)

public:
    ProgramPages(instructor::StaffDesk& desk, instructor::PendingActs& pending, QObject* parent = nullptr);

    [[nodiscard]] bool isDirector() { return m_desk.isDirector(); }
    /// In groups, to be compared; anybody may know it.
    [[nodiscard]] QString programId();
    /// The number that a new director gives: one more than the highest that is known.
    [[nodiscard]] int nextDirector();
    [[nodiscard]] const QString& error() const { return m_error; }
    [[nodiscard]] ProgramRules* rules() { return &m_rules; }
    [[nodiscard]] RequirementChanges* requirements() { return &m_requirements; }
    [[nodiscard]] ClinicalDayLists* days() { return &m_days; }
    [[nodiscard]] SiteList* sites() { return &m_sites; }
    [[nodiscard]] SignerList* signers() { return &m_signers; }
    [[nodiscard]] OwnProcedures* procedures() { return &m_procedures; }
    [[nodiscard]] People* people() { return &m_people; }
    [[nodiscard]] Inviting* inviting() { return &m_inviting; }
    [[nodiscard]] ClassInviting* classInviting() { return &m_classInviting; }
    [[nodiscard]] Granting* granting() { return &m_granting; }
    [[nodiscard]] Preceptors* preceptors() { return &m_preceptors; }
    [[nodiscard]] Vouching* vouching() { return &m_vouching; }
    [[nodiscard]] CardMaking* cardMaking() { return &m_cardMaking; }
    [[nodiscard]] PaperToCut* paperToCut() { return &m_paperToCut; }

    /// The whole record as files that a new director takes in; nothing: see `error`. Not sealed.
    Q_INVOKABLE QVariantList wholeRecord();

Q_SIGNALS:
    void changed();

private:
    ProgramDesk m_desk;
    ProgramRules m_rules;
    RequirementChanges m_requirements;
    ClinicalDayLists m_days;
    SiteList m_sites;
    SignerList m_signers;
    OwnProcedures m_procedures;
    People m_people;
    Inviting m_inviting;
    ClassInviting m_classInviting;
    Granting m_granting;
    Preceptors m_preceptors;
    Vouching m_vouching;
    CardMaking m_cardMaking;
    PaperToCut m_paperToCut;
    QString m_error;
};

} // namespace peelpack::program
