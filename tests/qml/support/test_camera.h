#pragma once

#include "platform/camera/camera.h"

#include <QTimer>

#include <vector>

namespace peelpack::test {

/// A camera that sees stored frames, one every few milliseconds while it is on.
class TestCamera final : public camera::Camera {
    Q_OBJECT

public:
    TestCamera()
    {
        m_timer.setInterval(30);
        connect(&m_timer, &QTimer::timeout, this, [this] {
            if (m_next < frames.size()) {
                Q_EMIT frame(frames[m_next++]);
            }
        });
    }

    [[nodiscard]] bool available() const override { return present; }
    void start() override
    {
        m_next = 0;
        m_timer.start();
    }
    void stop() override { m_timer.stop(); }

    bool present = false;
    std::vector<QImage> frames;

private:
    QTimer m_timer;
    std::size_t m_next = 0;
};

} // namespace peelpack::test
