#pragma once

#include <QColor>
#include <QQuickPaintedItem>

namespace peelpack::parts {

/// The end of a pouch at the left edge of a card: its seal shows how far a sheet is. Shape first, color second; the
/// words stand on the card.
class PackSeal : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(peelpack::parts::PackSeal::State state MEMBER m_state NOTIFY changed)
    Q_PROPERTY(qreal closing MEMBER m_closing NOTIFY changed)
    Q_PROPERTY(QColor color MEMBER m_color NOTIFY changed)
    Q_PROPERTY(QColor pouch MEMBER m_pouch NOTIFY changed)
    Q_PROPERTY(QColor line MEMBER m_line NOTIFY changed)

public:
    enum State {
        Open,              ///< a dashed open chevron
        Signed,            ///< one chevron
        Initialed,         ///< two
        Returned,          ///< a torn edge
        Amended,           ///< one chevron with a second strip
        Withdrawn,         ///< the open chevron crossed out
        Void,              ///< a crossed band
        Imported,          ///< a page with a turned corner
        ImportedInitialed, ///< the page with a tick
    };
    Q_ENUM(State)

    explicit PackSeal(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

Q_SIGNALS:
    void changed();

private:
    State m_state = Open;
    qreal m_closing = 1; ///< 0: the chevron still lies open, 1: closed
    QColor m_color = Qt::black;
    QColor m_pouch = Qt::white;
    QColor m_line = Qt::gray;
};

} // namespace peelpack::parts
