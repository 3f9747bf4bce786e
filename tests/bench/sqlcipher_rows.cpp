#include "tests/bench/journal_rows.h"
#include "tests/bench/raw_sqlite.h"

#include <cstdio>

namespace peelpack::bench {
namespace {

constexpr std::size_t students = 60;
constexpr std::size_t sheets = 107;
constexpr std::size_t inTransaction = 100;
constexpr int rounds = 5;

const std::string rawKey(64, 'c'); // 64 digits: no password is stretched

std::vector<std::vector<PlainRow>> plainRows(const std::vector<vault::Change>& changes)
{
    std::vector<std::vector<PlainRow>> result;
    std::map<journal::FeedId, std::int64_t> numbers;
    std::int64_t number = 0;
    for (const vault::Change& change : changes) {
        result.emplace_back();
        for (const vault::PlacedEntry& entry : change.entries) {
            const auto feed = numbers.try_emplace(entry.feed, static_cast<std::int64_t>(numbers.size()) + 1).first;
            result.back().push_back({++number, feed->second, entry.seq, entry.bytes.toBytes()});
        }
    }
    return result;
}

} // namespace

void sqlcipherRows(const Folder& folder)
{
    CountedRandom random;
    const keys::DeviceKey taker = must(keys::deviceKey(keys::newDeviceSeeds(random)), "keys");
    const BenchProgram program = makeProgram(students, sheets, taker);
    const std::vector<vault::Change> changes = changesOf(program, inTransaction);
    const std::vector<std::vector<PlainRow>> rows = plainRows(changes);
    const SqliteFunctions functions = sqlcipher();
    double signedBytes = 0;
    for (const vault::PlacedEntry& entry : program.entries) {
        signedBytes += static_cast<double>(entry.bytes.size());
    }

    std::optional<VaultFile> vault;
    std::string theirFile;
    int round = 0;
    const Work insertOurs = [&] {
        vault.emplace(folder, "rows" + std::to_string(++round) + ".peelvault");
        const Stopwatch watch(Watch::WallTime);
        vault->save(changes);
        const double seconds = watch.seconds();
        vault->close();
        return seconds;
    };
    std::string version;
    const Work insertTheirs = [&] {
        theirFile = (folder / ("rows" + std::to_string(round) + ".sqlcipher")).string();
        RawDatabase database(functions, theirFile, rawKey);
        version = database.textOf("PRAGMA cipher_version");
        const Stopwatch watch(Watch::WallTime);
        for (const std::vector<PlainRow>& some : rows) {
            database.insert(some);
        }
        return watch.seconds();
    };
    const Work readOurs = [&] {
        const Stopwatch watch(Watch::ProcessTime);
        const auto opened = vault->open();
        const vault::Contents contents = must(opened->contents(), "contents");
        const double seconds = watch.seconds();
        return contents.entries == program.entries && contents.damage.empty() ? seconds : 0;
    };
    const Work readTheirs = [&] {
        const Stopwatch watch(Watch::ProcessTime);
        RawDatabase database(functions, theirFile, rawKey);
        const std::vector<PlainRow> read = database.readAll();
        const double seconds = watch.seconds();
        return read.size() == program.entries.size() && read.back().bytes == program.entries.back().bytes ? seconds : 0;
    };
    const auto seconds = takeTurns(rounds, {insertOurs, insertTheirs, readOurs, readTheirs});
    std::printf("d, e: %zu entries in transactions of %zu; SQLCipher %s\n", program.entries.size(), inTransaction,
                version.c_str());
    printRatio("  insert and read back, against SQLCipher (which reads nothing back)", seconds[0], seconds[1], "");
    printRatio("  open and read all, against SQLCipher", seconds[2], seconds[3], "");
    const double theirBytes = static_cast<double>(std::filesystem::file_size(theirFile));
    std::printf("  file size over signed bytes: ours %.3f (target <= 1.35), SQLCipher %.3f; signed %.0f bytes\n",
                vault->bytes() / signedBytes, theirBytes / signedBytes, signedBytes);
}

} // namespace peelpack::bench
