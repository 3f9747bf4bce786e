#include "tests/platform/support/vault_place.h"
#include "tests/sync/support/catch.h"

#include <cstdlib>
#include <filesystem>

// Attack 14, by hand: a copy of a vault opens with its code only, and cannot sign before it was set up anew.
namespace peelpack::test {
namespace {

namespace fs = std::filesystem;

using vault::Fault;
using vault::SecretKind;
using vault::SqliteVault;

std::optional<keys::VerifyKey> signsWith(SqliteVault& vault)
{
    const auto device = vault.device();
    if (!device) {
        CHECK(device.error().fault == Fault::MarkMissing);
        return std::nullopt;
    }
    return device.value()->signing.verifyKey();
}

std::unique_ptr<SqliteVault> openAt(VaultPlace& place, const std::string& file, vault::MarkStore& marks)
{
    auto opened = SqliteVault::openWithCode(file, place.code.view(), marks, place.random);
    REQUIRE(opened.ok());
    return std::move(opened).value();
}

/// Everything that holds for a copy: it is read, it does not sign, and once set up anew it signs with other keys.
void checkIsCopy(VaultPlace& place, const std::string& file, const std::string& markFolder,
                 const keys::VerifyKey& original)
{
    vault::FolderMarkStore marks(markFolder);
    CHECK(faultOf(SqliteVault::open(file, passphrase(), marks, place.random, noon)) == Fault::MarkMissing);
    auto copy = openAt(place, file, marks);
    CHECK(contentsOf(*copy).notes.at("note") == keys::Bytes{1});
    CHECK_FALSE(signsWith(*copy).has_value());
    const keys::ByteView next = keys::bytesOf("words for the copy");
    REQUIRE(copy->changeSecret(SecretKind::Passphrase, next).ok());
    CHECK_FALSE(signsWith(*copy).has_value());
    REQUIRE(copy->renewDevice().ok());
    const auto renewed = signsWith(*copy);
    REQUIRE(renewed.has_value());
    CHECK(*renewed != original);
    copy.reset();
    auto again = SqliteVault::open(file, next, marks, place.random, noon);
    REQUIRE(again.ok());
    CHECK(signsWith(*again.value()) == renewed);
    CHECK(contentsOf(*again.value()).notes.at("note") == keys::Bytes{1});
}

struct Original : VaultPlace {
    explicit Original(std::uint8_t seed) : VaultPlace(seed)
    {
        const auto vault = open();
        save(*vault, {{}, {}, {{"note", keys::Bytes{1}}}, {}, {}});
        device = signsWith(*vault).value();
    }
    keys::VerifyKey device;
};

} // namespace

TEST_CASE("Attack 14: a copy elsewhere, with or without the folder of marks, is a copy", "[mark][attack]")
{
    Original place(101);
    const fs::path elsewhere = place.folder.path() / "elsewhere";
    fs::create_directory(elsewhere);
    const std::string file = (elsewhere / "v.peelvault").string();
    fs::copy_file(place.file, file);
    checkIsCopy(place, file, (elsewhere / "no marks").string(), place.device);
    fs::copy_file(place.file, file, fs::copy_options::overwrite_existing);
    fs::copy(place.markFolder, elsewhere / "marks");
    checkIsCopy(place, file, (elsewhere / "marks").string(), place.device);
    CHECK(signsWith(*place.open()) == place.device);
}

TEST_CASE("Attack 14: a copy beside the original is a copy, and setting it up takes nothing from the original",
          "[mark][attack]")
{
    Original place(102);
    const std::string beside = place.file + " (copy)";
    fs::copy_file(place.file, beside);
    checkIsCopy(place, beside, place.markFolder, place.device);
    const auto original = place.tryOpen(passphrase());
    REQUIRE(original.ok());
    CHECK(signsWith(*original.value()) == place.device);
}

TEST_CASE("Attack 14: a backup restored in place is a copy, also where the file system uses its inode again",
          "[mark][attack]")
{
    Original place(103);
    // Beside the build, which is on a disk: there a freed inode is often given to the next file.
    for (const fs::path& parent : {place.folder.path(), fs::current_path()}) {
        INFO(parent);
        const TemporaryFolder below(parent);
        const fs::path& folder = below.path();
        const std::string file = (folder / "v.peelvault").string();
        vault::FolderMarkStore marks((folder / "marks").string());
        auto made = SqliteVault::make(file, SecretKind::Passphrase, passphrase(), marks, place.random);
        REQUIRE(made.ok());
        vault::MadeVault parts = std::move(made).value();
        save(*parts.vault, {{}, {}, {{"note", keys::Bytes{1}}}, {}, {}});
        const keys::VerifyKey device = signsWith(*parts.vault).value();
        parts.vault.reset();
        const keys::Bytes backup = readFile(file);
        std::swap(place.code, parts.code);
        for (int again = 0; again < 3; ++again) {
            fs::remove(file);
            writeFile(file, backup);
            CHECK_FALSE(signsWith(*openAt(place, file, marks)).has_value());
        }
        checkIsCopy(place, file, (folder / "marks").string(), device);
        std::swap(place.code, parts.code);
    }
}

TEST_CASE("A vault that is moved keeps its mark", "[mark]")
{
    Original place(104);
    const std::string moved = place.file + ".moved";
    fs::rename(place.file, moved);
    CHECK(signsWith(*openAt(place, moved, place.marks)) == place.device);
    CHECK(SqliteVault::open(moved, passphrase(), place.marks, place.random, noon).ok());
}

TEST_CASE("New keys on a copy without a mark come with a mark", "[mark]")
{
    Original place(105);
    vault::FolderMarkStore marks((place.folder.path() / "other marks").string());
    auto copy = openAt(place, place.file, marks);
    CHECK_FALSE(signsWith(*copy).has_value());
    REQUIRE(copy->renewDevice().ok());
    const auto renewed = signsWith(*copy);
    REQUIRE(renewed.has_value());
    copy.reset();
    CHECK(signsWith(*openAt(place, place.file, marks)) == renewed);
}

} // namespace peelpack::test
