#include "qml/parts/pack_seal.h"

#include <QPainter>
#include <QPainterPath>

namespace peelpack::parts {

namespace {

/// A written page with its upper right corner turned; with a tick instead of the lines when somebody looked at it.
void page(QPainter* painter, const QRectF& place, bool ticked)
{
    const qreal corner = place.width() * 0.34;
    QPainterPath edge(place.topLeft());
    edge.lineTo(place.right() - corner, place.top());
    edge.lineTo(place.right(), place.top() + corner);
    edge.lineTo(place.bottomRight());
    edge.lineTo(place.bottomLeft());
    edge.closeSubpath();
    edge.moveTo(place.right() - corner, place.top());
    edge.lineTo(place.right() - corner, place.top() + corner);
    edge.lineTo(place.right(), place.top() + corner);
    const auto at = [&](qreal x, qreal y) {
        return QPointF(place.left() + place.width() * x, place.top() + place.height() * y);
    };
    if (ticked) {
        edge.moveTo(at(0.24, 0.64));
        edge.lineTo(at(0.44, 0.82));
        edge.lineTo(at(0.78, 0.48));
    } else {
        for (const qreal y : {0.54, 0.76}) {
            edge.moveTo(at(0.24, y));
            edge.lineTo(at(0.76, y));
        }
    }
    QPen pen = painter->pen();
    pen.setWidthF(2);
    painter->setPen(pen);
    painter->drawPath(edge);
}

} // namespace

PackSeal::PackSeal(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    setImplicitWidth(30);
    setImplicitHeight(72);
    connect(this, &PackSeal::changed, this, [this] { update(); });
}

void PackSeal::paint(QPainter* painter)
{
    painter->setRenderHint(QPainter::Antialiasing);
    const qreal wide = width();
    const qreal high = height();
    painter->fillRect(QRectF(0, 0, wide, high), m_pouch);
    painter->setPen(QPen(m_line, 1));
    for (qreal y = 5; y < high - 2; y += 6) { // the weld of the pouch
        painter->drawLine(QPointF(0, y), QPointF(wide, y));
    }
    if (m_state == Returned) { // a torn edge
        QPainterPath torn(QPointF(wide, 0));
        int tooth = 0;
        for (qreal y = 0; y < high + 6; y += 6, ++tooth) {
            torn.lineTo(tooth % 2 == 0 ? wide * 0.55 : wide * 0.95, y);
        }
        painter->setPen(QPen(m_color, 2.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter->drawPath(torn);
    } else {
        painter->setPen(QPen(m_line, 1));
        painter->drawLine(QPointF(wide - 0.5, 0), QPointF(wide - 0.5, high));
    }
    const qreal left = wide * 0.16;
    const qreal right = wide * 0.80;
    const qreal middle = (left + right) / 2;
    const qreal center = high * 0.42;
    const qreal rise = wide * 0.30 * (m_state == Open || m_state == Withdrawn ? 0.7 : m_closing);
    const auto chevron = [&](qreal y) {
        QPainterPath path(QPointF(left, y + rise / 2));
        path.lineTo(middle, y - rise / 2);
        path.lineTo(right, y + rise / 2);
        painter->drawPath(path);
    };
    QPen pen(m_color, 2.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    if (m_state == Open || m_state == Withdrawn) {
        pen.setDashPattern({1.6, 1.9});
    }
    painter->setPen(pen);
    painter->setBrush(Qt::NoBrush);
    const bool fromPaper = m_state == Imported || m_state == ImportedInitialed;
    if (fromPaper) {
        page(painter, QRectF(left, center - wide * 0.42, right - left, wide * 0.84), m_state == ImportedInitialed);
    } else if (m_state == Initialed) {
        chevron(center - wide * 0.16);
        chevron(center + wide * 0.16);
    } else if (m_state != Returned && m_state != Void) {
        chevron(center);
    }
    const QRectF strip(left, high * 0.42 + wide * 0.52, right - left, 5);
    painter->setPen(Qt::NoPen);
    painter->setBrush(m_color);
    if (m_state != Void && !fromPaper) {
        painter->drawRoundedRect(strip.adjusted(wide * 0.08, 0, -wide * 0.08, 0), 2.5, 2.5);
    }
    if (m_state == Amended) {
        painter->drawRoundedRect(strip.adjusted(wide * 0.08, 9, -wide * 0.08, 9), 2.5, 2.5);
    }
    if (m_state == Withdrawn || m_state == Void) {
        painter->setPen(QPen(m_color, 2.6, Qt::SolidLine, Qt::RoundCap));
        painter->drawLine(QPointF(left, center + wide * 0.36), QPointF(right, center - wide * 0.36));
        if (m_state == Void) {
            painter->drawLine(QPointF(left, center - wide * 0.36), QPointF(right, center + wide * 0.36));
        }
    }
}

} // namespace peelpack::parts
