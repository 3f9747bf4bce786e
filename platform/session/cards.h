#pragma once

#include "platform/session/directory.h"
#include "sync/keys/card.h"

namespace peelpack::session {

/// A signing card of this program that nobody has yet: the first of its kind, with a fresh secret.
keys::SigningCard newCard(const Session& session);
/// The next card of a preceptor who is known: the same card's next epoch, or a first one for somebody who only has a
/// phone.
keys::SigningCard nextCard(const Session& session, const Preceptor& preceptor);
/// The newest card of a preceptor that is not revoked; empty when there is none.
std::optional<SigningKeyOf> newestCard(const Preceptor& preceptor);
/// Says in a vouch which card and key it is about.
void nameCard(journal::Vouch& vouch, const keys::Id& card, std::uint32_t epoch, const keys::VerifyKey& key);
/// The key of a card and the PIN that its preceptor chose now. BadValue: a PIN that anybody would guess.
base::Result<keys::SigningKey> keyOfNewCard(const Session& session, const keys::SigningCard& card,
                                            std::string_view pin);

/// How a preceptor is named.
struct PreceptorNames {
    std::string name;
    std::string credential;
    std::string site;
    keys::Id person; ///< zero: whoever is known by that name
};
/// A signing key for which somebody is about to vouch.
struct VouchedKey {
    keys::VerifyKey key;
    std::optional<keys::Id> card; ///< empty: a phone
    std::uint32_t epoch = 0;      ///< of the card
};
/// Vouches for a key: of the preceptor who is meant or known by that name (their card and their phone), else of a new
/// one.
/// BadValue: a student cannot. The preceptor's id.
base::Result<keys::Id> vouchFor(Session& session, const PreceptorNames& names, const VouchedKey& key);

/// Ends a preceptor's cards and phones, all that are good or only one. How many. NotFound: there is none to end.
/// BadValue: only an instructor or the director can.
base::Result<std::size_t> endSigningKeys(Session& session, const Preceptor& preceptor, const std::string& reason,
                                         const std::optional<SigningKeyOf>& only = std::nullopt);
/// Whether it would count if this person ended the key (FORMAT.md section 7): the director any, an instructor those
/// for which they vouched themselves or that were vouched for at one of their sites.
bool mayEnd(const Session& session, const SigningKeyOf& key);

} // namespace peelpack::session
