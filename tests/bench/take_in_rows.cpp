#include "platform/session/intake.h"
#include "platform/vault/memory_vault.h"
#include "sync/merge/contents.h"
#include "sync/parcel/volume.h"
#include "tests/bench/journal_rows.h"

#include <sodium.h>

namespace peelpack::bench {
namespace {

constexpr std::size_t students = 60;
constexpr std::size_t sheets = 107;
constexpr int rounds = 7;

journal::Time noon()
{
    return {1'790'000'000, 0};
}

} // namespace

void takeInRows()
{
    const keys::DeviceKey taker = [] {
        CountedRandom random;
        random.id(); // as the vault below makes its keys
        return must(keys::deviceKey(keys::newDeviceSeeds(random)), "keys");
    }();
    const BenchProgram program = makeProgram(students, sheets, taker);
    const keys::VerifyKey id = program.ledger.program();
    const std::vector<Signed> signatures = signaturesOf(program.ledger);
    const merge::Batch batch = merge::contents(program.ledger);
    const std::vector<keys::Bytes> volumes = must(parcel::writeVolumes(id, batch), "volumes");
    std::printf("a: %zu entries, %zu signatures\n", program.entries.size(), signatures.size());

    const Work bare = [&] {
        const Stopwatch watch(Watch::ProcessTime);
        for (const Signed& one : signatures) {
            if (crypto_sign_ed25519_verify_detached(one.signature.bytes.data(), one.message.data(), one.message.size(),
                                                    one.key.bytes.data()) != 0) {
                std::exit(1);
            }
        }
        return watch.seconds();
    };
    const Work take = [&] {
        merge::Ledger empty(id);
        const Stopwatch watch(Watch::ProcessTime);
        const auto taken = merge::take(std::move(empty), batch);
        const double seconds = watch.seconds();
        return taken && taken.value().report.taken == program.entries.size() ? seconds : 0;
    };
    const Work takeIn = [&] {
        CountedRandom random;
        auto vault = std::make_unique<vault::MemoryVault>(random);
        const bool granted = must(vault->device(), "keys")->signing.verifyKey() == taker.signing.verifyKey();
        must(vault->save(belongingTo(id, random.id(), journal::Role::Instructor)), "vault");
        const auto session = must(session::Session::open(std::move(vault), noon, random), "session");
        std::vector<session::OfferedFile> files;
        for (const keys::Bytes& volume : volumes) {
            files.push_back({"export", volume});
        }
        const Stopwatch watch(Watch::ProcessTime);
        const session::IntakeReport report = must(session::takeIn(*session, std::move(files)), "take-in");
        const double seconds = watch.seconds();
        return granted && report.taken == program.entries.size() && report.receipts == students + 1 ? seconds : 0;
    };
    const auto seconds = takeTurns(rounds, {takeIn, bare, take});
    printRatio("  take-in by a session, against bare Ed25519 verification", seconds[0], seconds[1], "<= 1.18 (85 %)");
    printRatio("  merge::take, against bare Ed25519 verification", seconds[2], seconds[1], "<= 1.18 (85 %)");
}

} // namespace peelpack::bench
