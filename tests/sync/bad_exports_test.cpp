#include "sync/keys/hash.h"
#include "sync/merge/receipts.h"
#include "tests/sync/support/catch.h"
#include "tests/sync/support/example.h"

#include <fstream>
#include <map>
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
    const auto heads = merge::contents(ledger).heads;
    const auto found = merge::contradictions(ledger.authority(), ledger, heads);
    return found.empty() ? "fine" : "cut after entry " + std::to_string(found.front().shown - 1);
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
    const auto files = makeBadExports();
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
