#include "platform/session/cards.h"

#include "sync/keys/password.h"

#include <algorithm>

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

keys::SigningCard nextCard(const Session& session, const Preceptor& preceptor)
{
    keys::SigningCard card = newCard(session);
    for (const SigningKeyOf& key : preceptor.keys) {
        if (key.kind == journal::KeyKind::Card && key.epoch >= card.epoch) {
            card.card = key.card;
            card.epoch = key.epoch + 1;
        }
    }
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

base::Result<keys::SigningKey> keyOfNewCard(const Session& session, const keys::SigningCard& card, std::string_view pin)
{
    if (const base::Result<bool> strong = keys::checkPin(pin); !strong) {
        return strong.error();
    }
    return keys::cardKey(card, session.program(), pin);
}

base::Result<keys::Id> vouchFor(Session& session, const PreceptorNames& names, const VouchedKey& key)
{
    if (session.role() == journal::Role::Student) {
        return base::Error{base::ErrorCode::BadValue, "A student cannot vouch for a preceptor."};
    }
    journal::Vouch vouch;
    vouch.person = names.person.isZero() ? session.random().id() : names.person;
    const Directory directory(session);
    if (const auto same = directory.findPreceptor(names.name); same && names.person.isZero()) {
        vouch.person = same.value()->id; // the card and the phone of one preceptor
    }
    vouch.name = names.name;
    vouch.credential = names.credential;
    vouch.site = names.site;
    vouch.keyKind = key.card ? journal::KeyKind::Card : journal::KeyKind::Device;
    vouch.key = key.key;
    vouch.card = key.card.value_or(keys::Id{});
    vouch.epoch = key.card ? key.epoch : 0;
    const auto written = session.append(session.programStream(), vouch);
    if (!written) {
        return written.error();
    }
    return vouch.person;
}

base::Result<std::size_t> endSigningKeys(Session& session, const Preceptor& preceptor, const std::string& reason,
                                         const std::optional<SigningKeyOf>& only)
{
    if (!session.isStaff()) {
        return base::Error{base::ErrorCode::BadValue, "Only an instructor or the director can end a card."};
    }
    std::vector<Writing> writings;
    for (const SigningKeyOf& key : preceptor.keys) {
        const bool meant = !only || (only->key == key.key && only->card == key.card && only->epoch == key.epoch);
        if (key.revoked || !meant) {
            continue;
        }
        journal::Revoke revoke;
        revoke.target = key.kind;
        revoke.card = key.card;
        revoke.epoch = key.epoch;
        if (key.kind == journal::KeyKind::Device) {
            revoke.feed = {key.key, session.programStream()};
        }
        revoke.reason = reason;
        writings.push_back({session.programStream(), revoke});
    }
    if (writings.empty()) {
        return base::Error{base::ErrorCode::NotFound, "This preceptor has no card or phone that is still good."};
    }
    const auto written = session.append(writings);
    if (!written) {
        return written.error();
    }
    return writings.size();
}

bool mayEnd(const Session& session, const SigningKeyOf& key)
{
    if (session.role() == journal::Role::Director) {
        return true;
    }
    const base::Result<const keys::DeviceKey*> own = session.device();
    const trust::Holder* writer = own ? session.authority().holder(own.value()->signing.verifyKey()) : nullptr;
    if (!session.isStaff() || writer == nullptr) {
        return false;
    }
    bool may = writer->scopes.empty();
    const auto wanted = journal::ofKind({journal::Kind::Vouch});
    for (const auto& [id, feed] : session.ledger().feeds()) {
        const trust::Holder* by = session.authority().holder(id.device);
        journal::eachTrunkEntry(feed, feed.count(), wanted, [&](const journal::Decoded& entry) {
            const auto& vouch = std::get<journal::Vouch>(entry.payload);
            if (may || vouch.key != key.key ||
                session.authority().judge(entry).standing != trust::Judgment::Standing::Counts) {
                return;
            }
            may = (by != nullptr && by->person == writer->person) ||
                  std::binary_search(writer->scopes.begin(), writer->scopes.end(), vouch.site);
        });
    }
    return may;
}

} // namespace peelpack::session
