#pragma once

#include "platform/camera/camera.h"
#include "platform/share/share.h"

#include <QImage>
#include <QPointer>
#include <QQmlEngine>
#include <QQuickPaintedItem>

namespace peelpack::parts {

struct CameraType {
    Q_GADGET
    QML_FOREIGN(peelpack::camera::Camera)
    QML_NAMED_ELEMENT(Camera)
    QML_UNCREATABLE("part of the device")
};
struct ShareType {
    Q_GADGET
    QML_FOREIGN(peelpack::share::Share)
    QML_NAMED_ELEMENT(Share)
    QML_UNCREATABLE("part of the device")
};

/// Shows what the camera sees and says which code is in it. Scans only while `scanning`, which a code ends unless it
/// `goesOn`: for codes that come one after another.
class QrScanner : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(peelpack::camera::Camera* camera READ camera WRITE setCamera NOTIFY changed)
    Q_PROPERTY(bool scanning READ scanning WRITE setScanning NOTIFY changed)
    Q_PROPERTY(bool goesOn READ goesOn WRITE setGoesOn NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)

public:
    explicit QrScanner(QQuickItem* parent = nullptr);
    ~QrScanner() override;

    [[nodiscard]] camera::Camera* camera() const { return m_camera; }
    void setCamera(camera::Camera* camera);
    [[nodiscard]] bool scanning() const { return m_scanning; }
    void setScanning(bool scanning);
    [[nodiscard]] bool goesOn() const { return m_goesOn; }
    void setGoesOn(bool goesOn);
    [[nodiscard]] const QString& problem() const { return m_problem; }
    /// The code in a picture file's bytes; ends with found() or a problem.
    Q_INVOKABLE void readPicture(const QByteArray& file);
    /// A file that is a picture of a code, as its name says, or the code's bytes themselves.
    Q_INVOKABLE void readFile(const QString& name, const QByteArray& file);
    void paint(QPainter* painter) override;

Q_SIGNALS:
    void changed();
    void found(const QByteArray& bytes);

private:
    void take(const QImage& image);
    void look();

    QPointer<camera::Camera> m_camera;
    QImage m_latest;
    bool m_scanning = false;
    bool m_goesOn = false;
    bool m_willLook = false;
    QString m_problem;
};

} // namespace peelpack::parts
