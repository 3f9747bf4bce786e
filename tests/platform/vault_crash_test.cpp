#include "tests/platform/support/raw_database.h"
#include "tests/platform/support/stored_vaults.h"
#include "tests/platform/support/vault_place.h"
#include "tests/support/fault_driver.h"
#include "tests/sync/support/catch.h"

#include <algorithm>
#include <iostream>

// Attack 13: killed, out of power, disk full or I/O error at any write. What is there afterwards is what was there
// before, or what was saved, and what was said to be saved is there.
namespace peelpack::test {
namespace {

using vault::SqliteVault;

constexpr std::uint8_t openingSeed = 61;

/// The vault that every case starts from: a copy of the newest stored one.
std::string prepareStored(const std::string& folder, int version)
{
    std::string file = folder + "/v.peelvault";
    writeFile(file, storedVault(version));
    return file;
}

std::unique_ptr<SqliteVault> openStored(const std::string& file, FixedMarks& marks, SeededRandom& random)
{
    auto opened = SqliteVault::openWithCode(file, storedVaultCode(), marks, random);
    return opened ? std::move(opened).value() : nullptr;
}

/// What the ordinary storage shows after the power loss; fails the test when the vault does not open.
vault::Contents contentsAfter(const std::string& file)
{
    FixedMarks marks;
    SeededRandom random(openingSeed);
    auto opened = SqliteVault::openWithCode(file, storedVaultCode(), marks, random);
    INFO((opened ? "" : opened.error().sentence));
    REQUIRE(opened.ok());
    CHECK(opened.value()->device().ok());
    return contentsOf(*opened.value());
}

vault::Contents after(const vault::Change& change)
{
    vault::Contents contents = storedVaultContents(2);
    contents.certificates.insert(contents.certificates.end(), change.certificates.begin(), change.certificates.end());
    contents.entries.insert(contents.entries.end(), change.entries.begin(), change.entries.end());
    for (const auto& [name, value] : change.notes) {
        contents.notes.erase(name);
        if (value) {
            contents.notes[name] = *value;
        }
    }
    std::erase_if(contents.held, [&](const vault::HeldVolume& volume) {
        return std::find(change.release.begin(), change.release.end(), volume.number) != change.release.end();
    });
    for (const keys::Bytes& volume : change.hold) {
        contents.held.push_back({contents.held.back().number + 1, volume});
    }
    return contents;
}

void print(const std::string& what, const FaultFigures& figures)
{
    std::cout << what << ": " << figures.operations.size() << " operations, " << figures.cases << " cases\n";
}

void checkSaved(const std::string& what, const vault::Change& change)
{
    const vault::Contents before = storedVaultContents(2);
    const vault::Contents expected = after(change);
    std::size_t sawBefore = 0;
    std::size_t sawAfter = 0;
    const FaultFigures figures = forEveryFault([](const std::string& folder) { return prepareStored(folder, 2); },
                                               [&](const std::string& file) {
                                                   FixedMarks marks;
                                                   SeededRandom random(openingSeed);
                                                   const auto vault = openStored(file, marks, random);
                                                   return vault != nullptr && vault->save(change).ok();
                                               },
                                               [&](const std::string& file, bool acknowledged) {
                                                   const vault::Contents found = contentsAfter(file);
                                                   const bool isAfter = sameContents(found, expected);
                                                   REQUIRE((isAfter || sameContents(found, before)));
                                                   REQUIRE((isAfter || !acknowledged));
                                                   ++(isAfter ? sawAfter : sawBefore);
                                               });
    print(what, figures);
    CHECK(sawBefore > 0);
    CHECK(sawAfter > 0);
}

} // namespace

TEST_CASE("Attack 13: appending a sheet, opened, attested and logged", "[append][attack]")
{
    World world = storedVaultWorld();
    const merge::Ledger before = world.all;
    world.sheet(world.student, world.studentId, idOf(0x91));
    vault::Change change;
    change.entries = entriesSince(before, world.all);
    REQUIRE(change.entries.size() == 3);
    checkSaved("appending a sheet", change);
}

TEST_CASE("Attack 13: taking in entries with certificates, notes and volumes that wait", "[take-in][attack]")
{
    World world = storedVaultWorld();
    const merge::Ledger before = world.all;
    for (std::uint8_t sheet = 0; sheet < 9; ++sheet) {
        world.sheet(world.otherStudent, world.otherStudentId, idOf(static_cast<std::uint8_t>(0x91 + sheet)));
    }
    REQUIRE(world.receipt(world.instructor, world.otherStudentId).has_value());
    world.certify(2, trust::DirectorCertificate{idOf(0x12), world.secondInstructor.signing.verifyKey(),
                                                world.secondInstructor.opening.sealKey(), "Invented Successor"});
    vault::Change change;
    change.entries = entriesSince(before, world.all);
    REQUIRE(change.entries.size() == 28);
    for (const trust::Certificate& certificate : world.all.certificates()) {
        if (certificate.epoch == 2) {
            change.certificates.push_back(certificate.bytes);
        }
    }
    REQUIRE(change.certificates.size() == 1);
    change.notes = {{"role", std::nullopt}, {"program", keys::Bytes(32, 9)}, {"new", keys::Bytes(3000, 8)}};
    change.hold = {keys::Bytes(20'000, 5), keys::Bytes(100, 6)};
    change.release = {1};
    checkSaved("taking in", change);
}

TEST_CASE("Attack 13: a schema step", "[schema][attack]")
{
    bool sawOld = false;
    bool sawNew = false;
    const FaultFigures figures = forEveryFault([](const std::string& folder) { return prepareStored(folder, 1); },
                                               [](const std::string& file) {
                                                   FixedMarks marks;
                                                   SeededRandom random(openingSeed);
                                                   return openStored(file, marks, random) != nullptr;
                                               },
                                               [&](const std::string& file, bool acknowledged) {
                                                   const auto version = RawDatabase(file).number("PRAGMA user_version");
                                                   const auto tables = RawDatabase(file).number(
                                                       "SELECT count(*) FROM sqlite_schema WHERE name = 'held'");
                                                   REQUIRE((version == 1 || version == 2));
                                                   REQUIRE(tables == version - 1);
                                                   REQUIRE((version == 2 || !acknowledged));
                                                   (version == 1 ? sawOld : sawNew) = true;
                                                   REQUIRE(sameContents(contentsAfter(file), storedVaultContents(1)));
                                               });
    print("a schema step", figures);
    CHECK(sawOld);
    CHECK(sawNew);
}

TEST_CASE("Attack 13: changing the passphrase", "[secret][attack]")
{
    const keys::ByteView next = keys::bytesOf("quite another sentence");
    const auto slots = [](const std::string& file) {
        RawDatabase raw(file);
        return raw.values("SELECT * FROM slot, wrong_try ORDER BY kind");
    };
    const auto change = [&](const std::string& file) {
        FixedMarks marks;
        SeededRandom random(openingSeed);
        const auto vault = openStored(file, marks, random);
        return vault != nullptr && vault->changeSecret(vault::SecretKind::Passphrase, next).ok();
    };
    const TemporaryFolder folder;
    const std::string peaceful = prepareStored(folder.path().string(), 2);
    RawDatabase(peaceful).run("UPDATE wrong_try SET count = 3");
    const keys::Bytes start = readFile(peaceful);
    const std::vector<keys::Bytes> before = slots(peaceful);
    REQUIRE(change(peaceful));
    const std::vector<keys::Bytes> expected = slots(peaceful);
    REQUIRE(expected != before);
    FixedMarks marks;
    SeededRandom random(openingSeed);
    CHECK(SqliteVault::open(peaceful, next, marks, random, noon).ok());

    const FaultFigures figures = forEveryFault(
        [&](const std::string& work) {
            std::string file = work + "/v.peelvault";
            writeFile(file, start);
            return file;
        },
        change,
        [&](const std::string& file, bool acknowledged) {
            const std::vector<keys::Bytes> found = slots(file);
            REQUIRE((found == expected || found == before));
            REQUIRE((found == expected || !acknowledged));
            REQUIRE(sameContents(contentsAfter(file), storedVaultContents(2)));
        });
    print("changing the passphrase", figures);
}

TEST_CASE("Attack 13: the first opening", "[make][attack]")
{
    const auto make = [](const std::string& file) {
        FixedMarks marks;
        SeededRandom random(openingSeed);
        return SqliteVault::make(file, vault::SecretKind::Passphrase, passphrase(), marks, random).ok();
    };
    std::size_t madeAnew = 0;
    const FaultFigures figures = forEveryFault([](const std::string& folder) { return folder + "/v.peelvault"; }, make,
                                               [&](const std::string& file, bool acknowledged) {
                                                   const bool isThere = std::filesystem::exists(file);
                                                   REQUIRE((isThere || !acknowledged));
                                                   if (!isThere) {
                                                       // What was left does not stand in the way; stretching a
                                                       // passphrase is slow, so not every time.
                                                       if (madeAnew++ % 8 == 0) {
                                                           REQUIRE(make(file));
                                                       }
                                                       return;
                                                   }
                                                   FixedMarks marks;
                                                   SeededRandom random(openingSeed);
                                                   SeededRandom same(openingSeed);
                                                   same.id(); // as drawn when it was made: id, data key, code
                                                   const keys::Secret dataKey = same.secret(keys::aeadKeyBytes);
                                                   const keys::Secret code = same.secret(keys::codeSecretBytes);
                                                   auto opened =
                                                       SqliteVault::openWithCode(file, code.view(), marks, random);
                                                   INFO((opened ? "" : opened.error().sentence));
                                                   REQUIRE(opened.ok());
                                                   REQUIRE(opened.value()->device().ok());
                                                   REQUIRE(sameContents(contentsOf(*opened.value()), {}));
                                               });
    print("the first opening", figures);
    CHECK(madeAnew > 0);
    // The rename is no operation of SQLite's: everything that it gives the name to was on the disk before.
    using Sort = Operation::Sort;
    const auto last = [&](const std::vector<Sort>& sorts) {
        std::size_t at = 0;
        for (std::size_t i = 0; i < figures.operations.size(); ++i) {
            const Operation& operation = figures.operations[i];
            if (operation.file == "v.peelvault.new" &&
                std::find(sorts.begin(), sorts.end(), operation.sort) != sorts.end()) {
                at = i + 1;
            }
        }
        return at;
    };
    CHECK(last({Sort::Sync}) > last({Sort::Write, Sort::Truncate}));
    CHECK(last({Sort::Write}) > 0);
}

TEST_CASE("Attack 13: a wrong try is on the disk before it is known to be wrong", "[tries][attack]")
{
    const FaultFigures figures =
        forEveryFault([](const std::string& folder) { return prepareStored(folder, 2); },
                      [](const std::string& file) {
                          FixedMarks marks;
                          SeededRandom random(openingSeed);
                          const auto opened =
                              SqliteVault::open(file, keys::bytesOf("not the passphrase"), marks, random, noon);
                          return faultOf(opened) == vault::Fault::WrongSecret;
                      },
                      [](const std::string& file, bool saidWrong) {
                          const auto count = RawDatabase(file).number("SELECT count FROM wrong_try");
                          REQUIRE((count == 1 || (count == 0 && !saidWrong)));
                          REQUIRE(sameContents(contentsAfter(file), storedVaultContents(2)));
                      });
    print("a wrong try", figures);
}

} // namespace peelpack::test
