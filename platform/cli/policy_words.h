#pragma once

#include "platform/cli/arguments.h"
#include "platform/session/setup.h"

#include <string>
#include <vector>

namespace peelpack::cli {

/// --set, --term, --from, --to, --counted: the rules of a program.
std::vector<OptionSpec> ruleOptions();
base::Result<session::Rules> rulesFrom(const Arguments& arguments);

/// "own-phone", "card" ... of the bits of a policy.
std::vector<std::string> wordsOfCounted(std::uint8_t counted);

} // namespace peelpack::cli
