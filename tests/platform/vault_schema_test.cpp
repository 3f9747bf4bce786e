#include "platform/vault/schema.h"
#include "tests/platform/support/raw_database.h"
#include "tests/platform/support/stored_vaults.h"
#include "tests/platform/support/vault_place.h"
#include "tests/sync/support/catch.h"

// Vaults that older versions wrote stay readable: one is stored for each schema step.
namespace peelpack::test {
namespace {

const std::vector<std::string> tables{"vault", "slot", "wrong_try", "entry", "chain", "note"};

std::vector<keys::Bytes> rowsIn(const std::string& file, int version)
{
    RawDatabase raw(file);
    std::vector<keys::Bytes> rows = raw.values("PRAGMA application_id");
    for (const std::string& table : tables) {
        const std::vector<keys::Bytes> more = raw.values("SELECT * FROM " + table + " ORDER BY 1");
        rows.insert(rows.end(), more.begin(), more.end());
    }
    if (version > 1) {
        const std::vector<keys::Bytes> more = raw.values("SELECT * FROM held ORDER BY 1");
        rows.insert(rows.end(), more.begin(), more.end());
    }
    const std::vector<keys::Bytes> schema =
        raw.values("SELECT sql FROM sqlite_schema WHERE sql IS NOT NULL ORDER BY name");
    rows.insert(rows.end(), schema.begin(), schema.end());
    return rows;
}

/// A vault as the version of that schema step made it.
std::string makeOld(const std::filesystem::path& folder, int version)
{
    const std::string newest = (folder / "newest.peelvault").string();
    FixedMarks marks;
    SeededRandom random(51);
    auto made = vault::SqliteVault::make(newest, vault::SecretKind::Passphrase, passphrase(), marks, random);
    REQUIRE(made.ok());
    vault::MadeVault parts = std::move(made).value();
    INFO("code " << keys::hex(parts.code.view()));
    CHECK(parts.code.equals(storedVaultCode()));
    save(*parts.vault, storedVaultChange(version));
    parts.vault.reset();
    if (version == vault::newestSchema()) {
        return newest;
    }
    std::string file = (folder / "old.peelvault").string();
    RawDatabase raw(file);
    raw.run("PRAGMA journal_mode = WAL; PRAGMA application_id = " + std::to_string(vault::applicationId));
    for (const vault::SchemaStep& step : vault::schemaSteps()) {
        for (const std::string_view statement : step.statements) {
            if (step.number <= version) {
                raw.run(std::string(statement));
            }
        }
    }
    raw.run("PRAGMA user_version = " + std::to_string(version) + "; ATTACH '" + newest + "' AS newest");
    for (const std::string& table : tables) {
        raw.run("INSERT INTO main." + table + " SELECT * FROM newest." + table);
    }
    return file;
}

} // namespace

TEST_CASE("A stored vault of every schema step opens, holds what was put in, and is brought up to date",
          "[vault][schema]")
{
    REQUIRE(vault::newestSchema() == 2); // a new step stores a new vault
    for (int version = 1; version <= vault::newestSchema(); ++version) {
        INFO("schema " << version);
        const TemporaryFolder folder;
        const std::string file = (folder.path() / "v.peelvault").string();
        writeFile(file, storedVault(version));
        CHECK(RawDatabase(file).number("PRAGMA user_version") == version);
        writeFile(file, storedVault(version));

        FixedMarks marks;
        SeededRandom random(52);
        const vault::Change put = storedVaultChange(version);
        for (int time = 0; time < 2; ++time) {
            auto opened = vault::SqliteVault::openWithCode(file, storedVaultCode(), marks, random);
            INFO((opened ? "" : opened.error().sentence));
            REQUIRE(opened.ok());
            CHECK(sameContents(contentsOf(*opened.value()), storedVaultContents(version)));
            CHECK(opened.value()->device().ok());
            std::move(opened).value().reset();
            CHECK(RawDatabase(file).number("PRAGMA user_version") == vault::newestSchema());
        }
        auto byPassphrase = vault::SqliteVault::open(file, passphrase(), marks, random, noon);
        REQUIRE(byPassphrase.ok());
        save(*byPassphrase.value(), {{}, {}, {}, {keys::Bytes(100, 9)}, {}});
        CHECK(contentsOf(*byPassphrase.value()).held.size() == put.hold.size() + 1);
    }
}

TEST_CASE("The stored vaults are what their makers write", "[vault][schema]")
{
    for (int version = 1; version <= vault::newestSchema(); ++version) {
        INFO("schema " << version);
        const TemporaryFolder folder;
        const std::string made = makeOld(folder.path(), version);
        const std::string stored = (folder.path() / "stored.peelvault").string();
        writeFile(stored, storedVault(version));
        const bool same = !storedVault(version).empty() && rowsIn(stored, version) == rowsIn(made, version);
        CHECK(same);
        if (!same) {
            writeFile(storedVaultName(version) + ".actual", readFile(made));
        }
    }
}

} // namespace peelpack::test
