#include "tests/platform/support/filled_vault.h"
#include "tests/platform/support/raw_database.h"
#include "tests/sync/support/catch.h"

#include <algorithm>
#include <set>

// What somebody with a database tool, or a dying disk, does to a vault is named with its place, and the rest is read.
namespace peelpack::test {
namespace {

using vault::Damage;
using vault::Fault;

/// Does something to the entries' table that its triggers forbid.
void changeByHand(const std::string& file, const std::string& sql)
{
    RawDatabase raw(file);
    raw.dropTriggers();
    raw.run(sql);
    raw.restoreTriggers();
}

vault::Contents contentsNow(FilledVault& vault)
{
    auto opened = vault.tryOpen();
    INFO((opened ? "" : opened.error().sentence));
    REQUIRE(opened.ok());
    return contentsOf(*opened.value());
}

std::vector<std::string> damageNow(FilledVault& vault)
{
    std::vector<std::string> places;
    for (const Damage& damage : contentsNow(vault).damage) {
        places.push_back(damage.place);
    }
    return places;
}

using Places = std::vector<std::string>;

/// Appending over what is missing would cover it up.
void checkNothingIsAppended(FilledVault& vault)
{
    auto opened = vault.tryOpen();
    REQUIRE(opened.ok());
    CHECK(faultOf(opened.value()->save({{keys::Bytes(60, 1)}, {}, {}, {}, {}})) == Fault::Damaged);
}

} // namespace

TEST_CASE("Rows that were removed are named, and the others are read", "[vault][damage]")
{
    FilledVault vault(5);
    changeByHand(vault.file, "DELETE FROM entry WHERE number = 9");
    vault::Contents contents = contentsNow(vault);
    CHECK(contents.damage == std::vector<Damage>{{"row 9 (missing)"}});
    CHECK(contents.entries.size() == vault.contents.entries.size() - 1);
    for (const vault::PlacedEntry& entry : contents.entries) {
        CHECK(std::find(vault.contents.entries.begin(), vault.contents.entries.end(), entry) !=
              vault.contents.entries.end());
    }
    changeByHand(vault.file, "DELETE FROM entry WHERE number IN (10, 11, 14)");
    CHECK(damageNow(vault) == Places{"rows 9 to 11 (missing)", "row 14 (missing)"});

    vault.restore();
    const std::size_t last = vault.rows().size();
    changeByHand(vault.file, "DELETE FROM entry WHERE number > " + std::to_string(last - 3));
    CHECK(damageNow(vault) ==
          Places{"rows " + std::to_string(last - 2) + " to " + std::to_string(last) + " (missing)"});
    vault.restore();
    changeByHand(vault.file, "DELETE FROM entry");
    CHECK(damageNow(vault) == Places{"rows 1 to " + std::to_string(last) + " (missing)"});
}

TEST_CASE("Rows that changed places are named", "[vault][damage]")
{
    FilledVault vault(5);
    const std::vector<RowPlace> rows = vault.rows();
    const RowPlace& first = rows[12];
    const RowPlace& second = rows[13];
    const auto swapped = [&](const std::string& columns) {
        std::string sql = "CREATE TEMP TABLE kept AS SELECT * FROM entry;";
        for (const RowPlace* row : {&first, &second}) {
            const std::string other = std::to_string(first.number + second.number - row->number);
            sql += "UPDATE entry SET (" + columns + ") = (SELECT " + columns + " FROM kept WHERE number = " + other +
                   ") WHERE number = " + std::to_string(row->number) + ";";
        }
        return sql;
    };
    changeByHand(vault.file, swapped("sealed"));
    CHECK(damageNow(vault) == Places{first.words, second.words});
    vault.restore();
    changeByHand(vault.file, swapped("feed, seq, sealed"));
    CHECK(damageNow(vault).size() == 2);
}

TEST_CASE("A row of an older copy of the same vault shows, although it opens", "[vault][damage]")
{
    FilledVault vault(5);
    const auto appended = [&](std::uint8_t fill) {
        vault.restore();
        auto opened = vault.tryOpen();
        REQUIRE(opened.ok());
        vault::PlacedEntry entry = vault.contents.entries.back();
        entry.seq += 1;
        entry.bytes = keys::Bytes(90, fill);
        save(*opened.value(), {{}, {entry}, {}, {}, {}});
    };
    appended(1);
    const std::string older = vault.file + ".older";
    std::filesystem::copy_file(vault.file, older);
    appended(2);
    changeByHand(vault.file, "ATTACH '" + older +
                                 "' AS older; DELETE FROM entry WHERE number = (SELECT max(number) FROM entry); INSERT "
                                 "INTO entry SELECT * FROM older.entry WHERE number = (SELECT max(number) FROM "
                                 "older.entry)");
    const vault::Contents contents = contentsNow(vault);
    CHECK(contents.entries.back().bytes == keys::Bytes(90, 1));
    CHECK(contents.damage == std::vector<Damage>{{"the list of rows"}});
    checkNothingIsAppended(vault);
}

TEST_CASE("A list of rows that is older than the rows shows", "[vault][damage]")
{
    FilledVault vault(5);
    const std::string older = vault.file + ".older";
    std::filesystem::copy_file(vault.file, older);
    auto opened = vault.tryOpen();
    REQUIRE(opened.ok());
    vault::PlacedEntry entry = vault.contents.entries.back();
    for (int i = 0; i < 3; ++i) {
        entry.seq += 1;
        save(*opened.value(), {{}, {entry}, {}, {}, {}});
    }
    std::move(opened).value().reset();
    const keys::Bytes newest = readFile(vault.file);
    const std::string olderList =
        "ATTACH '" + older + "' AS older; UPDATE chain SET sealed = (SELECT sealed FROM older.chain);";
    RawDatabase(vault.file).run(olderList);
    CHECK(damageNow(vault) == Places{"the list of rows"});
    checkNothingIsAppended(vault);

    // Cut off to the very row where the older list ends, it is that older vault: what the newer rows said is found at
    // the next exchange, as after any backup. Cut off anywhere else it shows here.
    const std::size_t end = vault.rows().size();
    for (std::size_t last = end; last > end - 5; --last) {
        INFO(end - last);
        writeFile(vault.file, newest);
        changeByHand(vault.file, olderList + "DELETE FROM entry WHERE number > " + std::to_string(last));
        const vault::Contents contents = contentsNow(vault);
        if (last == end - 3) {
            CHECK(sameContents(contents, vault.contents));
        } else {
            CHECK_FALSE(contents.damage.empty());
        }
    }
}

TEST_CASE("Without its list of rows a vault is read, named damaged, and not written on", "[vault][damage]")
{
    FilledVault vault(5);
    for (const char* sql : {"DELETE FROM chain", "UPDATE chain SET sealed = zeroblob(80)"}) {
        INFO(sql);
        vault.restore();
        RawDatabase(vault.file).run(sql);
        vault::Contents contents = contentsNow(vault);
        CHECK(contents.damage == std::vector<Damage>{{"the list of rows"}});
        contents.damage.clear();
        CHECK(sameContents(contents, vault.contents));
        checkNothingIsAppended(vault);
    }
}

TEST_CASE("Settings and waiting parcels that are missing, exchanged or changed are named", "[vault][damage]")
{
    FilledVault vault(5);
    const std::string list = "the list of settings and of parcels that wait";
    const std::vector<std::pair<std::string, std::string>> cases{
        {"DELETE FROM note WHERE name = '.role'", list},
        {"DELETE FROM note WHERE name = 'list'", list},
        {"DELETE FROM note WHERE name = 'device'", list},
        {"DELETE FROM note", list},
        {"DELETE FROM held WHERE number = 2", list},
        {"UPDATE note SET sealed = zeroblob(50) WHERE name = '.role'", "a setting of this device"},
        {"UPDATE note SET name = '.more' WHERE name = '.role'", "a setting of this device"},
        {"UPDATE held SET sealed = zeroblob(50) WHERE number = 2", "a parcel that waits"},
        {"UPDATE held SET number = 7 WHERE number = 2", "a parcel that waits"},
    };
    for (const auto& [sql, place] : cases) {
        INFO(sql);
        vault.restore();
        RawDatabase(vault.file).run(sql);
        CHECK(damageNow(vault) == Places{place});
        CHECK(contentsNow(vault).entries == vault.contents.entries);
    }
    vault.restore();
    const std::string older = vault.file + ".older";
    std::filesystem::copy_file(vault.file, older);
    auto opened = vault.tryOpen();
    REQUIRE(opened.ok());
    save(*opened.value(), {{}, {}, {{"role", keys::Bytes{1}}}, {}, {}});
    std::move(opened).value().reset();
    RawDatabase(vault.file)
        .run("ATTACH '" + older +
             "' AS older; UPDATE note SET sealed = (SELECT sealed FROM older.note WHERE name = "
             "'.role') WHERE name = '.role'");
    CHECK(damageNow(vault) == Places{list});
}

TEST_CASE("A row whose number claims billions of rows before it takes no time and no memory", "[vault][damage]")
{
    FilledVault vault(5);
    changeByHand(vault.file, "UPDATE entry SET number = 9000000000000000000 WHERE number = 9");
    const Places places = damageNow(vault);
    CHECK(places.size() < 5);
    CHECK(std::find(places.begin(), places.end(), "row 9 (missing)") != places.end());
}

TEST_CASE("A page of zeros takes only its own rows, by name", "[vault][damage]")
{
    FilledVault vault(60);
    constexpr std::size_t pageBytes = 8192;
    REQUIRE(vault.bytes.size() % pageBytes == 0);
    const std::vector<RowPlace> rows = vault.rows();
    std::map<std::size_t, std::set<std::uint64_t>> rowsOfPage;
    for (const RowPlace& row : rows) {
        const auto at = std::search(vault.bytes.begin(), vault.bytes.end(), row.sealed.begin(), row.sealed.end());
        REQUIRE(at != vault.bytes.end());
        rowsOfPage[static_cast<std::size_t>(at - vault.bytes.begin()) / pageBytes].insert(row.number);
    }
    CHECK(rowsOfPage.size() > 5);
    std::size_t refused = 0;
    std::size_t alone = 0;
    for (std::size_t page = 0; page < vault.bytes.size() / pageBytes; ++page) {
        INFO("page " << page);
        vault.restore();
        keys::Bytes zeroed = vault.bytes;
        std::fill_n(zeroed.begin() + static_cast<std::ptrdiff_t>(page * pageBytes), pageBytes, std::uint8_t{0});
        writeFile(vault.file, zeroed);
        auto opened = vault.tryOpen();
        const auto contents = opened ? opened.value()->contents() : vault::Result<vault::Contents>(opened.error());
        if (!contents) {
            CHECK(contents.error().sentence.ends_with('.'));
            CHECK(rowsOfPage.count(page) == 0);
            ++refused;
            continue;
        }
        const auto found = rowsOfPage.find(page);
        if (found == rowsOfPage.end()) {
            CHECK((!contents.value().damage.empty() || sameContents(contents.value(), vault.contents)));
            continue;
        }
        const std::uint64_t first = *found->second.begin();
        const std::uint64_t last = *found->second.rbegin();
        REQUIRE(last - first + 1 == found->second.size());
        const std::string place = first == last
                                      ? "row " + std::to_string(first) + " (missing)"
                                      : "rows " + std::to_string(first) + " to " + std::to_string(last) + " (missing)";
        REQUIRE_FALSE(contents.value().damage.empty());
        CHECK(contents.value().damage.front().place == place);
        // Where the row is lost that says which feed a number stands for, that feed's later rows are named too.
        const auto isLost = [&](const RowPlace& row) { return found->second.count(row.number) > 0; };
        const auto introduces = [](const RowPlace& row) { return row.words.find("which feed") != std::string::npos; };
        const bool alsoOthers =
            std::any_of(rows.begin(), rows.end(), [&](const RowPlace& row) { return isLost(row) && introduces(row); });
        const std::size_t readable = contents.value().entries.size() + contents.value().certificates.size();
        const auto rest = std::count_if(rows.begin(), rows.end(),
                                        [&](const RowPlace& row) { return !isLost(row) && !introduces(row); });
        alone += alsoOthers ? 0 : 1;
        CHECK((alsoOthers || contents.value().damage.size() == 1));
        CHECK(readable + contents.value().damage.size() - 1 == static_cast<std::size_t>(rest));
    }
    CHECK(refused < 5);
    CHECK(alone > 5);
}

} // namespace peelpack::test
