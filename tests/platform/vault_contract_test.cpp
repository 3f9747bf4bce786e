#include "platform/vault/memory_vault.h"
#include "platform/vault/sqlite_vault.h"
#include "tests/sync/support/catch.h"
#include "tests/sync/support/world.h"

#include <QTemporaryDir>

// What every vault promises, whatever it is kept in.
namespace peelpack::test {
namespace {

vault::PlacedEntry entryOf(std::uint8_t device, std::uint32_t seq, std::size_t size)
{
    keys::VerifyKey key;
    key.bytes.fill(device);
    return {{key, idOf(device)}, seq, keys::Bytes(size, static_cast<std::uint8_t>(seq + 1))};
}

vault::Contents contentsOf(vault::Vault& vault)
{
    auto contents = vault.contents();
    REQUIRE(contents.ok());
    CHECK(contents.value().damage.empty());
    return std::move(contents).value();
}

void save(vault::Vault& vault, const vault::Change& change)
{
    const auto saved = vault.save(change);
    INFO((saved ? "" : saved.error().sentence));
    REQUIRE(saved.ok());
}

void checkContract(vault::Vault& vault)
{
    CHECK(contentsOf(vault).entries.empty());
    vault::Change change;
    change.certificates = {keys::Bytes(100, 7)};
    change.entries = {entryOf(1, 0, 82), entryOf(2, 0, 300), entryOf(1, 1, 65'536)};
    change.notes = {{"program", keys::Bytes{1, 2, 3}}, {"empty", keys::Bytes{}}};
    save(vault, change);
    vault::Contents contents = contentsOf(vault);
    CHECK(contents.certificates == change.certificates);
    CHECK(contents.entries == change.entries);
    CHECK(contents.notes == std::map<std::string, keys::Bytes>{{"empty", {}}, {"program", {1, 2, 3}}});

    vault::Change more;
    more.entries = {entryOf(3, 0, 90), entryOf(1, 1, 90)}; // a branch beside the entry above
    more.notes = {{"program", keys::Bytes{9}}, {"empty", std::nullopt}};
    save(vault, more);
    contents = contentsOf(vault);
    CHECK(contents.entries.size() == 5);
    CHECK(contents.entries.back() == more.entries.back());
    CHECK(contents.notes == std::map<std::string, keys::Bytes>{{"program", {9}}});

    vault::Change hold;
    for (std::uint8_t i = 0; i < vault::mostHeld + 4; ++i) {
        hold.hold.push_back(keys::Bytes(1000, i));
    }
    save(vault, hold);
    contents = contentsOf(vault);
    REQUIRE(contents.held.size() == vault::mostHeld);
    CHECK(contents.held.front().bytes.front() == 4); // the oldest are let go
    CHECK(contents.held.back().bytes.front() == vault::mostHeld + 3);
    vault::Change release;
    release.release = {contents.held[0].number, contents.held[5].number, 1'000'000};
    save(vault, release);
    CHECK(contentsOf(vault).held.size() == vault::mostHeld - 2);

    vault::Change large;
    large.hold = {keys::Bytes(vault::mostHeldBytes - 5000, 1)};
    save(vault, large);
    CHECK(contentsOf(vault).held.back().bytes.size() == large.hold[0].size());
    CHECK(contentsOf(vault).held.size() < 7);

    const auto device = vault.device();
    REQUIRE(device.ok());
    const keys::VerifyKey first = device.value()->signing.verifyKey();
    CHECK(vault.device().value()->signing.verifyKey() == first);
    REQUIRE(vault.renewDevice().ok());
    CHECK(vault.device().value()->signing.verifyKey() != first);
    CHECK(contentsOf(vault).entries.size() == 5);
    save(vault, {});
}

} // namespace

TEST_CASE("A vault in memory keeps the contract", "[vault]")
{
    SeededRandom random(1);
    vault::MemoryVault vault(random);
    checkContract(vault);
}

TEST_CASE("A vault in a file keeps the contract, and everything after it was opened again", "[vault]")
{
    SeededRandom random(2);
    const QTemporaryDir folder;
    const std::string file = folder.filePath(QStringLiteral("v.peelvault")).toStdString();
    vault::FolderMarkStore marks(folder.filePath(QStringLiteral("marks")).toStdString());
    const keys::ByteView secret = keys::bytesOf("four odd words here");
    auto made = vault::SqliteVault::make(file, vault::SecretKind::Passphrase, secret, marks, random);
    INFO((made ? "" : made.error().sentence));
    REQUIRE(made.ok());
    auto vault = std::move(std::move(made).value().vault);
    checkContract(*vault);
    const vault::Contents before = contentsOf(*vault);
    const keys::VerifyKey device = vault->device().value()->signing.verifyKey();
    vault.reset();
    auto again = vault::SqliteVault::open(file, secret, marks, random, 1'800'000'000);
    INFO((again ? "" : again.error().sentence));
    REQUIRE(again.ok());
    const vault::Contents after = contentsOf(*again.value());
    CHECK(after.entries == before.entries);
    CHECK(after.certificates == before.certificates);
    CHECK(after.notes == before.notes);
    CHECK(after.held.size() == before.held.size());
    CHECK(again.value()->device().value()->signing.verifyKey() == device);
}

} // namespace peelpack::test
