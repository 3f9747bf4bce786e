#include "sync/merge/contents.h"
#include "sync/merge/reopen.h"
#include "sync/trust/policy.h"
#include "sync/trust/rights.h"
#include "tests/sync/support/catch.h"
#include "tests/sync/support/world.h"

namespace peelpack::test {
namespace {

using journal::Kind;
using journal::Reason;
using journal::Role;
using Standing = trust::Judgment::Standing;

journal::Statement signedBy(const World& world, journal::SignerKind kind, const keys::VerifyKey& key)
{
    journal::Statement statement = world.statement(world.studentId, idOf(0x51));
    statement.signer.kind = kind;
    statement.signer.key = key;
    if (kind != journal::SignerKind::Card) {
        statement.signer.card = {};
        statement.signer.epoch = 0;
    }
    if (kind == journal::SignerKind::Drawn) {
        statement.signer.strokes = {1, 2, 3};
    }
    if (kind == journal::SignerKind::Paper) {
        statement.signer.stub = "Stub 0017";
    }
    return statement;
}

} // namespace

TEST_CASE("Strength comes from the kind of key and never from a claim", "[trust]")
{
    World world;
    world.setUp();
    const keys::SigningKey phone = signerOf(0x46);
    journal::Vouch vouch;
    vouch.person = idOf(0x47);
    vouch.name = "Invented Preceptor";
    vouch.keyKind = journal::KeyKind::Device;
    vouch.key = phone.verifyKey();
    const auto strength = [&](journal::SignerKind kind, const keys::VerifyKey& key) {
        return world.all.authority().strengthOf(signedBy(world, kind, key));
    };
    const keys::VerifyKey stranger = signerOf(0x48).verifyKey();
    const keys::VerifyKey student = world.student.signing.verifyKey();
    CHECK(strength(journal::SignerKind::Device, phone.verifyKey()) == sheet::Strength::None);
    world.append(world.instructor, world.programStream, vouch);
    CHECK(strength(journal::SignerKind::Device, phone.verifyKey()) == sheet::Strength::OwnPhone);
    CHECK(strength(journal::SignerKind::Device, stranger) == sheet::Strength::None);
    CHECK(strength(journal::SignerKind::Device, student) == sheet::Strength::None);
    CHECK(strength(journal::SignerKind::Card, world.card.verifyKey()) == sheet::Strength::Card);
    CHECK(strength(journal::SignerKind::Card, stranger) == sheet::Strength::None);
    CHECK(strength(journal::SignerKind::Card, student) == sheet::Strength::None);
    CHECK(strength(journal::SignerKind::Drawn, student) == sheet::Strength::Drawn);
    CHECK(strength(journal::SignerKind::Paper, student) == sheet::Strength::Paper);

    journal::Statement made = signedBy(world, journal::SignerKind::Card, stranger);
    made.signer.epoch = 2;
    CHECK(world.all.authority().strengthOf(made) == sheet::Strength::CardNew);
    CHECK_FALSE(world.all.authority().personOf(made.signer).has_value());
    made.signer.key = student;
    CHECK(world.all.authority().strengthOf(made) == sheet::Strength::None);
    CHECK(world.all.authority().personOf(signedBy(world, journal::SignerKind::Card, world.card.verifyKey()).signer) ==
          world.preceptorId);
}

TEST_CASE("A statement whose shape does not fit its signer is not signed and not read", "[trust]")
{
    World world;
    world.setUp();
    const keys::SigningKey& key = world.student.signing;
    const journal::FeedId feed = world.feedOf(world.student, world.studentId);
    const auto attested = [&](const journal::Statement& statement) { return journal::attest(statement, key).reason(); };
    for (const auto kind : {journal::SignerKind::Drawn, journal::SignerKind::Paper}) {
        const journal::Statement good = signedBy(world, kind, key.verifyKey());
        REQUIRE(attested(good) == Reason::None);
        CHECK(journal::checkAttestation(journal::attest(good, key).value(), world.program, feed).ok());
        journal::Statement bad = good;
        bad.signer.strokes.clear();
        bad.signer.stub.clear();
        CHECK(attested(bad) == Reason::BadCombination);
        bad = good;
        bad.signer.card = idOf(1);
        CHECK(attested(bad) == Reason::BadCombination);
    }
    // A student who signs as a card, or lets another key draw.
    const journal::Statement posing = signedBy(world, journal::SignerKind::Card, key.verifyKey());
    CHECK(journal::checkAttestation(journal::attest(posing, key).value(), world.program, feed).reason() ==
          Reason::BadSigner);
    const journal::Statement drawn = signedBy(world, journal::SignerKind::Drawn, world.card.verifyKey());
    CHECK(journal::checkAttestation(journal::attest(drawn, world.card).value(), world.program, feed).reason() ==
          Reason::BadSigner);
    CHECK(journal::attest(drawn, key).reason() == Reason::BadSigner);
    journal::Statement large = signedBy(world, journal::SignerKind::Drawn, key.verifyKey());
    large.signer.strokes.assign(journal::mostStrokeBytes + 1, 1);
    CHECK(attested(large) == Reason::TooMany);
    large.signer.strokes.pop_back();
    CHECK(attested(large) == Reason::None);
}

TEST_CASE("Without a grant everything is aside; the grant that comes later lets it count", "[trust]")
{
    World world;
    world.certify(1, trust::DirectorCertificate{idOf(0x10), world.director.signing.verifyKey(),
                                                world.director.opening.sealKey(), "Invented Director"});
    const auto opened =
        world.append(world.student, world.studentId, journal::SheetOpened{idOf(0x51), idOf(0x50), draft()});
    CHECK(judgment(world.all, opened) == trust::Judgment{Standing::Aside, Reason::NoGrant});
    world.append(world.instructor, world.studentId, world.grant(world.studentId, Role::Student, world.student));
    CHECK(judgment(world.all, opened) == trust::Judgment{Standing::Aside, Reason::NoGrant});
    world.append(world.director, world.programStream,
                 world.grant(world.instructorId, Role::Instructor, world.instructor));
    CHECK(judgment(world.all, opened) == trust::Judgment{Standing::Counts, Reason::None});
}

TEST_CASE("Two director certificates of one epoch: the smaller hash holds everywhere, the other is evidence", "[trust]")
{
    World world;
    const keys::DeviceKey one = deviceOf(0x13);
    const keys::DeviceKey two = deviceOf(0x17);
    for (const keys::DeviceKey* device : {&one, &two}) {
        world.certify(1, trust::DirectorCertificate{idOf(0x10), device->signing.verifyKey(), device->opening.sealKey(),
                                                    "Invented Director"});
    }
    const auto& certificates = world.all.certificates();
    REQUIRE(certificates.size() == 2);
    const auto held = trust::directorsThatHold(certificates);
    REQUIRE(held.size() == 1);
    CHECK(held[0]->hash == std::min(certificates[0].hash, certificates[1].hash));
    const auto evidence = trust::contradicted(certificates);
    REQUIRE(evidence.size() == 1);
    CHECK(evidence[0]->hash == std::max(certificates[0].hash, certificates[1].hash));
    CHECK(world.all.authority().holders().size() == 1);
    world.certify(2, trust::DirectorCertificate{idOf(0x10), world.director.signing.verifyKey(),
                                                world.director.opening.sealKey(), "Invented Director"});
    CHECK(trust::directorsThatHold(world.all.certificates()).size() == 2);
}

TEST_CASE("Every kind has its writers, and no other role gets through", "[trust]")
{
    World world;
    world.setUp();
    using Roles = std::vector<Role>;
    const Roles staff{Role::Director, Role::Instructor};
    const Roles all{Role::Director, Role::Instructor, Role::Coordinator, Role::Contact, Role::Student};
    const std::vector<std::pair<std::vector<int>, Roles>> table{
        {{4, 5, 8, 10, 38, 39}, {Role::Director}},
        {{6, 7, 9}, {Role::Director, Role::Instructor, Role::Coordinator}},
        {{1, 2, 32, 33, 34, 35, 36, 37, 40, 48, 49, 51}, staff},
        {{3}, {Role::Director, Role::Instructor, Role::Coordinator, Role::Contact}},
        {{16, 17, 18, 19, 20, 21, 22, 23}, {Role::Student}},
        {{50}, all},
        {{0, 11, 15, 24, 41, 47, 52, 999}, {}},
    };
    std::size_t known = 0;
    for (const auto& [kinds, roles] : table) {
        for (const int kind : kinds) {
            for (const Role role : all) {
                INFO(kind << " " << static_cast<int>(role));
                const bool may = std::find(roles.begin(), roles.end(), role) != roles.end();
                CHECK(trust::mayWrite(role, static_cast<std::uint16_t>(kind)) == may);
            }
            known += journal::isKnown(static_cast<std::uint16_t>(kind)) ? 1U : 0U;
        }
    }
    CHECK(known == 31);
    CHECK_FALSE(trust::mayGrant(Role::Director, Role::Director));
    CHECK(trust::mayGrant(Role::Director, Role::Instructor));
    CHECK_FALSE(trust::mayGrant(Role::Instructor, Role::Instructor));
    CHECK(trust::mayGrant(Role::Instructor, Role::Student));
    CHECK_FALSE(trust::mayGrant(Role::Coordinator, Role::Student));
}

TEST_CASE("Coordinators and contacts vouch; what they grant is refused", "[trust]")
{
    World world;
    world.setUp();
    const keys::DeviceKey contact = deviceOf(0x71);
    journal::Grant site = world.grant(idOf(0x70), Role::Contact, contact);
    site.scopes = {"South Pavilion"};
    world.append(world.instructor, world.programStream, site);
    const keys::SigningKey card = signerOf(0x72);
    journal::Vouch vouch;
    vouch.person = idOf(0x73);
    vouch.name = "Invented Preceptor";
    vouch.site = "South Pavilion";
    vouch.key = card.verifyKey();
    vouch.card = idOf(0x74);
    world.append(contact, world.programStream, vouch);
    journal::Statement statement = world.statement(world.studentId, idOf(0x51));
    statement.signer.key = card.verifyKey();
    statement.signer.card = idOf(0x74);
    statement.signer.epoch = 0;
    CHECK(world.all.authority().strengthOf(statement) == sheet::Strength::Card);
    vouch.site = "North Pavilion";
    vouch.card = idOf(0x77);
    const auto elsewhere = world.append(contact, world.programStream, vouch);
    CHECK(judgment(world.all, elsewhere) == trust::Judgment{Standing::Refused, Reason::OutOfScope});
    statement.signer.card = idOf(0x77);
    CHECK(world.all.authority().strengthOf(statement) == sheet::Strength::CardNew); // as if nobody had vouched
    const auto tried =
        world.append(contact, world.programStream, world.grant(idOf(0x75), Role::Contact, deviceOf(0x76)));
    CHECK(judgment(world.all, tried) == trust::Judgment{Standing::Refused, Reason::RoleMayNotWrite});
    CHECK(world.all.authority().holder(deviceOf(0x76).signing.verifyKey()) == nullptr);
}

TEST_CASE("An instructor revokes in their own classes only", "[trust]")
{
    World world;
    world.setUp();
    const keys::DeviceKey stranger = deviceOf(0x79);
    journal::Grant other = world.grant(idOf(0x78), Role::Instructor, stranger);
    other.scopes = {"Class of 2031"};
    world.append(world.director, world.programStream, other);
    journal::Revoke revoke;
    revoke.feed = world.feedOf(world.student, world.studentId);
    revoke.reason = "Not theirs to say.";
    const auto tried = world.append(stranger, world.studentId, revoke);
    CHECK(judgment(world.all, tried) == trust::Judgment{Standing::Refused, Reason::OutOfScope});
    CHECK(world.all.authority().limit(revoke.feed) == UINT32_MAX);
    world.append(world.secondInstructor, world.studentId, revoke);
    CHECK(world.all.authority().limit(revoke.feed) == 0);

    // Whom they granted themselves is theirs to revoke, whatever the class.
    const keys::DeviceKey guest = deviceOf(0x7B);
    world.append(stranger, idOf(0x7A), world.grant(idOf(0x7A), Role::Student, guest));
    journal::Revoke own = revoke;
    own.feed = world.feedOf(guest, idOf(0x7A));
    world.append(stranger, idOf(0x7A), own);
    CHECK(world.all.authority().limit(own.feed) == 0);

    journal::Revoke card;
    card.target = journal::KeyKind::Card;
    card.card = world.cardId;
    card.epoch = 1;
    card.reason = "Not theirs to say.";
    const auto triedCard = world.append(stranger, world.programStream, card);
    CHECK(judgment(world.all, triedCard) == trust::Judgment{Standing::Refused, Reason::OutOfScope});
}

TEST_CASE("One device is one person in one role", "[trust]")
{
    World world;
    world.setUp();
    const auto second =
        world.append(world.instructor, idOf(0x3A), world.grant(idOf(0x3A), Role::Student, world.student));
    const auto authority = world.all.authority();
    const trust::Holder* holder = authority.holder(world.student.signing.verifyKey());
    REQUIRE(holder != nullptr);
    const auto first = journal::Position{world.feedOf(world.instructor, world.studentId), 0,
                                         world.all.feed(world.feedOf(world.instructor, world.studentId))->head().hash};
    const bool firstHolds = first.hash < second.hash;
    CHECK(holder->person == (firstHolds ? world.studentId : idOf(0x3A)));
    CHECK(judgment(world.all, firstHolds ? second : first) ==
          trust::Judgment{Standing::Refused, Reason::BadCombination});
}

TEST_CASE("A completion by exception needs a reason and something that is short, and only the director's counts",
          "[trust]")
{
    World world;
    world.setUp();
    const journal::Position head = world.sheet(world.student, world.studentId, idOf(0x50));
    const journal::CompleteByException exception{"cap15", {}, head, 120, 118, "The site closed its rooms."};
    const auto changed = [&](const auto& change) {
        journal::CompleteByException other = exception;
        change(other);
        return journal::encode(other).reason();
    };
    CHECK(changed([](auto& one) { one.reason.clear(); }) == Reason::TextMissing);
    CHECK(changed([](auto& one) { one.counted = 120; }) == Reason::BadCombination);
    CHECK(changed([](auto& one) { one.required = 0; }) == Reason::BadCombination);

    const journal::Position byDirector = world.append(world.director, world.studentId, exception);
    CHECK(judgment(world.all, byDirector) == trust::Judgment{});
    const journal::Position byInstructor = world.append(world.instructor, world.studentId, exception);
    CHECK(judgment(world.all, byInstructor).standing == trust::Judgment::Standing::Refused);
    const auto written = [&](const keys::Id& stream) {
        const journal::FeedId feed = world.feedOf(world.director, stream);
        return journal::writeEntry(world.program, world.all.next(feed), {minute(9), std::nullopt}, exception,
                                   world.director.signing)
            .reason();
    };
    CHECK(written(world.studentId) == Reason::None);
    CHECK(written(world.otherStudentId) == Reason::WrongStream);
    CHECK(written(world.programStream) == Reason::WrongStream);
    CHECK(volumeOf(fromVolume(world.program, volumeOf(world.all)).ledger) == volumeOf(world.all));
}

TEST_CASE("What an older build kept unread is read when the vault is opened again", "[trust]")
{
    World world;
    world.setUp();
    const journal::Position head = world.sheet(world.student, world.studentId, idOf(0x50));
    const journal::FeedId feed = world.feedOf(world.director, world.otherStudentId);
    const journal::CompleteByException misplaced{"cap15", {}, head, 120, 118, "The site closed its rooms."};
    const auto entry = journal::writeRawEntry(world.program, world.all.next(feed), {minute(9), std::nullopt}, 39,
                                              journal::encode(misplaced).value(), world.director.signing);
    merge::Batch kept = merge::contents(world.all);
    kept.runs.push_back({feed, world.all.next(feed).seq, {keys::ByteView(entry.value().bytes)}});
    const auto reopened = merge::reopen(world.program, kept);
    REQUIRE(reopened.ok());
    REQUIRE(reopened.value().unfit.size() == 1);
    CHECK(reopened.value().unfit.front().reason == Reason::WrongStream);
}

TEST_CASE("A certificate reads back, and every flipped bit of it is noticed", "[trust]")
{
    World world;
    const journal::Position head{world.feedOf(world.student, world.studentId), 7, {}};
    const std::vector<trust::CertificateContent> contents{
        trust::DirectorCertificate{idOf(0x10), world.director.signing.verifyKey(), world.director.opening.sealKey(),
                                   "Invented Director"},
        trust::DirectorRevoked{world.feedOf(world.director, world.programStream), 4},
        trust::Completion{world.studentId, "cap15", {}, head, minute(3)}};
    for (const trust::CertificateContent& content : contents) {
        const keys::Bytes bytes = trust::writeCertificate(world.programKey, 3, content).value();
        const auto read = trust::readCertificate(world.program, bytes);
        REQUIRE(read.ok());
        CHECK(read.value().epoch == 3);
        CHECK(read.value().content == content);
        for (std::size_t bit = 0; bit < 8 * bytes.size(); ++bit) {
            keys::Bytes changed = bytes;
            changed[bit / 8] ^= static_cast<std::uint8_t>(1U << (bit % 8));
            if (trust::readCertificate(world.program, changed).ok()) {
                FAIL("bit " << bit << " was not noticed");
            }
        }
        CHECK_FALSE(trust::readCertificate(signerOf(0x77).verifyKey(), bytes).ok());
    }
}

TEST_CASE("Every reason has a sentence, every verdict a word", "[trust]")
{
    CHECK(journal::sentence(Reason::None).empty());
    for (int i = 1; i <= static_cast<int>(Reason::TooManyEntries); ++i) {
        const std::string_view text = journal::sentence(static_cast<Reason>(i));
        INFO(i);
        REQUIRE_FALSE(text.empty());
        CHECK(text.back() == '.');
    }
    for (int i = 0; i <= static_cast<int>(journal::Verdict::Forked); ++i) {
        CHECK_FALSE(journal::word(static_cast<journal::Verdict>(i)).empty());
    }
}

} // namespace peelpack::test
