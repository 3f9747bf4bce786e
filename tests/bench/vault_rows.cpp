#include "core/record/sheet_record.h"
#include "platform/session/session.h"
#include "sync/merge/student_events.h"
#include "tests/bench/journal_rows.h"
#include "tests/bench/raw_sqlite.h"

#include <algorithm>
#include <sodium.h>

namespace peelpack::bench {
namespace {

constexpr std::size_t manyStudents = 300;
constexpr std::size_t sheets = 107;
constexpr std::size_t inTransaction = 1000;
constexpr int openRounds = 7;
constexpr int appends = 300;

journal::Time noon()
{
    return {1'790'000'000, 0};
}

/// Rows that are sealed as the vault's are, without a vault around them.
struct SealedRows {
    std::array<std::uint8_t, vault::Sealer::overheadBytes - 16> nonce{};
    std::array<std::uint8_t, 32> key{};
    std::array<std::uint8_t, 33> associated{}; ///< as many bytes as the vault binds to a row
    std::vector<keys::Bytes> sealed;

    explicit SealedRows(const std::vector<vault::PlacedEntry>& entries)
    {
        for (const vault::PlacedEntry& entry : entries) {
            sealed.emplace_back(entry.bytes.size() + keys::aeadTagBytes);
            crypto_aead_xchacha20poly1305_ietf_encrypt(sealed.back().data(), nullptr, entry.bytes.data(),
                                                       entry.bytes.size(), associated.data(), associated.size(),
                                                       nullptr, nonce.data(), key.data());
        }
    }

    [[nodiscard]] double open() const
    {
        keys::Bytes plain(journal::mostEntryBytes);
        const Stopwatch watch(Watch::WallTime);
        for (const keys::Bytes& row : sealed) {
            if (crypto_aead_xchacha20poly1305_ietf_decrypt(plain.data(), nullptr, nullptr, row.data(), row.size(),
                                                           associated.data(), associated.size(), nonce.data(),
                                                           key.data()) != 0) {
                std::exit(1);
            }
        }
        return watch.seconds();
    }
};

/// A program opens its vault once. What the round before threw away is put in order by the C library when memory is
/// asked for that is not small; that is not part of opening.
void settleHeap()
{
    constexpr std::size_t notSmall = 4096;
    const std::unique_ptr<char[]> some(new char[notSmall]);
    *const_cast<volatile char*>(some.get()) = 0;
}

} // namespace

void openRow(const Folder& folder)
{
    CountedRandom random;
    const keys::DeviceKey taker = must(keys::deviceKey(keys::newDeviceSeeds(random)), "keys");
    BenchProgram program = makeProgram(manyStudents, sheets, taker);
    const keys::VerifyKey id = program.ledger.program();
    VaultFile file(folder, "open.peelvault");
    file.save({belongingTo(id, random.id(), journal::Role::Instructor)});
    file.save(changesOf(program, inTransaction));
    file.close();
    const SealedRows rows(program.entries);
    program.ledger = merge::Ledger(id);
    std::printf("b: %zu entries in a file of %.1f MiB\n", rows.sealed.size(), file.bytes() / 1048576.0);

    std::vector<std::vector<double>> parts(3);
    std::vector<double> processor;
    const Work fold = [&] {
        settleHeap();
        const Stopwatch watch(Watch::WallTime);
        const Stopwatch allCores(Watch::ProcessTime);
        const auto session = must(session::Session::open(file.open(), noon, random), "session");
        parts[0].push_back(watch.seconds());
        const Stopwatch authority(Watch::WallTime);
        static_cast<void>(session->authority());
        parts[1].push_back(authority.seconds());
        const Stopwatch students(Watch::WallTime);
        std::vector<keys::Id> everybody;
        for (const merge::StudentStream& stream : merge::studentStreams(session->authority(), session->ledger())) {
            everybody.push_back(stream.student);
        }
        const std::vector<record::StudentRecord> all = session->recordsOf(everybody);
        parts[2].push_back(students.seconds());
        const double seconds = watch.seconds();
        processor.push_back(allCores.seconds());
        std::size_t signedSheets = 0;
        for (const record::StudentRecord& student : all) {
            signedSheets += static_cast<std::size_t>(
                std::count_if(student.sheets.begin(), student.sheets.end(),
                              [](const record::SheetRecord& sheet) { return sheet.isSigned(); }));
        }
        return signedSheets == manyStudents * sheets && session->damage().empty() ? seconds : 0;
    };
    const auto seconds = takeTurns(openRounds, {fold, [&] { return rows.open(); }});
    printRatio("  open, hash and fold a vault, against bare XChaCha20-Poly1305", seconds[0], seconds[1], "<= 5");
    printRatio("    the same in the time of all cores together", processor, seconds[1], "");
    std::printf("    of it: open, read and chain %.0f ms, authority %.0f, sheets %.0f\n", 1e3 * median(parts[0]),
                1e3 * median(parts[1]), 1e3 * median(parts[2]));
}

void appendRow(const Folder& folder)
{
    keys::SystemRandom random;
    const keys::SigningKey programKey = must(keys::SigningKey::fromSeed(keys::Bytes(32, 9)), "key");
    const keys::VerifyKey program = programKey.verifyKey();
    const keys::Id student = random.id();
    VaultFile file(folder, "append.peelvault");
    file.save({belongingTo(program, student, journal::Role::Student)});
    const auto session = must(session::Session::open(std::move(file.vault), noon, random), "session");
    const SqliteFunctions functions = systemSqlite();
    RawDatabase bareFile(functions, (folder / "append.sqlite").string(), "");
    std::size_t number = 0;
    SheetAndAttestation sheet;
    std::array<PlainRow, 2> written;

    const Work append = [&] {
        sheet = signedSheet(program, student, number++, random);
        const Stopwatch watch(Watch::WallTime);
        const auto positions = must(session->append({{student, sheet.opened}, {student, sheet.attestation}}), "append");
        const double seconds = watch.seconds();
        const journal::Feed& feed = *session->ledger().feed(positions.front().feed);
        for (std::size_t i = 0; i < written.size(); ++i) {
            const auto seq = positions[i].seq;
            written[i] = {seq + 1, 1, seq, feed.trunk().entries[seq].bytes.toBytes()};
        }
        return seconds;
    };
    const Work bare = [&] {
        const journal::FeedId feed{program, student};
        const Stopwatch watch(Watch::WallTime);
        for (const PlainRow& row : written) {
            const keys::Hash hash = keys::Hash{};
            static_cast<void>(programKey.sign(journal::headStatement(feed, static_cast<std::uint32_t>(row.seq), hash)));
        }
        const auto statement = must(journal::decodeStatement(sheet.attestation.statement), "statement");
        if (!keys::verify(statement.signer.key, sheet.attestation.statement, sheet.attestation.signature)) {
            std::exit(1);
        }
        bareFile.insert({written.begin(), written.end()});
        return watch.seconds();
    };
    const auto seconds = takeTurns(appends, {append, bare});
    std::printf("c: %d sheets of %zu and %zu bytes\n", appends, written[0].bytes.size(), written[1].bytes.size());
    printRatio("  keep a signed sheet, against 2 signs + 1 verification + commit", seconds[0], seconds[1], "<= 1.5");
}

} // namespace peelpack::bench
