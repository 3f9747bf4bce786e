#include "qml/parts/signature_pad.h"

#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace peelpack::parts {
namespace {

constexpr qsizetype mostBytes = 4000;
constexpr qreal leastStep = 0.006; // of the width: nearer points say nothing new

} // namespace

SignaturePad::SignaturePad(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAcceptedMouseButtons(Qt::LeftButton);
    setAcceptTouchEvents(false);
    setAntialiasing(true);
    setImplicitHeight(160);
    setImplicitWidth(280);
    connect(this, &SignaturePad::changed, this, [this] { update(); });
}

QByteArray SignaturePad::strokes() const
{
    QByteArray bytes;
    const auto scaled = [](qreal fraction) { return static_cast<char>(qRound(std::clamp(fraction, 0.0, 1.0) * 255)); };
    for (const std::vector<QPointF>& stroke : m_strokes) {
        const qsizetype room = (mostBytes - bytes.size() - 2) / 2;
        if (room <= 0) {
            break;
        }
        const auto count = static_cast<int>(std::min<qsizetype>(room, static_cast<qsizetype>(stroke.size())));
        bytes.append(static_cast<char>(count >> 8));
        bytes.append(static_cast<char>(count & 0xFF));
        for (int i = 0; i < count; ++i) {
            bytes.append(scaled(stroke[static_cast<std::size_t>(i)].x()));
            bytes.append(scaled(stroke[static_cast<std::size_t>(i)].y()));
        }
    }
    return bytes;
}

void SignaturePad::clear()
{
    m_strokes.clear();
    Q_EMIT changed();
}

void SignaturePad::paint(QPainter* painter)
{
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(QPen(m_color, 3, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    for (const std::vector<QPointF>& stroke : m_strokes) {
        QPainterPath path;
        bool begun = false;
        for (const QPointF& point : stroke) {
            const QPointF place(point.x() * width(), point.y() * height());
            begun ? path.lineTo(place) : path.moveTo(place);
            begun = true;
        }
        painter->drawPath(path);
    }
}

void SignaturePad::mousePressEvent(QMouseEvent* event)
{
    m_strokes.emplace_back();
    add(event->position());
    setKeepMouseGrab(true);
}

void SignaturePad::mouseMoveEvent(QMouseEvent* event)
{
    add(event->position());
}

void SignaturePad::mouseReleaseEvent(QMouseEvent* event)
{
    add(event->position());
    setKeepMouseGrab(false);
}

void SignaturePad::add(QPointF place)
{
    if (m_strokes.empty() || width() <= 0 || height() <= 0) {
        return;
    }
    const QPointF point(place.x() / width(), place.y() / height());
    std::vector<QPointF>& stroke = m_strokes.back();
    if (stroke.empty() || (point - stroke.back()).manhattanLength() > leastStep) {
        stroke.push_back(point);
        Q_EMIT changed();
    }
}

} // namespace peelpack::parts
