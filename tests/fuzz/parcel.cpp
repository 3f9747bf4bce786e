#include "sync/parcel/parcel.h"

#include "core/record/sheet_record.h"
#include "sync/keys/hash.h"
#include "sync/merge/actions.h"
#include "sync/merge/bounds.h"
#include "sync/merge/contents.h"
#include "sync/merge/receipts.h"
#include "sync/merge/reopen.h"
#include "sync/merge/student_events.h"
#include "sync/parcel/volume.h"
#include "sync/trust/policy.h"
#include "sync/trust/program_rules.h"
#include "tests/fuzz/support/program.h"
#include "tests/sync/support/sign_again.h"

#include <algorithm>
#include <deque>

// A file from anywhere: opened as a parcel, and read as a volume, whose digest is put right and whose entries are
// signed by the devices that they name, so that what lies behind seal, digest and signatures is reached too. What is
// taken in gives the same ledger whatever the order, and goes out and comes in again unchanged.
namespace peelpack::fuzz {
namespace {

/// One file of randomness for all parcels: the seal's own is not what is tested here.
class FixedRandom final : public keys::RandomSource {
public:
    void fill(std::span<std::uint8_t> bytes) override { std::fill(bytes.begin(), bytes.end(), std::uint8_t{0x71}); }
};

keys::Bytes asOne(const merge::Ledger& ledger)
{
    const auto volumes = parcel::writeVolumes(ledger.program(), merge::contents(ledger));
    require(volumes.ok() && volumes.value().size() == 1, "a small ledger is one volume");
    return volumes.value().front();
}

/// Out in small volumes and in again, last volume first.
void roundTrip(const merge::Ledger& ledger, const keys::Bytes& expected)
{
    constexpr std::size_t small = 8192;
    const auto volumes = parcel::writeVolumes(ledger.program(), merge::contents(ledger), small);
    if (!volumes) {
        require(volumes.reason() == journal::Reason::TooLarge, "only an entry that is too long is not written");
        return;
    }
    std::vector<merge::Batch> batches;
    for (auto volume = volumes.value().rbegin(); volume != volumes.value().rend(); ++volume) {
        require(volume->size() <= small, "a volume is as long as it may be");
        const auto read = parcel::readVolume(ledger.program(), *volume);
        require(read.ok(), "a volume that was written can be read");
        batches.push_back(read.value().batch);
    }
    const merge::TakenAll taken = merge::takeAll(merge::Ledger(ledger.program()), batches);
    require(taken.unusable.empty(), "a volume that was written can be taken in");
    require(asOne(taken.ledger) == expected, "a ledger comes back from its volumes as it was");
    merge::Batch kept = merge::contents(program().ledger);
    kept.certificates = merge::contents(ledger).certificates;
    const auto news = merge::newEntries(program().ledger, ledger);
    kept.runs.insert(kept.runs.end(), news.begin(), news.end());
    const auto reopened = merge::reopen(ledger.program(), kept);
    require(reopened.ok() && asOne(reopened.value().ledger) == expected, "a ledger reopens as it was");
    require(reopened.value().unfit.empty(), "what was kept fits");
}

/// Every question that the program asks of a ledger.
void workOut(const merge::Ledger& ledger)
{
    const trust::Authority authority = ledger.authority();
    const merge::Batch contents = merge::contents(ledger);
    for (const auto& [id, feed] : ledger.feeds()) {
        journal::eachEntry(feed, nullptr, [&](const journal::Decoded& entry) {
            const trust::Judgment judgment = authority.judge(entry);
            require((judgment.reason == journal::Reason::None) ==
                        (judgment.standing == trust::Judgment::Standing::Counts),
                    "what does not count has a reason");
            merge::boundsOf(authority, ledger, entry.position);
        });
        for (const journal::ForkEvidence& evidence : feed.evidence()) {
            require(journal::holds(evidence), "evidence of a fork holds");
        }
        merge::timeQuestions(authority, ledger, id);
        merge::actionsOf(authority, ledger, id.stream);
    }
    for (const auto& [student, events] : merge::allStudents(authority, ledger)) {
        record::recordOf(events);
    }
    merge::contradictions(authority, ledger, contents.heads);
    merge::initialedOnlyByAttester(authority, ledger, program().studentId, program().sheet);
    const trust::ProgramRules rules = trust::rulesInForce(authority, ledger.feeds());
    require((rules.policy() != nullptr) == trust::policyInForce(authority, ledger.feeds()).has_value(),
            "the policy is one of the rules");
    for (const base::Date& day : trust::changeDays(rules, {"2027"})) {
        require(trust::setOn(rules, {"2027"}, day).has_value(), "a change is in force on its own day");
    }
    trust::clinicalDaysOf(rules, {"2027"});
    for (const keys::DeviceKey* device : {&program().instructor, &program().director}) {
        const auto receipt =
            merge::receiptFor(authority, ledger, device->signing.verifyKey(), program().studentId, contents.heads);
        require(!receipt || !receipt.value() || journal::encode(*receipt.value()).ok(), "a receipt can be written");
    }
}

void takeIn(const merge::Batch& batch)
{
    const auto taken = merge::take(program().ledger, batch);
    if (!taken) {
        return;
    }
    workOut(taken.value().ledger);
    const bool fits = merge::contents(taken.value().ledger).heads.size() <= parcel::mostHeads;
    if (!taken.value().report.news() || !fits) {
        return;
    }
    const merge::TakenAll whole = merge::takeAll(taken.value().ledger, std::span(&batch, 1));
    std::vector<merge::Batch> backward{{batch.certificates, {}, {}}};
    for (auto run = batch.runs.rbegin(); run != batch.runs.rend(); ++run) {
        backward.push_back({{}, {}, {*run}});
    }
    const keys::Bytes expected = asOne(whole.ledger);
    require(asOne(merge::takeAll(program().ledger, backward).ledger) == expected,
            "the order of what comes does not matter");
    roundTrip(whole.ledger, expected);
    merge::newsFor(batch, merge::contents(program().ledger).heads);
}

/// The entries of a run as the feed's own device signs them, a nonce for each taken from the signature that was there.
void signRun(merge::Run& run, std::deque<keys::Bytes>& kept)
{
    const keys::Bytes seed = program().seedOf(run.feed.device);
    const journal::Feed* held = program().ledger.feed(run.feed);
    const std::uint32_t count = held == nullptr ? 0 : held->count();
    if (seed.empty() || run.from > count) {
        return;
    }
    journal::Link previous = run.from == 0 ? journal::Link{} : held->trunk().entries[run.from - 1].link;
    for (std::size_t i = 0; i < run.entries.size() && run.entries[i].size() >= journal::leastEntryBytes; ++i) {
        const keys::ByteView body = run.entries[i].first(run.entries[i].size() - keys::Signature::size);
        const auto seq = static_cast<std::uint32_t>(run.from + i);
        previous.hash = journal::entryHash(program().id, {run.feed, seq, previous}, body);
        previous.signature = test::signAgain(seed, journal::headStatement(run.feed, seq, previous.hash),
                                             run.entries[i].last(keys::Signature::size).first(1));
        keys::Bytes& entry = kept.emplace_back(body.begin(), body.end());
        keys::append(entry, previous.signature.view());
        run.entries[i] = entry;
    }
}

void readAsVolume(keys::ByteView bytes)
{
    const auto volume = parcel::readVolume(program().id, bytes);
    if (!volume) {
        return;
    }
    merge::Batch batch = volume.value().batch;
    const auto again = parcel::writeVolumes(program().id, batch, bytes.size());
    require(volume.value().of != 1 ||
                (again.ok() && again.value().size() == 1 &&
                 std::equal(bytes.begin(), bytes.end(), again.value().front().begin(), again.value().front().end())),
            "there is one way to write a volume");
    takeIn(batch);
    std::deque<keys::Bytes> kept;
    for (merge::Run& run : batch.runs) {
        signRun(run, kept);
    }
    batch.certificates.clear();
    batch.heads.clear();
    takeIn(batch);
}

void withRightDigest(keys::ByteView bytes)
{
    if (bytes.size() < keys::Hash::size) {
        return;
    }
    const keys::ByteView content = bytes.first(bytes.size() - keys::Hash::size);
    keys::Bytes volume(content.begin(), content.end());
    keys::append(volume, keys::hash("peelpack.volum.1", {content}).view());
    readAsVolume(volume);
}

void sealed(keys::ByteView bytes)
{
    FixedRandom random;
    const std::array recipients{program().director.opening.sealKey(), program().instructor.opening.sealKey()};
    const auto parcel = parcel::seal(bytes, recipients, random);
    require(parcel.ok() != bytes.empty(), "everything but nothing can be sealed");
    if (!parcel) {
        return;
    }
    const auto opened = parcel::open(parcel.value(), program().instructor.opening);
    require(opened.ok() && std::equal(bytes.begin(), bytes.end(), opened.value().begin(), opened.value().end()),
            "what was sealed is what is opened");
    require(!parcel::open(parcel.value(), program().student.opening).ok(), "nobody else opens it");
    withRightDigest(opened.value());
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const keys::ByteView bytes(data, size);
    if (const auto opened = parcel::open(bytes, program().instructor.opening)) {
        withRightDigest(opened.value());
    }
    sealed(bytes);
    return 0;
}

} // namespace peelpack::fuzz
