#include "tests/platform/support/filled_vault.h"

#include "tests/platform/support/raw_database.h"
#include "tests/sync/support/catch.h"

namespace peelpack::test {
namespace {

std::string textOf(const keys::Bytes& bytes)
{
    return {bytes.begin(), bytes.end()};
}

} // namespace

World busyWorld(std::size_t sheets)
{
    World world;
    world.setUp();
    for (std::size_t i = 0; i < sheets; ++i) {
        world.sheet(world.student, world.studentId, idOf(static_cast<std::uint8_t>(0x51 + i)));
        if (i % 5 == 4) {
            REQUIRE(world.receipt(world.instructor, world.studentId).has_value());
        }
    }
    return world;
}

FilledVault::FilledVault(std::size_t sheets)
{
    auto made = vault::SqliteVault::make(file, vault::SecretKind::Passphrase, passphrase(), marks, random);
    REQUIRE(made.ok());
    vault::MadeVault parts = std::move(made).value();
    code = std::move(parts.code);
    vault::Change change = changeOf(busyWorld(sheets).all);
    change.notes = {{"program", keys::Bytes(32, 1)}, {"person", keys::Bytes(16, 2)}, {"role", keys::Bytes{4}}};
    change.hold = {keys::Bytes(9000, 3), keys::Bytes(700, 4)};
    save(*parts.vault, change);
    contents = contentsOf(*parts.vault);
    REQUIRE(contents.damage.empty());
    REQUIRE(contents.entries.size() == change.entries.size());
    device = parts.vault->device().value()->signing.verifyKey();
    parts.vault.reset();
    bytes = readFile(file);
}

vault::Result<std::unique_ptr<vault::SqliteVault>> FilledVault::tryOpen()
{
    return vault::SqliteVault::openWithCode(file, code.view(), marks, random);
}

void FilledVault::restore() const
{
    std::filesystem::remove(file + "-wal");
    std::filesystem::remove(file + "-journal");
    writeFile(file, bytes);
}

std::vector<RowPlace> FilledVault::rows() const
{
    const std::vector<keys::Bytes> values =
        RawDatabase(file).values("SELECT number, feed, seq, sealed FROM entry ORDER BY number");
    constexpr std::size_t columns = 4;
    std::vector<RowPlace> rows;
    for (std::size_t at = 0; at < values.size(); at += columns) {
        RowPlace row{std::stoull(textOf(values[at])), "row " + textOf(values[at]), values[at + 3]};
        const std::string feed = textOf(values[at + 1]);
        const std::string seq = textOf(values[at + 2]);
        if (feed == "0") {
            row.words += " (a certificate)";
        } else if (seq == "4294967295") {
            row.words += " (which feed " + feed + " is)";
        } else {
            row.words.append(" (entry ").append(seq).append(" of feed ").append(feed).append(")");
        }
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace peelpack::test
