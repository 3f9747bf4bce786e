#pragma once

#include <QColor>
#include <QQuickPaintedItem>

namespace peelpack::parts {

/// A small drawn sign; never a character of a font, and clipped by what it lies in.
class DrawnSign : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(peelpack::parts::DrawnSign::Sign sign MEMBER m_sign NOTIFY changed)
    Q_PROPERTY(QColor color MEMBER m_color NOTIFY changed)

public:
    enum Sign {
        Arrow, ///< to the right
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
