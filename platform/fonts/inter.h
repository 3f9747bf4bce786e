#pragma once

namespace peelpack::fonts {

/// Makes Inter, which is compiled in from its package, the font of this program, so that screens and paper look the
/// same on every system. After the QGuiApplication is there; a second call does nothing.
void useInter();

} // namespace peelpack::fonts
