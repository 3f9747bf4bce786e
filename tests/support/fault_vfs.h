#pragma once

#include "tests/support/durable_disk.h"
#include "tests/support/fault.h"

#include <sqlite3.h>

#include <cstddef>
#include <cstdint>
#include <memory>
#include <mutex>
#include <string>
#include <vector>

namespace peelpack::test {

/// SQLite's file access with faults, the default of the whole process while this lives: also for a library that opens
/// its databases itself. Files are real, syncs are only kept account of, so that it is fast on any folder. Once
/// stopped, everything but unlocking and closing gives SQLITE_IOERR. Without shared memory: WAL mode needs
/// locking_mode=EXCLUSIVE. Only one may live at a time; it ends the program when it is destroyed or its disk is asked
/// for while a database is open.
class FaultVfs {
public:
    FaultVfs();
    ~FaultVfs();
    FaultVfs(const FaultVfs&) = delete;
    FaultVfs& operator=(const FaultVfs&) = delete;

    /// Counts anew from here; `fault` comes at operation `at`, the first being 1. Ends what an earlier fault began.
    void arm(Fault fault, std::size_t at);
    /// From now on all works.
    void clear() { this->arm(Fault::None, 0); }
    /// Those begun since it was armed, the failing one included.
    [[nodiscard]] std::vector<Operation> operations() const;
    /// Whether the operation of the fault was reached.
    [[nodiscard]] bool hasStruck() const;

    /// What would be left if the power failed now.
    [[nodiscard]] const DurableDisk& disk() const;
    /// Leaves the files as the power loss left them (see DurableDisk::crash), forgets all else, and works again.
    void crash(std::uint32_t seed);

private:
    struct Methods;
    struct OpenFile;
    enum class Ruling { Perform, Shorten, Stop, Fail, Full };

    /// Counts one operation. The lock must be held.
    Ruling rule(Operation::Sort sort, const std::string& path, std::int64_t bytes, bool grows);
    [[nodiscard]] bool hasStopped() const;
    void requireClosed(const char* what) const;

    sqlite3_vfs* m_real;
    sqlite3_vfs m_vfs;
    mutable std::mutex m_mutex; ///< SQLite may be used from several threads
    Fault m_fault = Fault::None;
    std::size_t m_at = 0;
    bool m_stopped = false;
    bool m_full = false;
    std::size_t m_openFiles = 0;
    std::vector<Operation> m_operations;
    DurableDisk m_disk;
};

} // namespace peelpack::test
