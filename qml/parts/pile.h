#pragma once

#include <QQuickItem>

namespace peelpack::parts {

/// Its visible children one below the other, each as wide as the pile and as high as it wants to be at that width. A
/// child with a true property `hugs` is only as wide as it wants to be, on the side of the hand. Widths go down and
/// heights come up, so that wrapped text settles at once.
class Pile : public QQuickItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(qreal spacing READ spacing WRITE setSpacing NOTIFY changed)
    Q_PROPERTY(bool fromRight READ fromRight WRITE setFromRight NOTIFY changed)

public:
    explicit Pile(QQuickItem* parent = nullptr) : QQuickItem(parent) {}

    [[nodiscard]] qreal spacing() const { return m_spacing; }
    void setSpacing(qreal spacing);
    [[nodiscard]] bool fromRight() const { return m_fromRight; }
    void setFromRight(bool fromRight);

Q_SIGNALS:
    void changed();

protected:
    void itemChange(ItemChange change, const ItemChangeData& data) override;
    void geometryChange(const QRectF& now, const QRectF& before) override;
    void componentComplete() override;
    void updatePolish() override;

private:
    qreal m_spacing = 0;
    bool m_fromRight = false;
};

} // namespace peelpack::parts
