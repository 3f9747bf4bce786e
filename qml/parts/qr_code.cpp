#include "qml/parts/qr_code.h"

#include <QPainter>
#include <qrcodegen/qrcodegen.hpp>

#include <algorithm>

namespace peelpack::parts {
namespace {

constexpr int quietZone = 4; // modules, ISO/IEC 18004

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
        try {
            const std::vector<std::uint8_t> data(bytes.begin(), bytes.end());
            const qrcodegen::QrCode code = qrcodegen::QrCode::encodeBinary(data, qrcodegen::QrCode::Ecc::MEDIUM);
            m_side = code.getSize();
            for (int y = 0; y < m_side; ++y) {
                for (int x = 0; x < m_side; ++x) {
                    m_modules.push_back(code.getModule(x, y));
                }
            }
        } catch (const qrcodegen::data_too_long&) {
            m_side = 0;
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
