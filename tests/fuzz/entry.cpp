#include "sync/journal/decoded.h"
#include "tests/fuzz/support/program.h"

// An entry from anywhere: taken apart, its payload read, offered to a feed as it is, and signed by the feed's own
// device, so that what lies behind the signature is reached too.
namespace peelpack::fuzz {
namespace {

using journal::Verdict;

/// What an entry says before its signature, whatever the bytes: an entry's body, or else a kind and a payload.
struct Said {
    journal::EntryContext context;
    std::uint16_t kind = 0;
    keys::ByteView payload;
};

Said saidBy(keys::ByteView bytes)
{
    if (const auto parts = journal::takeApart(bytes)) {
        return {parts.value().context, parts.value().kind, parts.value().payload};
    }
    if (bytes.size() < 2) {
        return {};
    }
    return {{}, static_cast<std::uint16_t>(bytes[0] | bytes[1] << 8U), bytes.subspan(2)};
}

void offerAsItIs(const journal::Feed& feed, keys::ByteView bytes)
{
    const auto parts = journal::takeApart(bytes);
    for (const std::uint32_t seq : {std::uint32_t{0}, feed.count(), feed.count() + 1}) {
        const journal::Applied applied = journal::apply(feed, program().id, {seq, bytes, std::nullopt});
        require(applied.verdict != Verdict::Aside, "the fold leaves authority alone");
        require(parts.ok() || applied.reason == parts.reason(), "what has no form is refused for it");
        require(applied.verdict != Verdict::Taken || seq == feed.count(), "only the next entry makes a feed longer");
        require(applied.verdict != Verdict::Gap || seq == feed.count() + 1, "only what comes too early waits");
    }
}

/// The feed's own device says it, at `place`.
void offerSigned(const journal::Feed& feed, const keys::DeviceKey& device, const Said& said, std::uint32_t seq)
{
    const journal::Link previous = seq == 0 ? journal::Link{} : feed.trunk().entries[seq - 1].link;
    const auto written = journal::writeRawEntry(program().id, {feed.id(), seq, previous}, said.context, said.kind,
                                                said.payload, device.signing);
    if (!written) {
        return;
    }
    const keys::Bytes& bytes = written.value().bytes;
    const journal::Applied applied = journal::apply(feed, program().id, {seq, bytes, std::nullopt});
    if (applied.verdict == Verdict::Refused) {
        require(applied.reason != journal::Reason::BadSignature ||
                    said.kind == static_cast<std::uint16_t>(journal::Kind::Attestation),
                "what the feed's device signed verifies");
        return;
    }
    const Verdict expected = seq < feed.count() ? Verdict::Forked : Verdict::Taken;
    require(applied.verdict == expected || applied.verdict == Verdict::Known, "an entry goes where it fits");
    require(applied.link == written.value().link, "writer and reader agree about the hash");
    require(applied.verdict != Verdict::Forked || journal::holds(*applied.evidence), "evidence of a fork holds");
    const journal::Applied twice = journal::apply(applied.feed, program().id, {seq, bytes, std::nullopt});
    require(twice.verdict == Verdict::Known, "an entry that is held is known");
    const journal::KeptEntry* kept = applied.feed.find(seq, applied.link.hash);
    require(kept != nullptr && kept->bytes == bytes, "an entry is kept as it was signed");
    require(journal::decode(feed.id(), seq, *kept).kind == said.kind, "what is kept can be read");
    journal::Feed again = feed;
    const journal::Outcome reopened = journal::applyKeptTo(again, program().id, {seq, bytes, std::nullopt});
    require(reopened.link == applied.link && reopened.verdict == applied.verdict, "what was kept opens as it was");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const keys::ByteView bytes(data, size);
    const Said said = saidBy(bytes);
    if (const auto payload = journal::decodePayload(said.kind, said.payload)) {
        if (journal::isKnown(said.kind)) {
            requireSameBytes(payload.value(), said.payload);
        }
    }
    const Program& known = program();
    const journal::Feed& student = *known.ledger.feed(known.studentFeed());
    offerAsItIs(student, bytes);
    offerSigned(student, known.student, said, student.count());
    offerSigned(student, known.student, said, 0);
    const journal::Feed& staff = *known.ledger.feed({known.instructor.signing.verifyKey(), known.stream});
    offerSigned(staff, known.instructor, said, staff.count());
    return 0;
}

} // namespace peelpack::fuzz
