#pragma once

#include "platform/cli/answer.h"
#include "platform/session/enrolling.h"

#include <string>
#include <vector>

namespace peelpack::cli {

/// Which devices of somebody were ended: {"ended": [{"device", "accepted"}]}.
Answer endedDevices(const std::string& name, const std::vector<session::EndedDevice>& ended);

} // namespace peelpack::cli
