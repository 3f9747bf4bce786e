#pragma once

#include <cstdint>
#include <string>

namespace peelpack::test {

/// What goes wrong at one operation.
enum class Fault {
    None,
    StopBefore, ///< the power fails: it is not done, and nothing works from then on
    StopAfter,  ///< it is done and says so, and nothing works from then on
    ShortWrite, ///< the first half is written, and nothing works from then on; StopBefore if it is no write
    FailOnce,   ///< it fails with the error of its sort, undone; later ones work
    DiskFull,   ///< a write fails with SQLITE_FULL, and so does every later one that makes a file longer
};
const char* nameOf(Fault fault);

/// A change to files or a sync, which is what the faults are numbered by. SQLite renames nothing.
struct Operation {
    enum class Sort { Create, Write, Sync, Truncate, Delete };
    Sort sort = Sort::Write;
    std::string file;       ///< the last part of its path; empty for a temporary file without a name
    std::int64_t bytes = 0; ///< written, or the size truncated to
};
const char* nameOf(Operation::Sort sort);

} // namespace peelpack::test
