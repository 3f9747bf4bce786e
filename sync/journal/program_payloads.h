#pragma once

#include "core/base/date.h"
#include "sync/journal/feed_id.h"
#include "sync/journal/kind.h"

#include <optional>
#include <string>
#include <vector>

/// What staff write about people, devices, rules and feeds (FORMAT.md section 4).
namespace peelpack::journal {

/// Gives a person's device a role.
struct Grant {
    static constexpr Kind kind = Kind::Grant;
    keys::Id person;
    Role role = Role::Student;
    keys::VerifyKey device;
    keys::SealKey seal;
    std::string name;
    std::vector<std::string> scopes;   ///< classes or sites; empty for an instructor: all
    std::optional<Position> continues; ///< the head of the feed of an earlier device of this person
    bool operator==(const Grant&) const = default;
};

/// Ends a device's feed at a position, or a card.
struct Revoke {
    static constexpr Kind kind = Kind::Revoke;
    KeyKind target = KeyKind::Device;
    FeedId feed;   ///< zero for a card
    keys::Id card; ///< zero for a device
    std::uint32_t epoch = 0;
    std::uint32_t accepted = 0; ///< entries that stay good; 0: none
    std::string reason;
    bool operator==(const Revoke&) const = default;
};

/// Says whose a signing card's or preceptor's device's key is.
struct Vouch {
    static constexpr Kind kind = Kind::Vouch;
    keys::Id person;
    std::string name;
    std::string credential;
    std::string site;
    KeyKind keyKind = KeyKind::Card;
    keys::VerifyKey key;
    keys::Id card; ///< zero for a device
    std::uint32_t epoch = 0;
    bool operator==(const Vouch&) const = default;
};

/// The program's rules from here on.
struct Policy {
    static constexpr Kind kind = Kind::Policy;
    keys::Hash standsOn; ///< the policy it replaces; zero for the first
    std::string requirementSet;
    keys::Hash setDigest;
    std::string term;
    base::Date firstDay;
    base::Date lastDay;
    std::uint8_t counted = 0; ///< strengths that count: bit 0 own-phone, 1 card, 2 card-new, 3 drawn, 4 paper
    std::uint16_t wording = 0;
    bool operator==(const Policy&) const = default;
};

/// The director has found that the student met the requirements, on the feed up to a head.
struct Complete {
    static constexpr Kind kind = Kind::Complete;
    std::string requirementSet;
    keys::Hash setDigest;
    Position studentHead;
    bool operator==(const Complete&) const = default;
};

/// The same although cases are short, for a reason. A kind of its own because the fields of one never change.
struct CompleteByException {
    static constexpr Kind kind = Kind::CompleteByException;
    std::string requirementSet;
    keys::Hash setDigest;
    Position studentHead;
    std::uint32_t required = 0; ///< cases
    std::uint32_t counted = 0;  ///< initialed cases that count; fewer than required
    std::string reason;         ///< never empty
    bool operator==(const CompleteByException&) const = default;
};

struct ReceiptItem {
    keys::VerifyKey device; ///< its feed in the stream that the receipt is in
    std::uint32_t seq = 0;
    keys::Hash hash;
    bool operator==(const ReceiptItem&) const = default;
};
/// "I have these feeds up to here."
struct Receipt {
    static constexpr Kind kind = Kind::Receipt;
    std::vector<ReceiptItem> items; ///< devices ascending
    std::uint32_t programCount = 0; ///< entries in the writer's own program stream
    bool operator==(const Receipt&) const = default;
};

struct StatementItem {
    keys::Hash attestation; ///< entry hash
    bool repudiated = false;
    bool operator==(const StatementItem&) const = default;
};
/// What a card signed in a time, as its owner looked through it.
struct CardStatement {
    static constexpr Kind kind = Kind::CardStatement;
    keys::Id card;
    std::uint32_t epoch = 0;
    base::Date firstDay;
    base::Date lastDay;
    std::vector<StatementItem> items;
    bool operator==(const CardStatement&) const = default;
};

/// Two signed heads of one feed and seq that differ: anybody can check it with the device key alone.
struct ForkEvidence {
    FeedId feed;
    std::uint32_t seq = 0;
    Link first; ///< the smaller
    Link second;
    bool operator==(const ForkEvidence&) const = default;
};
struct ForkFound {
    static constexpr Kind kind = Kind::ForkFound;
    ForkEvidence evidence;
    bool operator==(const ForkFound&) const = default;
};

/// Lets one entry that is aside count.
struct Admit {
    static constexpr Kind kind = Kind::Admit;
    Position entry;
    std::string reason;
    bool operator==(const Admit&) const = default;
};

} // namespace peelpack::journal
