#include "tests/platform/support/raw_database.h"
#include "tests/platform/support/vault_place.h"
#include "tests/sync/support/catch.h"

#include <QProcess>
#include <QSqlDatabase>
#include <QSqlQuery>

// Files that are not opened, and files that are not made.
namespace peelpack::test {
namespace {

using vault::Fault;
using vault::SecretKind;

/// What another process says that opens the vault with its code.
std::string openedElsewhere(const VaultPlace& place)
{
    QProcess process;
    process.start(QStringLiteral(PEELPACK_OPEN_VAULT),
                  {QString::fromStdString(place.file), QString::fromStdString(keys::hex(place.code.view()))});
    REQUIRE(process.waitForFinished());
    return process.readAllStandardOutput().trimmed().toStdString();
}

std::size_t filesIn(const std::filesystem::path& folder)
{
    return static_cast<std::size_t>(std::distance(std::filesystem::directory_iterator(folder), {}));
}

/// Refused by both ways in, and neither the file nor its folder is changed.
void checkRefused(VaultPlace& place, Fault fault)
{
    const keys::Bytes before = readFile(place.file);
    const std::size_t files = filesIn(place.folder.path());
    CHECK(faultOf(place.tryCode()) == fault);
    CHECK(faultOf(place.tryOpen(passphrase())) == fault);
    CHECK(readFile(place.file) == before);
    CHECK(filesIn(place.folder.path()) == files);
}

} // namespace

TEST_CASE("A second instance is refused, in this process and in another", "[vault][unlock]")
{
    VaultPlace place(21);
    auto first = place.open();
    save(*first, {{}, {}, {{"one", keys::Bytes{1}}}, {}, {}});
    const std::string inUse = "Another Peelpack has this vault open; close it first.";
    CHECK(openedElsewhere(place) == inUse);
    const auto second = place.tryCode();
    REQUIRE(faultOf(second) == Fault::InUse);
    CHECK(second.error().sentence == inUse);
    CHECK(faultOf(place.tryOpen(passphrase())) == Fault::InUse);
    // The refused attempts, and looking for the mark, have not let go of the lock.
    CHECK(openedElsewhere(place) == inUse);
    CHECK(first->device().ok());
    save(*first, {{}, {}, {{"two", keys::Bytes{2}}}, {}, {}});
    CHECK(openedElsewhere(place) == inUse);
    first.reset();
    CHECK(openedElsewhere(place) == "opened");
    CHECK(contentsOf(*place.open()).notes.size() == 2);
}

TEST_CASE("A vault of a newer Peelpack is refused and left as it is", "[vault]")
{
    VaultPlace place(22);
    RawDatabase(place.file).run("PRAGMA user_version = 99");
    checkRefused(place, Fault::Newer);
    CHECK(place.tryCode().error().sentence == "This vault was made by a newer Peelpack; use that one. Nothing was "
                                              "changed.");
}

TEST_CASE("A file that is something else is refused and left as it is", "[vault]")
{
    VaultPlace place(23);
    const std::string text = "Date,Procedure\n2026-03-01,Open appendectomy\n";
    for (const std::string& content : {std::string(), std::string("x"), text, std::string(70'000, 'y'),
                                       std::string("SQLite format 3"), std::string(8192, '\0')}) {
        INFO(content.substr(0, 20) << ", " << content.size() << " bytes");
        writeFile(place.file, keys::bytesOf(content));
        checkRefused(place, Fault::NotAVault);
    }
    for (const std::string journal : {"DELETE", "WAL"}) {
        INFO(journal);
        std::filesystem::remove(place.file);
        RawDatabase(place.file)
            .run("PRAGMA journal_mode = " + journal +
                 "; CREATE TABLE recipe (name TEXT); INSERT INTO recipe VALUES ('bread')");
        checkRefused(place, Fault::NotAVault);
    }
}

TEST_CASE("Tables that somebody changed are damage", "[vault]")
{
    for (const std::string change :
         {"DROP TRIGGER entry_stays", "DROP TABLE held", "CREATE TABLE more (a)", "CREATE INDEX i ON entry (feed)",
          "DROP TRIGGER entry_is_kept; CREATE TRIGGER entry_is_kept BEFORE DELETE ON entry BEGIN SELECT 1; END",
          "DELETE FROM vault", "DELETE FROM slot WHERE kind = 3"}) {
        INFO(change);
        VaultPlace place(24);
        RawDatabase(place.file).run(change);
        CHECK(faultOf(place.tryCode()) == Fault::Damaged);
    }
}

TEST_CASE("Entries cannot be changed or removed in the file while its triggers stand", "[vault]")
{
    VaultPlace place(25);
    World world;
    world.setUp();
    save(*place.open(), changeOf(world.all));
    sqlite3* raw = nullptr;
    REQUIRE(sqlite3_open(place.file.c_str(), &raw) == SQLITE_OK);
    for (const char* sql : {"DELETE FROM entry", "UPDATE entry SET seq = 0", "DELETE FROM entry WHERE number = 1"}) {
        CHECK(sqlite3_exec(raw, sql, nullptr, nullptr, nullptr) == SQLITE_CONSTRAINT);
    }
    sqlite3_close(raw);
    CHECK(contentsOf(*place.open()).damage.empty());
}

TEST_CASE("A vault that is not there, or that is a folder, cannot be opened", "[vault]")
{
    VaultPlace place(26);
    std::filesystem::remove(place.file);
    CHECK(faultOf(place.tryCode()) == Fault::NotThere);
    CHECK(faultOf(place.tryOpen(passphrase())) == Fault::NotThere);
    std::filesystem::create_directory(place.file);
    CHECK(faultOf(place.tryCode()) == Fault::CannotRead);
}

TEST_CASE("A new vault takes no name that is in use, and does not need what a broken-off one left", "[vault]")
{
    VaultPlace place(27);
    const auto makeAt = [&](const std::string& file) {
        return faultOf(vault::SqliteVault::make(file, SecretKind::Passphrase, passphrase(), place.marks, place.random));
    };
    const keys::Bytes before = readFile(place.file);
    CHECK(makeAt(place.file) == Fault::Exists);
    CHECK(readFile(place.file) == before);
    const std::string second = (place.folder.path() / "second.peelvault").string();
    for (const char* end : {"-wal", "-journal"}) {
        writeFile(second + end, keys::bytesOf("left"));
        CHECK(makeAt(second) == Fault::Exists);
        CHECK(std::filesystem::remove(second + end));
    }
    writeFile(second + ".new", before);
    writeFile(second + ".new-wal", keys::bytesOf("left"));
    CHECK(makeAt(second) == std::nullopt);
    CHECK_FALSE(std::filesystem::exists(second + ".new"));
    CHECK_FALSE(std::filesystem::exists(second + ".new-wal"));
    CHECK(makeAt((place.folder.path() / "no folder" / "v").string()) == Fault::CannotWrite);
    vault::FolderMarkStore noPlace(second); // a file, where no folder can be
    CHECK(faultOf(vault::SqliteVault::make(second + "2", SecretKind::Passphrase, passphrase(), noPlace,
                                           place.random)) == Fault::CannotWrite);
    CHECK_FALSE(std::filesystem::exists(second + "2"));
}

TEST_CASE("What does not read back after it was saved is said, and nothing more is written", "[vault]")
{
    VaultPlace place(28);
    auto vault = place.open();
    save(*vault, {{keys::Bytes(50, 1)}, {}, {}, {}, {}});
    // Storage that keeps something else than it was given.
    QSqlDatabase connection = QSqlDatabase::database(QSqlDatabase::connectionNames().last(), false);
    for (const char* sql : {"DROP TRIGGER entry_stays", "CREATE TEMP TRIGGER spoil AFTER INSERT ON entry BEGIN UPDATE "
                                                        "entry SET sealed = zeroblob(90) WHERE number = new.number; "
                                                        "END"}) {
        REQUIRE(QSqlQuery(connection).exec(QLatin1String(sql)));
    }
    connection = QSqlDatabase();
    const vault::Change change{{keys::Bytes(50, 2)}, {}, {}, {}, {}};
    CHECK(faultOf(vault->save(change)) == Fault::Damaged);
    const auto again = vault->save(change);
    REQUIRE(faultOf(again) == Fault::CannotWrite);
    CHECK(again.error().sentence == "The vault's storage failed before; close Peelpack and open it again.");
}

} // namespace peelpack::test
