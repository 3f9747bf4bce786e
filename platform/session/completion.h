#pragma once

#include "core/catalogue/catalogue.h"
#include "platform/evidence/sheet_proof.h"
#include "platform/session/directory.h"

#include <optional>
#include <string>
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
/// `setText` is the file of the set in force where it is none of the shipped ones, else empty. NotFound: no rules are
/// in force, or nothing of the student is here. BadValue: the set at hand is not, to the byte, the one that is in
/// force.
base::Result<CompletionState> completionState(const Session& session, const catalogue::Catalogue& catalogue,
                                              const keys::Id& student, const std::string& setText = {});

/// The director's entry that the student has met the requirements: one that says exactly this already, else a new one.
/// BadValue: not the director, or no longer; cases are short and there is no exception (the reason, empty: none); or
/// nothing is short and there is one.
base::Result<journal::Position> decideCompletion(Session& session, const CompletionState& state,
                                                 const std::string& exception);

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
