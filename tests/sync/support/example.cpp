#include "tests/sync/support/example.h"

#include "sync/carry/frame_source.h"
#include "sync/keys/hash.h"
#include "sync/keys/invitation.h"
#include "sync/keys/little_endian.h"
#include "sync/keys/password.h"
#include "tests/sync/support/catch.h"

namespace peelpack::test {
namespace {

/// Every call fills with the next number: 0x71, 0x72, 0x73.
class CountingRandom final : public keys::RandomSource {
public:
    void fill(std::span<std::uint8_t> bytes) override
    {
        std::fill(bytes.begin(), bytes.end(), m_next);
        ++m_next;
    }

private:
    std::uint8_t m_next = 0x71;
};

class Listing {
public:
    void add(const std::string& name, keys::ByteView bytes)
    {
        constexpr std::size_t digitsInLine = 116;
        m_text += name + " (" + std::to_string(bytes.size()) + " bytes)\n";
        const std::string digits = keys::hex(bytes);
        for (std::size_t at = 0; at < digits.size(); at += digitsInLine) {
            m_text += "    " + digits.substr(at, digitsInLine) + '\n';
        }
    }
    void addText(const std::string& name, const std::string& value) { m_text += name + "\n    " + value + '\n'; }
    [[nodiscard]] const std::string& text() const { return m_text; }

private:
    std::string m_text;
};

std::string asText(const keys::Secret& secret)
{
    return {secret.view().begin(), secret.view().end()};
}

void addEntry(Listing& listing, const std::string& name, const World& world, const journal::Position& position,
              const journal::Link& previous)
{
    const journal::KeptEntry& kept = *world.all.feed(position.feed)->find(position.seq, position.hash);
    const keys::ByteView body = journal::takeApart(kept.bytes).value().body;
    listing.add(name + ": body", body);
    listing.add(name + ": hash",
                journal::entryHash(world.program, {position.feed, position.seq, previous}, body).view());
    listing.add(name + ": head statement", journal::headStatement(position.feed, position.seq, position.hash));
    listing.add(name + ": sig", kept.link.signature.view());
}

/// The last plain frame and the first spare one.
void addLight(Listing& listing, const keys::Bytes& parcel)
{
    const carry::FrameSource source = carry::FrameSource::of(parcel).value();
    for (const int number : {source.count() - 1, int{source.count()}}) {
        listing.add("frame " + std::to_string(number) + " of that parcel by light, in " +
                        std::to_string(source.count()) + " pieces",
                    source.frame(static_cast<std::uint16_t>(number)));
    }
    const carry::PieceSet chosen = carry::piecesOf(source.parcel(), source.count(), source.count());
    std::string pieces;
    for (unsigned i = 0; i < source.count(); ++i) {
        if (((chosen.front() >> i) & 1U) != 0) {
            pieces += (pieces.empty() ? "" : " ") + std::to_string(i);
        }
    }
    listing.addText("pieces in it", pieces);
}

} // namespace

Example makeExample()
{
    World world;
    Listing listing;

    keys::Bytes code(keys::codeSecretBytes);
    for (std::size_t i = 0; i < code.size(); ++i) {
        code[i] = static_cast<std::uint8_t>(i);
    }
    listing.add("program code", code);
    listing.addText("program code as text", asText(keys::codeText(keys::CodeSort::Program, code)));
    listing.addText("the same bytes as a vault code", asText(keys::codeText(keys::CodeSort::Vault, code)));
    listing.add("program id", world.program.view());
    listing.add("program stream id", world.programStream.view());

    keys::SigningCard card;
    card.programStream = world.programStream;
    card.card = world.cardId;
    card.epoch = 1;
    card.secret = keys::Secret(keys::Bytes(keys::SigningCard::secretBytes, 0x41));
    const keys::SigningKey cardKey = keys::cardKey(card, world.program, "27182818").value();
    listing.add("signing card", card.code().view());
    listing.add("signing card with PIN 27182818: public key", cardKey.verifyKey().view());

    keys::Invitation invitation;
    invitation.program = world.program;
    invitation.inviterDevice = world.instructor.signing.verifyKey();
    invitation.inviterSeal = world.instructor.opening.sealKey();
    invitation.person = world.studentId;
    invitation.role = 4;
    invitation.secret = keys::Secret(keys::Bytes(keys::Invitation::secretBytes, 0x61));
    invitation.expiry = minute(60).seconds;
    const keys::InvitationReply reply = keys::answer(invitation, world.student);
    listing.add("invitation", invitation.code().view());
    listing.add("reply", reply.code());
    listing.addText("six digits", keys::comparisonDigits(invitation, reply));

    world.certify(1, trust::DirectorCertificate{idOf(0x10), world.director.signing.verifyKey(),
                                                world.director.opening.sealKey(), "Invented Director"});
    listing.add("director certificate", world.all.certificates().front().bytes);
    world.append(world.director, world.programStream,
                 world.grant(world.instructorId, journal::Role::Instructor, world.instructor));
    world.append(world.instructor, world.studentId,
                 world.grant(world.studentId, journal::Role::Student, world.student));

    journal::Draft draft;
    draft.procedures = {"Open appendectomy"};
    draft.head.date = *base::Date::fromIso("2026-03-01");
    draft.head.site = "North Pavilion";
    draft.head.start = 450;
    const auto opened =
        world.append(world.student, world.studentId, journal::SheetOpened{idOf(0x51), idOf(0x50), draft});
    addEntry(listing, "student's entry 0 (sheet opened)", world, opened, {});

    journal::Statement statement = world.statement(world.studentId, idOf(0x51));
    statement.procedures = draft.procedures;
    statement.head = draft.head;
    statement.feedback.clear();
    statement.signer.key = cardKey.verifyKey();
    const journal::Attestation attestation = journal::attest(statement, cardKey).value();
    listing.add("attestation: statement", attestation.statement);
    listing.add("attestation: sig", attestation.signature.view());
    const journal::Link first = world.all.feed(opened.feed)->head();
    const auto attested = world.append(world.student, world.studentId, attestation);
    addEntry(listing, "student's entry 1 (attestation)", world, attested, first);

    const auto receipt = world.receipt(world.instructor, world.studentId);
    REQUIRE(receipt.has_value());
    const journal::EntryContext citing{minute(30), receipt};
    world.append(world.student, world.studentId, journal::Logged{idOf(0x51), {{0, "general", 0}}}, citing);

    // The student's phone, restored from a backup, wrote something else as entry 2.
    const journal::Link head = world.all.feed(attested.feed)->head();
    const journal::Place place{attested.feed, 2, world.all.feed(attested.feed)->trunk().entries[1].link};
    const auto other = journal::writeEntry(world.program, place, {minute(31), std::nullopt},
                                           journal::Withdrawn{idOf(0x51), "Entered twice."}, world.student.signing);
    listing.add("evidence of a fork at entry 2",
                journal::toBytes(journal::evidence(attested.feed, 2, head, other.value().link)));

    Example example;
    example.exported = volumeOf(world.all);
    listing.add("export, one volume", example.exported);
    CountingRandom random;
    const std::array recipients{world.instructor.opening.sealKey()};
    example.parcel = parcel::seal(example.exported, recipients, random).value();
    constexpr std::size_t untilChunks = 187;
    listing.add("parcel of that volume to the instructor: everything before the chunks",
                keys::ByteView(example.parcel).first(untilChunks));
    listing.add("H(32, -, the whole parcel)", keys::hash({}, {example.parcel}).view());
    addLight(listing, example.parcel);
    example.text = listing.text();
    return example;
}

} // namespace peelpack::test
