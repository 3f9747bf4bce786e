#pragma once

#include "sync/keys/bytes.h"

#include <QImage>

namespace peelpack::camera {

/// Bytes as a picture of a QR code (ISO/IEC 18004, byte mode, error correction M or better), black on white with its
/// quiet zone of 4 modules. `module` is the side of one in pixels. A null image: no code holds so many bytes (2,331).
QImage qrPicture(keys::ByteView bytes, int module);

} // namespace peelpack::camera
