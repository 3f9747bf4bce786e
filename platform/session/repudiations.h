#pragma once

#include "core/base/id.h"
#include "platform/session/session.h"

#include <set>

namespace peelpack::session {

/// The attestations in a student's stream of which their preceptor has said, in a card statement that counts, that they
/// are not theirs; by entry. A word for the instructors: it takes nothing out of the count by itself.
std::set<base::EntryHash> repudiatedIn(const Session& session, const keys::Id& student);

/// A card statement that says of one attestation that it is not its preceptor's. NotFound: it is not here. BadValue:
/// not staff, or no card signed it.
base::Result<Writing> sayingNotTheirs(const Session& session, const keys::Id& student, const base::EntryHash& entry);

} // namespace peelpack::session
