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
    const int whole = m_side + 2 * quietZone;
    const int module = std::max(1, static_cast<int>(std::min(width(), height())) / whole);
    const int left = (static_cast<int>(width()) - module * whole) / 2;
    const int top = (static_cast<int>(height()) - module * whole) / 2;
    painter->fillRect(left, top, module * whole, module * whole, Qt::white);
    for (int y = 0; y < m_side; ++y) {
        for (int x = 0; x < m_side; ++x) {
            if (m_modules[static_cast<std::size_t>(y * m_side + x)]) {
                painter->fillRect(left + (x + quietZone) * module, top + (y + quietZone) * module, module, module,
                                  Qt::black);
            }
        }
    }
}

} // namespace peelpack::parts
