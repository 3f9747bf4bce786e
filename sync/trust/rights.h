#pragma once

#include "sync/journal/payload.h"

namespace peelpack::trust {

/// Which roles may write which kinds (FORMAT.md section 7): only by kind and role, without looking at whom it concerns.
/// False for kinds that this version does not know.
bool mayWrite(journal::Role role, std::uint16_t kind);

/// Who may give which role. Nobody grants a director.
bool mayGrant(journal::Role giver, journal::Role given);

} // namespace peelpack::trust
