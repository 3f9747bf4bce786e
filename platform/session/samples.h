#pragma once

#include "core/questions/sample.h"
#include "platform/session/session.h"

#include <optional>

namespace peelpack::session {

/// Sheets to confirm: how many, of which days, and the number that draws the same ones again.
struct SampleWish {
    std::size_t count = 10;
    std::optional<std::uint64_t> seed; ///< empty: a new one
    std::optional<base::Date> from;    ///< operations of this day and later
    std::optional<base::Date> to;      ///< operations of this day and earlier
};
struct DrawnSample {
    std::uint64_t seed = 0;
    questions::Sample sample;
};
/// Draws from the signed sheets of these students that are not confirmed yet; what a preceptor has said is not theirs
/// is answered already and is left out. BadValue: not in the vault of an instructor or the director.
base::Result<DrawnSample> drawSample(const Session& session, const std::vector<keys::Id>& students,
                                     const SampleWish& wish);

} // namespace peelpack::session
