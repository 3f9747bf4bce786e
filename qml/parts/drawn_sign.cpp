#include "qml/parts/drawn_sign.h"

#include <QPainter>
#include <QPen>

namespace peelpack::parts {
namespace {

constexpr qreal side = 18;
constexpr qreal stroke = 2.4;

} // namespace

DrawnSign::DrawnSign(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setImplicitSize(side, side);
    setAntialiasing(true);
    connect(this, &DrawnSign::changed, this, [this] { update(); });
}

void DrawnSign::paint(QPainter* painter)
{
    painter->setPen(QPen(m_color, stroke, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    if (m_tick) {
        painter->drawPolyline(QPolygonF({{3, 10}, {7, 14}, {15, 4}}));
    } else if (m_down) {
        painter->drawPolyline(QPolygonF({{3, 6}, {9, 12}, {15, 6}}));
    } else {
        painter->drawPolyline(QPolygonF({{6, 3}, {12, 9}, {6, 15}}));
    }
}

} // namespace peelpack::parts
