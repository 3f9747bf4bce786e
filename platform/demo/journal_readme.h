#pragma once

#include "platform/demo/journal_demo.h"

namespace peelpack::demo {

/// The README.txt of the invented program: who is who, the secrets, what went wrong, what to try. While its vaults are
/// open.
std::string readmeOf(const World& world, const JournalFigures& figures);

} // namespace peelpack::demo
