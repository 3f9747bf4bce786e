#include "sync/journal/fork.h"
#include "sync/keys/hash.h"
#include "sync/merge/contents.h"
#include "sync/merge/receipts.h"
#include "tests/sync/support/catch.h"
#include "tests/sync/support/example.h"

#include <fstream>
#include <map>
#include <sodium.h>
#include <sstream>

// fixtures/journal/bad: exports that do not verify, with their verdicts in verdicts.txt. The second verifier reads the
// same files and must find fault with each (tests/sync/CMakeLists.txt).
namespace peelpack::test {
namespace {

const std::string folder = std::string(PEELPACK_FIXTURES) + "/journal/bad/";

keys::Bytes withDigest(keys::Bytes bytes)
{
    const keys::Hash digest = keys::hash("peelpack.volum.1", {keys::ByteView(bytes).first(bytes.size() - 32)});
    std::copy(digest.bytes.begin(), digest.bytes.end(), bytes.end() - 32);
    return bytes;
}

/// The example's export with a change, as the bytes of a file.
std::map<std::string, keys::Bytes> makeBadExports()
{
    const World world;
    const Example example = makeExample();
    std::map<std::string, keys::Bytes> files;

    keys::Bytes damaged = example.exported;
    damaged[damaged.size() / 2] ^= 1U;
    files["damaged.export"] = damaged;

    files["cut-file.export"] = keys::Bytes(example.exported.begin(), example.exported.end() - 200);

    const std::string room = "North Pavilion";
    keys::Bytes altered = example.exported;
    const auto site = std::search(altered.begin(), altered.end(), room.begin(), room.end());
    REQUIRE(site != altered.end());
    *site = 'S';
    files["altered-entry.export"] = withDigest(altered);

    const merge::Ledger whole = fromVolume(world.program, example.exported).ledger;
    const journal::FeedId student = world.feedOf(world.student, world.studentId);
    merge::Batch cut = merge::contents(whole);
    for (merge::Run& run : cut.runs) {
        if (run.feed == student) {
            run.entries.resize(1); // the attestation, which a receipt names, and what follows it
        }
    }
    files["cut-feed.export"] = volumeOf(world.program, cut);

    merge::Batch gap = merge::contents(whole);
    for (merge::Run& run : gap.runs) {
        if (run.feed == student) {
            run.entries.erase(run.entries.begin());
            run.from = 1;
        }
    }
    files["gap.export"] = volumeOf(world.program, gap);

    merge::Batch otherDevice = merge::contents(whole);
    for (merge::Run& run : otherDevice.runs) {
        if (run.feed == student) {
            run.feed.device = world.otherStudent.signing.verifyKey();
        }
    }
    files["other-device.export"] = volumeOf(world.program, otherDevice);
    return files;
}

/// The example's people, and what they go on to do wrong.
class Wrongdoers {
public:
    Wrongdoers()
    {
        world.all = fromVolume(world.program, makeExample().exported).ledger;
        studentFeed = world.feedOf(world.student, world.studentId);
    }

    /// The export of what everybody has, and one more run whose entry need not be one that anybody takes.
    [[nodiscard]] keys::Bytes with(const journal::FeedId& feed, std::uint32_t seq, keys::ByteView entry) const
    {
        merge::Batch batch = merge::contents(world.all);
        batch.runs.push_back({feed, seq, {entry}});
        return volumeOf(world.program, batch);
    }

    /// The same for a payload that an honest app would not write.
    [[nodiscard]] keys::Bytes with(const keys::DeviceKey& device, const keys::Id& stream, journal::Kind kind,
                                   const keys::Bytes& payload) const
    {
        const journal::Place place = world.all.next(world.feedOf(device, stream));
        const auto entry = journal::writeRawEntry(world.program, place, {minute(70), std::nullopt},
                                                  static_cast<std::uint16_t>(kind), payload, device.signing);
        REQUIRE(entry.ok());
        return with(place.feed, place.seq, entry.value().bytes);
    }

    /// An entry of the student's feed with its body changed and signed anew.
    [[nodiscard]] keys::Bytes withBody(keys::Bytes body) const
    {
        const journal::Place place = world.all.next(studentFeed);
        const keys::Hash hash = journal::entryHash(world.program, place, body);
        keys::append(body, world.student.signing.sign(journal::headStatement(place.feed, place.seq, hash)).view());
        return with(place.feed, place.seq, body);
    }

    [[nodiscard]] journal::Attestation attestation() const
    {
        const auto& entry = world.all.feed(studentFeed)->trunk().entries.at(1);
        return std::get<journal::Attestation>(journal::decode(studentFeed, 1, entry).payload);
    }

    World world;
    journal::FeedId studentFeed;
};

/// What is wrong with a single entry or certificate.
void addBadEntries(std::map<std::string, keys::Bytes>& files)
{
    const Wrongdoers scene;
    const World& world = scene.world;
    const keys::Bytes withdrawn = journal::encode(journal::Withdrawn{idOf(0x51), "Entered twice."}).value();

    journal::Attestation moved = scene.attestation();
    const keys::Bytes sheet(keys::Id::size, 0x51);
    const auto at = std::search(moved.statement.begin(), moved.statement.end(), sheet.begin(), sheet.end());
    REQUIRE(at != moved.statement.end());
    std::fill_n(at, keys::Id::size, std::uint8_t{0x52});
    files["attestation-other-sheet.export"] =
        scene.with(world.student, world.studentId, journal::Kind::Attestation, journal::encode(moved).value());
    files["attestation-other-student.export"] =
        scene.with(world.otherStudent, world.otherStudentId, journal::Kind::Attestation,
                   journal::encode(scene.attestation()).value());

    // S and the group order have the same remainder and are another signature.
    constexpr std::array<std::uint8_t, 32> order{0xED, 0xD3, 0xF5, 0x5C, 0x1A, 0x63, 0x12, 0x58, 0xD6, 0x9C, 0xF7,
                                                 0xA2, 0xDE, 0xF9, 0xDE, 0x14, 0,    0,    0,    0,    0,    0,
                                                 0,    0,    0,    0,    0,    0,    0,    0,    0,    0x10};
    const journal::Place next = world.all.next(scene.studentFeed);
    keys::Bytes malleated = write(world, next, journal::Withdrawn{idOf(0x51), "Entered twice."}, world.student).bytes;
    unsigned carry = 0;
    for (std::size_t i = 0; i < order.size(); ++i) {
        std::uint8_t& byte = malleated[malleated.size() - order.size() + i];
        carry += static_cast<unsigned>(byte) + order.at(i);
        byte = static_cast<std::uint8_t>(carry & 0xFFU);
        carry >>= 8U;
    }
    files["malleated-signature.export"] = scene.with(scene.studentFeed, next.seq, malleated);

    const auto granting = [&](const keys::VerifyKey& key) {
        const keys::DeviceKey honest = deviceOf(0x61);
        keys::Bytes payload = journal::encode(world.grant(idOf(0x60), journal::Role::Contact, honest)).value();
        const keys::ByteView from = honest.signing.verifyKey().view();
        const auto place = std::search(payload.begin(), payload.end(), from.begin(), from.end());
        REQUIRE(place != payload.end());
        std::copy(key.bytes.begin(), key.bytes.end(), place);
        return scene.with(world.director, world.programStream, journal::Kind::Grant, payload);
    };
    keys::VerifyKey twice; // y = 3 + (2^255 - 19): a second way to write a point
    twice.bytes.fill(0xFF);
    twice.bytes.front() = 0xF0;
    twice.bytes.back() = 0x7F;
    files["key-not-canonical.export"] = granting(twice);
    keys::VerifyKey orderEight;
    REQUIRE(sodium_hex2bin(orderEight.bytes.data(), keys::VerifyKey::size,
                           "c7176a703d4dd84fba3c0b760d10670f2a2053fa2c39ccc64ec7fd7792ac037a", 64, nullptr, nullptr,
                           nullptr) == 0);
    keys::VerifyKey mixed;
    REQUIRE(crypto_core_ed25519_add(mixed.bytes.data(), deviceOf(0x61).signing.verifyKey().bytes.data(),
                                    orderEight.bytes.data()) == 0);
    files["key-outside-group.export"] = granting(mixed);

    keys::Bytes trailing = withdrawn;
    trailing.push_back(0);
    files["trailing-bytes.export"] = scene.with(world.student, world.studentId, journal::Kind::Withdrawn, trailing);

    const auto honest =
        journal::writeRawEntry(world.program, next, {minute(70), std::nullopt},
                               static_cast<std::uint16_t>(journal::Kind::Withdrawn), withdrawn, world.student.signing);
    const keys::ByteView body = journal::takeApart(honest.value().bytes).value().body;
    keys::Bytes newer(body.begin(), body.end());
    newer.front() = 2;
    files["newer-version.export"] = scene.withBody(newer);

    const journal::Link head = world.all.feed(scene.studentFeed)->head();
    journal::ForkFound invented{journal::evidence(scene.studentFeed, 2, head, head)};
    invented.evidence.second.hash.bytes.fill(0xFF);
    files["invented-fork.export"] =
        scene.with(world.instructor, world.studentId, journal::Kind::ForkFound, journal::encode(invented).value());

    merge::Batch foreign = merge::contents(world.all);
    const auto certificate =
        trust::writeCertificate(signerOf(0x77), 2,
                                trust::DirectorCertificate{idOf(0x60), deviceOf(0x61).signing.verifyKey(),
                                                           deviceOf(0x61).opening.sealKey(), "Invented Impostor"});
    foreign.certificates.emplace_back(certificate.value());
    files["foreign-certificate.export"] = volumeOf(world.program, foreign);
}

/// Somebody's say ends where their scopes end, and a signing key's where it was revoked.
void addBadScopes(std::map<std::string, keys::Bytes>& files)
{
    Wrongdoers scene;
    World& world = scene.world;
    const merge::Ledger example = world.all;
    const auto exported = [&] {
        keys::Bytes bytes = volumeOf(world.all);
        world.all = example;
        return bytes;
    };
    const keys::SigningKey phone = signerOf(0x62);
    journal::Vouch vouch;
    vouch.person = world.preceptorId;
    vouch.name = "Invented Preceptor";
    vouch.site = "South Pavilion";
    vouch.keyKind = journal::KeyKind::Device;
    vouch.key = phone.verifyKey();
    const auto sign = [&](std::uint8_t sheet) {
        journal::Statement statement = world.statement(world.studentId, idOf(sheet));
        statement.signer = {journal::SignerKind::Device, phone.verifyKey(), {}, 0, "Invented Preceptor", {}, {}, {}};
        world.append(world.student, world.studentId, journal::attest(statement, phone).value());
    };

    // A contact of one site, about a preceptor of another.
    const keys::DeviceKey contact = deviceOf(0x61);
    journal::Grant grant = world.grant(idOf(0x60), journal::Role::Contact, contact);
    grant.scopes = {"North Pavilion"};
    world.append(world.director, world.programStream, grant);
    world.append(contact, world.programStream, vouch);
    files["vouch-out-of-scope.export"] = exported();

    // An instructor of another class, about a student's phone.
    grant = world.grant(world.secondInstructorId, journal::Role::Instructor, world.secondInstructor);
    grant.scopes = {"Class of 2028"};
    world.append(world.director, world.programStream, grant);
    journal::Revoke revoke;
    revoke.feed = scene.studentFeed;
    revoke.reason = "Lost on the bus.";
    world.append(world.secondInstructor, world.studentId, revoke);
    files["revocation-out-of-scope.export"] = exported();

    // A preceptor's phone is ended; what was delivered before stays good, what comes afterward does not.
    world.append(world.instructor, world.programStream, vouch);
    sign(0x52);
    REQUIRE(world.receipt(world.instructor, world.studentId).has_value());
    journal::Revoke ended;
    ended.feed = {phone.verifyKey(), world.programStream};
    ended.reason = "Somebody else knows its PIN.";
    world.append(world.instructor, world.programStream, ended);
    sign(0x53);
    files["revoked-signing-phone.export"] = exported();

    // The same of a card.
    vouch.keyKind = journal::KeyKind::Card;
    vouch.key = world.card.verifyKey();
    vouch.card = idOf(0x45);
    vouch.epoch = 1;
    world.append(world.instructor, world.programStream, vouch);
    const auto signWithCard = [&](std::uint8_t sheet) {
        journal::Statement statement = world.statement(world.studentId, idOf(sheet));
        statement.signer = {
            journal::SignerKind::Card, world.card.verifyKey(), vouch.card, 1, "Invented Preceptor", {}, {}, {}};
        world.append(world.student, world.studentId, journal::attest(statement, world.card).value());
    };
    signWithCard(0x52);
    REQUIRE(world.receipt(world.instructor, world.studentId).has_value());
    ended.target = journal::KeyKind::Card;
    ended.feed = {};
    ended.card = vouch.card;
    ended.epoch = 1;
    world.append(world.instructor, world.programStream, ended);
    signWithCard(0x53);
    files["revoked-card.export"] = exported();
}

/// Every entry verifies, and not all of them count.
void addBadHistories(std::map<std::string, keys::Bytes>& files)
{
    Wrongdoers scene;
    World& world = scene.world;
    const merge::Ledger example = world.all;
    const journal::FeedId& student = scene.studentFeed;
    const auto exported = [&](const merge::Ledger& ledger) {
        keys::Bytes bytes = volumeOf(ledger);
        world.all = example;
        return bytes;
    };

    // A stranger's receipt for an entry that never was proves no cut.
    journal::Receipt receipt;
    receipt.items = {{student.device, 7, {}}};
    world.append(deviceOf(0x61), world.studentId, receipt);
    files["receipt-without-grant.export"] = exported(world.all);

    // Another student, in the first one's stream.
    world.append(world.instructor, world.otherStudentId,
                 world.grant(world.otherStudentId, journal::Role::Student, world.otherStudent));
    for (const journal::KeptEntry& entry : example.feed(student)->trunk().entries) {
        world.append(world.otherStudent, world.studentId, journal::decode(student, 0, entry).payload);
    }
    files["signed-again-by-another.export"] = exported(world.all);

    const auto& entries = example.feed(student)->trunk().entries;
    const auto other =
        write(world, {student, 2, entries[1].link}, journal::Withdrawn{idOf(0x51), "Entered twice."}, world.student);
    files["forked-feed.export"] = exported(offer(world.all, {student, 2, {keys::ByteView(other.bytes)}}).ledger);

    // The instructor takes back everything; what was receipted stays.
    journal::Revoke revoke;
    revoke.feed = student;
    revoke.reason = "Lost on the bus.";
    world.append(world.instructor, world.studentId, revoke);
    files["revoked-phone.export"] = exported(world.all);

    world.append(world.student, world.programStream,
                 world.grant(world.studentId, journal::Role::Instructor, deviceOf(0x61)));
    files["grant-by-student.export"] = exported(world.all);

    const keys::SigningKey stranger = signerOf(0x62);
    journal::Statement statement = world.statement(world.studentId, idOf(0x51));
    statement.signer = {journal::SignerKind::Device, stranger.verifyKey(), {}, 0, "Nobody", {}, {}, {}};
    world.append(world.student, world.studentId, journal::attest(statement, stranger).value());
    files["unknown-signer.export"] = exported(world.all);
}

std::string verdictOf(const keys::VerifyKey& program, const keys::Bytes& bytes)
{
    const auto read = parcel::readVolume(program, bytes);
    if (!read) {
        return std::string(journal::sentence(read.reason()));
    }
    const auto taken = merge::take(merge::Ledger(program), read.value().batch);
    if (!taken) {
        return std::string(journal::sentence(taken.reason()));
    }
    if (!taken.value().report.findings.empty()) {
        const merge::Finding& finding = taken.value().report.findings.front();
        return std::string(journal::word(finding.verdict)) + " at entry " + std::to_string(finding.seq) + ": " +
               std::string(journal::sentence(finding.reason));
    }
    const merge::Ledger& ledger = taken.value().ledger;
    const trust::Authority authority = ledger.authority();
    const auto heads = merge::contents(ledger).heads;
    const auto found = merge::contradictions(authority, ledger, heads);
    if (!found.empty()) {
        return "cut after entry " + std::to_string(found.front().shown - 1);
    }
    std::string verdict = "fine";
    for (const auto& [id, feed] : ledger.feeds()) {
        journal::eachEntry(feed, nullptr, [&](const journal::Decoded& entry) {
            const trust::Judgment judgment = authority.judge(entry);
            if (verdict == "fine" && judgment.standing != trust::Judgment::Standing::Counts) {
                const bool aside = judgment.standing == trust::Judgment::Standing::Aside;
                verdict = std::string(aside ? "aside" : "refused") + " entry " + std::to_string(entry.position.seq) +
                          ": " + std::string(journal::sentence(judgment.reason));
            }
        });
    }
    return verdict;
}

} // namespace

TEST_CASE("Bad exports get the verdicts that are written beside them", "[format]")
{
    const World world;
    std::ifstream verdicts(folder + "verdicts.txt");
    std::map<std::string, std::string> expected;
    for (std::string line; std::getline(verdicts, line);) {
        const std::size_t colon = line.find(": ");
        REQUIRE(colon != std::string::npos);
        expected[line.substr(0, colon)] = line.substr(colon + 2);
    }
    auto files = makeBadExports();
    addBadEntries(files);
    addBadHistories(files);
    addBadScopes(files);
    std::ostringstream actual;
    std::size_t agreed = 0;
    for (const auto& [name, bytes] : files) {
        actual << name << ": " << verdictOf(world.program, bytes) << '\n';
        INFO(name);
        const auto said = expected.find(name);
        CHECK((said != expected.end() && said->second == verdictOf(world.program, bytes)));
        agreed += said != expected.end() && said->second == verdictOf(world.program, bytes) ? 1U : 0U;
        std::ifstream file(folder + name, std::ios::binary);
        std::ostringstream content;
        content << file.rdbuf();
        const bool same = content.str() == std::string(bytes.begin(), bytes.end());
        CHECK(same);
        if (!same) {
            std::ofstream(name + ".actual", std::ios::binary)
                .write(reinterpret_cast<const char*>(bytes.data()), static_cast<std::streamsize>(bytes.size()));
        }
    }
    if (agreed != files.size()) {
        std::ofstream("verdicts.txt.actual") << actual.str();
    }
    CHECK(expected.size() == files.size());
}

} // namespace peelpack::test
