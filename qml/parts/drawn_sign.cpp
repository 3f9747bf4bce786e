#include "qml/parts/drawn_sign.h"

#include <QPainter>
#include <QPainterPath>
#include <QtMath>

#include <algorithm>

namespace peelpack::parts {
namespace {

constexpr qreal unit = 18; // the signs are drawn on a square of 18
constexpr qreal lineWidth = 2.4;

QPainterPath starPath()
{
    constexpr int points = 5;
    constexpr qreal outer = 8;
    constexpr qreal inner = 3.4;
    constexpr qreal middle = unit / 2;
    QPainterPath path;
    for (int i = 0; i < 2 * points; ++i) {
        const qreal angle = M_PI * i / points - M_PI_2;
        const qreal radius = i % 2 == 0 ? outer : inner;
        const QPointF at(middle + radius * qCos(angle), middle + radius * qSin(angle));
        i == 0 ? path.moveTo(at) : path.lineTo(at);
    }
    path.closeSubpath();
    return path;
}

QPainterPath pathOf(DrawnSign::Sign sign)
{
    if (sign == DrawnSign::Star || sign == DrawnSign::EmptyStar) {
        return starPath();
    }
    const auto line = [](QPointF from, QPointF by, QPointF to) {
        QPainterPath path(from);
        path.lineTo(by);
        path.lineTo(to);
        return path;
    };
    switch (sign) {
    case DrawnSign::Tick:
        return line({3, 10}, {7, 14}, {15, 4});
    case DrawnSign::Down:
        return line({3, 6}, {9, 12}, {15, 6});
    default:
        return line({6, 3}, {12, 9}, {6, 15});
    }
}

} // namespace

DrawnSign::DrawnSign(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setImplicitWidth(unit);
    setImplicitHeight(unit);
    setAntialiasing(true);
    connect(this, &DrawnSign::changed, this, [this] { update(); });
}

void DrawnSign::paint(QPainter* painter)
{
    const qreal scale = std::min(width(), height()) / unit;
    painter->scale(scale, scale);
    const bool star = m_sign == Star || m_sign == EmptyStar;
    painter->setPen(QPen(m_color, star ? lineWidth / 2 : lineWidth, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter->setBrush(m_sign == Star ? QBrush(m_color) : QBrush(Qt::NoBrush));
    painter->drawPath(pathOf(m_sign));
}

} // namespace peelpack::parts
