#pragma once

#include "platform/app/screen_walk.h"
#include "platform/camera/camera.h"
#include "qml/shell/phone.h"

namespace peelpack::app {

/// A camera that is there while it is `present`, and sees one picture for ever.
class StillCamera final : public camera::Camera {
public:
    [[nodiscard]] bool available() const override { return present; }
    void start() override { Q_EMIT frame(seen); }
    void stop() override {}

    bool present = false;
    QImage seen;
};

/// A student's parcel by light: shown, half read, and where there is no camera. The phone is open at a student's home.
void drawCodes(ScreenWalk& walk, shell::Phone& phone, StillCamera& camera);

} // namespace peelpack::app
