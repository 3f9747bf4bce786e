#include "tests/platform/support/filled_vault.h"
#include "tests/sync/support/catch.h"

#include <QSqlDatabase>

#include <algorithm>
#include <cstdlib>
#include <fcntl.h>
#include <iostream>
#include <unistd.h>

// A flipped bit anywhere in a vault's file, or in a parcel, is refused, or named with its place, or harmless: never
// another content without a word. In parts that run side by side; PEELPACK_PART says which.
namespace peelpack::test {
namespace {

constexpr std::size_t parts = 4;
constexpr std::size_t sheets = 62;
#ifdef PEELPACK_FULL
constexpr unsigned bitsOfByte = 8;
#else
constexpr unsigned bitsOfByte = 1;
#endif
// Every so manieth byte: the sanitizers are slow.
#ifdef PEELPACK_SANITIZE
constexpr std::size_t stride = 29;
#else
constexpr std::size_t stride = 1;
#endif

std::size_t part()
{
    const char* text = std::getenv("PEELPACK_PART");
    return text == nullptr ? 0 : static_cast<std::size_t>(std::atoi(text)); // NOLINT(cert-err34-c): set by the build
}

/// The bit of a byte that is flipped first, from a seed.
unsigned bitOf(std::size_t at)
{
    constexpr std::uint64_t seed = 0x9E3779B97F4A7C15;
    std::uint64_t mixed = (at + 1) * seed;
    mixed ^= mixed >> 29U;
    return static_cast<unsigned>(mixed % 8);
}

enum class Class { Refused, Named, Harmless, Silent };

/// One file whose bytes are changed in place.
class PatchedFile {
public:
    explicit PatchedFile(const FilledVault& vault)
        : m_vault(vault), m_descriptor(::open(vault.file.c_str(), O_RDWR | O_CLOEXEC))
    {
        REQUIRE(m_descriptor >= 0);
    }
    ~PatchedFile() { ::close(m_descriptor); }
    PatchedFile(const PatchedFile&) = delete;
    PatchedFile& operator=(const PatchedFile&) = delete;

    void write(std::size_t at, std::uint8_t byte) const
    {
        REQUIRE(::pwrite(m_descriptor, &byte, 1, static_cast<off_t>(at)) == 1);
    }

    /// Puts everything back, whatever an opening may have written.
    void restore()
    {
        ::unlink((m_vault.file + "-wal").c_str());
        ::unlink((m_vault.file + "-journal").c_str());
        const auto size = static_cast<off_t>(m_vault.bytes.size());
        REQUIRE(::ftruncate(m_descriptor, size) == 0);
        REQUIRE(::pwrite(m_descriptor, m_vault.bytes.data(), m_vault.bytes.size(), 0) == size);
    }

private:
    const FilledVault& m_vault;
    int m_descriptor;
};

Class classOf(FilledVault& vault, const vault::Result<vault::Contents>& contents)
{
    if (!contents) {
        return contents.error().sentence.ends_with('.') ? Class::Refused : Class::Silent;
    }
    if (!contents.value().damage.empty()) {
        const auto& damage = contents.value().damage;
        const bool all =
            std::all_of(damage.begin(), damage.end(), [](const auto& each) { return !each.place.empty(); });
        return all ? Class::Named : Class::Silent;
    }
    return sameContents(contents.value(), vault.contents) ? Class::Harmless : Class::Silent;
}

/// The row whose sealed bytes cover a byte of the file, by offset of their ends.
class RowsOfFile {
public:
    explicit RowsOfFile(const FilledVault& vault) : m_rows(vault.rows())
    {
        for (const RowPlace& row : m_rows) {
            const auto at = std::search(vault.bytes.begin(), vault.bytes.end(), row.sealed.begin(), row.sealed.end());
            REQUIRE(at != vault.bytes.end());
            const auto begin = static_cast<std::size_t>(at - vault.bytes.begin());
            m_ends[begin + row.sealed.size()] = {begin, &row};
        }
    }

    [[nodiscard]] const RowPlace* at(std::size_t offset) const
    {
        const auto found = m_ends.upper_bound(offset);
        return found != m_ends.end() && found->second.first <= offset ? found->second.second : nullptr;
    }

private:
    std::vector<RowPlace> m_rows;
    std::map<std::size_t, std::pair<std::size_t, const RowPlace*>> m_ends;
};

/// For a bit in a sealed row: named with that row's number and entry, and nothing else lost.
bool namesRow(const vault::Contents& contents, const RowPlace& row, const vault::Contents& whole)
{
    if (contents.damage.empty() || contents.damage.front().place != row.words) {
        return false;
    }
    if (row.words.find("which feed") != std::string::npos) {
        return true; // that feed's entries are named too
    }
    return contents.damage.size() == 1 && contents.entries.size() + contents.certificates.size() ==
                                              whole.entries.size() + whole.certificates.size() - 1;
}

} // namespace

TEST_CASE("Every byte of a vault of 200 entries with a flipped bit", "[vault-flips]")
{
    // Kept open, so that Qt does not load and unload SQLite each time.
    const QSqlDatabase driver = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), QStringLiteral("kept"));
    FilledVault vault(sheets);
    REQUIRE(vault.contents.entries.size() >= 200);
    const RowsOfFile rows(vault);
    PatchedFile file(vault);
    std::map<Class, std::size_t> counts;
    std::size_t inRows = 0;
    std::size_t deviceLost = 0;
    for (std::size_t at = part() * stride; at < vault.bytes.size(); at += parts * stride) {
        for (unsigned i = 0; i < bitsOfByte; ++i) {
            const unsigned bit = (bitOf(at) + i) % 8;
            file.write(at, static_cast<std::uint8_t>(vault.bytes[at] ^ (1U << bit)));
            auto opened = vault.tryOpen();
            const auto contents = opened ? opened.value()->contents() : vault::Result<vault::Contents>(opened.error());
            const Class found = classOf(vault, contents);
            ++counts[found];
            const RowPlace* row = rows.at(at);
            if (found == Class::Silent ||
                (row != nullptr && !(contents && namesRow(contents.value(), *row, vault.contents)))) {
                FAIL_CHECK("byte " << at << ", bit " << bit << (row == nullptr ? "" : " in " + row->words));
            }
            inRows += row == nullptr ? 0 : 1;
            if (opened) {
                const auto device = opened.value()->device();
                deviceLost += device ? 0 : 1;
                CHECK((!device || device.value()->signing.verifyKey() == vault.device));
                std::move(opened).value().reset();
            }
            file.restore();
        }
    }
    std::cout << "part " << part() << " of a vault of " << vault.bytes.size() << " bytes: " << counts[Class::Refused]
              << " refused, " << counts[Class::Named] << " named, " << counts[Class::Harmless] << " harmless, "
              << counts[Class::Silent] << " silently different; " << inRows
              << " in sealed rows, each named with its row; keys of the device lost " << deviceLost << " times\n";
    CHECK(counts[Class::Named] >= inRows);
    CHECK(inRows > 1000 / stride);
}

TEST_CASE("Every byte of the parcel of 200 entries with a flipped bit", "[vault-flips][parcel]")
{
    const World world = busyWorld(sheets);
    const keys::Bytes volume = volumeOf(world.all);
    SeededRandom random(81);
    const std::array recipients{world.instructor.opening.sealKey()};
    keys::Bytes parcel = parcel::seal(volume, recipients, random).value();
    REQUIRE(parcel::open(parcel, world.instructor.opening).value() == volume);
    std::size_t refused = 0;
    for (std::size_t at = part() * stride; at < parcel.size(); at += parts * stride) {
        for (unsigned i = 0; i < bitsOfByte; ++i) {
            const auto mask = static_cast<std::uint8_t>(1U << ((bitOf(at) + i) % 8));
            parcel[at] ^= mask;
            if (parcel::open(parcel, world.instructor.opening).ok()) {
                FAIL_CHECK("byte " << at << ", mask " << int{mask});
            }
            parcel[at] ^= mask;
            ++refused;
        }
    }
    std::cout << "part " << part() << " of a parcel of " << parcel.size() << " bytes: " << refused << " refused\n";
    CHECK(parcel::open(parcel, world.instructor.opening).value() == volume);
}

} // namespace peelpack::test
