#include "sync/trust/rights.h"

namespace peelpack::trust {

using journal::Kind;
using journal::Role;

bool mayWrite(Role role, std::uint16_t kind)
{
    const bool director = role == Role::Director;
    const bool instructor = director || role == Role::Instructor;
    const bool coordinator = instructor || role == Role::Coordinator;
    switch (static_cast<Kind>(kind)) {
    case Kind::Policy:
    case Kind::RequirementsChange:
    case Kind::WhoMaySign:
    case Kind::CatalogueOverlay:
    case Kind::Complete:
    case Kind::CompleteByException:
        return director;
    case Kind::Grant:
    case Kind::Revoke:
    case Kind::Initial:
    case Kind::Return:
    case Kind::ReviewAccepted:
    case Kind::Amend:
    case Kind::Refile:
    case Kind::Void:
    case Kind::Imported:
    case Kind::Receipt:
    case Kind::CardStatement:
    case Kind::Admit:
        return instructor;
    case Kind::ClinicalDays:
    case Kind::Sites:
    case Kind::PreceptorStanding:
        return coordinator;
    case Kind::Vouch:
        return role != Role::Student;
    case Kind::SheetOpened:
    case Kind::HeadChanged:
    case Kind::Withdrawn:
    case Kind::Attestation:
    case Kind::Logged:
    case Kind::ReviewAsked:
    case Kind::HandOverEnded:
    case Kind::Declined:
        return role == Role::Student;
    case Kind::ForkFound:
        return true;
    }
    return false;
}

bool mayGrant(Role giver, Role given)
{
    if (given == Role::Director) {
        return false;
    }
    return giver == Role::Director || (giver == Role::Instructor && given != Role::Instructor);
}

} // namespace peelpack::trust
