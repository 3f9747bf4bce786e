#include "tests/platform/support/vault_place.h"

#include "sync/merge/contents.h"
#include "tests/sync/support/catch.h"

#include <fstream>
#include <iterator>

namespace peelpack::test {
namespace {

std::vector<vault::PlacedEntry> placed(const std::vector<merge::Run>& runs)
{
    std::vector<vault::PlacedEntry> entries;
    for (const merge::Run& run : runs) {
        std::uint32_t seq = run.from;
        for (const keys::ByteView entry : run.entries) {
            entries.push_back({run.feed, seq++, keys::SharedBytes::copyOf(entry)});
        }
    }
    return entries;
}

} // namespace

vault::Result<std::optional<keys::Secret>> FixedMarks::find(const keys::Id& /*vault*/, const std::string& /*file*/)
{
    return std::optional(keys::Secret(keys::Bytes(markBytes, 0x5A)));
}

vault::Result<keys::Secret> FixedMarks::make(const keys::Id& /*vault*/, const std::string& /*file*/,
                                             keys::RandomSource& /*random*/)
{
    return keys::Secret(keys::Bytes(markBytes, 0x5A));
}

keys::ByteView passphrase()
{
    return keys::bytesOf("four odd words here");
}

VaultPlace::VaultPlace(std::uint8_t seed) : random(seed)
{
    auto made = vault::SqliteVault::make(file, vault::SecretKind::Passphrase, passphrase(), marks, random);
    INFO((made ? "" : made.error().sentence));
    REQUIRE(made.ok());
    code = std::move(std::move(made).value().code);
}

vault::Result<std::unique_ptr<vault::SqliteVault>> VaultPlace::tryOpen(keys::ByteView secret, std::int64_t now)
{
    return vault::SqliteVault::open(file, secret, marks, random, now);
}

vault::Result<std::unique_ptr<vault::SqliteVault>> VaultPlace::tryCode()
{
    return vault::SqliteVault::openWithCode(file, code.view(), marks, random);
}

std::unique_ptr<vault::SqliteVault> VaultPlace::open()
{
    auto opened = tryCode();
    INFO((opened ? "" : opened.error().sentence));
    REQUIRE(opened.ok());
    return std::move(opened).value();
}

vault::Contents contentsOf(vault::Vault& vault)
{
    auto contents = vault.contents();
    INFO((contents ? "" : contents.error().sentence));
    REQUIRE(contents.ok());
    return std::move(contents).value();
}

void save(vault::Vault& vault, const vault::Change& change)
{
    const auto saved = vault.save(change);
    INFO((saved ? "" : saved.error().sentence));
    REQUIRE(saved.ok());
}

bool sameContents(const vault::Contents& one, const vault::Contents& other)
{
    const auto sameVolume = [](const vault::HeldVolume& a, const vault::HeldVolume& b) {
        return a.number == b.number && a.bytes == b.bytes;
    };
    return one.certificates == other.certificates && one.entries == other.entries && one.notes == other.notes &&
           std::equal(one.held.begin(), one.held.end(), other.held.begin(), other.held.end(), sameVolume) &&
           one.damage == other.damage;
}

vault::Change changeOf(const merge::Ledger& ledger)
{
    vault::Change change;
    const merge::Batch batch = merge::contents(ledger);
    for (const keys::ByteView certificate : batch.certificates) {
        change.certificates.emplace_back(certificate.begin(), certificate.end());
    }
    change.entries = placed(batch.runs);
    return change;
}

std::vector<vault::PlacedEntry> entriesSince(const merge::Ledger& before, const merge::Ledger& after)
{
    return placed(merge::newEntries(before, after));
}

keys::Bytes readFile(const std::string& file)
{
    std::ifstream input(file, std::ios::binary);
    REQUIRE(input.good());
    return {std::istreambuf_iterator<char>(input), std::istreambuf_iterator<char>()};
}

void writeFile(const std::string& file, keys::ByteView bytes)
{
    std::ofstream output(file, std::ios::binary | std::ios::trunc);
    output.write(reinterpret_cast<const char*>(bytes.data()), static_cast<std::streamsize>(bytes.size()));
    REQUIRE(output.good());
}

} // namespace peelpack::test
