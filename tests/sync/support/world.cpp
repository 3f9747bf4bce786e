#include "tests/sync/support/world.h"

#include "sync/keys/hash.h"
#include "sync/keys/little_endian.h"
#include "sync/merge/contents.h"
#include "sync/merge/receipts.h"
#include "tests/sync/support/catch.h"

namespace peelpack::test {

void SeededRandom::fill(std::span<std::uint8_t> bytes)
{
    for (std::size_t at = 0; at < bytes.size(); ++m_block) {
        const std::array<std::uint8_t, 1> seed{m_seed};
        const keys::Hash block = keys::hash("peelpack.testrnd", {seed, keys::littleEndian(m_block)});
        for (std::size_t i = 0; i < keys::Hash::size && at < bytes.size(); ++i, ++at) {
            bytes[at] = block.bytes.at(i);
        }
    }
}

keys::Id idOf(std::uint8_t byte)
{
    keys::Id id;
    id.bytes.fill(byte);
    return id;
}

keys::SigningKey signerOf(std::uint8_t byte)
{
    return keys::SigningKey::fromSeed(keys::Bytes(keys::SigningKey::seedBytes, byte)).value();
}

keys::DeviceKey deviceOf(std::uint8_t byte)
{
    const keys::DeviceSeeds seeds{keys::Secret(keys::Bytes(32, byte)),
                                  keys::Secret(keys::Bytes(32, static_cast<std::uint8_t>(byte + 1)))};
    return keys::deviceKey(seeds).value();
}

journal::Time minute(std::int64_t minutes)
{
    constexpr std::int64_t start = 1'772'366'400;
    return {start + 60 * minutes, -300};
}

namespace {

keys::SigningKey exampleProgramKey()
{
    keys::Bytes code(keys::codeSecretBytes);
    for (std::size_t i = 0; i < code.size(); ++i) {
        code[i] = static_cast<std::uint8_t>(i);
    }
    return keys::programKey(code).value();
}

} // namespace

World::World()
    : programKey(exampleProgramKey()), program(programKey.verifyKey()), programStream(keys::programStream(program)),
      all(program)
{
}

journal::Position World::append(const keys::DeviceKey& device, const keys::Id& stream, const journal::Payload& payload,
                                const journal::EntryContext& context)
{
    const journal::FeedId feed = feedOf(device, stream);
    const journal::Place place = all.next(feed);
    const auto entry = journal::writeEntry(program, place, context, payload, device.signing);
    INFO(journal::sentence(entry.reason()));
    REQUIRE(entry.ok());
    merge::Batch batch;
    batch.runs.push_back({feed, place.seq, {keys::ByteView(entry.value().bytes)}});
    auto taken = merge::take(all, batch);
    REQUIRE(taken.ok());
    REQUIRE(taken.value().report.taken == 1);
    all = std::move(taken).value().ledger;
    return {feed, place.seq, entry.value().link.hash};
}

journal::Position World::append(const keys::DeviceKey& device, const keys::Id& stream, const journal::Payload& payload)
{
    return append(device, stream, payload, {minute(m_minute++), std::nullopt});
}

void World::certify(std::uint32_t epoch, const trust::CertificateContent& content)
{
    const auto bytes = trust::writeCertificate(programKey, epoch, content);
    REQUIRE(bytes.ok());
    merge::Batch batch;
    batch.certificates.emplace_back(bytes.value());
    auto taken = merge::take(all, batch);
    REQUIRE(taken.ok());
    all = std::move(taken).value().ledger;
}

journal::Grant World::grant(const keys::Id& person, journal::Role role, const keys::DeviceKey& device) const
{
    journal::Grant grant;
    grant.person = person;
    grant.role = role;
    grant.device = device.signing.verifyKey();
    grant.seal = device.opening.sealKey();
    grant.name = "Invented Name";
    grant.scopes = {"Class of 2027"};
    return grant;
}

void World::setUp()
{
    certify(1, trust::DirectorCertificate{idOf(0x10), director.signing.verifyKey(), director.opening.sealKey(),
                                          "Invented Director"});
    journal::Policy policy;
    policy.requirementSet = "cap15";
    policy.term = "Spring 2026";
    policy.firstDay = *base::Date::fromIso("2026-01-12");
    policy.lastDay = *base::Date::fromIso("2026-05-08");
    policy.counted = 3;
    policy.wording = 1;
    append(director, programStream, policy);
    append(director, programStream, grant(instructorId, journal::Role::Instructor, instructor));
    append(director, programStream, grant(secondInstructorId, journal::Role::Instructor, secondInstructor));
    journal::Vouch vouch;
    vouch.person = preceptorId;
    vouch.name = "Invented Preceptor";
    vouch.credential = "CST";
    vouch.site = "North Pavilion";
    vouch.keyKind = journal::KeyKind::Card;
    vouch.key = card.verifyKey();
    vouch.card = cardId;
    vouch.epoch = 1;
    append(instructor, programStream, vouch);
    append(instructor, studentId, grant(studentId, journal::Role::Student, student));
    append(instructor, otherStudentId, grant(otherStudentId, journal::Role::Student, otherStudent));
}

journal::Statement World::statement(const keys::Id& who, const keys::Id& sheet) const
{
    const journal::Draft content = draft();
    journal::Statement statement;
    statement.program = program;
    statement.student = who;
    statement.operation = idOf(0x50);
    statement.sheet = sheet;
    statement.procedures = content.procedures;
    statement.head = content.head;
    statement.marks = content.marks;
    statement.feedback = "Calm and ahead of the surgeon.";
    statement.locale = "en-US";
    statement.wording = 1;
    statement.meaning = "I scrubbed with this student and these are my marks.";
    statement.signer.kind = journal::SignerKind::Card;
    statement.signer.key = card.verifyKey();
    statement.signer.card = cardId;
    statement.signer.epoch = 1;
    statement.signer.name = "Invented Preceptor";
    statement.signer.credential = "CST";
    statement.time = minute(5);
    return statement;
}

journal::Position World::sheet(const keys::DeviceKey& device, const keys::Id& who, const keys::Id& sheet)
{
    append(device, who, journal::SheetOpened{sheet, idOf(0x50), draft()});
    append(device, who, journal::attest(statement(who, sheet), card).value());
    return append(device, who, journal::Logged{sheet, {{0, "general", 0}}});
}

std::optional<journal::Position> World::receipt(const keys::DeviceKey& device, const keys::Id& stream)
{
    const auto owed = merge::receiptFor(all.authority(), all, device.signing.verifyKey(), stream, {});
    REQUIRE(owed.ok());
    if (!owed.value()) {
        return std::nullopt;
    }
    return append(device, stream, *owed.value());
}

merge::Taken offer(const merge::Ledger& ledger, const merge::Run& run)
{
    merge::Batch batch;
    batch.runs.push_back(run);
    auto taken = merge::take(ledger, batch);
    REQUIRE(taken.ok());
    return std::move(taken).value();
}

journal::SignedEntry write(const World& world, const journal::Place& place, const journal::Payload& payload,
                           const keys::DeviceKey& device, std::int64_t minutes)
{
    auto entry = journal::writeEntry(world.program, place, {minute(minutes), std::nullopt}, payload, device.signing);
    INFO(journal::sentence(entry.reason()));
    REQUIRE(entry.ok());
    return std::move(entry).value();
}

journal::Draft draft()
{
    journal::Draft draft;
    draft.procedures = {"Laparoscopic cholecystectomy"};
    draft.head.date = *base::Date::fromIso("2026-03-01");
    draft.head.surgeon = "Invented Surgeon";
    draft.head.site = "North Pavilion";
    draft.head.room = "4";
    draft.head.start = 450;
    for (const sheet::Skill skill : sheet::allSkills) {
        draft.marks.push_back({skill, sheet::Mark::Yes, {}});
    }
    draft.marks.back() = {sheet::Skill::Camera, sheet::Mark::NotApplicable, "held by the second assistant"};
    return draft;
}

journal::Act act(const keys::Id& sheet, const keys::Hash& standsOn, std::string reason)
{
    return {sheet, standsOn, keys::Hash{}, std::move(reason)};
}

keys::Bytes volumeOf(const keys::VerifyKey& program, const merge::Batch& batch)
{
    auto volumes = parcel::writeVolumes(program, batch);
    REQUIRE(volumes.ok());
    REQUIRE(volumes.value().size() == 1);
    return std::move(volumes).value().front();
}

keys::Bytes volumeOf(const merge::Ledger& ledger)
{
    return volumeOf(ledger.program(), merge::contents(ledger));
}

merge::Taken fromVolume(const keys::VerifyKey& program, keys::ByteView volume)
{
    const auto read = parcel::readVolume(program, volume);
    INFO(journal::sentence(read.reason()));
    REQUIRE(read.ok());
    auto taken = merge::take(merge::Ledger(program), read.value().batch);
    REQUIRE(taken.ok());
    return std::move(taken).value();
}

trust::Judgment judgment(const merge::Ledger& ledger, const journal::Position& position)
{
    const journal::Feed* feed = ledger.feed(position.feed);
    REQUIRE(feed != nullptr);
    const journal::KeptEntry* kept = feed->find(position.seq, position.hash);
    REQUIRE(kept != nullptr);
    return ledger.authority().judge(journal::decode(position.feed, position.seq, *kept));
}

merge::Run runOf(const merge::Ledger& ledger, const journal::FeedId& feed, std::uint32_t from)
{
    merge::Run run{feed, from, {}};
    const auto& entries = ledger.feed(feed)->trunk().entries;
    for (std::size_t i = from; i < entries.size(); ++i) {
        run.entries.emplace_back(entries[i].bytes);
    }
    return run;
}

} // namespace peelpack::test
