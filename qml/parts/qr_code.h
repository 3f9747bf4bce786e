#pragma once

#include <QByteArray>
#include <QQuickPaintedItem>

namespace peelpack::parts {

/// Bytes as a QR code (ISO/IEC 18004, byte mode, error correction M or the best that fits), dark on white with its
/// quiet zone in both themes. Empty bytes: nothing is drawn.
class QrCode : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QByteArray bytes READ bytes WRITE setBytes NOTIFY changed)
    Q_PROPERTY(bool fits READ fits NOTIFY changed)

public:
    explicit QrCode(QQuickItem* parent = nullptr);

    [[nodiscard]] const QByteArray& bytes() const { return m_bytes; }
    void setBytes(const QByteArray& bytes);
    /// False when there are more bytes than a QR code holds that a camera still reads from a small screen (version 30).
    [[nodiscard]] bool fits() const { return m_side > 0 || m_bytes.isEmpty(); }
    void paint(QPainter* painter) override;

Q_SIGNALS:
    void changed();

private:
    QByteArray m_bytes;
    std::vector<bool> m_modules;
    int m_side = 0;
};

} // namespace peelpack::parts
