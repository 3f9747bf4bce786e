#include "platform/session/cards.h"

namespace peelpack::session {

keys::SigningCard newCard(const Session& session)
{
    keys::SigningCard card;
    card.programStream = session.programStream();
    card.card = session.random().id();
    card.epoch = 1;
    card.secret = session.random().secret(keys::SigningCard::secretBytes);
    return card;
}

std::optional<SigningKeyOf> newestCard(const Preceptor& preceptor)
{
    std::optional<SigningKeyOf> newest;
    for (const SigningKeyOf& key : preceptor.keys) {
        if (key.kind == journal::KeyKind::Card && !key.revoked && (!newest || key.epoch >= newest->epoch)) {
            newest = key;
        }
    }
    return newest;
}

void nameCard(journal::Vouch& vouch, const keys::Id& card, std::uint32_t epoch, const keys::VerifyKey& key)
{
    vouch.keyKind = journal::KeyKind::Card;
    vouch.key = key;
    vouch.card = card;
    vouch.epoch = epoch;
}

} // namespace peelpack::session
