#include "platform/camera/device_camera.h"

#include <QCamera>
#include <QCameraDevice>
#include <QMediaCaptureSession>
#include <QMediaDevices>
#include <QVideoFrame>
#include <QVideoSink>

namespace peelpack::camera {
namespace {

QCameraDevice backCamera()
{
    for (const QCameraDevice& device : QMediaDevices::videoInputs()) {
        if (device.position() == QCameraDevice::BackFace) {
            return device;
        }
    }
    return QMediaDevices::defaultVideoInput();
}

} // namespace

struct DeviceCamera::Parts {
    explicit Parts(const QCameraDevice& device) : camera(device)
    {
        session.setCamera(&camera);
        session.setVideoSink(&sink);
    }
    QMediaCaptureSession session;
    QCamera camera;
    QVideoSink sink;
};

DeviceCamera::DeviceCamera(QObject* parent) : Camera(parent) {}
DeviceCamera::~DeviceCamera() = default;

bool DeviceCamera::available() const
{
    return !QMediaDevices::videoInputs().isEmpty();
}

void DeviceCamera::start()
{
    if (m_parts) {
        return;
    }
    const QCameraDevice device = backCamera();
    if (device.isNull()) {
        Q_EMIT failed(tr("There is no camera here: choose a picture of the code, or type it."));
        return;
    }
    m_parts = std::make_unique<Parts>(device);
    connect(&m_parts->sink, &QVideoSink::videoFrameChanged, this,
            [this](const QVideoFrame& video) { Q_EMIT frame(video.toImage()); });
    connect(&m_parts->camera, &QCamera::errorOccurred, this, [this](QCamera::Error, const QString&) {
        Q_EMIT failed(tr("The camera does not start: choose a picture "
                         "of the code, or type it."));
    });
    m_parts->camera.start();
}

void DeviceCamera::stop()
{
    m_parts.reset();
}

} // namespace peelpack::camera
