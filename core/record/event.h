#pragma once

#include "core/base/id.h"
#include "core/record/sheet_content.h"
#include "core/sheet/case_row.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

/// What the entries of one student's journal say about case sheets, without the journal's bytes.
namespace peelpack::record {

/// When somebody says that something happened. A claim: never an order.
struct Time {
    std::int64_t seconds = 0; ///< since 1970-01-01T00:00:00Z
    std::int16_t zone = 0;    ///< minutes east of UTC

    /// The day it was there; the nearest one that a base::Date can name.
    [[nodiscard]] base::Date day() const;

    bool operator==(const Time&) const = default;
};

enum class Part : std::uint8_t {
    Student,
    Instructor,
    Director,
    Other, ///< somebody who may not write about sheets, or a device that nobody granted anything
};

/// Who wrote an entry: whose device it was.
struct Writer {
    Part part = Part::Other;
    base::Id person;  ///< zero: nobody knows whose device it was
    std::string name; ///< then empty

    bool operator==(const Writer&) const = default;
};

/// Whether an entry counts, as the journal judged it.
struct Standing {
    enum class Verdict : std::uint8_t { Counts, Aside, Refused };
    Verdict verdict = Verdict::Counts;
    std::string why; ///< a sentence; empty when it counts

    [[nodiscard]] bool counts() const { return verdict == Verdict::Counts; }
    bool operator==(const Standing&) const = default;
};

/// What a student wrote on a sheet, marks included that nobody has signed.
struct Draft {
    base::Id operation;
    std::vector<std::string> procedures;
    Head head;
    ReasonedMarks marks;

    bool operator==(const Draft&) const = default;
};

struct Opened {
    Draft draft;
    bool operator==(const Opened&) const = default;
};

struct HeadChanged {
    Draft draft;
    bool operator==(const HeadChanged&) const = default;
};

struct Withdrawn {
    std::string reason;
    bool operator==(const Withdrawn&) const = default;
};

/// A preceptor's signature over the marks that they made.
struct Attested {
    base::Id operation;
    std::vector<std::string> procedures;
    Head head;
    ReasonedMarks marks; ///< only what this signer marked
    std::string feedback;
    std::string name;
    std::string credential;
    std::optional<base::Id> person; ///< empty: nobody vouched for the signer
    base::SignerKey key;            ///< that signed; of a drawn or paper signature the student's own phone
    /// None for a signer who cannot be told; it counts only where an instructor admitted it.
    sheet::Strength strength = sheet::Strength::None;
    Time signedAt;
    bool operator==(const Attested&) const = default;
};

struct Logged {
    std::vector<Choice> choices;
    bool operator==(const Logged&) const = default;
};

struct ReviewAsked {
    sheet::Skill skill = sheet::Skill::Verify;
    sheet::Mark wanted = sheet::Mark::Yes;
    std::string reason;
    bool operator==(const ReviewAsked&) const = default;
};

enum class HandOverCause : std::uint8_t { Canceled, WrongPin, WrongCard, TimedOut };

/// The phone was with a preceptor and nothing was signed.
struct HandOverEnded {
    Time began;
    Time ended;
    std::uint8_t wrongTries = 0;
    HandOverCause cause = HandOverCause::Canceled;
    bool operator==(const HandOverEnded&) const = default;
};

/// The preceptor would not sign.
struct Declined {
    std::string reason;
    bool operator==(const Declined&) const = default;
};

/// Staff wrote down a sheet of an earlier paper log. Nobody marked or attested it.
struct Imported {
    base::Id operation;
    std::vector<std::string> procedures;
    Head head;
    std::vector<Choice> choices;
    sheet::Role role = sheet::Role::Observed; ///< as written there
    std::string preceptor;                    ///< as written there; may be empty
    std::string credential;
    std::string source; ///< where it comes from
    bool again = false; ///< the same device had imported the sheet before
    bool operator==(const Imported&) const = default;
};

struct Initial {
    bool confirmed = false; ///< the signature was confirmed with the preceptor
    bool operator==(const Initial&) const = default;
};

struct Return {
    bool operator==(const Return&) const = default;
};

struct ReviewAccepted {
    sheet::Skill skill = sheet::Skill::Verify;
    sheet::Mark mark = sheet::Mark::Yes;
    base::EntryHash request; ///< the entry that asked
    bool operator==(const ReviewAccepted&) const = default;
};

/// What is empty stays as it is.
struct Amend {
    ReasonedMarks marks;
    std::optional<Head> head;
    std::vector<std::string> procedures;
    bool operator==(const Amend&) const = default;
};

struct Refile {
    std::vector<Choice> choices;
    bool operator==(const Refile&) const = default;
};

struct Void {
    bool operator==(const Void&) const = default;
};

using Decision = std::variant<Initial, Return, ReviewAccepted, Amend, Refile, Void>;

/// An instructor's action on a sheet.
struct Act {
    base::EntryHash standsOn; ///< the action that it follows; zero: none
    base::EntryHash about;    ///< the newest entry of the student about the sheet that its writer saw, else the import
    std::string reason;       ///< may be empty
    bool inForce = false;     ///< on the walk through the actions that count; false: beside it, or it does not count
    Decision decision;

    bool operator==(const Act&) const = default;
};

using What =
    std::variant<Opened, HeadChanged, Withdrawn, Attested, Logged, ReviewAsked, HandOverEnded, Declined, Imported, Act>;

/// One entry about one sheet.
struct Event {
    base::EntryHash entry;
    base::Id sheet;
    Writer writer;
    Time claimed;
    Standing standing;
    What what;

    bool operator==(const Event&) const = default;
};

/// Everything that is known about the sheets of one student.
struct StudentEvents {
    base::Id student;
    std::string name; ///< empty: no grant is known yet
    /// What the student wrote in the order of their feeds, a device that continues another after it. Acts of one sheet
    /// are in the order of the walk, the others after them by hash; where they stand among the rest says nothing.
    std::vector<Event> events;

    bool operator==(const StudentEvents&) const = default;
};

} // namespace peelpack::record
