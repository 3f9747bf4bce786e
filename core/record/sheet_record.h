#pragma once

#include "core/record/happening.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// The case sheets of one student as they stand, with everything that ever happened to them.
namespace peelpack::record {

enum class SheetStanding : std::uint8_t {
    Open,      ///< nobody has signed it
    Imported,  ///< from a paper log, not attested, and no action of an instructor stands at the end
    Signed,    ///< attested, and no action of an instructor stands at the end
    Returned,  ///< and not answered
    Initialed, ///< see SheetRecord::initial
    Amended,   ///< an instructor changed it and has not initialed it since
    Withdrawn, ///< by the student
    Void,      ///< by an instructor
};

/// "open", "imported", "signed", "returned", "initialed", "amended", "withdrawn", "void".
std::string_view id(SheetStanding standing);

/// Where a sheet comes from that staff imported.
struct ImportInEffect {
    base::EntryHash entry;
    Writer by;
    Time claimed;
    Imported said; ///< as it was imported
    bool operator==(const ImportInEffect&) const = default;
};

/// One attestation that counts.
struct Signer {
    base::EntryHash entry;
    Attested statement;
    bool confirmed = false;    ///< an initial in force has seen it and says so
    bool afterInitial = false; ///< came after what the initial or void in force saw: without effect
    bool otherContent = false; ///< procedures or head differ from the first signer's
    bool operator==(const Signer&) const = default;
};

/// A mark that two signers gave differently. No stands until an instructor rules.
struct DisputedMark {
    struct Given {
        std::string name; ///< of the signer
        sheet::Mark mark = sheet::Mark::Yes;
        bool operator==(const Given&) const = default;
    };
    sheet::Skill skill = sheet::Skill::Verify;
    std::vector<Given> given; ///< in the order of signing
    bool settled = false;     ///< an amendment or accepted review in force says what stands
    bool operator==(const DisputedMark&) const = default;
};

/// What the student wrote after somebody had signed something else. The signed sheet stays.
struct UnsignedVersion {
    base::EntryHash entry;
    Draft draft;
    bool operator==(const UnsignedVersion&) const = default;
};

/// A request that a mark be looked at again, and its answer.
struct Review {
    enum class Answer : std::uint8_t { Pending, Accepted, Declined };
    base::EntryHash request;
    ReviewAsked asked;
    Time claimed;
    Answer answer = Answer::Pending;
    std::string answeredBy; ///< empty while pending
    std::string reason;     ///< of the answer; may be empty
    bool operator==(const Review&) const = default;
};

struct FeedbackText {
    std::string from; ///< the signer's name
    std::string text; ///< never empty
    bool operator==(const FeedbackText&) const = default;
};

/// The student's wish to take a sheet back.
struct Withdrawal {
    base::EntryHash entry;
    std::string reason;
    bool stands = false;   ///< false: the sheet was initialed already, and this is a request to the instructor
    bool answered = false; ///< a request that an action in force has seen
    bool operator==(const Withdrawal&) const = default;
};

/// The initial in force.
struct InitialInForce {
    Writer by;
    Time claimed;
    bool onlyByAttester = false; ///< everybody who attested the sheet is the one who initialed it: does not count alone
    bool operator==(const InitialInForce&) const = default;
};

/// The return in force.
struct ReturnInForce {
    Writer by;
    std::string reason;
    bool answered = false; ///< the student wrote about the sheet since
    bool operator==(const ReturnInForce&) const = default;
};

/// What became of one event.
enum class Weight : std::uint8_t {
    Counts,
    NoEffect, ///< valid, and an instructor's action keeps it from changing the sheet
    Beside,   ///< an action on another branch
    Aside,
    Refused,
};

struct HistoryLine {
    base::EntryHash entry;
    Writer who;
    Happening what;
    Time claimed;
    std::string why; ///< the reason that was given; may be empty
    Weight weight = Weight::Counts;
    std::string whyNot; ///< a sentence; empty when it counts
    bool operator==(const HistoryLine&) const = default;
};

/// One case sheet.
struct SheetRecord {
    base::Id id;
    base::Id operation;
    SheetStanding standing = SheetStanding::Open;
    /// The weakest among the attestations in effect that made marks; None: not signed, or by somebody who cannot be
    /// told.
    sheet::Strength strength = sheet::Strength::None;
    /// Set when it was imported from a paper log: it has no marks, and its role is the one written there.
    std::optional<ImportInEffect> imported;
    Content content;                 ///< what counts now
    std::optional<Content> original; ///< before the instructors' changes; empty when they changed nothing
    std::vector<FeedbackText> feedback;
    std::vector<Signer> signers; ///< in feed order
    std::optional<UnsignedVersion> unsignedVersion;
    std::vector<DisputedMark> disputed;
    std::vector<Review> reviews;
    std::optional<InitialInForce> initial;     ///< set when the standing is Initialed
    std::optional<ReturnInForce> returned;     ///< set when the last action in force is a return
    std::optional<Withdrawal> withdrawal;      ///< of several, one that stands, else the newest
    bool changedAfterInitial = false;          ///< there is something of the student without effect
    std::vector<HandOverEnded> handOversEnded; ///< those that count
    std::vector<HistoryLine> history;          ///< every event of the sheet, in an order without clocks

    /// An attestation is in effect.
    [[nodiscard]] bool isSigned() const;
    /// The attestations in effect that made marks; where none did, all that are in effect.
    [[nodiscard]] std::vector<const Signer*> contributors() const;

    bool operator==(const SheetRecord&) const = default;
};

/// All sheets of a student.
struct StudentRecord {
    base::Id student;
    std::string name;
    std::vector<SheetRecord> sheets; ///< by id
    bool operator==(const StudentRecord&) const = default;
};

/// The fold. Pure: equal events give equal records, which take over what the events hold.
StudentRecord recordOf(StudentEvents events);

} // namespace peelpack::record
