#pragma once

#include "core/catalogue/catalogue.h"
#include "platform/evidence/sheet_proof.h"
#include "platform/session/directory.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace peelpack::session {

/// How a student stands for a completion: the initialed cases, placed as best, under the set in force.
struct CompletionState {
    std::string requirementSet;                ///< id of the set in force for the student today
    keys::Hash setDigest;                      ///< of its text
    std::vector<evidence::TargetMet> targets;  ///< as in the set
    std::vector<evidence::ProvenSheet> sheets; ///< those with a counted case, by date
    journal::Position head;                    ///< of the student's feed, as far as it is here
    std::uint32_t required = 0;
    std::uint32_t counted = 0;

    [[nodiscard]] bool complete() const { return counted == required; }
};
/// `setText` is the file of the set in force where it neither ships nor is kept in the vault, else empty. NotFound: no
/// rules are in force, nothing of the student is here, or the set is not at hand. BadValue: the set at hand is not, to
/// the byte, the one that is in force.
base::Result<CompletionState> completionState(const Session& session, const catalogue::Catalogue& catalogue,
                                              const keys::Id& student, const std::string& setText = {});

/// The director's entry that the student has met the requirements: one that says exactly this already, else a new one.
/// BadValue: not the director, or no longer; cases are short and there is no exception (the reason, empty: none); or
/// nothing is short and there is one.
base::Result<journal::Position> decideCompletion(Session& session, const CompletionState& state,
                                                 const std::string& exception);

/// A director's decision about a student that counts.
struct CompletionDecision {
    journal::Position entry;
    journal::Time time; ///< as it claims
    std::string by;
    std::string requirementSet;
    keys::Hash setDigest;
    journal::Position head;     ///< of the student's feed, which the director saw
    std::uint32_t required = 0; ///< of an exception
    std::uint32_t counted = 0;  ///< of an exception
    std::string exception;      ///< why it is complete although cases are short; empty: nothing was short
};
/// The last one is in force; those before it are superseded.
std::vector<CompletionDecision> decisionsAbout(const Session& session, const keys::Id& student);
/// Whether a decision is about just this set and these sheets, so that a record can be made of it.
[[nodiscard]] bool isAbout(const CompletionDecision& decision, const CompletionState& state);

/// The program key that a typed program code re-creates. BadInput: a slip of typing, or another program's.
base::Result<keys::SigningKey> programKeyFromCode(const keys::VerifyKey& program, std::string_view typed);

/// The record that this vault made last of the student.
std::optional<evidence::Superseded> lastRecordOf(const Session& session, const keys::Id& student);

/// A completion record and the proofs of all its sheets, as documents.
struct MadeRecord {
    evidence::Json record;
    evidence::Json proofs;
};
/// Decides, and issues the record of the decision. The last record that this vault made of the student is superseded,
/// else the one that is given. BadValue: as above; another program's key; a record is given that is not the last.
base::Result<MadeRecord> makeRecord(Session& session, const keys::SigningKey& programKey, const Person& student,
                                    const CompletionState& state, const std::string& exception,
                                    const std::optional<evidence::Superseded>& given);

} // namespace peelpack::session
