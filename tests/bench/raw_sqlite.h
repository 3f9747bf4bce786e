#pragma once

#include "sync/keys/bytes.h"

#include <sqlite3.h>
#include <string>
#include <vector>

namespace peelpack::bench {

/// The functions of one SQLite library: the system's, or SQLCipher's, which exports the same names.
struct SqliteFunctions {
    decltype(&sqlite3_open) open;
    decltype(&sqlite3_close) close;
    decltype(&sqlite3_exec) exec;
    decltype(&sqlite3_prepare_v2) prepare;
    decltype(&sqlite3_bind_int64) bindNumber;
    decltype(&sqlite3_bind_blob) bindBlob;
    decltype(&sqlite3_step) step;
    decltype(&sqlite3_reset) reset;
    decltype(&sqlite3_finalize) finalize;
    decltype(&sqlite3_column_int64) number;
    decltype(&sqlite3_column_blob) blob;
    decltype(&sqlite3_column_bytes) size;
    decltype(&sqlite3_column_text) text;
};
SqliteFunctions systemSqlite();
/// The packaged library, whose names are kept apart from the system's.
SqliteFunctions sqlcipher();

/// One row of entries as a plain program would keep it.
struct PlainRow {
    std::int64_t number = 0;
    std::int64_t feed = 0;
    std::int64_t seq = 0;
    keys::Bytes bytes;
};

/// A file with a table of entries, written through SQLite's own functions: WAL, synchronous FULL, locked for this
/// process alone, statements kept. Ends the program when something fails.
class RawDatabase {
public:
    /// `key`: 64 hexadecimal digits for SQLCipher; empty for none.
    RawDatabase(const SqliteFunctions& functions, const std::string& file, const std::string& key);
    ~RawDatabase();
    RawDatabase(const RawDatabase&) = delete;
    RawDatabase& operator=(const RawDatabase&) = delete;
    RawDatabase(RawDatabase&&) = delete;
    RawDatabase& operator=(RawDatabase&&) = delete;

    /// In one transaction.
    void insert(const std::vector<PlainRow>& rows);
    std::vector<PlainRow> readAll();
    std::string textOf(const char* statement);

private:
    sqlite3_stmt* prepare(const char* statement);
    void run(const char* statement);
    void must(bool good, const char* what) const;

    const SqliteFunctions& m_functions;
    sqlite3* m_database = nullptr;
    sqlite3_stmt* m_insert = nullptr;
    sqlite3_stmt* m_begin = nullptr;
    sqlite3_stmt* m_commit = nullptr;
};

} // namespace peelpack::bench
