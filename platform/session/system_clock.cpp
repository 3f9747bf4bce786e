#include "platform/session/system_clock.h"

#include <QDateTime>

namespace peelpack::session {

Clock systemClock()
{
    return [] {
        constexpr int secondsInMinute = 60;
        const QDateTime now = QDateTime::currentDateTime();
        return journal::Time{now.toSecsSinceEpoch(), static_cast<std::int16_t>(now.offsetFromUtc() / secondsInMinute)};
    };
}

} // namespace peelpack::session
