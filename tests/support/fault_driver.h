#pragma once

#include "tests/support/fault_vfs.h"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <string>
#include <vector>

namespace peelpack::test {

/// Makes what the action starts from in an empty folder that it is given, and returns the path of the database in it.
using Prepare = std::function<std::string(const std::string& folder)>;
/// Does one thing to the database at `path`, through any user of SQLite, closes it, and says whether it was told that
/// the thing is done. Must not throw, and must do the same operations each time.
using Action = std::function<bool(const std::string& path)>;
/// Examines, through the ordinary VFS, what the power loss left; reports through Catch.
using Check = std::function<void(const std::string& path, bool acknowledged)>;

struct FaultPlan {
    std::vector<Fault> faults = {Fault::StopBefore, Fault::StopAfter, Fault::ShortWrite, Fault::FailOnce,
                                 Fault::DiskFull};
    std::vector<std::uint32_t> seeds = {keepNothing, keepEverything, 2, 3};
};

struct FaultFigures {
    std::vector<Operation> operations; ///< of the action without a fault
    std::size_t cases = 0;             ///< how often `check` was called
};

/// Runs the action once in peace (it must be acknowledged), then once for each of its operations and each fault; after
/// each run the power fails, and the check is called once a seed on what that leaves. Short writes and full disks
/// befall writes only. `prepare` is called once; every run finds the folder as it left it, at the same path. A failing
/// check names fault, operation and seed.
FaultFigures forEveryFault(const Prepare& prepare, const Action& action, const Check& check,
                           const FaultPlan& plan = {});

} // namespace peelpack::test
