#pragma once

#include <QByteArray>
#include <QImage>

#include <optional>

namespace peelpack::camera {

/// The bytes of the QR code in a picture (ISO/IEC 18004, byte mode, also mirrored or turned); empty when there is none.
std::optional<QByteArray> readQr(const QImage& picture);

} // namespace peelpack::camera
