#include "sync/journal/statement.h"

#include "sync/journal/coding.h"

namespace peelpack::journal {
namespace {

constexpr std::string_view tag = "peelpack attest 1\n";

bool shapeFits(const Signer& signer)
{
    const bool card = signer.kind == SignerKind::Card;
    const bool drawn = signer.kind == SignerKind::Drawn;
    const bool paper = signer.kind == SignerKind::Paper;
    return (card || (signer.card.isZero() && signer.epoch == 0)) && drawn != signer.strokes.empty() &&
           paper != signer.stub.empty();
}

} // namespace

Checked<Statement> decodeStatement(keys::ByteView bytes)
{
    if (bytes.size() > mostStatementBytes) {
        return Reason::TooLarge;
    }
    if (!keys::startsWith(bytes, tag)) {
        return Reason::NotOurs;
    }
    auto statement = decodeFields<Statement>(bytes.subspan(tag.size()));
    if (!statement) {
        return statement;
    }
    if (const Reason fault = marksFault(statement.value().marks); fault != Reason::None) {
        return fault;
    }
    if (!shapeFits(statement.value().signer)) {
        return Reason::BadCombination;
    }
    return statement;
}

Checked<keys::Bytes> encode(const Statement& statement)
{
    keys::Bytes bytes;
    keys::append(bytes, keys::bytesOf(tag));
    keys::append(bytes, encodeFields(statement));
    const auto readBack = decodeStatement(bytes);
    if (!readBack) {
        return readBack.reason();
    }
    return bytes;
}

Checked<Attestation> attest(const Statement& statement, const keys::SigningKey& key)
{
    if (key.verifyKey() != statement.signer.key) {
        return Reason::BadSigner;
    }
    auto bytes = encode(statement);
    if (!bytes) {
        return bytes.reason();
    }
    const keys::Signature signature = key.sign(bytes.value());
    return Attestation{std::move(bytes).value(), signature};
}

Checked<Statement> checkAttestation(const Attestation& attestation, const keys::VerifyKey& program, const FeedId& feed)
{
    keys::UsableKeys usable;
    return checkAttestation(attestation, program, feed, usable);
}

Checked<Statement> checkAttestation(const Attestation& attestation, const keys::VerifyKey& program, const FeedId& feed,
                                    keys::UsableKeys& usable)
{
    auto decoded = decodeStatement(attestation.statement);
    if (!decoded) {
        return decoded;
    }
    const Statement& statement = decoded.value();
    if (statement.program != program) {
        return Reason::WrongProgram;
    }
    if (statement.student != feed.stream) {
        return Reason::WrongStudent;
    }
    const bool byStudent = statement.signer.kind == SignerKind::Drawn || statement.signer.kind == SignerKind::Paper;
    if (byStudent != (statement.signer.key == feed.device)) {
        return Reason::BadSigner;
    }
    if (!usable.usable(statement.signer.key)) {
        return Reason::UnusableKey;
    }
    if (!keys::verify(statement.signer.key, attestation.statement, attestation.signature)) {
        return Reason::BadSignature;
    }
    return decoded;
}

} // namespace peelpack::journal
