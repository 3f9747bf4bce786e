#include "platform/camera/qr_picture.h"

#include <qrcodegen/qrcodegen.hpp>

namespace peelpack::camera {

QImage qrPicture(keys::ByteView bytes, int module)
{
    constexpr int quietZone = 4;
    constexpr std::size_t mostBytes = 2331; // version 40 with correction M; ISO/IEC 18004, table 7
    if (bytes.size() > mostBytes) {
        return {};
    }
    const qrcodegen::QrCode code =
        qrcodegen::QrCode::encodeBinary({bytes.begin(), bytes.end()}, qrcodegen::QrCode::Ecc::MEDIUM);
    const int side = (code.getSize() + 2 * quietZone) * module;
    QImage picture(side, side, QImage::Format_Grayscale8);
    for (int y = 0; y < side; ++y) {
        uchar* line = picture.scanLine(y);
        for (int x = 0; x < side; ++x) {
            const bool dark = code.getModule(x / module - quietZone, y / module - quietZone);
            line[x] = dark ? 0 : 255;
        }
    }
    return picture;
}

} // namespace peelpack::camera
