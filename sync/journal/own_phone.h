#pragma once

#include "sync/journal/statement.h"

namespace peelpack::journal {

/// What the student's phone shows to a preceptor's own phone, to be signed there (FORMAT.md section 10).
struct SigningRequest {
    keys::VerifyKey program;
    keys::Id student;
    std::string studentName; ///< for the preceptor to read; not part of what is signed
    keys::Id operation;
    keys::Id sheet;
    std::vector<std::string> procedures; ///< as the student wrote them; the preceptor may correct them
    Head head;                           ///< likewise
    std::string locale;
    std::uint16_t wording = 0;
    std::string meaning;
    bool operator==(const SigningRequest&) const = default;
};

/// A reason when a reader would refuse it.
Checked<keys::Bytes> encode(const SigningRequest& request);
/// From bytes that may be hostile. NotOurs for another sort of code.
Checked<SigningRequest> decodeSigningRequest(keys::ByteView bytes);

/// What the preceptor's phone shows back.
keys::Bytes signingAnswer(const Attestation& attestation);
/// What an answer says, whatever sheet it is for; nothing is checked: for the phone that signed it. Reasons: NotOurs,
/// TooShort, those of decodeStatement.
Checked<Statement> statementOf(keys::ByteView answer);
/// The attestation of an answer to this request, for the feed of the student's device. Reasons: NotOurs, TooShort,
/// those of checkAttestation, BadSigner when no phone signed, BadCombination when it is for another sheet.
Checked<Attestation> acceptAnswer(const SigningRequest& request, keys::ByteView answer, const FeedId& feed);

} // namespace peelpack::journal
