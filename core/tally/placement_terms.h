#pragma once

#include "core/sheet/role.h"
#include "core/tally/flow_network.h"

#include <array>
#include <cstddef>

namespace peelpack::tally {

// What the files of the placement model share; nobody else needs it.

/// One number holds three: settled items above first-scrub seats above logged categories. A set has at most 8 targets
/// of 10,000 cases, so none reaches into the next.
inline constexpr FlowNetwork::Cost loggedWorth = 1;
inline constexpr FlowNetwork::Cost firstScrubWorth = FlowNetwork::Cost{1} << 20U;
inline constexpr FlowNetwork::Cost settledWorth = FlowNetwork::Cost{1} << 42U;

inline constexpr std::array<sheet::Role, 2> countedRoles{sheet::Role::First, sheet::Role::Second};

constexpr std::size_t at(sheet::Role role)
{
    return static_cast<std::size_t>(role);
}

/// The least number from `from` to `to` for which it holds; it is known to hold for `to`, and for all above one that
/// holds.
template <class Number, class Holds>
Number leastThat(Number from, Number to, const Holds& holds)
{
    while (from < to) {
        const Number middle = from + (to - from) / 2;
        if (holds(middle)) {
            to = middle;
        } else {
            from = middle + 1;
        }
    }
    return from;
}

} // namespace peelpack::tally
