#pragma once

#include "platform/camera/camera.h"

#include <memory>

namespace peelpack::camera {

/// The device's own camera through Qt Multimedia, the one at the back where there are two. Looked for only when
/// somebody scans.
class DeviceCamera final : public Camera {
    Q_OBJECT

public:
    explicit DeviceCamera(QObject* parent = nullptr);
    ~DeviceCamera() override;

    [[nodiscard]] bool available() const override;
    void start() override;
    void stop() override;

private:
    struct Parts;
    std::unique_ptr<Parts> m_parts;
};

} // namespace peelpack::camera
