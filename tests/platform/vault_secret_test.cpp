#include "tests/platform/support/raw_database.h"
#include "tests/platform/support/vault_place.h"
#include "tests/sync/support/catch.h"

#include <algorithm>

// Changing what opens a vault: it is wrapped anew, and nothing in it is touched.
namespace peelpack::test {
namespace {

using vault::Fault;
using vault::SecretKind;

struct FilledPlace : VaultPlace {
    explicit FilledPlace(std::uint8_t seed) : VaultPlace(seed)
    {
        World world;
        world.setUp();
        vault::Change change = changeOf(world.all);
        change.notes["program"] = keys::Bytes{1, 2, 3};
        change.hold = {keys::Bytes(5000, 7)};
        save(*open(), change);
    }

    [[nodiscard]] std::vector<keys::Bytes> rows() const
    {
        RawDatabase raw(file);
        std::vector<keys::Bytes> all = raw.values("SELECT number, feed, seq, sealed FROM entry ORDER BY number");
        for (const char* other : {"SELECT sealed FROM chain", "SELECT name, sealed FROM note ORDER BY name",
                                  "SELECT number, sealed FROM held ORDER BY number"}) {
            const std::vector<keys::Bytes> more = raw.values(other);
            all.insert(all.end(), more.begin(), more.end());
        }
        return all;
    }

    [[nodiscard]] bool holds(const keys::Bytes& needle) const
    {
        const keys::Bytes bytes = readFile(file);
        return std::search(bytes.begin(), bytes.end(), needle.begin(), needle.end()) != bytes.end();
    }

    [[nodiscard]] keys::Bytes slot(int kind) const
    {
        return RawDatabase(file).values("SELECT sealed FROM slot WHERE kind = " + std::to_string(kind)).at(0);
    }
};

} // namespace

TEST_CASE("A new passphrase wraps anew: rows stay as they are, the old one opens nothing and is gone",
          "[vault][unlock]")
{
    FilledPlace place(11);
    const std::vector<keys::Bytes> before = place.rows();
    const keys::Bytes oldSlot = place.slot(1);
    REQUIRE(place.holds(oldSlot));
    const keys::VerifyKey device = place.open()->device().value()->signing.verifyKey();
    RawDatabase(place.file).run("UPDATE wrong_try SET count = 4, last_at = 1");
    const keys::ByteView next = keys::bytesOf("quite another sentence");
    REQUIRE(place.open()->changeSecret(SecretKind::Passphrase, next).ok());
    CHECK(place.rows() == before);
    CHECK_FALSE(place.holds(oldSlot));
    CHECK(RawDatabase(place.file).number("SELECT count FROM wrong_try") == 0);
    CHECK(faultOf(place.tryOpen(passphrase())) == Fault::WrongSecret);
    const auto opened = place.tryOpen(next);
    REQUIRE(opened.ok());
    CHECK(opened.value()->device().value()->signing.verifyKey() == device);
}

TEST_CASE("A new vault code wraps anew: the old one opens nothing and is gone", "[vault][unlock]")
{
    FilledPlace place(12);
    const std::vector<keys::Bytes> before = place.rows();
    const keys::Bytes oldSlot = place.slot(3);
    auto vault = place.open();
    auto code = vault->changeCode();
    REQUIRE(code.ok());
    vault.reset();
    CHECK(place.rows() == before);
    CHECK_FALSE(place.holds(oldSlot));
    CHECK(faultOf(place.tryCode()) == Fault::WrongSecret);
    place.code = std::move(code).value();
    CHECK(place.tryCode().ok());
    CHECK(place.tryOpen(passphrase()).ok());
}

TEST_CASE("A weak passphrase or PIN changes nothing", "[vault][unlock]")
{
    FilledPlace place(13);
    const keys::Bytes slot = place.slot(1);
    CHECK(faultOf(place.open()->changeSecret(SecretKind::Passphrase, keys::bytesOf("password"))) == Fault::WeakSecret);
    CHECK(faultOf(place.open()->changeSecret(SecretKind::Pin, keys::bytesOf("123456"))) == Fault::WeakSecret);
    CHECK(place.slot(1) == slot);
    const std::string file = (place.folder.path() / "weak.peelvault").string();
    CHECK(faultOf(vault::SqliteVault::make(file, SecretKind::Pin, keys::bytesOf("000000"), place.marks,
                                           place.random)) == Fault::WeakSecret);
    CHECK_FALSE(std::filesystem::exists(file));
    CHECK_FALSE(std::filesystem::exists(file + ".new"));
}

} // namespace peelpack::test
