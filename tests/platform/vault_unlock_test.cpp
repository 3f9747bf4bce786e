#include "tests/platform/support/raw_database.h"
#include "tests/platform/support/vault_place.h"
#include "tests/sync/support/catch.h"

// Which secret opens a vault, and what is said when one does not.
namespace peelpack::test {
namespace {

using vault::Fault;
using vault::SecretKind;

keys::ByteView wrong()
{
    return keys::bytesOf("four other words here");
}

std::int64_t triesIn(const std::string& file)
{
    return RawDatabase(file).number("SELECT count FROM wrong_try");
}

void setTries(const std::string& file, std::int64_t count, std::int64_t lastAt)
{
    RawDatabase(file).run("UPDATE wrong_try SET count = " + std::to_string(count) +
                          ", last_at = " + std::to_string(lastAt));
}

} // namespace

TEST_CASE("A wrong passphrase, a damaged slot and a missing mark are told apart", "[vault][unlock]")
{
    VaultPlace place(1);
    CHECK(faultOf(place.tryOpen(wrong())) == Fault::WrongSecret);
    CHECK(triesIn(place.file) == 1);

    vault::FolderMarkStore elsewhere((place.folder.path() / "elsewhere").string());
    CHECK(faultOf(vault::SqliteVault::open(place.file, passphrase(), elsewhere, place.random, noon)) ==
          Fault::MarkMissing);
    CHECK(triesIn(place.file) == 1); // nothing was guessed

    for (const std::string column : {"salt", "mark_check", "commitment", "sealed", "checksum"}) {
        INFO(column);
        const keys::Bytes before = readFile(place.file);
        RawDatabase(place.file).run("UPDATE slot SET " + column + " = zeroblob(length(" + column + ")) WHERE kind = 1");
        CHECK(faultOf(place.tryOpen(passphrase())) == Fault::Damaged);
        CHECK(triesIn(place.file) == 1);
        CHECK(place.tryCode().ok());
        writeFile(place.file, before);
    }
    RawDatabase(place.file).run("DELETE FROM slot WHERE kind = 1");
    CHECK(faultOf(place.tryOpen(passphrase())) == Fault::Damaged);
    REQUIRE(place.open()->changeSecret(SecretKind::Passphrase, passphrase()).ok());
    RawDatabase(place.file).run("UPDATE slot SET sealed = zeroblob(72) WHERE kind = 3");
    CHECK(faultOf(place.tryCode()) == Fault::Damaged);
    CHECK(place.tryOpen(passphrase()).ok());
}

TEST_CASE("Wrong tries are counted, waited for and end; the vault code opens all the same", "[vault][unlock]")
{
    VaultPlace place(2);
    std::int64_t now = noon;
    for (int count = 1; count <= 5; ++count, ++now) {
        CHECK(faultOf(place.tryOpen(wrong(), now)) == Fault::WrongSecret);
        CHECK(triesIn(place.file) == count);
    }
    --now;
    for (std::int64_t wait = 30; wait <= 480; wait *= 2) {
        INFO(wait);
        const auto early = place.tryOpen(passphrase(), now + wait - 1);
        REQUIRE(faultOf(early) == Fault::MustWait);
        CHECK(early.error().sentence == "Too many wrong tries: wait 1 seconds.");
        now += wait;
        CHECK(faultOf(place.tryOpen(wrong(), now)) == Fault::WrongSecret);
    }
    CHECK(triesIn(place.file) == 10);
    const auto disabled = place.tryOpen(passphrase(), now + 1'000'000'000);
    REQUIRE(faultOf(disabled) == Fault::Disabled);
    CHECK(disabled.error().sentence == "After 10 wrong tries only the vault code opens this vault.");
    auto vault = place.open();
    CHECK(vault->device().ok());
    vault.reset();
    CHECK(faultOf(place.tryOpen(passphrase(), now + 1'000'000'000)) == Fault::Disabled);
    REQUIRE(place.open()->changeSecret(SecretKind::Passphrase, passphrase()).ok());
    CHECK(triesIn(place.file) == 0);
    CHECK(place.tryOpen(passphrase(), now).ok());
}

TEST_CASE("The right passphrase gives the tries back", "[vault][unlock]")
{
    VaultPlace place(3);
    setTries(place.file, 9, noon);
    const auto early = place.tryOpen(passphrase(), noon);
    REQUIRE(faultOf(early) == Fault::MustWait);
    CHECK(early.error().sentence == "Too many wrong tries: wait 8 minutes.");
    CHECK(place.tryOpen(passphrase(), noon + 480).ok());
    CHECK(triesIn(place.file) == 0);
}

TEST_CASE("A clock that is set back neither shortens a wait nor locks for ever", "[vault][unlock]")
{
    VaultPlace place(4);
    constexpr std::int64_t year = 31'557'600;
    setTries(place.file, 5, noon);
    const std::int64_t back = noon - year;
    CHECK(faultOf(place.tryOpen(passphrase(), back)) == Fault::MustWait);
    CHECK(faultOf(place.tryOpen(passphrase(), back + 29)) == Fault::MustWait);
    CHECK(place.tryOpen(passphrase(), back + 30).ok());

    // Set back again and again: every time the wait begins anew, and never ends early.
    setTries(place.file, 5, noon);
    for (std::int64_t day = 1; day < 10; ++day) {
        CHECK(faultOf(place.tryOpen(passphrase(), noon - day * 86'400)) == Fault::MustWait);
    }
    CHECK(triesIn(place.file) == 5);
    CHECK(place.tryOpen(passphrase(), noon - 9 * 86'400 + 30).ok());
}

TEST_CASE("The code of another vault is refused, and so is anything that is no code", "[vault][unlock]")
{
    VaultPlace one(5);
    VaultPlace two(6);
    const auto other = vault::SqliteVault::openWithCode(one.file, two.code.view(), one.marks, one.random);
    REQUIRE(faultOf(other) == Fault::WrongSecret);
    CHECK(other.error().sentence == "That is the code of another vault.");
    const keys::Bytes none;
    CHECK(faultOf(vault::SqliteVault::openWithCode(one.file, none, one.marks, one.random)) == Fault::WrongSecret);
    CHECK(faultOf(vault::SqliteVault::openWithCode(one.file, passphrase(), one.marks, one.random)) ==
          Fault::WrongSecret);
    CHECK(triesIn(one.file) == 0);
}

TEST_CASE("A PIN opens what it was chosen for, and is told from a passphrase", "[vault][unlock]")
{
    VaultPlace place(7);
    CHECK(place.open()->secretKind().value() == SecretKind::Passphrase);
    REQUIRE(place.open()->changeSecret(SecretKind::Pin, keys::bytesOf("271828")).ok());
    const auto vault = place.tryOpen(keys::bytesOf("271828"));
    REQUIRE(vault.ok());
    CHECK(vault.value()->secretKind().value() == SecretKind::Pin);
}

TEST_CASE("A damaged mark is a missing mark; a mark that cannot be read does not stop the vault code",
          "[vault][unlock]")
{
    VaultPlace place(8);
    const std::string mark = place.markFolder + "/" + keys::hex(place.open()->id().view()) + ".mark";
    const keys::Bytes good = readFile(mark);
    REQUIRE(good.size() == vault::MarkStore::markBytes);
    writeFile(mark, keys::ByteView(good).first(31));
    CHECK(faultOf(place.tryOpen(passphrase())) == Fault::MarkMissing);
    CHECK(faultOf(place.open()->device()) == Fault::MarkMissing);

    std::filesystem::remove(mark);
    std::filesystem::create_directory(mark);
    CHECK(faultOf(place.tryOpen(passphrase())) == Fault::CannotRead);
    CHECK(faultOf(place.open()->device()) == Fault::MarkMissing);
    std::filesystem::remove(mark);
    writeFile(mark, good);
    CHECK(place.tryOpen(passphrase()).ok());
    CHECK(triesIn(place.file) == 0);
}

} // namespace peelpack::test
