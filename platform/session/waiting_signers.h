#pragma once

#include "platform/session/session.h"
#include "sync/journal/statement.h"

namespace peelpack::session {

/// A sheet that somebody signed for whom nobody vouches yet.
struct WaitingSheet {
    keys::Id student;
    keys::Id sheet;
    base::Date date;
    std::vector<std::string> procedures;
};

/// A card that was made on the spot, or a preceptor's own phone, that has signed and for which nobody vouches. What
/// is said of its owner is what stood under the signature: a claim.
struct WaitingSigner {
    journal::Signer signer;           ///< as its newest sheet says
    std::vector<WaitingSheet> sheets; ///< the newest first, each once
};

/// By name, then key. Cards that were ended wait for nobody.
std::vector<WaitingSigner> waitingSigners(const Session& session);

} // namespace peelpack::session
