#pragma once

#include "core/base/result.h"

namespace peelpack::cli {

/// What every command answers to the shell.
enum ExitCode : int {
    Done = 0,
    AnswerIsNo = 1,      ///< a check failed, nothing was found, somebody is not complete
    BadUsageOrInput = 2, ///< also: some rows were refused, with full output all the same
    CannotReadOrWrite = 3,
};

constexpr int exitCodeOf(base::ErrorCode code)
{
    return code == base::ErrorCode::CannotRead || code == base::ErrorCode::CannotWrite ? CannotReadOrWrite
                                                                                       : BadUsageOrInput;
}

} // namespace peelpack::cli
