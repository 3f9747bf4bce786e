#include "tests/bench/bench_program.h"

#include "sync/journal/statement.h"
#include "sync/keys/card.h"
#include "sync/keys/code.h"
#include "sync/keys/hash.h"
#include "sync/keys/little_endian.h"

#include <cstdio>
#include <cstdlib>

namespace peelpack::bench {
namespace {

template <class Checked>
auto must(Checked&& checked)
{
    if (!checked.ok()) {
        std::fprintf(stderr, "The invented program cannot be written.\n");
        std::exit(1);
    }
    return std::forward<Checked>(checked).value();
}

constexpr std::array<const char*, 8> procedures{
    "Laparoscopic cholecystectomy", "Inguinal hernia repair", "Total knee replacement",  "Cesarean delivery",
    "Open reduction of the radius", "Tonsillectomy",          "Transurethral resection", "Cataract extraction"};
constexpr std::array<const char*, 8> categories{
    "general",     "general",         "orthopedics",   "obstetrics-gynecology",
    "orthopedics", "ear-nose-throat", "genitourinary", "eye"};
constexpr std::size_t sheetsInReceipt = 10;

const keys::SigningKey& cardOf(std::size_t number)
{
    static const std::vector<keys::SigningKey> cards = [] {
        std::vector<keys::SigningKey> made;
        for (std::uint8_t i = 0; i < 20; ++i) {
            made.push_back(must(keys::SigningKey::fromSeed(keys::Bytes(32, static_cast<std::uint8_t>(0x80 + i)))));
        }
        return made;
    }();
    return cards[number % cards.size()];
}

keys::Id cardIdOf(std::size_t number)
{
    keys::Id id;
    id.bytes.fill(static_cast<std::uint8_t>(1 + number % 20));
    return id;
}

std::string preceptorOf(std::size_t number)
{
    return "Invented Preceptor " + std::to_string(number % 20);
}

journal::Time timeOf(std::size_t number)
{
    return {1'772'366'400 + static_cast<std::int64_t>(number) * 3600, -300};
}

journal::Draft draftOf(std::size_t number)
{
    journal::Draft draft;
    draft.procedures = {procedures[number % procedures.size()]};
    draft.head.date = base::Date::fromDays(20'500 + static_cast<std::int32_t>(number % 120));
    draft.head.surgeon = "Invented Surgeon " + std::to_string(number % 30);
    draft.head.site = "North Pavilion";
    draft.head.room = std::to_string(1 + number % 12);
    draft.head.start = 450;
    draft.head.end = 555;
    for (const sheet::Skill skill : sheet::allSkills) {
        draft.marks.push_back({skill, sheet::Mark::Yes, {}});
    }
    if (number % 3 == 0) {
        draft.marks.back() = {sheet::Skill::Camera, sheet::Mark::NotApplicable, "held by the second assistant"};
    }
    return draft;
}

/// Writes entries as the devices of the program would.
class Author {
public:
    Author(BenchProgram& program) : m_program(program) {}

    journal::Position write(const keys::DeviceKey& device, const keys::Id& stream, const journal::Payload& payload,
                            const std::optional<journal::Position>& cites = std::nullopt)
    {
        const journal::FeedId feed{device.signing.verifyKey(), stream};
        const journal::Place place = m_program.ledger.next(feed);
        journal::SignedEntry entry = must(journal::writeEntry(
            m_program.ledger.program(), place, {timeOf(m_program.entries.size()), cites}, payload, device.signing));
        merge::append(m_program.ledger, place, entry);
        const journal::Position position{feed, place.seq, entry.link.hash};
        m_program.entries.push_back({feed, place.seq, std::move(entry.bytes)});
        return position;
    }

    journal::Grant grant(const keys::Id& person, journal::Role role, const keys::DeviceKey& device) const
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

private:
    BenchProgram& m_program;
};

} // namespace

void CountedRandom::fill(std::span<std::uint8_t> bytes)
{
    for (std::size_t at = 0; at < bytes.size(); ++m_count) {
        const keys::Hash block = keys::hash({}, {keys::littleEndian(m_count)});
        for (std::size_t i = 0; i < keys::Hash::size && at < bytes.size(); ++i, ++at) {
            bytes[at] = block.bytes.at(i);
        }
    }
}

SheetAndAttestation signedSheet(const keys::VerifyKey& program, const keys::Id& student, std::size_t number,
                                keys::RandomSource& random)
{
    SheetAndAttestation result;
    result.opened = {random.id(), random.id(), draftOf(number)};
    journal::Statement statement;
    statement.program = program;
    statement.student = student;
    statement.operation = result.opened.operation;
    statement.sheet = result.opened.sheet;
    statement.procedures = result.opened.draft.procedures;
    statement.head = result.opened.draft.head;
    statement.marks = result.opened.draft.marks;
    statement.feedback = number % 2 == 0 ? "Calm and ahead of the surgeon; count the sponges aloud." : "";
    statement.locale = "en-US";
    statement.wording = 1;
    statement.meaning = "I scrubbed on this case with this student. These are my own marks for what I saw.";
    statement.signer.kind = journal::SignerKind::Card;
    statement.signer.key = cardOf(number).verifyKey();
    statement.signer.card = cardIdOf(number);
    statement.signer.epoch = 1;
    statement.signer.name = preceptorOf(number);
    statement.signer.credential = "CST";
    statement.time = timeOf(number);
    result.attestation = must(journal::attest(statement, cardOf(number)));
    return result;
}

BenchProgram makeProgram(std::size_t students, std::size_t sheets, const keys::DeviceKey& taker)
{
    CountedRandom random;
    const keys::SigningKey programKey = must(keys::programKey(keys::Bytes(keys::codeSecretBytes, 7)));
    BenchProgram program(programKey.verifyKey());
    const keys::Id stream = keys::programStream(program.ledger.program());
    const keys::DeviceKey director = must(keys::deviceKey(keys::newDeviceSeeds(random)));
    const keys::DeviceKey instructor = must(keys::deviceKey(keys::newDeviceSeeds(random)));
    const keys::Bytes certificate =
        must(trust::writeCertificate(programKey, 1,
                                     trust::DirectorCertificate{random.id(), director.signing.verifyKey(),
                                                                director.opening.sealKey(), "Invented Director"}));
    merge::Batch first;
    first.certificates.emplace_back(certificate);
    program.ledger = must(merge::take(std::move(program.ledger), first)).ledger;

    Author author(program);
    author.write(director, stream, author.grant(random.id(), journal::Role::Instructor, instructor));
    author.write(director, stream, author.grant(random.id(), journal::Role::Instructor, taker));
    for (std::size_t i = 0; i < 20; ++i) {
        author.write(instructor, stream,
                     journal::Vouch{random.id(), preceptorOf(i), "CST", "North Pavilion", journal::KeyKind::Card,
                                    cardOf(i).verifyKey(), cardIdOf(i), 1});
    }
    for (std::size_t i = 0; i < students; ++i) {
        const keys::DeviceKey device = must(keys::deviceKey(keys::newDeviceSeeds(random)));
        const keys::Id student = random.id();
        program.students.push_back(student);
        author.write(instructor, student, author.grant(student, journal::Role::Student, device));
        std::optional<journal::Position> receipt;
        for (std::size_t sheet = 0; sheet < sheets; ++sheet) {
            const SheetAndAttestation written = signedSheet(program.ledger.program(), student, i + sheet, random);
            author.write(device, student, written.opened, receipt);
            author.write(device, student, written.attestation, receipt);
            const journal::Choice choice{0, categories[(i + sheet) % categories.size()], 0};
            const journal::Position last =
                author.write(device, student, journal::Logged{written.opened.sheet, {choice}}, receipt);
            if (sheet % sheetsInReceipt == sheetsInReceipt - 1) {
                receipt =
                    author.write(instructor, student, journal::Receipt{{{last.feed.device, last.seq, last.hash}}, 0});
            }
        }
    }
    return program;
}

std::vector<Signed> signaturesOf(const merge::Ledger& ledger)
{
    std::vector<Signed> found;
    for (const auto& [id, feed] : ledger.feeds()) {
        const auto add = [&](std::uint32_t seq, const journal::Link& link) {
            found.push_back({id.device, journal::headStatement(id, seq, link.hash), link.signature});
        };
        journal::eachTrunkEntry(feed, feed.count(), nullptr, [&](const journal::Decoded& entry) {
            add(entry.position.seq, entry.link);
            if (const auto* attestation = std::get_if<journal::Attestation>(&entry.payload)) {
                const journal::Statement statement = must(journal::decodeStatement(attestation->statement));
                found.push_back({statement.signer.key, attestation->statement, attestation->signature});
            }
        });
        add(feed.count() - 1, feed.head());
    }
    return found;
}

std::vector<vault::Change> changesOf(const BenchProgram& program, std::size_t each)
{
    std::vector<vault::Change> changes(1);
    for (const trust::Certificate& certificate : program.ledger.certificates()) {
        changes.back().certificates.push_back(certificate.bytes);
    }
    for (const vault::PlacedEntry& entry : program.entries) {
        if (changes.back().entries.size() == each) {
            changes.emplace_back();
        }
        changes.back().entries.push_back(entry);
    }
    return changes;
}

} // namespace peelpack::bench
