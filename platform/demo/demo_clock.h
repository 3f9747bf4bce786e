#pragma once

#include "core/base/date.h"
#include "platform/session/session.h"

namespace peelpack::demo {

/// What the invented people's clocks say: a few seconds more at each look.
class DemoClock {
public:
    void set(base::Date day, int hour)
    {
        m_seconds = (std::int64_t{day.days()} * 24 + hour) * 3'600 - std::int64_t{zone} * 60;
    }
    journal::Time look()
    {
        m_seconds += 7;
        return {m_seconds, zone};
    }

private:
    static constexpr std::int16_t zone = -300; ///< minutes east of UTC
    std::int64_t m_seconds = 0;
};

} // namespace peelpack::demo
