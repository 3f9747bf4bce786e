#pragma once

#include "platform/app/screen_walk.h"
#include "qml/shell/phone.h"

namespace peelpack::app {

/// The instructor's screens of the demo, then the director's that an instructor does not have. The phone is where it
/// was at the end.
void drawStaff(ScreenWalk& walk, shell::Phone& phone);

} // namespace peelpack::app
