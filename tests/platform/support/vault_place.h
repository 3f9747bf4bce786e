#pragma once

#include "platform/vault/sqlite_vault.h"
#include "tests/support/temporary_folder.h"
#include "tests/sync/support/world.h"

#include <memory>
#include <string>

namespace peelpack::test {

/// A mark that is the same wherever it is asked for: for tests in which a copy shall pass for the original.
class FixedMarks final : public vault::MarkStore {
public:
    vault::Result<std::optional<keys::Secret>> find(const keys::Id& vault, const std::string& file) override;
    vault::Result<keys::Secret> make(const keys::Id& vault, const std::string& file,
                                     keys::RandomSource& random) override;
};

/// A passphrase that the rules take.
keys::ByteView passphrase();
/// 2027-01-15, in seconds since 1970.
inline constexpr std::int64_t noon = 1'800'000'000;

/// A folder with one new vault under passphrase(), closed; its marks are in a folder beside it.
class VaultPlace {
public:
    /// Fails the test when the vault cannot be made.
    explicit VaultPlace(std::uint8_t seed);

    TemporaryFolder folder;
    std::string file = (folder.path() / "v.peelvault").string();
    std::string markFolder = (folder.path() / "marks").string();
    vault::FolderMarkStore marks{markFolder};
    SeededRandom random;
    keys::Secret code;

    [[nodiscard]] vault::Result<std::unique_ptr<vault::SqliteVault>> tryOpen(keys::ByteView secret,
                                                                             std::int64_t now = noon);
    [[nodiscard]] vault::Result<std::unique_ptr<vault::SqliteVault>> tryCode();
    /// With the vault code; fails the test when it does not open.
    [[nodiscard]] std::unique_ptr<vault::SqliteVault> open();
};

/// The fault, or nothing when there is none.
template <class T>
std::optional<vault::Fault> faultOf(const vault::Result<T>& result)
{
    return result ? std::nullopt : std::optional(result.error().fault);
}

/// Everything that the vault holds; fails the test when it cannot be read.
vault::Contents contentsOf(vault::Vault& vault);
/// Fails the test when it is not saved.
void save(vault::Vault& vault, const vault::Change& change);

bool sameContents(const vault::Contents& one, const vault::Contents& other);

/// Certificates and entries of a ledger, each after what it builds on.
vault::Change changeOf(const merge::Ledger& ledger);
/// The entries of `after` that `before` does not hold.
std::vector<vault::PlacedEntry> entriesSince(const merge::Ledger& before, const merge::Ledger& after);

keys::Bytes readFile(const std::string& file);
void writeFile(const std::string& file, keys::ByteView bytes);

} // namespace peelpack::test
