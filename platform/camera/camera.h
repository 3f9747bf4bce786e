#pragma once

#include <QImage>
#include <QObject>

namespace peelpack::camera {

/// Where pictures come from while a code is scanned: a device's camera, or stored frames in a test. One thread.
class Camera : public QObject {
    Q_OBJECT
    Q_PROPERTY(bool available READ available CONSTANT)

public:
    using QObject::QObject;

    /// False: there is none, and codes are typed or come as pictures.
    [[nodiscard]] virtual bool available() const = 0;
    virtual void start() = 0;
    virtual void stop() = 0;

Q_SIGNALS:
    void frame(const QImage& image);
    /// A sentence.
    void failed(const QString& why);
};

/// No camera at all.
class NoCamera final : public Camera {
    Q_OBJECT
public:
    using Camera::Camera;
    [[nodiscard]] bool available() const override { return false; }
    void start() override {}
    void stop() override {}
};

} // namespace peelpack::camera
