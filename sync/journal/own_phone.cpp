#include "sync/journal/own_phone.h"

#include "sync/journal/coding.h"

namespace peelpack::journal {
namespace {

constexpr std::string_view requestTag = "PPQ";
constexpr std::string_view answerTag = "PPA\x01";

Checked<Attestation> attestationIn(keys::ByteView answer)
{
    if (!keys::startsWith(answer, answerTag)) {
        return Reason::NotOurs;
    }
    const keys::ByteView rest = answer.subspan(answerTag.size());
    if (rest.size() <= keys::Signature::size) {
        return Reason::TooShort;
    }
    const keys::ByteView bytes = rest.subspan(keys::Signature::size);
    return Attestation{{bytes.begin(), bytes.end()}, *keys::Signature::from(rest.first(keys::Signature::size))};
}

} // namespace

template <class Archive>
void serialize(Archive& archive, SigningRequest& request)
{
    archive(raw(request.program), raw(request.student), requiredText(request.studentName), raw(request.operation),
            raw(request.sheet), texts(request.procedures, 1, mostProcedures), request.head,
            requiredText(request.locale, localeCharacters), request.wording, requiredText(request.meaning, longText));
}

Checked<SigningRequest> decodeSigningRequest(keys::ByteView bytes)
{
    if (bytes.size() > mostStatementBytes) {
        return Reason::TooLarge;
    }
    if (!keys::startsWith(bytes, requestTag)) {
        return Reason::NotOurs;
    }
    return decodeFields<SigningRequest>(bytes.subspan(requestTag.size()));
}

Checked<keys::Bytes> encode(const SigningRequest& request)
{
    keys::Bytes bytes;
    keys::append(bytes, keys::bytesOf(requestTag));
    keys::append(bytes, encodeFields(request));
    const auto readBack = decodeSigningRequest(bytes);
    if (!readBack) {
        return readBack.reason();
    }
    return bytes;
}

keys::Bytes signingAnswer(const Attestation& attestation)
{
    keys::Bytes bytes;
    keys::append(bytes, keys::bytesOf(answerTag));
    keys::append(bytes, attestation.signature.view());
    keys::append(bytes, attestation.statement);
    return bytes;
}

Checked<Statement> statementOf(keys::ByteView answer)
{
    const auto attestation = attestationIn(answer);
    return attestation ? decodeStatement(attestation.value().statement) : attestation.reason();
}

Checked<Attestation> acceptAnswer(const SigningRequest& request, keys::ByteView answer, const FeedId& feed)
{
    auto attestation = attestationIn(answer);
    if (!attestation) {
        return attestation.reason();
    }
    const auto statement = checkAttestation(attestation.value(), request.program, feed);
    if (!statement) {
        return statement.reason();
    }
    if (statement.value().signer.kind != SignerKind::Device) {
        return Reason::BadSigner;
    }
    if (statement.value().sheet != request.sheet || statement.value().operation != request.operation) {
        return Reason::BadCombination;
    }
    return attestation;
}

} // namespace peelpack::journal
