#include "sync/journal/own_phone.h"

#include "tests/sync/support/catch.h"
#include "tests/sync/support/world.h"

namespace peelpack::test {
namespace {

using journal::Reason;

journal::SigningRequest requestOf(const World& world, const keys::Id& sheet)
{
    const journal::Statement statement = world.statement(world.studentId, sheet);
    return {world.program,        world.studentId, "Invented Student", statement.operation, sheet,
            statement.procedures, statement.head,  statement.locale,   statement.wording,   statement.meaning};
}

journal::Attestation signedByPhone(const World& world, const keys::Id& sheet, const keys::SigningKey& phone)
{
    journal::Statement statement = world.statement(world.studentId, sheet);
    statement.signer.kind = journal::SignerKind::Device;
    statement.signer.key = phone.verifyKey();
    statement.signer.card = {};
    statement.signer.epoch = 0;
    return journal::attest(statement, phone).value();
}

} // namespace

TEST_CASE("A preceptor's own phone answers a request with two codes", "[own-phone]")
{
    World world;
    world.setUp();
    const keys::SigningKey phone = signerOf(0x48);
    const journal::SigningRequest request = requestOf(world, idOf(0x51));
    const keys::Bytes code = journal::encode(request).value();
    REQUIRE(journal::decodeSigningRequest(code).value() == request);
    const journal::FeedId feed = world.feedOf(world.student, world.studentId);

    const journal::Attestation attestation = signedByPhone(world, idOf(0x51), phone);
    const keys::Bytes answer = journal::signingAnswer(attestation);
    CHECK(journal::acceptAnswer(request, answer, feed).value() == attestation);

    CHECK(journal::encode(journal::statementOf(answer).value()).value() == attestation.statement);
    CHECK(journal::statementOf(code).reason() == Reason::NotOurs);
    CHECK(journal::statementOf(keys::ByteView(answer).first(68)).reason() == Reason::TooShort);

    SECTION("an answer to another request is not taken")
    {
        CHECK(journal::acceptAnswer(requestOf(world, idOf(0x52)), answer, feed).reason() == Reason::BadCombination);
        CHECK(journal::acceptAnswer(request, answer, world.feedOf(world.otherStudent, world.otherStudentId)).reason() ==
              Reason::WrongStudent);
    }
    SECTION("a card's signature is no answer of a phone")
    {
        const auto byCard = journal::attest(world.statement(world.studentId, idOf(0x51)), world.card).value();
        CHECK(journal::acceptAnswer(request, journal::signingAnswer(byCard), feed).reason() == Reason::BadSigner);
    }
    SECTION("every single bit of the answer matters")
    {
        for (std::size_t bit = 0; bit < answer.size() * 8; ++bit) {
            keys::Bytes flipped = answer;
            flipped[bit / 8] ^= static_cast<std::uint8_t>(1U << (bit % 8));
            REQUIRE_FALSE(journal::acceptAnswer(request, flipped, feed).ok());
        }
    }
    SECTION("a code that is cut short or longer is not taken")
    {
        for (std::size_t size = 0; size < code.size(); ++size) {
            REQUIRE_FALSE(journal::decodeSigningRequest(keys::ByteView(code).first(size)).ok());
        }
        keys::Bytes longer = code;
        longer.push_back(0);
        CHECK(journal::decodeSigningRequest(longer).reason() == Reason::LeftOver);
        CHECK(journal::acceptAnswer(request, keys::ByteView(answer).first(68), feed).reason() == Reason::TooShort);
    }
}

} // namespace peelpack::test
