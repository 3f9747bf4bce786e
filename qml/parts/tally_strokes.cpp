#include "qml/parts/tally_strokes.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace peelpack::parts {
namespace {

constexpr int inGroup = 5;

} // namespace

TallyStrokes::TallyStrokes(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    connect(this, &TallyStrokes::changed, this, [this] {
        layOut();
        update();
    });
    layOut();
}

qreal TallyStrokes::groupWidth() const
{
    return m_strokeHeight * 1.25;
}

int TallyStrokes::groupsInRow() const
{
    const int groups = (total() + inGroup - 1) / inGroup;
    if (width() <= 0) {
        return std::max(1, groups);
    }
    return std::max(1, static_cast<int>((width() + groupWidth() * 0.25) / (groupWidth() * 1.25)));
}

void TallyStrokes::layOut()
{
    const int groups = (total() + inGroup - 1) / inGroup;
    const int inRow = groupsInRow();
    const int rows = std::max(1, (groups + inRow - 1) / inRow);
    const qreal rowHeight = m_strokeHeight * 1.45;
    setImplicitHeight(rows * rowHeight + 4);
    setImplicitWidth(std::max(1, std::min(groups, inRow)) * groupWidth() * 1.25);
}

void TallyStrokes::geometryChange(const QRectF& now, const QRectF& before)
{
    QQuickPaintedItem::geometryChange(now, before);
    if (now.width() != before.width()) {
        layOut();
        update();
    }
}

void TallyStrokes::paint(QPainter* painter)
{
    painter->setRenderHint(QPainter::Antialiasing);
    const qreal pitch = groupWidth() / inGroup;
    const qreal thick = std::max(2.0, m_strokeHeight / 7);
    const int inRow = groupsInRow();
    const qreal rowHeight = m_strokeHeight * 1.45;
    const auto stroke = [&](QPointF from, QPointF to) {
        QPainterPath line(from);
        line.lineTo(to);
        QPainterPathStroker outline;
        outline.setWidth(m_outlined ? thick * 1.5 : thick);
        outline.setCapStyle(Qt::RoundCap);
        if (m_outlined) {
            painter->setPen(QPen(m_color, std::max(1.0, thick * 0.45)));
            painter->setBrush(Qt::NoBrush);
        } else {
            painter->setPen(Qt::NoPen);
            painter->setBrush(m_color);
        }
        painter->drawPath(outline.createStroke(line));
    };
    for (int i = 0; i < total(); ++i) {
        const int group = i / inGroup;
        const int at = i % inGroup;
        const qreal left = (group % inRow) * groupWidth() * 1.25 + thick;
        const qreal top = (group / inRow) * rowHeight + thick;
        if (i >= m_count) {
            painter->setPen(Qt::NoPen);
            painter->setBrush(m_dotColor);
            const qreal dot = thick * 0.55;
            painter->drawEllipse(QPointF(left + at * pitch + pitch * 0.3, top + m_strokeHeight * 0.8), dot, dot);
        } else if (at == inGroup - 1) {
            stroke({left - pitch * 0.35, top + m_strokeHeight * 0.85},
                   {left + pitch * 3.75, top + m_strokeHeight * 0.15});
        } else {
            const qreal x = left + at * pitch + pitch * 0.3;
            stroke({x, top + m_strokeHeight * 0.04}, {x - pitch * 0.12, top + m_strokeHeight});
        }
    }
    if (m_needed > 0 && m_count >= m_needed) {
        const int groups = (total() + inGroup - 1) / inGroup;
        const qreal right = std::min(groups, inRow) * groupWidth() * 1.25 - groupWidth() * 0.2;
        painter->setPen(QPen(m_color, std::max(1.5, thick * 0.6), Qt::SolidLine, Qt::RoundCap));
        painter->drawLine(QPointF(thick, height() - 2), QPointF(right, height() - 2));
    }
}

} // namespace peelpack::parts
