#pragma once

#include <QColor>
#include <QPointF>
#include <QQuickPaintedItem>

#include <vector>

namespace peelpack::parts {

/// Where somebody draws their signature with a finger or a mouse. The strokes are what is signed.
class SignaturePad : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool empty READ isEmpty NOTIFY changed)
    Q_PROPERTY(QColor color MEMBER m_color NOTIFY changed)

public:
    explicit SignaturePad(QQuickItem* parent = nullptr);

    [[nodiscard]] bool isEmpty() const { return m_strokes.empty(); }
    /// Strokes as bytes: for each its number of points (2 bytes, big endian), then x and y of each (a byte each, in
    /// 255ths of width and height). At most 4,000 bytes; further points are left out.
    Q_INVOKABLE [[nodiscard]] QByteArray strokes() const;
    Q_INVOKABLE void clear();
    void paint(QPainter* painter) override;

Q_SIGNALS:
    void changed();

protected:
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;

private:
    void add(QPointF place);

    std::vector<std::vector<QPointF>> m_strokes; ///< in fractions of width and height
    QColor m_color = Qt::black;
};

} // namespace peelpack::parts
