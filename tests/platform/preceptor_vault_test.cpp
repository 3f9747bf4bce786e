#include "platform/session/preceptor_vault.h"
#include "tests/platform/support/raw_database.h"
#include "tests/platform/support/vault_place.h"
#include "tests/sync/support/catch.h"

// The vault of a preceptor's own phone: who signs, with which key, and what was signed.
namespace peelpack::test {
namespace {

journal::Time laterThan(std::int64_t seconds)
{
    return {noon + seconds, -300};
}

std::unique_ptr<session::PreceptorVault> opened(VaultPlace& place)
{
    auto own = session::PreceptorVault::open(place.open(), [] { return laterThan(60); });
    REQUIRE(own.ok());
    return std::move(own).value();
}

journal::SigningRequest requestOf(const World& world, std::uint8_t sheet, const std::string& student)
{
    const journal::Statement statement = world.statement(world.studentId, idOf(sheet));
    return {world.program,        world.studentId, student,          statement.operation, idOf(sheet),
            statement.procedures, statement.head,  statement.locale, statement.wording,   statement.meaning};
}

session::SheetMarks marksOf(const journal::SigningRequest& request)
{
    return {request.sheet, request.procedures, request.head, {{sheet::Skill::Verify, sheet::Mark::Yes, {}}}, "Calm."};
}

} // namespace

TEST_CASE("What a preceptor's phone signed is there again, with its answer", "[own-phone][vault]")
{
    World world;
    world.setUp();
    VaultPlace place(21);
    const journal::SigningRequest request = requestOf(world, 0x51, "Zoë Invented");
    keys::Bytes answer;
    keys::VerifyKey key;
    {
        const auto own = opened(place);
        CHECK(own->owner().name.empty());
        REQUIRE(own->setOwner({"L. Brandt", "CST"}).ok());
        key = own->key();
        auto first = own->sign(request, own->owner(), marksOf(request));
        REQUIRE(first.ok());
        answer = std::move(first).value();
        const journal::SigningRequest second = requestOf(world, 0x52, "Other Student");
        REQUIRE(own->sign(second, own->owner(), marksOf(second)).ok());
    }
    const auto again = opened(place);
    CHECK(again->owner().name == "L. Brandt");
    CHECK(again->owner().credential == "CST");
    CHECK(again->key() == key);
    REQUIRE(again->signedHere().size() == 2);
    const session::SignedHere& kept = again->signedHere().front();
    CHECK(kept.student == "Zoë Invented");
    CHECK(kept.answer == answer);
    CHECK(kept.statement.sheet == request.sheet);
    CHECK(kept.statement.signer.key == key);
    CHECK(kept.statement.feedback == "Calm.");
    CHECK(again->signedHere().back().statement.sheet == idOf(0x52));
    // The answer is one that the student's phone takes.
    const journal::FeedId feed = world.feedOf(world.student, world.studentId);
    CHECK(journal::acceptAnswer(request, answer, feed).ok());
    CHECK(again->damage().empty());
}

TEST_CASE("A preceptor's phone signs nothing that is not complete, and keeps nothing of it", "[own-phone][vault]")
{
    World world;
    world.setUp();
    VaultPlace place(22);
    const journal::SigningRequest request = requestOf(world, 0x51, "Student");
    auto own = opened(place);
    session::SheetMarks unmarked = marksOf(request);
    unmarked.marks.clear();
    CHECK_FALSE(own->sign(request, {"L. Brandt", ""}, unmarked).ok());
    CHECK_FALSE(own->sign(request, {"", "CST"}, marksOf(request)).ok());
    CHECK(own->signedHere().empty());
    own.reset();
    CHECK(opened(place)->signedHere().empty());
}

TEST_CASE("A vault that is somebody's record in a program signs for no preceptor", "[own-phone][vault]")
{
    World world;
    world.setUp();
    VaultPlace place(23);
    save(*place.open(), changeOf(world.all));
    const auto own = session::PreceptorVault::open(place.open(), [] { return laterThan(0); });
    REQUIRE_FALSE(own.ok());
    CHECK(own.error().code == base::ErrorCode::BadValue);

    SECTION("nor one in which only its program is said")
    {
        VaultPlace joined(24);
        vault::Change change;
        change.notes[session::notes::program] = keys::Bytes(keys::VerifyKey::size, 1);
        save(*joined.open(), change);
        CHECK_FALSE(session::PreceptorVault::open(joined.open(), [] { return laterThan(0); }).ok());
    }
}

TEST_CASE("A damaged row of what was signed is told, and the others are there", "[own-phone][vault]")
{
    World world;
    world.setUp();
    VaultPlace place(25);
    {
        const auto own = opened(place);
        REQUIRE(own->setOwner({"L. Brandt", "CST"}).ok());
        for (const std::uint8_t sheet : {std::uint8_t{0x51}, std::uint8_t{0x52}, std::uint8_t{0x53}}) {
            const journal::SigningRequest request = requestOf(world, sheet, "Student");
            REQUIRE(own->sign(request, own->owner(), marksOf(request)).ok());
        }
    }
    RawDatabase(place.file).run("UPDATE note SET sealed = zeroblob(200) WHERE name = '.signed.00000001'");
    auto own = opened(place);
    CHECK_FALSE(own->damage().empty());
    REQUIRE(own->signedHere().size() == 2);
    CHECK(own->signedHere().front().statement.sheet == idOf(0x51));
    CHECK(own->signedHere().back().statement.sheet == idOf(0x53));
    // What is signed next takes no other's place.
    const journal::SigningRequest request = requestOf(world, 0x54, "Student");
    REQUIRE(own->sign(request, own->owner(), marksOf(request)).ok());
    own.reset();
    CHECK(opened(place)->signedHere().back().statement.sheet == idOf(0x54));
}

} // namespace peelpack::test
