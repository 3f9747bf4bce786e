#include "tests/fuzz/support/program.h"

#include "sync/journal/fork.h"
#include "sync/keys/card.h"
#include "sync/keys/code.h"

#include <cstdio>
#include <cstdlib>
#include <numeric>

namespace peelpack::fuzz {
namespace {

constexpr std::uint8_t directorSeed = 0x11;
constexpr std::uint8_t instructorSeed = 0x21;
constexpr std::uint8_t studentSeed = 0x31;
constexpr std::uint8_t cardSeed = 0x44;
constexpr std::uint8_t preceptorSeed = 0x46;
constexpr journal::Time noon{1'772'366'400, -300};

keys::Bytes seed(std::uint8_t byte)
{
    return keys::Bytes(keys::SigningKey::seedBytes, byte);
}

keys::SigningKey signingKey(std::uint8_t byte)
{
    return keys::SigningKey::fromSeed(seed(byte)).value();
}

keys::DeviceKey deviceKey(std::uint8_t byte)
{
    const keys::DeviceSeeds seeds{keys::Secret(seed(byte)), keys::Secret(seed(static_cast<std::uint8_t>(byte + 1)))};
    return keys::deviceKey(seeds).value();
}

keys::SigningKey exampleProgramKey()
{
    keys::Bytes code(keys::codeSecretBytes);
    std::iota(code.begin(), code.end(), std::uint8_t{0});
    return keys::programKey(code).value();
}

template <class T>
T must(journal::Checked<T> checked)
{
    require(checked.ok(), "the targets' own program can be written");
    return std::move(checked).value();
}

} // namespace

void require(bool holds, const char* property)
{
    if (!holds) {
        std::fprintf(stderr, "Does not hold: %s.\n", property);
        std::abort();
    }
}

keys::Id idOf(std::uint8_t byte)
{
    keys::Id id;
    id.bytes.fill(byte);
    return id;
}

Program::Program()
    : key(exampleProgramKey()), id(key.verifyKey()), stream(keys::programStream(id)), director(deviceKey(directorSeed)),
      instructor(deviceKey(instructorSeed)), student(deviceKey(studentSeed)), card(signingKey(cardSeed)),
      preceptor(signingKey(preceptorSeed)), ledger(id)
{
    const keys::Bytes certificate = must(trust::writeCertificate(
        key, 1,
        trust::DirectorCertificate{directorId, director.signing.verifyKey(), director.opening.sealKey(), "Director"}));
    merge::Batch batch;
    batch.certificates.emplace_back(certificate);
    ledger = must(merge::take(std::move(ledger), batch)).ledger;
    append(director, stream, grant(instructorId, journal::Role::Instructor, instructor));
    append(instructor, stream, vouch());
    append(instructor, studentId, grant(studentId, journal::Role::Student, student));
    append(student, studentId, journal::SheetOpened{sheet, idOf(0x50), draft()});
    append(student, studentId, must(journal::attest(statement(journal::SignerKind::Card), card)));
    const journal::Feed& feed = *ledger.feed(studentFeed());
    append(instructor, studentId, journal::Receipt{{{studentFeed().device, feed.count() - 1, feed.head().hash}}, 1});
}

void Program::append(const keys::DeviceKey& device, const keys::Id& in, const journal::Payload& payload)
{
    const journal::Place place = ledger.next({device.signing.verifyKey(), in});
    const auto entry = must(journal::writeEntry(id, place, {noon, std::nullopt}, payload, device.signing));
    merge::Batch batch;
    batch.runs.push_back({place.feed, place.seq, {keys::ByteView(entry.bytes)}});
    merge::Taken taken = must(merge::take(std::move(ledger), batch));
    require(taken.report.taken == 1, "the targets' own entries are taken");
    ledger = std::move(taken.ledger);
}

keys::Bytes Program::seedOf(const keys::VerifyKey& device) const
{
    if (device == director.signing.verifyKey()) {
        return seed(directorSeed);
    }
    if (device == instructor.signing.verifyKey()) {
        return seed(instructorSeed);
    }
    return device == student.signing.verifyKey() ? seed(studentSeed) : keys::Bytes();
}

journal::Grant Program::grant(const keys::Id& person, journal::Role role, const keys::DeviceKey& device) const
{
    return {person, role, device.signing.verifyKey(), device.opening.sealKey(), "Name", {"2027"}, std::nullopt};
}

journal::Vouch Program::vouch() const
{
    return {preceptorId, "Preceptor", "CST", "North", journal::KeyKind::Card, card.verifyKey(), cardId, 1};
}

journal::Draft Program::draft() const
{
    journal::Draft draft;
    draft.procedures = {"Appendectomy"};
    draft.head.date = *base::Date::fromIso("2026-03-01");
    draft.head.site = "North";
    draft.head.start = 450;
    draft.marks = {{sheet::Skill::Setup, sheet::Mark::Yes, {}},
                   {sheet::Skill::Camera, sheet::Mark::NotApplicable, "held by another"}};
    return draft;
}

journal::Statement Program::statement(journal::SignerKind kind) const
{
    const journal::Draft marked = draft();
    journal::Statement statement;
    statement.program = id;
    statement.student = studentId;
    statement.operation = idOf(0x50);
    statement.sheet = sheet;
    statement.procedures = marked.procedures;
    statement.head = marked.head;
    statement.marks = marked.marks;
    statement.feedback = "Calm.";
    statement.locale = "en-US";
    statement.wording = 1;
    statement.meaning = "These are my marks.";
    statement.signer.kind = kind;
    statement.signer.name = "Preceptor";
    statement.signer.credential = "CST";
    statement.time = noon;
    switch (kind) {
    case journal::SignerKind::Card:
        statement.signer.key = card.verifyKey();
        statement.signer.card = cardId;
        statement.signer.epoch = 1;
        break;
    case journal::SignerKind::Device:
        statement.signer.key = preceptor.verifyKey();
        break;
    case journal::SignerKind::Drawn:
        statement.signer.key = student.signing.verifyKey();
        statement.signer.strokes = {1, 2, 3, 4};
        break;
    case journal::SignerKind::Paper:
        statement.signer.key = student.signing.verifyKey();
        statement.signer.stub = "7QF";
        break;
    }
    return statement;
}

std::vector<journal::Payload> Program::payloads() const
{
    const journal::Feed& feed = *ledger.feed(studentFeed());
    const journal::Position last{studentFeed(), feed.count() - 1, feed.head().hash};
    const journal::Act act{sheet, {}, last.hash, "Compared with the chart."};
    const journal::SkillMark wanted{sheet::Skill::Pass, sheet::Mark::Yes, {}};
    const journal::Choice choice{0, "general", 0};

    journal::Policy policy;
    policy.requirementSet = "cap15";
    policy.term = "Spring";
    policy.firstDay = draft().head.date;
    policy.lastDay = draft().head.date;
    policy.counted = 3;
    policy.wording = 1;
    journal::Revoke revoke;
    revoke.feed = studentFeed();
    revoke.accepted = 1;
    revoke.reason = "Lost.";

    // Another history of the student's last entry.
    const journal::Place place{studentFeed(), last.seq, feed.trunk().entries[last.seq - 1].link};
    const auto other = must(
        journal::writeEntry(id, place, {noon, std::nullopt}, journal::Withdrawn{sheet, "Twice."}, student.signing));
    return {
        grant(studentId, journal::Role::Student, student),
        revoke,
        vouch(),
        policy,
        journal::RequirementsChange{{}, "2027", draft().head.date, "cap15", {}, "Other rooms."},
        journal::ClinicalDays{{}, "2027", {{draft().head.date, "North", 420, 900}, {draft().head.date, "South"}}},
        journal::Sites{{}, {{"North", journal::PhoneRule::LoungeOnly, "Ask the desk."}, {"South", {}, {}}}},
        journal::WhoMaySign{{}, {{"CST", journal::signsEveryRole}, {"RN", journal::signsObservation}}},
        journal::PreceptorStanding{{}, preceptorId, draft().head.date, true},
        journal::CatalogueOverlay{{}, {'i', 'd', '\n'}},
        journal::SheetOpened{sheet, idOf(0x50), draft()},
        journal::HeadChanged{sheet, idOf(0x50), draft()},
        journal::Withdrawn{sheet, "Twice."},
        must(journal::attest(statement(journal::SignerKind::Card), card)),
        journal::Logged{sheet, {choice}},
        journal::ReviewAsked{sheet, wanted, "I passed."},
        journal::HandOverEnded{sheet, noon, noon, 2, journal::HandOverCause::WrongPin},
        journal::Declined{sheet, "Was not there."},
        journal::Initial{act, true},
        journal::Return{act},
        journal::ReviewAccepted{act, last.hash, wanted},
        journal::Amend{act, {wanted}, draft().head, {"Appendectomy"}},
        journal::Refile{act, {choice}},
        journal::Void{act},
        journal::Complete{"cap15", {}, last},
        journal::CompleteByException{"cap15", {}, last, 120, 118, "Closed rooms."},
        journal::Imported{sheet,
                          idOf(0x50),
                          {"Appendectomy"},
                          draft().head,
                          {choice},
                          journal::ImportedRole::Second,
                          "Preceptor",
                          "CST",
                          "paper log, page 3"},
        journal::Receipt{{{last.feed.device, last.seq, last.hash}}, 1},
        journal::CardStatement{cardId, 1, draft().head.date, draft().head.date, {{last.hash, true}}},
        journal::ForkFound{journal::evidence(studentFeed(), last.seq, feed.head(), other.link)},
        journal::Admit{last, "Seen."},
    };
}

const Program& program()
{
    static const Program made;
    return made;
}

std::span<const std::uint16_t> knownKinds()
{
    static const std::vector<std::uint16_t> kinds = [] {
        std::vector<std::uint16_t> found;
        for (std::uint16_t kind = 0; kind < 256; ++kind) {
            if (journal::isKnown(kind)) {
                found.push_back(kind);
            }
        }
        return found;
    }();
    return kinds;
}

std::uint16_t kindOf(const journal::Payload& payload)
{
    return std::visit(
        []<class T>(const T& /*value*/) {
            if constexpr (std::is_same_v<T, journal::Unread>) {
                return std::uint16_t{0};
            } else {
                return static_cast<std::uint16_t>(T::kind);
            }
        },
        payload);
}

void requireSameBytes(const journal::Payload& payload, keys::ByteView bytes)
{
    const auto again = journal::encode(payload);
    require(again.ok(), "what was read can be written");
    require(std::equal(again.value().begin(), again.value().end(), bytes.begin(), bytes.end()),
            "there is one way to write a payload");
}

} // namespace peelpack::fuzz
