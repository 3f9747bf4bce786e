#pragma once

#include "sync/journal/feed_id.h"
#include "sync/journal/sheet_content.h"

#include <optional>
#include <string>
#include <vector>

namespace peelpack::journal {

/// What an entry is (FORMAT.md section 4). Numbers outside this list are kinds of a newer version: kept, not read.
enum class Kind : std::uint16_t {
    Grant = 1,
    Revoke = 2,
    Vouch = 3,
    Policy = 4,
    SheetOpened = 16,
    HeadChanged = 17,
    Withdrawn = 18,
    Attestation = 19,
    Logged = 20,
    ReviewAsked = 21,
    HandOverEnded = 22,
    Declined = 23,
    Initial = 32,
    Return = 33,
    ReviewAccepted = 34,
    Amend = 35,
    Refile = 36,
    Void = 37,
    Complete = 38,
    Receipt = 48,
    CardStatement = 49,
    ForkFound = 50,
    Admit = 51,
};

/// Director is never granted: only a certificate of the program key makes one.
enum class Role : std::uint8_t { Director = 0, Instructor = 1, Coordinator = 2, Contact = 3, Student = 4 };

enum class KeyKind : std::uint8_t { Device = 1, Card = 2 };

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

template <Kind K>
struct SheetVersion {
    static constexpr Kind kind = K;
    keys::Id sheet;
    keys::Id operation;
    Draft draft;
    bool operator==(const SheetVersion&) const = default;
};
using SheetOpened = SheetVersion<Kind::SheetOpened>;
using HeadChanged = SheetVersion<Kind::HeadChanged>;

template <Kind K>
struct SheetReason {
    static constexpr Kind kind = K;
    keys::Id sheet;
    std::string reason;
    bool operator==(const SheetReason&) const = default;
};
using Withdrawn = SheetReason<Kind::Withdrawn>;
using Declined = SheetReason<Kind::Declined>;

/// A preceptor's signature, carried in the student's feed. The statement's bytes are what was signed.
struct Attestation {
    static constexpr Kind kind = Kind::Attestation;
    keys::Bytes statement;
    keys::Signature signature;
    bool operator==(const Attestation&) const = default;
};

struct Logged {
    static constexpr Kind kind = Kind::Logged;
    keys::Id sheet;
    std::vector<Choice> choices;
    bool operator==(const Logged&) const = default;
};

/// A student's request that an instructor reconsider one mark.
struct ReviewAsked {
    static constexpr Kind kind = Kind::ReviewAsked;
    keys::Id sheet;
    SkillMark wanted; ///< its reason is empty here
    std::string reason;
    bool operator==(const ReviewAsked&) const = default;
};

enum class HandOverCause : std::uint8_t { Canceled = 1, WrongPin = 2, WrongCard = 3, TimedOut = 4 };

/// The phone was with a preceptor and nothing was signed. No marks.
struct HandOverEnded {
    static constexpr Kind kind = Kind::HandOverEnded;
    keys::Id sheet;
    Time began;
    Time ended;
    std::uint8_t wrongTries = 0;
    HandOverCause cause = HandOverCause::Canceled;
    bool operator==(const HandOverEnded&) const = default;
};

/// What every instructor action on a sheet says.
struct Act {
    keys::Id sheet;
    keys::Hash standsOn; ///< the action it follows; zero: none
    keys::Hash about;    ///< the newest entry of the student about the sheet that its writer saw
    std::string reason;
    bool operator==(const Act&) const = default;
};

struct Initial {
    static constexpr Kind kind = Kind::Initial;
    Act act;
    bool confirmed = false; ///< the signature was confirmed with the preceptor
    bool operator==(const Initial&) const = default;
};

template <Kind K>
struct PlainAct {
    static constexpr Kind kind = K;
    Act act; ///< with a reason
    bool operator==(const PlainAct&) const = default;
};
using Return = PlainAct<Kind::Return>;
using Void = PlainAct<Kind::Void>;

struct ReviewAccepted {
    static constexpr Kind kind = Kind::ReviewAccepted;
    Act act;
    keys::Hash request; ///< the entry that asked
    SkillMark granted;  ///< its reason is empty here
    bool operator==(const ReviewAccepted&) const = default;
};

/// Changes marks, head or procedures; what is empty or absent stays.
struct Amend {
    static constexpr Kind kind = Kind::Amend;
    Act act; ///< with a reason
    std::vector<SkillMark> marks;
    std::optional<Head> head;
    std::vector<std::string> procedures;
    bool operator==(const Amend&) const = default;
};

struct Refile {
    static constexpr Kind kind = Kind::Refile;
    Act act; ///< with a reason
    std::vector<Choice> choices;
    bool operator==(const Refile&) const = default;
};

/// The director has found that the student met the requirements, on the feed up to a head.
struct Complete {
    static constexpr Kind kind = Kind::Complete;
    std::string requirementSet;
    keys::Hash setDigest;
    Position studentHead;
    bool operator==(const Complete&) const = default;
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
