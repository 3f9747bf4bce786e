#include "sync/trust/authority.h"

#include "sync/trust/rights.h"

#include <algorithm>

namespace peelpack::trust {

using journal::Reason;
using journal::Role;
using Standing = Judgment::Standing;

const Holder* Authority::holder(const keys::VerifyKey& device) const
{
    const auto found = m_holders.find(device);
    return found == m_holders.end() ? nullptr : &found->second;
}

std::uint32_t Authority::revokedFrom(const journal::FeedId& feed) const
{
    if (const auto own = m_revoked.find(feed); own != m_revoked.end()) {
        return own->second;
    }
    // A device that was revoked in the program stream has lost every stream that no revocation of its own spares.
    return m_revoked.contains({feed.device, m_programStream}) ? 0 : noLimit;
}

std::uint32_t Authority::forkAt(const journal::FeedId& feed) const
{
    const auto found = m_forks.find(feed);
    return found == m_forks.end() ? noLimit : found->second;
}

std::uint32_t Authority::limit(const journal::FeedId& feed) const
{
    return std::min(revokedFrom(feed), forkAt(feed));
}

Authority::FeedView Authority::viewOf(const journal::FeedId& feed) const
{
    return {holder(feed.device), revokedFrom(feed), forkAt(feed)};
}

Judgment Authority::judge(const journal::Decoded& entry) const
{
    return judge(entry, viewOf(entry.position.feed));
}

Judgment Authority::judge(const journal::Decoded& entry, const FeedView& view) const
{
    if (const auto judged = judgePlace(entry, view)) {
        return *judged;
    }
    const auto* attestation = std::get_if<journal::Attestation>(&entry.payload);
    if (attestation == nullptr) {
        return {};
    }
    const auto statement = journal::decodeStatement(attestation->statement);
    return statement ? judgeSigner(entry.position, statement.value(), strengthOf(statement.value()))
                     : Judgment{Standing::Aside, Reason::UnknownSigner};
}

Judgment Authority::judge(const journal::Decoded& entry, const FeedView& view, const journal::Statement& statement,
                          sheet::Strength strength) const
{
    const auto judged = judgePlace(entry, view);
    return judged ? *judged : judgeSigner(entry.position, statement, strength);
}

std::optional<Judgment> Authority::judgePlace(const journal::Decoded& entry, const FeedView& view) const
{
    const Holder* writer = view.writer;
    if (writer == nullptr) {
        return Judgment{Standing::Aside, Reason::NoGrant};
    }
    if (!journal::isKnown(entry.kind)) {
        return Judgment{Standing::Aside, Reason::NewerKind};
    }
    if (!mayWrite(writer->role, entry.kind)) {
        return Judgment{Standing::Refused, Reason::RoleMayNotWrite};
    }
    if (writer->role == Role::Student && writer->person != entry.position.feed.stream) {
        return Judgment{Standing::Refused, Reason::NotTheirStudent};
    }
    if (const auto denied = m_denied.find(entry.position); denied != m_denied.end()) {
        return Judgment{Standing::Refused, denied->second};
    }
    if (m_admitted.contains(entry.position)) {
        return Judgment{};
    }
    if (entry.position.seq >= view.revokedFrom) {
        return Judgment{Standing::Aside, Reason::Revoked};
    }
    if (entry.position.seq >= view.forkAt) {
        return Judgment{Standing::Aside, Reason::PastFork};
    }
    return std::nullopt;
}

Judgment Authority::judgeSigner(const journal::Position& entry, const journal::Statement& statement,
                                sheet::Strength strength) const
{
    if (strength == sheet::Strength::None) {
        return {Standing::Aside, Reason::UnknownSigner};
    }
    const journal::Signer& signer = statement.signer;
    const std::vector<SignerRevocation>* revocations = nullptr;
    if (signer.kind == journal::SignerKind::Card) {
        const auto found = m_revokedCards.find({signer.card, signer.epoch});
        revocations = found == m_revokedCards.end() ? nullptr : &found->second;
    } else if (signer.kind == journal::SignerKind::Device) {
        const auto found = m_revokedSigningDevices.find(signer.key);
        revocations = found == m_revokedSigningDevices.end() ? nullptr : &found->second;
    }
    const bool good = revocations == nullptr ||
                      std::all_of(revocations->begin(), revocations->end(), [&](const SignerRevocation& revocation) {
                          return receiptedBefore(entry, revocation);
                      });
    return good ? Judgment{} : Judgment{Standing::Aside, Reason::CardRevoked};
}

bool Authority::receiptedBefore(const journal::Position& entry, const SignerRevocation& revocation) const
{
    const auto receipts = m_receiptsOf.find(entry.feed);
    if (receipts == m_receiptsOf.end() || entry.seq >= forkAt(entry.feed)) {
        return false;
    }
    return std::any_of(receipts->second.begin(), receipts->second.end(), [&](std::size_t index) {
        const ReceiptRecord& record = m_receipts[index];
        return record.held && record.receipt.feed.device == revocation.writer &&
               record.programCount <= revocation.seq && record.covered.seq >= entry.seq;
    });
}

sheet::Strength Authority::strengthOf(const journal::Statement& statement) const
{
    const journal::Signer& signer = statement.signer;
    switch (signer.kind) {
    case journal::SignerKind::Drawn:
        return sheet::Strength::Drawn;
    case journal::SignerKind::Paper:
        return sheet::Strength::Paper;
    case journal::SignerKind::Device:
        return m_signingDevices.contains(signer.key) ? sheet::Strength::OwnPhone : sheet::Strength::None;
    case journal::SignerKind::Card:
        break;
    }
    if (m_holders.contains(signer.key)) {
        return sheet::Strength::None; // somebody's device posing as a card
    }
    const auto vouched = m_cards.find({signer.card, signer.epoch});
    if (vouched == m_cards.end()) {
        return sheet::Strength::CardNew;
    }
    return vouched->second.contains(signer.key) ? sheet::Strength::Card : sheet::Strength::None;
}

bool Authority::signerRevoked(journal::KeyKind kind, const keys::VerifyKey& key, const keys::Id& card,
                              std::uint32_t epoch) const
{
    return kind == journal::KeyKind::Card ? m_revokedCards.contains({card, epoch})
                                          : m_revokedSigningDevices.contains(key);
}

std::optional<keys::Id> Authority::personOf(const journal::Signer& signer) const
{
    if (signer.kind == journal::SignerKind::Device) {
        const auto found = m_signingDevices.find(signer.key);
        return found == m_signingDevices.end() ? std::nullopt : std::optional(found->second);
    }
    if (signer.kind == journal::SignerKind::Card) {
        if (const auto card = m_cards.find({signer.card, signer.epoch}); card != m_cards.end()) {
            const auto found = card->second.find(signer.key);
            return found == card->second.end() ? std::nullopt : std::optional(found->second);
        }
    }
    return std::nullopt;
}

} // namespace peelpack::trust
