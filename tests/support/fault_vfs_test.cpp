#include "tests/support/catch.h"
#include "tests/support/fault_driver.h"

#include <sqlite3.h>

#include <array>
#include <cstddef>
#include <filesystem>
#include <iterator>
#include <map>
#include <string>

using namespace peelpack::test;

namespace {

constexpr std::size_t transactionCount = 3;
constexpr std::size_t rowsEach = 3;

class Database {
public:
    Database(const std::string& path, const std::string& pragmas)
    {
        m_works = sqlite3_open(path.c_str(), &m_database) == SQLITE_OK && this->execute(pragmas);
    }
    ~Database() { sqlite3_close(m_database); }
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;

    [[nodiscard]] bool works() const { return m_works; }

    bool execute(const std::string& sql)
    {
        return sqlite3_exec(m_database, sql.c_str(), nullptr, nullptr, nullptr) == SQLITE_OK;
    }

    /// The first value of the first row; the error message if there is none.
    std::string ask(const std::string& sql)
    {
        sqlite3_stmt* statement = nullptr;
        sqlite3_prepare_v2(m_database, sql.c_str(), -1, &statement, nullptr);
        std::string answer;
        if (sqlite3_step(statement) == SQLITE_ROW) {
            answer = reinterpret_cast<const char*>(sqlite3_column_text(statement, 0));
        } else {
            answer = sqlite3_errmsg(m_database);
        }
        sqlite3_finalize(statement);
        return answer;
    }

private:
    sqlite3* m_database = nullptr;
    bool m_works = false;
};

/// A file in a folder of the driver's making, with rows in two tables.
Prepare rowsIn(const std::string& journalMode)
{
    return [journalMode](const std::string& folder) {
        std::string path = folder + "/rows.db";
        Database database(path, "PRAGMA page_size=1024; PRAGMA journal_mode=" + journalMode);
        database.execute("CREATE TABLE entry(id INTEGER PRIMARY KEY, number INTEGER, filler TEXT);"
                         "CREATE TABLE sum(number INTEGER, filler BLOB);"
                         "CREATE INDEX sum_number ON sum(number);"
                         "WITH RECURSIVE n(i) AS (SELECT 100 UNION ALL SELECT i + 1 FROM n WHERE i < 120)"
                         "INSERT INTO entry SELECT i, i, printf('%200d', i) FROM n;"
                         "INSERT INTO sum SELECT number, zeroblob(100) FROM entry");
        return path;
    };
}

/// `sql` with the transaction's number for every #.
std::string numbered(const std::string& sql, std::size_t number)
{
    std::string filled;
    for (const char letter : sql) {
        if (letter == '#') {
            filled += std::to_string(number);
        } else {
            filled += letter;
        }
    }
    return filled;
}

std::string transaction(std::size_t number)
{
    std::string sql = "BEGIN;";
    for (std::size_t row = 0; row < rowsEach; ++row) {
        sql += "INSERT INTO entry(number, filler) VALUES(#, printf('%250d', #));"
               "INSERT INTO sum VALUES(#, randomblob(200));";
    }
    sql += "UPDATE entry SET filler = printf('%300d', #) WHERE id % 9 = 0;"
           "DELETE FROM sum WHERE number = 100 + #;"
           "COMMIT";
    return numbered(sql, number);
}

/// Which transactions SQLite said were done.
using Acknowledged = std::array<bool, transactionCount>;

Action transactions(const std::string& pragmas, Acknowledged& acknowledged)
{
    return [pragmas, &acknowledged](const std::string& path) {
        acknowledged.fill(false);
        Database database(path, pragmas);
        for (std::size_t number = 0; database.works() && number < transactionCount; ++number) {
            acknowledged[number] = database.execute(transaction(number));
            if (!acknowledged[number]) {
                database.execute("ROLLBACK");
            }
        }
        return acknowledged.back();
    };
}

struct Finding {
    std::string integrity;                            ///< "ok", or what is wrong
    std::array<std::string, transactionCount> traces; ///< rows in both tables and the older row that it deletes
    bool present(std::size_t number) const { return traces[number] == "3 3 0"; }
    bool absent(std::size_t number) const { return traces[number] == "0 0 1"; }
};

Finding find(const std::string& path)
{
    Database database(path, "PRAGMA synchronous=OFF");
    Finding finding;
    finding.integrity = database.ask("PRAGMA integrity_check");
    for (std::size_t number = 0; number < transactionCount; ++number) {
        finding.traces[number] = database.ask(numbered("SELECT (SELECT count(*) FROM entry WHERE number = #) || ' ' ||"
                                                       "(SELECT count(*) FROM sum WHERE number = #) || ' ' ||"
                                                       "(SELECT count(*) FROM sum WHERE number = 100 + #)",
                                                       number));
    }
    return finding;
}

void requireWhole(const Finding& finding)
{
    REQUIRE(finding.integrity == "ok");
    for (std::size_t number = 0; number < transactionCount; ++number) {
        INFO("transaction " << number << ": " << finding.traces[number]);
        REQUIRE(finding.present(number) != finding.absent(number));
    }
}

/// How many acknowledged transactions are not there.
std::size_t lost(const Finding& finding, const Acknowledged& acknowledged)
{
    std::size_t count = 0;
    for (std::size_t number = 0; number < transactionCount; ++number) {
        count += acknowledged[number] && !finding.present(number) ? 1 : 0;
    }
    return count;
}

} // namespace

TEST_CASE("an acknowledged transaction outlasts any fault, and every transaction is there whole or not at all")
{
    struct Mode {
        const char* name;
        const char* prepared; ///< journal mode of the file
        const char* pragmas;
    };
    const std::array modes = {
        Mode{"WAL", "WAL", "PRAGMA locking_mode=EXCLUSIVE; PRAGMA synchronous=FULL"},
        Mode{"WAL with checkpoints between", "WAL",
             "PRAGMA locking_mode=EXCLUSIVE; PRAGMA synchronous=FULL; PRAGMA wal_autocheckpoint=8"},
        Mode{"WAL from now on", "DELETE",
             "PRAGMA locking_mode=EXCLUSIVE; PRAGMA synchronous=FULL; PRAGMA journal_mode=WAL"},
        Mode{"DELETE", "DELETE", "PRAGMA synchronous=EXTRA"},
        Mode{"DELETE, spilled", "DELETE", "PRAGMA synchronous=EXTRA; PRAGMA cache_size=3"},
        Mode{"TRUNCATE", "DELETE", "PRAGMA journal_mode=TRUNCATE; PRAGMA synchronous=FULL"},
        Mode{"exclusive", "DELETE", "PRAGMA locking_mode=EXCLUSIVE; PRAGMA synchronous=FULL"},
    };
    for (const Mode& mode : modes) {
        INFO(mode.name);
        Acknowledged acknowledged{};
        forEveryFault(rowsIn(mode.prepared), transactions(mode.pragmas, acknowledged),
                      [&](const std::string& path, bool last) {
                          const Finding finding = find(path);
                          requireWhole(finding);
                          REQUIRE(lost(finding, acknowledged) == 0);
                          REQUIRE((!last || finding.present(transactionCount - 1)));
                      });
    }
}

TEST_CASE("every operation meets every fault that can befall it, each time from the same start")
{
    Acknowledged acknowledged{};
    const Action action = transactions("PRAGMA synchronous=EXTRA", acknowledged);
    std::size_t checked = 0;
    const FaultFigures figures = forEveryFault(
        rowsIn("DELETE"),
        [&](const std::string& path) {
            const std::string folder = std::filesystem::path(path).parent_path();
            REQUIRE(std::distance(std::filesystem::directory_iterator(folder), {}) == 1);
            return action(path);
        },
        [&](const std::string&, bool) { ++checked; }, {FaultPlan().faults, {keepNothing}});
    std::map<Operation::Sort, std::size_t> sorts;
    for (const Operation& operation : figures.operations) {
        ++sorts[operation.sort];
    }
    REQUIRE(sorts[Operation::Sort::Create] == transactionCount);
    REQUIRE(sorts[Operation::Sort::Delete] == transactionCount);
    REQUIRE(sorts[Operation::Sort::Sync] >= 2 * transactionCount);
    REQUIRE(checked == 1 + 3 * figures.operations.size() + 2 * sorts[Operation::Sort::Write]);
    REQUIRE(figures.cases == checked);
}

TEST_CASE("what the rollback journal's FULL leaves open is found: the deletion that commits is not synced")
{
    Acknowledged acknowledged{};
    std::size_t lostInAll = 0;
    forEveryFault(rowsIn("DELETE"), transactions("PRAGMA synchronous=FULL", acknowledged),
                  [&](const std::string& path, bool) {
                      const Finding finding = find(path);
                      requireWhole(finding);
                      const std::size_t lostHere = lost(finding, acknowledged);
                      REQUIRE(lostHere <= 1);
                      lostInAll += lostHere;
                  });
    REQUIRE(lostInAll > 0);
}

TEST_CASE("WAL without a sync at each commit loses acknowledged transactions and stays whole")
{
    Acknowledged acknowledged{};
    std::size_t lostInAll = 0;
    forEveryFault(rowsIn("WAL"), transactions("PRAGMA locking_mode=EXCLUSIVE; PRAGMA synchronous=NORMAL", acknowledged),
                  [&](const std::string& path, bool) {
                      const Finding finding = find(path);
                      requireWhole(finding);
                      lostInAll += lost(finding, acknowledged);
                  });
    REQUIRE(lostInAll > 0);
}

TEST_CASE("without syncs a power loss takes acknowledged transactions and tears files, a killed process does not")
{
    const std::array modes = {std::array{"WAL", "PRAGMA locking_mode=EXCLUSIVE; PRAGMA synchronous=OFF"},
                              std::array{"DELETE", "PRAGMA synchronous=OFF"}};
    for (const auto& [journalMode, pragmas] : modes) {
        INFO(journalMode);
        Acknowledged acknowledged{};
        std::size_t lostInAll = 0;
        std::size_t torn = 0;
        forEveryFault(rowsIn(journalMode), transactions(pragmas, acknowledged),
                      [&](const std::string& path, bool) {
                          const Finding finding = find(path);
                          lostInAll += lost(finding, acknowledged);
                          torn += finding.integrity == "ok" ? 0 : 1;
                      },
                      {{Fault::StopBefore}, {keepNothing, 2, 3}});
        REQUIRE(lostInAll > 0);
        REQUIRE(torn > 0);

        forEveryFault(rowsIn(journalMode), transactions(pragmas, acknowledged),
                      [&](const std::string& path, bool) {
                          const Finding finding = find(path);
                          requireWhole(finding);
                          REQUIRE(lost(finding, acknowledged) == 0);
                      },
                      {{Fault::StopBefore, Fault::StopAfter, Fault::ShortWrite}, {keepEverything}});
    }
}
