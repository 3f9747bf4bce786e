#include "platform/camera/qr_reader.h"

#include <ZXing/ReadBarcode.h>

namespace peelpack::camera {
namespace {

constexpr int widest = 4096; // a photograph is brought down to this first

} // namespace

std::optional<QByteArray> readQr(const QImage& picture)
{
    if (picture.isNull()) {
        return std::nullopt;
    }
    QImage gray = picture.width() > widest || picture.height() > widest
                      ? picture.scaled(widest, widest, Qt::KeepAspectRatio, Qt::SmoothTransformation)
                      : picture;
    gray = gray.convertToFormat(QImage::Format_Grayscale8);
    const ZXing::ImageView view(gray.constBits(), gray.width(), gray.height(), ZXing::ImageFormat::Lum,
                                static_cast<int>(gray.bytesPerLine()));
    ZXing::DecodeHints hints;
    hints.setFormats(ZXing::BarcodeFormat::QRCode);
    hints.setTryHarder(true);
    const ZXing::Result result = ZXing::ReadBarcode(view, hints);
    if (!result.isValid()) {
        return std::nullopt;
    }
    const ZXing::ByteArray& bytes = result.bytes();
    return QByteArray(reinterpret_cast<const char*>(bytes.data()), static_cast<qsizetype>(bytes.size()));
}

} // namespace peelpack::camera
