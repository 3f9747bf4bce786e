#pragma once

#include "platform/cli/arguments.h"
#include "sync/keys/sign.h"

namespace peelpack::cli {

/// --program
OptionSpec programOption();
/// The program's id that was given. BadUsage: none, or no id.
base::Result<keys::VerifyKey> programGiven(const Arguments& arguments);

} // namespace peelpack::cli
