#pragma once

#include "platform/demo/journal_world.h"
#include "platform/session/shared_sheets.h"

namespace peelpack::demo {

/// An instructor looks through what is new of one student: initials, returns, amends, files elsewhere, answers reviews,
/// voids what was opened twice, and leaves what nobody has confirmed. `shared`: over all students on the desk.
void lookThrough(session::Session& desk, Student& student, Dice& dice, const session::SharedSheets& shared);

/// The student answers what was returned.
void answer(Student& student, Dice& dice);

} // namespace peelpack::demo
