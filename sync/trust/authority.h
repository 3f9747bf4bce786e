#pragma once

#include "core/sheet/case_row.h"
#include "sync/journal/decoded.h"
#include "sync/journal/statement.h"
#include "sync/trust/certificate.h"

#include <limits>
#include <map>
#include <optional>
#include <set>
#include <vector>

namespace peelpack::trust {

using Feeds = std::map<journal::FeedId, journal::Feed>;

/// Whose a device is.
struct Holder {
    journal::Role role = journal::Role::Student;
    keys::Id person;
    std::string name;
    std::uint32_t epoch = 0;                  ///< of a director's certificate, else 0
    std::vector<std::string> scopes;          ///< sorted; empty for an instructor: all
    std::set<keys::Id> grantedBy;             ///< persons; empty for a director
    std::vector<journal::Position> continues; ///< heads of earlier devices of the person
};

/// A receipt that counts, one for each item.
struct ReceiptRecord {
    journal::Position receipt; ///< the entry that says it
    journal::Time time;        ///< as that entry claims
    journal::Position covered; ///< this and everything before it in its feed was taken in
    std::uint32_t programCount = 0;
    bool held = false; ///< the covered entry is there, before any fork
};

struct Judgment {
    enum class Standing : std::uint8_t { Counts, Aside, Refused };
    Standing standing = Standing::Counts;
    journal::Reason reason = journal::Reason::None;
    bool operator==(const Judgment&) const = default;
};

/// Who may say what, worked out from a set of verified feeds and certificates and nothing else: no clock, no order of
/// arrival (FORMAT.md section 7). A value; make a new one when the set has grown.
class Authority {
public:
    static Authority workOut(const keys::VerifyKey& program, const std::vector<Certificate>& certificates,
                             const Feeds& feeds);

    /// Null when nobody with authority granted this device anything.
    [[nodiscard]] const Holder* holder(const keys::VerifyKey& device) const;
    [[nodiscard]] const std::map<keys::VerifyKey, Holder>& holders() const { return m_holders; }

    /// What is the same for all entries of one feed, looked up once.
    struct FeedView {
        const Holder* writer = nullptr; ///< null when nobody with authority granted the device anything
        std::uint32_t revokedFrom = 0;
        std::uint32_t forkAt = 0;
    };
    [[nodiscard]] FeedView viewOf(const journal::FeedId& feed) const;

    /// Whether an entry counts, from the place it stands and what it says.
    [[nodiscard]] Judgment judge(const journal::Decoded& entry) const;
    /// The same with the view of the entry's feed.
    [[nodiscard]] Judgment judge(const journal::Decoded& entry, const FeedView& view) const;
    /// The same for an attestation whose statement the caller has read, and its strength; its payload is not looked at.
    [[nodiscard]] Judgment judge(const journal::Decoded& entry, const FeedView& view,
                                 const journal::Statement& statement, sheet::Strength strength) const;

    /// Entries of the feed below this position are neither revoked nor past a fork.
    [[nodiscard]] std::uint32_t limit(const journal::FeedId& feed) const;
    /// Entries of the feed below this position are not revoked, whether or not the feed forked; the largest number when
    /// nobody revoked anything of it.
    [[nodiscard]] std::uint32_t revokedFrom(const journal::FeedId& feed) const;

    [[nodiscard]] const std::vector<ReceiptRecord>& receipts() const { return m_receipts; }

    /// How strong a signature is, from the key; None when nobody vouches for it or its shape does not fit the key.
    [[nodiscard]] sheet::Strength strengthOf(const journal::Statement& statement) const;
    /// Somebody with the right to do so has revoked this card, or this preceptor's phone.
    [[nodiscard]] bool signerRevoked(journal::KeyKind kind, const keys::VerifyKey& key, const keys::Id& card,
                                     std::uint32_t epoch) const;
    /// Whose the signing key is; empty when nobody vouches for it.
    [[nodiscard]] std::optional<keys::Id> personOf(const journal::Signer& signer) const;

private:
    friend class AuthorityBuilder;

    static constexpr std::uint32_t noLimit = std::numeric_limits<std::uint32_t>::max();
    using CardId = std::pair<keys::Id, std::uint32_t>;
    struct SignerRevocation {
        keys::VerifyKey writer;
        std::uint32_t seq = 0; ///< in the writer's program stream
    };

    [[nodiscard]] std::uint32_t forkAt(const journal::FeedId& feed) const;
    /// Empty when nothing but the signer of an attestation is left to judge.
    [[nodiscard]] std::optional<Judgment> judgePlace(const journal::Decoded& entry, const FeedView& view) const;
    [[nodiscard]] Judgment judgeSigner(const journal::Position& entry, const journal::Statement& statement,
                                       sheet::Strength strength) const;
    [[nodiscard]] bool receiptedBefore(const journal::Position& entry, const SignerRevocation& revocation) const;

    keys::Id m_programStream;
    std::map<keys::VerifyKey, Holder> m_holders;
    std::map<journal::FeedId, std::uint32_t> m_revoked; ///< entries that stay good
    std::map<journal::FeedId, std::uint32_t> m_forks;   ///< seq of the first fork
    std::map<journal::Position, journal::Reason> m_denied;
    std::set<journal::Position> m_admitted;
    std::map<CardId, std::map<keys::VerifyKey, keys::Id>> m_cards; ///< key and person
    std::map<keys::VerifyKey, keys::Id> m_signingDevices;          ///< a preceptor's device, person
    std::map<CardId, std::vector<SignerRevocation>> m_revokedCards;
    std::map<keys::VerifyKey, std::vector<SignerRevocation>> m_revokedSigningDevices;
    std::vector<ReceiptRecord> m_receipts;
    std::map<journal::FeedId, std::vector<std::size_t>> m_receiptsOf; ///< of the covered feed: indexes of m_receipts
};

} // namespace peelpack::trust
