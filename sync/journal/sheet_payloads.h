#pragma once

#include "sync/journal/feed_id.h"
#include "sync/journal/kind.h"
#include "sync/journal/sheet_content.h"

#include <optional>
#include <string>
#include <vector>

/// What students write about their sheets, and what instructors do about them (FORMAT.md section 4).
namespace peelpack::journal {

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

enum class ImportedRole : std::uint8_t { First = 1, Second = 2, Observed = 3 };

/// A sheet of an earlier paper log: no marks, nobody attested it, the role is the one written there.
struct Imported {
    static constexpr Kind kind = Kind::Imported;
    keys::Id sheet;
    keys::Id operation;
    std::vector<std::string> procedures; ///< as performed, 1 to 8
    Head head;
    std::vector<Choice> choices;
    ImportedRole role = ImportedRole::Observed;
    std::string preceptor; ///< as written there; may be empty
    std::string credential;
    std::string source; ///< where it comes from; never empty
    bool operator==(const Imported&) const = default;
};

} // namespace peelpack::journal
