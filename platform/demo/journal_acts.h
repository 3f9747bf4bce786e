#pragma once

#include "platform/demo/journal_world.h"

namespace peelpack::demo {

/// An instructor looks through what is new of one student: initials, returns, amends, files elsewhere, answers reviews,
/// voids what was opened twice, and leaves what nobody has confirmed.
void lookThrough(session::Session& desk, Student& student, Dice& dice);

/// The student answers what was returned.
void answer(Student& student, Dice& dice);

} // namespace peelpack::demo
