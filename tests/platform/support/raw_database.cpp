#include "tests/platform/support/raw_database.h"

#include "tests/sync/support/catch.h"

namespace peelpack::test {

RawDatabase::RawDatabase(const std::string& file)
{
    REQUIRE(sqlite3_open(file.c_str(), &m_database) == SQLITE_OK);
}

RawDatabase::~RawDatabase()
{
    sqlite3_close(m_database);
}

void RawDatabase::run(const std::string& sql)
{
    const int code = sqlite3_exec(m_database, sql.c_str(), nullptr, nullptr, nullptr);
    INFO(sql << ": " << sqlite3_errmsg(m_database));
    REQUIRE(code == SQLITE_OK);
}

std::vector<keys::Bytes> RawDatabase::values(const std::string& sql)
{
    sqlite3_stmt* statement = nullptr;
    sqlite3_prepare_v2(m_database, sql.c_str(), -1, &statement, nullptr);
    std::vector<keys::Bytes> found;
    int code = sqlite3_step(statement);
    for (; code == SQLITE_ROW; code = sqlite3_step(statement)) {
        for (int column = 0; column < sqlite3_column_count(statement); ++column) {
            const auto* bytes = static_cast<const std::uint8_t*>(sqlite3_column_blob(statement, column));
            found.emplace_back(bytes, bytes + sqlite3_column_bytes(statement, column));
        }
    }
    sqlite3_finalize(statement);
    INFO(sql << ": " << sqlite3_errmsg(m_database));
    REQUIRE(code == SQLITE_DONE);
    return found;
}

std::int64_t RawDatabase::number(const std::string& sql)
{
    const std::vector<keys::Bytes> found = values(sql);
    REQUIRE(found.size() == 1);
    return std::stoll(std::string(found[0].begin(), found[0].end()));
}

void RawDatabase::dropTriggers()
{
    for (const keys::Bytes& sql : values("SELECT sql FROM sqlite_schema WHERE type = 'trigger'")) {
        m_triggers.emplace_back(sql.begin(), sql.end());
    }
    run("DROP TRIGGER entry_stays; DROP TRIGGER entry_is_kept");
}

void RawDatabase::restoreTriggers()
{
    for (const std::string& trigger : m_triggers) {
        run(trigger);
    }
    m_triggers.clear();
}

} // namespace peelpack::test
