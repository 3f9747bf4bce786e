#pragma once

#include "sync/journal/program_payloads.h"
#include "sync/journal/reason.h"
#include "sync/journal/rule_payloads.h"
#include "sync/journal/sheet_payloads.h"

#include <variant>

namespace peelpack::journal {

/// A payload of a kind that this version does not know. Its bytes stay in the entry.
struct Unread {
    bool operator==(const Unread&) const = default;
};

/// What an entry says.
using Payload =
    std::variant<Unread, Grant, Revoke, Vouch, Policy, RequirementsChange, ClinicalDays, Sites, WhoMaySign,
                 PreceptorStanding, CatalogueOverlay, SheetOpened, HeadChanged, Withdrawn, Attestation, Logged,
                 ReviewAsked, HandOverEnded, Declined, Initial, Return, ReviewAccepted, Amend, Refile, Void, Complete,
                 CompleteByException, Imported, Receipt, CardStatement, ForkFound, Admit>;

/// What the writer of an entry puts into it; bytes as FORMAT.md sections 3 and 4. A reason when a reader would refuse
/// them: nothing is ever signed that does not read back. Unread has no bytes and is refused.
Checked<keys::Bytes> encode(const Payload& payload);

/// From bytes that may be hostile; bounded by their length. Unread for a kind that this version does not know.
Checked<Payload> decodePayload(std::uint16_t kind, keys::ByteView bytes);
/// From bytes that decodePayload accepted before: the same bounds, and no second look at what fields say together.
Checked<Payload> readPayload(std::uint16_t kind, keys::ByteView bytes);

/// Where the statement lies in an attestation's bytes; empty when they are not of that form.
keys::ByteView statementBytes(keys::ByteView attestation);

bool isKnown(std::uint16_t kind);
/// One of the instructors' actions on a sheet, which share an Act.
bool isAct(std::uint16_t kind);
/// A rule of the program besides its policy: kinds 5 to 10.
inline bool isRule(std::uint16_t kind)
{
    return kind >= static_cast<std::uint16_t>(Kind::RequirementsChange) &&
           kind <= static_cast<std::uint16_t>(Kind::CatalogueOverlay);
}
/// False for a kind that some version of Peelpack kept without reading it (FORMAT.md section 14).
inline bool checkedByEveryVersion(std::uint16_t kind)
{
    return isKnown(kind) && !isRule(kind) && kind != static_cast<std::uint16_t>(Kind::CompleteByException) &&
           kind != static_cast<std::uint16_t>(Kind::Imported);
}
/// In which streams a kind may stand. Unknown kinds: both.
bool belongsInProgramStream(std::uint16_t kind);
bool belongsInStudentStream(std::uint16_t kind);

/// The part that all instructor actions on a sheet share; null for every other payload.
const Act* actOf(const Payload& payload);

} // namespace peelpack::journal
