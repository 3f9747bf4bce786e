#pragma once

#include <QColor>
#include <QQuickPaintedItem>

namespace peelpack::parts {

/// Counts drawn as tally strokes in fives, the fifth across: solid for first scrub, outlined for second scrub, dots for
/// what is still needed; a line under a count that is full. Wraps at its width; as high as it needs at that width.
class TallyStrokes : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int count MEMBER m_count NOTIFY changed)
    Q_PROPERTY(int needed MEMBER m_needed NOTIFY changed)
    Q_PROPERTY(bool outlined MEMBER m_outlined NOTIFY changed)
    Q_PROPERTY(QColor color MEMBER m_color NOTIFY changed)
    Q_PROPERTY(QColor dotColor MEMBER m_dotColor NOTIFY changed)
    Q_PROPERTY(qreal strokeHeight MEMBER m_strokeHeight NOTIFY changed)

public:
    explicit TallyStrokes(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

Q_SIGNALS:
    void changed();

protected:
    void geometryChange(const QRectF& now, const QRectF& before) override;

private:
    [[nodiscard]] int total() const { return std::max(m_count, m_needed); }
    [[nodiscard]] qreal groupWidth() const;
    [[nodiscard]] int groupsInRow() const;
    void layOut();

    int m_count = 0;
    int m_needed = 0; ///< 0: no dots and no line under it
    bool m_outlined = false;
    QColor m_color = Qt::black;
    QColor m_dotColor = Qt::gray;
    qreal m_strokeHeight = 16;
};

} // namespace peelpack::parts
