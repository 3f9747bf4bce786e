#include "sync/journal/own_phone.h"
#include "sync/keys/card.h"
#include "sync/keys/code.h"
#include "sync/keys/invitation.h"
#include "tests/fuzz/support/program.h"

// Everything that comes through a camera or is typed: cards, invitations, replies, program and vault codes, and the two
// codes of signing on the preceptor's own phone. What is read can be shown again as it was.
namespace peelpack::fuzz {
namespace {

bool same(keys::ByteView a, keys::ByteView b)
{
    return std::equal(a.begin(), a.end(), b.begin(), b.end());
}

/// An invitation of the program's, for a reply to answer.
keys::Invitation invitation()
{
    const Program& known = program();
    keys::Invitation made;
    made.program = known.id;
    made.inviterDevice = known.instructor.signing.verifyKey();
    made.inviterSeal = known.instructor.opening.sealKey();
    made.person = known.studentId;
    made.role = 4;
    made.secret = keys::Secret(keys::Bytes(keys::Invitation::secretBytes, 0x61));
    made.expiry = 1;
    return made;
}

void scan(keys::ByteView bytes)
{
    if (const auto card = keys::SigningCard::fromCode(bytes)) {
        require(same(card.value().code().view(), bytes), "a card is shown as it was read");
    }
    if (const auto read = keys::Invitation::fromCode(bytes)) {
        require(same(read.value().code().view(), bytes), "an invitation is shown as it was read");
        const keys::InvitationReply reply = keys::answer(read.value(), program().student);
        require(keys::check(read.value(), reply, read.value().expiry).ok(), "an answered invitation is answered");
        require(keys::comparisonDigits(read.value(), reply).size() == 6, "six digits are six");
    }
    if (const auto reply = keys::InvitationReply::fromCode(bytes)) {
        require(same(reply.value().code(), bytes), "a reply is shown as it was read");
        const bool genuine = same(bytes, keys::answer(invitation(), program().student).code());
        require(genuine || !keys::check(invitation(), reply.value(), 0).ok(),
                "nobody answers an invitation without its secret");
    }
}

void type(keys::ByteView bytes)
{
    const std::string text(bytes.begin(), bytes.end());
    for (const keys::CodeSort sort : {keys::CodeSort::Program, keys::CodeSort::Vault}) {
        const auto code = keys::codeFromText(sort, text);
        if (!code) {
            require(!code.error().sentence.empty(), "a refusal says why");
            continue;
        }
        const keys::Secret shown = keys::codeText(sort, code.value().view());
        const std::string shownText(shown.view().begin(), shown.view().end());
        const auto again = keys::codeFromText(sort, shownText);
        require(again.ok() && again.value().equals(code.value().view()), "a code is shown so that it reads the same");
    }
    if (bytes.size() == keys::codeSecretBytes) {
        const keys::Secret shown = keys::codeText(keys::CodeSort::Vault, bytes);
        const auto read =
            keys::codeFromText(keys::CodeSort::Vault, std::string(shown.view().begin(), shown.view().end()));
        require(read.ok() && read.value().equals(bytes), "every code can be typed back");
    }
}

void signOnOwnPhone(keys::ByteView bytes)
{
    const Program& known = program();
    if (const auto request = journal::decodeSigningRequest(bytes)) {
        const auto again = journal::encode(request.value());
        require(again.ok() && same(again.value(), bytes), "there is one way to write a request");
    }
    journal::SigningRequest asked;
    asked.program = known.id;
    asked.operation = idOf(0x50);
    asked.sheet = known.sheet;
    if (const auto accepted = journal::acceptAnswer(asked, bytes, known.studentFeed())) {
        require(same(journal::signingAnswer(accepted.value()), bytes), "there is one way to write an answer");
    }
    // As a statement that the preceptor's phone signs, whatever it says.
    const journal::Attestation attestation{{bytes.begin(), bytes.end()}, known.preceptor.sign(bytes)};
    if (const auto accepted = journal::acceptAnswer(asked, journal::signingAnswer(attestation), known.studentFeed())) {
        const auto statement = journal::decodeStatement(accepted.value().statement);
        require(statement.ok() && statement.value().sheet == asked.sheet &&
                    statement.value().signer.key == known.preceptor.verifyKey(),
                "an answer is about what was asked");
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const keys::ByteView bytes(data, size);
    scan(bytes);
    type(bytes);
    signOnOwnPhone(bytes);
    return 0;
}

} // namespace peelpack::fuzz
