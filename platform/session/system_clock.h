#pragma once

#include "platform/session/session.h"

namespace peelpack::session {

/// This device's clock in its time zone.
Clock systemClock();

} // namespace peelpack::session
