#include "qml/parts/qr_scanner.h"

#include "platform/camera/qr_reader.h"

#include <QBuffer>
#include <QImageReader>
#include <QPainter>

namespace peelpack::parts {

QrScanner::QrScanner(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setImplicitHeight(220);
}

QrScanner::~QrScanner()
{
    setScanning(false);
}

void QrScanner::setCamera(camera::Camera* camera)
{
    if (camera == m_camera) {
        return;
    }
    const bool scanning = m_scanning;
    setScanning(false);
    if (m_camera) {
        m_camera->disconnect(this);
    }
    m_camera = camera;
    if (camera != nullptr) {
        connect(camera, &camera::Camera::frame, this, &QrScanner::take);
        connect(camera, &camera::Camera::failed, this, [this](const QString& why) {
            m_problem = why;
            Q_EMIT changed();
        });
    }
    setScanning(scanning);
    Q_EMIT changed();
}

void QrScanner::setScanning(bool scanning)
{
    if (scanning == m_scanning) {
        return;
    }
    m_scanning = scanning;
    m_latest = {};
    m_problem.clear();
    if (m_camera) {
        scanning ? m_camera->start() : m_camera->stop();
    }
    Q_EMIT changed();
    update();
}

void QrScanner::setGoesOn(bool goesOn)
{
    if (goesOn != m_goesOn) {
        m_goesOn = goesOn;
        Q_EMIT changed();
    }
}

void QrScanner::take(const QImage& image)
{
    if (!m_scanning) {
        return;
    }
    m_latest = image;
    update();
    // Behind the pictures that wait already: where reading is slower than the camera, only the latest is read.
    if (!m_willLook) {
        m_willLook = true;
        QMetaObject::invokeMethod(this, &QrScanner::look, Qt::QueuedConnection);
    }
}

void QrScanner::look()
{
    m_willLook = false;
    if (!m_scanning) {
        return;
    }
    if (const auto bytes = camera::readQr(m_latest)) {
        if (!m_goesOn) {
            setScanning(false);
        }
        Q_EMIT found(*bytes);
    }
}

void QrScanner::readPicture(const QByteArray& file)
{
    QByteArray copy = file;
    QBuffer buffer(&copy);
    QImageReader reader(&buffer);
    reader.setAutoTransform(true);
    const QImage picture = reader.read();
    const auto bytes = camera::readQr(picture);
    m_problem = bytes ? QString()
                : picture.isNull()
                    ? tr("This file is not a picture.")
                    : tr("There is no readable code in this picture: take it again, closer and straight.");
    Q_EMIT changed();
    if (bytes) {
        Q_EMIT found(*bytes);
    }
}

void QrScanner::readFile(const QString& name, const QByteArray& file)
{
    static const QStringList pictures{QStringLiteral("png"), QStringLiteral("jpg"), QStringLiteral("jpeg"),
                                      QStringLiteral("webp"), QStringLiteral("bmp")};
    if (pictures.contains(name.section(QLatin1Char('.'), -1).toLower())) {
        readPicture(file);
    } else {
        Q_EMIT found(file);
    }
}

void QrScanner::paint(QPainter* painter)
{
    painter->fillRect(boundingRect(), Qt::black);
    if (!m_latest.isNull()) {
        const QSize size = m_latest.size().scaled(boundingRect().size().toSize(), Qt::KeepAspectRatioByExpanding);
        const QRectF place(QPointF((width() - size.width()) / 2, (height() - size.height()) / 2), size);
        painter->drawImage(place, m_latest);
    }
}

} // namespace peelpack::parts
