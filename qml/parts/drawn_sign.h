#pragma once

#include <QColor>
#include <QQuickPaintedItem>

namespace peelpack::parts {

/// A drawn sign: an arrow to the right or down, or a tick. Never a character of a font. Painted, not a Shape: those are
/// not cut off at the edge of what scrolls where there is no graphics card.
class DrawnSign : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool tick MEMBER m_tick NOTIFY changed)
    Q_PROPERTY(bool down MEMBER m_down NOTIFY changed)
    Q_PROPERTY(QColor color MEMBER m_color NOTIFY changed)

public:
    explicit DrawnSign(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

Q_SIGNALS:
    void changed();

private:
    bool m_tick = false;
    bool m_down = false;
    QColor m_color = Qt::black;
};

} // namespace peelpack::parts
