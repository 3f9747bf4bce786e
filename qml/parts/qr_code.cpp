#include "qml/parts/qr_code.h"

#include <QPainter>
#include <qrcodegen/qrcodegen.hpp>

#include <algorithm>
#include <optional>

namespace peelpack::parts {
namespace {

constexpr int quietZone = 4;       // modules, ISO/IEC 18004
constexpr int largestVersion = 30; // 137 modules a side: on the narrowest screen a module still has 2 pixels

/// Empty when there are too many bytes for this correction.
std::optional<qrcodegen::QrCode> codeOf(const std::vector<std::uint8_t>& data, qrcodegen::QrCode::Ecc correction)
{
    try {
        return qrcodegen::QrCode::encodeSegments({qrcodegen::QrSegment::makeBytes(data)}, correction,
                                                 qrcodegen::QrCode::MIN_VERSION, largestVersion);
    } catch (const qrcodegen::data_too_long&) {
        return std::nullopt;
    }
}

} // namespace

QrCode::QrCode(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setImplicitWidth(240);
    setImplicitHeight(240);
}

void QrCode::setBytes(const QByteArray& bytes)
{
    if (bytes == m_bytes) {
        return;
    }
    m_bytes = bytes;
    m_side = 0;
    m_modules.clear();
    if (!bytes.isEmpty()) {
        const std::vector<std::uint8_t> data(bytes.begin(), bytes.end());
        std::optional<qrcodegen::QrCode> code = codeOf(data, qrcodegen::QrCode::Ecc::MEDIUM);
        if (!code) {
            code = codeOf(data, qrcodegen::QrCode::Ecc::LOW);
        }
        m_side = code ? code->getSize() : 0;
        for (int y = 0; y < m_side; ++y) {
            for (int x = 0; x < m_side; ++x) {
                m_modules.push_back(code->getModule(x, y));
            }
        }
    }
    Q_EMIT changed();
    update();
}

void QrCode::paint(QPainter* painter)
{
    if (m_side == 0) {
        return;
    }
    // In the screen's own pixels, of which a phone has several to one of ours: as large as it fits, and sharp.
    const qreal scale = painter->deviceTransform().m11();
    const QSize pixels = QSizeF(width() * scale, height() * scale).toSize();
    const int whole = m_side + 2 * quietZone;
    const int module = std::max(1, std::min(pixels.width(), pixels.height()) / whole);
    const int left = (pixels.width() - module * whole) / 2;
    const int top = (pixels.height() - module * whole) / 2;
    const auto fill = [&](int x, int y, int side, Qt::GlobalColor color) {
        painter->fillRect(QRectF(x / scale, y / scale, side / scale, side / scale), color);
    };
    fill(left, top, module * whole, Qt::white);
    for (int y = 0; y < m_side; ++y) {
        for (int x = 0; x < m_side; ++x) {
            if (m_modules[static_cast<std::size_t>(y * m_side + x)]) {
                fill(left + (x + quietZone) * module, top + (y + quietZone) * module, module, Qt::black);
            }
        }
    }
}

} // namespace peelpack::parts
