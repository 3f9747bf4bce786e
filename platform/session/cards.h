#pragma once

#include "platform/session/directory.h"
#include "sync/keys/card.h"

namespace peelpack::session {

/// A signing card of this program that nobody has yet: the first of its kind, with a fresh secret.
keys::SigningCard newCard(const Session& session);
/// The newest card of a preceptor that is not revoked; empty when there is none.
std::optional<SigningKeyOf> newestCard(const Preceptor& preceptor);
/// Says in a vouch which card and key it is about.
void nameCard(journal::Vouch& vouch, const keys::Id& card, std::uint32_t epoch, const keys::VerifyKey& key);

} // namespace peelpack::session
