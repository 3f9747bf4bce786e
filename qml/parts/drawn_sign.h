#pragma once

#include <QColor>
#include <QQuickPaintedItem>

namespace peelpack::parts {

/// A small drawn sign; never a character of a font. Painted, not a Shape: those are not cut off at the edge of what
/// scrolls where there is no graphics card.
class DrawnSign : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(peelpack::parts::DrawnSign::Sign sign MEMBER m_sign NOTIFY changed)
    Q_PROPERTY(QColor color MEMBER m_color NOTIFY changed)

public:
    enum Sign {
        Arrow, ///< to the right
        Down,
        Tick,
        EmptyStar,
        Star,
    };
    Q_ENUM(Sign)

    explicit DrawnSign(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

Q_SIGNALS:
    void changed();

private:
    Sign m_sign = Arrow;
    QColor m_color = Qt::black;
};

} // namespace peelpack::parts
