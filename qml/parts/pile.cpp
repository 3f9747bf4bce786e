#include "qml/parts/pile.h"

#include <QVariant>

#include <algorithm>

namespace peelpack::parts {

void Pile::setSpacing(qreal spacing)
{
    if (spacing != m_spacing) {
        m_spacing = spacing;
        polish();
        Q_EMIT changed();
    }
}

void Pile::setFromRight(bool fromRight)
{
    if (fromRight != m_fromRight) {
        m_fromRight = fromRight;
        polish();
        Q_EMIT changed();
    }
}

void Pile::itemChange(ItemChange change, const ItemChangeData& data)
{
    if (change == ItemChildAddedChange) {
        for (const auto signal :
             {&QQuickItem::implicitHeightChanged, &QQuickItem::implicitWidthChanged, &QQuickItem::visibleChanged}) {
            connect(data.item, signal, this, &QQuickItem::polish);
        }
        polish();
    } else if (change == ItemChildRemovedChange) {
        data.item->disconnect(this);
        polish();
    }
    QQuickItem::itemChange(change, data);
}

void Pile::geometryChange(const QRectF& now, const QRectF& before)
{
    QQuickItem::geometryChange(now, before);
    if (now.width() != before.width()) {
        updatePolish(); // at once, so that whoever asks for the height is not a frame behind
    }
}

void Pile::componentComplete()
{
    QQuickItem::componentComplete();
    updatePolish();
}

void Pile::updatePolish()
{
    qreal top = 0;
    qreal widest = 0;
    bool first = true;
    for (QQuickItem* child : childItems()) {
        if (!child->isVisible() || child->inherits("QQuickRepeater")) {
            continue;
        }
        const bool hugs = child->property("hugs").toBool();
        const qreal wide = hugs ? std::min(child->implicitWidth(), width()) : width();
        child->setWidth(wide);
        child->setX(hugs && m_fromRight ? width() - wide : 0);
        top += first ? 0 : m_spacing;
        first = false;
        child->setY(top);
        child->setHeight(child->implicitHeight());
        top += child->implicitHeight();
        widest = std::max(widest, child->implicitWidth());
    }
    setImplicitHeight(top);
    setImplicitWidth(widest);
}

} // namespace peelpack::parts
