#pragma once

#include "sync/keys/bytes.h"

#include <sqlite3.h>

#include <string>
#include <vector>

namespace peelpack::test {

/// A file of SQLite's as somebody with a database tool sees it. Fails the test when a statement does not run.
class RawDatabase {
public:
    explicit RawDatabase(const std::string& file);
    ~RawDatabase();
    RawDatabase(const RawDatabase&) = delete;
    RawDatabase& operator=(const RawDatabase&) = delete;

    /// One statement or several.
    void run(const std::string& sql);
    /// Every value of every row, row by row; texts and numbers as their digits' bytes.
    [[nodiscard]] std::vector<keys::Bytes> values(const std::string& sql);
    [[nodiscard]] std::int64_t number(const std::string& sql);
    /// Takes the triggers away that keep entries.
    void dropTriggers();
    /// Puts them back as they were.
    void restoreTriggers();

private:
    sqlite3* m_database = nullptr;
    std::vector<std::string> m_triggers;
};

} // namespace peelpack::test
