#pragma once

#include "platform/session/session.h"

#include <QElapsedTimer>
#include <QObject>
#include <QTimer>

namespace peelpack::shell {

/// Says when nobody has touched the app for a while. It goes by the clock, so that a phone that slept in a pocket is
/// idle when it wakes, and by its own beats, so that a clock that was set back does not keep it open.
class IdleWatch : public QObject {
    Q_OBJECT

public:
    explicit IdleWatch(session::Clock clock, QObject* parent = nullptr);

    /// Begins anew: idle after so many minutes without a touch.
    void watch(int minutes);
    void stop() { m_beat.stop(); }
    /// Something goes on that somebody began and watches, though they touch nothing; not when it was idle already.
    void stillInUse();
    bool eventFilter(QObject* watched, QEvent* event) override;

Q_SIGNALS:
    void idle();

private:
    void touched();
    [[nodiscard]] bool isOver() const;
    void onBeat();

    session::Clock m_clock;
    QTimer m_beat;
    QElapsedTimer m_since;      ///< by the machine, which may have slept
    std::int64_t m_touched = 0; ///< by the clock
    std::int64_t m_limit = 0;   ///< seconds
};

} // namespace peelpack::shell
