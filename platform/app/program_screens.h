#pragma once

#include "platform/app/screen_walk.h"
#include "qml/shell/phone.h"

namespace peelpack::app {

/// Sets up a program on a phone that nobody has used, and takes one over, as far as before it is made.
void walkFirstDirector(ScreenWalk& walk, shell::Phone& phone);
/// The program's pages as staff see them, in a demo that is open at its last place ("me").
void walkProgram(ScreenWalk& walk, shell::Phone& phone);
/// What only a director sees: sets up a program, whose vault stays, and goes through it. It is locked afterwards.
void walkDirector(ScreenWalk& walk, shell::Phone& phone);

} // namespace peelpack::app
