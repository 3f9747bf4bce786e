#include "tests/bench/raw_sqlite.h"

#include <cstdio>
#include <cstdlib>
#include <dlfcn.h>

namespace peelpack::bench {
namespace {

constexpr const char* sqlcipherFile = "libsqlcipher.so.0";

template <class Function>
void take(void* library, const char* name, Function& function)
{
    function = reinterpret_cast<Function>(dlsym(library, name));
    if (function == nullptr) {
        std::fprintf(stderr, "%s has no %s.\n", sqlcipherFile, name);
        std::exit(1);
    }
}

} // namespace

SqliteFunctions systemSqlite()
{
    return {sqlite3_open,        sqlite3_close,        sqlite3_exec,       sqlite3_prepare_v2, sqlite3_bind_int64,
            sqlite3_bind_blob,   sqlite3_step,         sqlite3_reset,      sqlite3_finalize,   sqlite3_column_int64,
            sqlite3_column_blob, sqlite3_column_bytes, sqlite3_column_text};
}

SqliteFunctions sqlcipher()
{
    void* library = dlopen(sqlcipherFile, RTLD_NOW | RTLD_LOCAL | RTLD_DEEPBIND);
    if (library == nullptr) {
        std::fprintf(stderr, "%s is missing: install libsqlcipher0.\n", sqlcipherFile);
        std::exit(1);
    }
    SqliteFunctions functions{};
    take(library, "sqlite3_open", functions.open);
    take(library, "sqlite3_close", functions.close);
    take(library, "sqlite3_exec", functions.exec);
    take(library, "sqlite3_prepare_v2", functions.prepare);
    take(library, "sqlite3_bind_int64", functions.bindNumber);
    take(library, "sqlite3_bind_blob", functions.bindBlob);
    take(library, "sqlite3_step", functions.step);
    take(library, "sqlite3_reset", functions.reset);
    take(library, "sqlite3_finalize", functions.finalize);
    take(library, "sqlite3_column_int64", functions.number);
    take(library, "sqlite3_column_blob", functions.blob);
    take(library, "sqlite3_column_bytes", functions.size);
    take(library, "sqlite3_column_text", functions.text);
    return functions;
}

RawDatabase::RawDatabase(const SqliteFunctions& functions, const std::string& file, const std::string& key)
    : m_functions(functions)
{
    must(m_functions.open(file.c_str(), &m_database) == SQLITE_OK, "open");
    if (!key.empty()) {
        run(("PRAGMA key = \"x'" + key + "'\"").c_str());
    }
    for (const char* setting :
         {"PRAGMA locking_mode = EXCLUSIVE", "PRAGMA journal_mode = WAL", "PRAGMA synchronous = FULL",
          "PRAGMA temp_store = MEMORY",
          "CREATE TABLE IF NOT EXISTS entry (number INTEGER PRIMARY KEY, feed INTEGER NOT NULL, seq INTEGER NOT NULL, "
          "bytes BLOB NOT NULL)"}) {
        run(setting);
    }
    m_insert = prepare("INSERT INTO entry (number, feed, seq, bytes) VALUES (?, ?, ?, ?)");
    m_begin = prepare("BEGIN IMMEDIATE");
    m_commit = prepare("COMMIT");
}

RawDatabase::~RawDatabase()
{
    for (sqlite3_stmt* statement : {m_insert, m_begin, m_commit}) {
        m_functions.finalize(statement);
    }
    m_functions.close(m_database);
}

void RawDatabase::insert(const std::vector<PlainRow>& rows)
{
    m_functions.step(m_begin);
    m_functions.reset(m_begin);
    for (const PlainRow& row : rows) {
        m_functions.bindNumber(m_insert, 1, row.number);
        m_functions.bindNumber(m_insert, 2, row.feed);
        m_functions.bindNumber(m_insert, 3, row.seq);
        m_functions.bindBlob(m_insert, 4, row.bytes.data(), static_cast<int>(row.bytes.size()), SQLITE_STATIC);
        must(m_functions.step(m_insert) == SQLITE_DONE, "insert");
        m_functions.reset(m_insert);
    }
    must(m_functions.step(m_commit) == SQLITE_DONE, "commit");
    m_functions.reset(m_commit);
}

std::vector<PlainRow> RawDatabase::readAll()
{
    std::vector<PlainRow> rows;
    sqlite3_stmt* statement = prepare("SELECT number, feed, seq, bytes FROM entry ORDER BY number");
    while (m_functions.step(statement) == SQLITE_ROW) {
        const auto* bytes = static_cast<const std::uint8_t*>(m_functions.blob(statement, 3));
        rows.push_back({m_functions.number(statement, 0),
                        m_functions.number(statement, 1),
                        m_functions.number(statement, 2),
                        {bytes, bytes + m_functions.size(statement, 3)}});
    }
    m_functions.finalize(statement);
    return rows;
}

std::string RawDatabase::textOf(const char* statement)
{
    sqlite3_stmt* prepared = prepare(statement);
    std::string text;
    if (m_functions.step(prepared) == SQLITE_ROW) {
        text = reinterpret_cast<const char*>(m_functions.text(prepared, 0));
    }
    m_functions.finalize(prepared);
    return text;
}

sqlite3_stmt* RawDatabase::prepare(const char* statement)
{
    sqlite3_stmt* prepared = nullptr;
    must(m_functions.prepare(m_database, statement, -1, &prepared, nullptr) == SQLITE_OK, statement);
    return prepared;
}

void RawDatabase::run(const char* statement)
{
    must(m_functions.exec(m_database, statement, nullptr, nullptr, nullptr) == SQLITE_OK, statement);
}

void RawDatabase::must(bool good, const char* what) const
{
    if (!good) {
        std::fprintf(stderr, "The plain database failed: %s\n", what);
        std::exit(1);
    }
}

} // namespace peelpack::bench
