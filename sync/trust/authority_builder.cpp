#include "sync/keys/card.h"
#include "sync/trust/authority.h"
#include "sync/trust/rights.h"

#include <algorithm>
#include <iterator>

namespace peelpack::trust {

using journal::Decoded;
using journal::FeedId;
using journal::Kind;
using journal::Reason;
using journal::Role;

/// Works authority out in layers: certificates, directors' entries, instructors' entries, what coordinators and
/// contacts vouch for. A layer is read only after everything that can cut it short is known, so the order of arrival
/// and of the feeds does not matter.
class AuthorityBuilder {
public:
    AuthorityBuilder(const keys::VerifyKey& program, const Feeds& feeds) : m_feeds(feeds)
    {
        m_authority.m_programStream = keys::programStream(program);
    }

    Authority build(const std::vector<Certificate>& certificates)
    {
        findForks();
        takeCertificates(certificates);
        for (const Role layer : {Role::Director, Role::Instructor}) {
            const std::vector<Decoded> entries = entriesOf(layer);
            takeGrants(layer, entries);
            takeVouches(entries);
            takeReceipts(entries);
            takeRevocations(layer, entries);
            std::copy_if(entries.begin(), entries.end(), std::back_inserter(m_admits),
                         [](const Decoded& entry) { return std::holds_alternative<journal::Admit>(entry.payload); });
        }
        takeVouches(entriesOf(Role::Coordinator));
        takeVouches(entriesOf(Role::Contact));
        takeAdmits();
        return std::move(m_authority);
    }

private:
    using Target = std::map<FeedId, std::uint32_t>;

    static void lower(Target& target, const FeedId& feed, std::uint32_t value)
    {
        const auto [place, added] = target.try_emplace(feed, value);
        if (!added) {
            place->second = std::min(place->second, value);
        }
    }

    void deny(const Decoded& entry, Reason reason) { m_authority.m_denied.try_emplace(entry.position, reason); }

    void findForks()
    {
        const auto isEvidence = journal::ofKind({Kind::ForkFound});
        for (const auto& [id, feed] : m_feeds) {
            if (feed.forked()) {
                lower(m_authority.m_forks, id, feed.count());
            }
            // Evidence stands on its own signatures, so it does not matter who brings it.
            journal::eachEntry(feed, isEvidence, [&](const Decoded& entry) {
                const auto& evidence = std::get<journal::ForkFound>(entry.payload).evidence;
                lower(m_authority.m_forks, evidence.feed, evidence.seq);
            });
        }
    }

    void takeCertificates(const std::vector<Certificate>& certificates)
    {
        for (const Certificate* certificate : directorsThatHold(certificates)) {
            const auto& director = std::get<DirectorCertificate>(certificate->content);
            Holder& holder = m_authority.m_holders[director.device];
            holder.role = Role::Director;
            holder.person = director.person;
            holder.name = director.name;
            holder.epoch = certificate->epoch;
        }
        for (const Certificate& certificate : certificates) {
            if (const auto* revoked = std::get_if<DirectorRevoked>(&certificate.content)) {
                lower(m_authority.m_revoked, revoked->feed, revoked->accepted);
            }
        }
    }

    /// What the devices of one role wrote that concerns authority, as far as it is good.
    [[nodiscard]] std::vector<Decoded> entriesOf(Role role) const
    {
        std::vector<Decoded> entries;
        const auto concernsAuthority = [](std::uint16_t kind) {
            switch (static_cast<Kind>(kind)) {
            case Kind::Grant:
            case Kind::Revoke:
            case Kind::Vouch:
            case Kind::Receipt:
            case Kind::Admit:
                return true;
            default:
                return false;
            }
        };
        for (const auto& [id, feed] : m_feeds) {
            const Holder* holder = m_authority.holder(id.device);
            if (holder != nullptr && holder->role == role) {
                journal::eachTrunkEntry(feed, m_authority.limit(id), concernsAuthority,
                                        [&](Decoded&& entry) { entries.push_back(std::move(entry)); });
            }
        }
        return entries;
    }

    struct Given {
        const journal::Grant* grant;
        const Decoded* entry;
    };

    void takeGrants(Role giver, const std::vector<Decoded>& entries)
    {
        std::vector<Given> given;
        for (const Decoded& entry : entries) {
            const auto* grant = std::get_if<journal::Grant>(&entry.payload);
            if (grant == nullptr) {
                continue;
            }
            if (mayGrant(giver, grant->role)) {
                given.push_back({grant, &entry});
            } else {
                deny(entry, Reason::RoleMayNotWrite);
            }
        }
        // The highest role first, then the smallest hash: what a device was given first does not depend on arrival.
        std::sort(given.begin(), given.end(), [](const Given& a, const Given& b) {
            return std::pair(a.grant->role, a.entry->position.hash) < std::pair(b.grant->role, b.entry->position.hash);
        });
        for (const auto& [grant, entry] : given) {
            takeGrant(*grant, *entry);
        }
    }

    void takeGrant(const journal::Grant& grant, const Decoded& entry)
    {
        const auto [place, added] = m_authority.m_holders.try_emplace(grant.device);
        Holder& holder = place->second;
        if (added) {
            holder.role = grant.role;
            holder.person = grant.person;
            holder.name = grant.name;
            holder.scopes = grant.scopes;
        } else if (holder.role != grant.role || holder.person != grant.person) {
            deny(entry, Reason::BadCombination);
            return;
        } else if (holder.scopes.empty() || grant.scopes.empty()) {
            holder.scopes.clear(); // every scope, and more is not possible
        } else {
            holder.scopes.insert(holder.scopes.end(), grant.scopes.begin(), grant.scopes.end());
        }
        std::sort(holder.scopes.begin(), holder.scopes.end());
        holder.scopes.erase(std::unique(holder.scopes.begin(), holder.scopes.end()), holder.scopes.end());
        holder.grantedBy.insert(personOfDevice(entry));
        if (grant.continues) {
            holder.continues.push_back(*grant.continues);
        }
    }

    [[nodiscard]] keys::Id personOfDevice(const Decoded& entry) const
    {
        const Holder* writer = m_authority.holder(entry.position.feed.device);
        return writer == nullptr ? keys::Id{} : writer->person;
    }

    void takeVouches(const std::vector<Decoded>& entries)
    {
        for (const Decoded& entry : entries) {
            const auto* vouch = std::get_if<journal::Vouch>(&entry.payload);
            if (vouch == nullptr) {
                continue;
            }
            const Holder* writer = m_authority.holder(entry.position.feed.device);
            if (writer->role == Role::Contact && !writer->scopes.empty() && !hasScope(*writer, vouch->site)) {
                deny(entry, Reason::OutOfScope);
                continue;
            }
            // Two people named for one key: the smaller id, on every device the same.
            auto& people = vouch->keyKind == journal::KeyKind::Device
                               ? m_authority.m_signingDevices
                               : m_authority.m_cards[{vouch->card, vouch->epoch}];
            const auto [place, added] = people.try_emplace(vouch->key, vouch->person);
            if (!added) {
                place->second = std::min(place->second, vouch->person);
            }
            m_vouchedBy[vouch->key].insert(personOfDevice(entry));
            m_vouchedAt[vouch->key].insert(vouch->site);
            if (vouch->keyKind == journal::KeyKind::Card) {
                m_cardKeys[{vouch->card, vouch->epoch}].insert(vouch->key);
            }
        }
    }

    void takeReceipts(const std::vector<Decoded>& entries)
    {
        for (const Decoded& entry : entries) {
            const auto* receipt = std::get_if<journal::Receipt>(&entry.payload);
            if (receipt == nullptr) {
                continue;
            }
            for (const journal::ReceiptItem& item : receipt->items) {
                ReceiptRecord record;
                record.receipt = entry.position;
                record.time = entry.context.time;
                record.covered = {{item.device, entry.position.feed.stream}, item.seq, item.hash};
                record.programCount = receipt->programCount;
                const auto feed = m_feeds.find(record.covered.feed);
                record.held = feed != m_feeds.end() && item.seq < feed->second.count() &&
                              feed->second.find(item.seq, item.hash) != nullptr;
                m_authority.m_receiptsOf[record.covered.feed].push_back(m_authority.m_receipts.size());
                m_authority.m_receipts.push_back(record);
            }
        }
    }

    void takeRevocations(Role writerRole, const std::vector<Decoded>& entries)
    {
        Target lowered;
        for (const Decoded& entry : entries) {
            const auto* revoke = std::get_if<journal::Revoke>(&entry.payload);
            if (revoke == nullptr) {
                continue;
            }
            const Reason refused =
                writerRole == Role::Director ? refusedToDirector(*revoke) : refusedToInstructor(*revoke, entry);
            if (refused != Reason::None) {
                deny(entry, refused);
            } else if (revoke->target == journal::KeyKind::Card) {
                m_authority.m_revokedCards[{revoke->card, revoke->epoch}].push_back(
                    {entry.position.feed.device, entry.position.seq});
            } else {
                const std::uint32_t accepted = writerRole == Role::Director
                                                   ? revoke->accepted
                                                   : std::max(revoke->accepted, receiptedFor(revoke->feed, entry));
                lower(lowered, revoke->feed, accepted);
                if (revoke->feed.stream == m_authority.m_programStream) {
                    m_authority.m_revokedSigningDevices[revoke->feed.device].push_back(
                        {entry.position.feed.device, entry.position.seq});
                }
            }
        }
        for (const auto& [feed, accepted] : lowered) {
            lower(m_authority.m_revoked, feed, accepted);
        }
    }

    [[nodiscard]] Reason refusedToDirector(const journal::Revoke& revoke) const
    {
        const Holder* target = m_authority.holder(revoke.feed.device);
        // Only the program key ends a director.
        return target != nullptr && target->role == Role::Director ? Reason::RoleMayNotWrite : Reason::None;
    }

    [[nodiscard]] Reason refusedToInstructor(const journal::Revoke& revoke, const Decoded& entry) const
    {
        const Holder* writer = m_authority.holder(entry.position.feed.device);
        if (revoke.target == journal::KeyKind::Card) {
            const auto cardKeys = m_cardKeys.find({revoke.card, revoke.epoch});
            const bool theirs = cardKeys != m_cardKeys.end() &&
                                std::any_of(cardKeys->second.begin(), cardKeys->second.end(),
                                            [&](const keys::VerifyKey& key) { return vouchedInScope(*writer, key); });
            return theirs ? Reason::None : Reason::OutOfScope;
        }
        const Holder* target = m_authority.holder(revoke.feed.device);
        if (target == nullptr) {
            return vouchedInScope(*writer, revoke.feed.device) ? Reason::None : Reason::OutOfScope;
        }
        if (target->role == Role::Director || target->role == Role::Instructor) {
            return Reason::RoleMayNotWrite;
        }
        const bool theirs = writer->scopes.empty() || target->grantedBy.contains(writer->person) ||
                            std::any_of(target->scopes.begin(), target->scopes.end(),
                                        [&](const std::string& scope) { return hasScope(*writer, scope); });
        return theirs ? Reason::None : Reason::OutOfScope;
    }

    static bool hasScope(const Holder& holder, const std::string& scope)
    {
        return std::binary_search(holder.scopes.begin(), holder.scopes.end(), scope);
    }

    [[nodiscard]] bool vouchedInScope(const Holder& writer, const keys::VerifyKey& key) const
    {
        const auto by = m_vouchedBy.find(key);
        if (by == m_vouchedBy.end()) {
            return false;
        }
        const auto& sites = m_vouchedAt.at(key);
        return writer.scopes.empty() || by->second.contains(writer.person) ||
               std::any_of(sites.begin(), sites.end(), [&](const std::string& site) { return hasScope(writer, site); });
    }

    /// How many entries of the feed an instructor's revocation may not take back: what the same device receipted before
    /// it in the same stream, and what the receipt says that the revocation cites.
    [[nodiscard]] std::uint32_t receiptedFor(const FeedId& feed, const Decoded& revocation) const
    {
        std::uint32_t count = 0;
        for (const ReceiptRecord& record : m_authority.m_receipts) {
            const bool before =
                record.receipt.feed == revocation.position.feed && record.receipt.seq < revocation.position.seq;
            const bool cited = revocation.context.cites && record.receipt == *revocation.context.cites;
            if (record.covered.feed == feed && (before || cited)) {
                count = std::max(count, record.covered.seq + 1);
            }
        }
        return count;
    }

    void takeAdmits()
    {
        for (const Decoded& entry : m_admits) {
            const journal::Position& admitted = std::get<journal::Admit>(entry.payload).entry;
            const Holder* target = m_authority.holder(admitted.feed.device);
            if (target != nullptr && target->role == Role::Student && target->person == admitted.feed.stream) {
                m_authority.m_admitted.insert(admitted);
            } else {
                deny(entry, Reason::NotAdmissible);
            }
        }
    }

    const Feeds& m_feeds;
    Authority m_authority;
    std::vector<Decoded> m_admits;
    std::map<keys::VerifyKey, std::set<keys::Id>> m_vouchedBy;
    std::map<keys::VerifyKey, std::set<std::string>> m_vouchedAt;
    std::map<Authority::CardId, std::set<keys::VerifyKey>> m_cardKeys;
};

Authority Authority::workOut(const keys::VerifyKey& program, const std::vector<Certificate>& certificates,
                             const Feeds& feeds)
{
    return AuthorityBuilder(program, feeds).build(certificates);
}

} // namespace peelpack::trust
