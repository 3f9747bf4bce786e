#pragma once

#include "core/base/result.h"
#include "platform/cli/arguments.h"
#include "platform/cli/exit_code.h"

#include <nlohmann/json.hpp>

#include <string>

namespace peelpack::cli {

/// What a command found or did: for machines with --json, else as text.
struct Answer {
    nlohmann::ordered_json json = nlohmann::ordered_json::object();
    std::string text; ///< whole lines
    int code = Done;
};

/// Prints an answer, or complains of the error; answers the exit code.
int give(const Arguments& arguments, const base::Result<Answer>& answer);

} // namespace peelpack::cli
