#pragma once

#include "sync/journal/feed_id.h"
#include "sync/journal/reason.h"
#include "sync/journal/sheet_payloads.h"
#include "sync/keys/sign.h"

namespace peelpack::journal {

inline constexpr std::size_t mostStrokeBytes = std::size_t{16} * 1024;
inline constexpr std::size_t mostStatementBytes = std::size_t{48} * 1024;

/// In what shape somebody signed. Not yet how strong that is: the key decides (trust/strength.h).
enum class SignerKind : std::uint8_t { Device = 1, Card = 2, Drawn = 3, Paper = 4 };

struct Signer {
    SignerKind kind = SignerKind::Card;
    keys::VerifyKey key; ///< Drawn and Paper: the student's own device key
    keys::Id card;       ///< zero unless Card
    std::uint32_t epoch = 0;
    std::string name;
    std::string credential;
    keys::Bytes strokes; ///< Drawn only, and then not empty
    std::string stub;    ///< Paper only, and then not empty: what is printed on the stub
    bool operator==(const Signer&) const = default;
};

/// What a preceptor signs (FORMAT.md section 5): bound to program, student and sheet, so that it means nothing
/// elsewhere.
struct Statement {
    keys::VerifyKey program;
    keys::Id student;
    keys::Id operation;
    keys::Id sheet;
    std::vector<std::string> procedures;
    Head head;
    std::vector<SkillMark> marks; ///< only what this signer marked
    std::string feedback;
    std::string locale;        ///< of the wording that was read back ("en-US")
    std::uint16_t wording = 0; ///< its version
    std::string meaning;       ///< what the screen said that signing means
    Signer signer;
    Time time;
    bool operator==(const Statement&) const = default;
};

/// The bytes to sign and to keep. A reason when a reader would refuse them.
Checked<keys::Bytes> encode(const Statement& statement);
/// From bytes that may be hostile.
Checked<Statement> decodeStatement(keys::ByteView bytes);

/// Signs the statement's bytes. A reason also when the key is not the one that the statement names.
Checked<Attestation> attest(const Statement& statement, const keys::SigningKey& key);

/// The statement of an attestation that stands in `feed` and was made for it: program and student are right, and it is
/// signed by the key it names. Says nothing about whose key that is.
Checked<Statement> checkAttestation(const Attestation& attestation, const keys::VerifyKey& program, const FeedId& feed);
/// The same for one of many, whose keys are remembered.
Checked<Statement> checkAttestation(const Attestation& attestation, const keys::VerifyKey& program, const FeedId& feed,
                                    keys::UsableKeys& usable);

} // namespace peelpack::journal
