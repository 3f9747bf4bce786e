#pragma once

#include "core/base/date.h"

#include <cstddef>
#include <map>
#include <string>
#include <utility>

namespace peelpack::demo {

/// Where a preceptor is on one day, and what they did so far: one room, and one operation after another.
struct PreceptorDay {
    std::string site;
    std::string room;
    std::size_t operations = 0;
};

/// By preceptor and day, so that nobody of the demo is in two rooms at once.
template <class Preceptor>
using PreceptorDays = std::map<std::pair<Preceptor, base::Date>, PreceptorDay>;

/// When the operations of a day are, in minutes after midnight: from half past seven, six of them.
struct OperationTime {
    unsigned start;
    unsigned end;
};
constexpr OperationTime operationTime(std::size_t number)
{
    constexpr unsigned first = 7 * 60 + 30;
    constexpr unsigned each = 110;
    constexpr unsigned turnover = 55;
    constexpr std::size_t ofDay = 6;
    const unsigned start = first + static_cast<unsigned>(number % ofDay) * (each + turnover);
    return {start, start + each};
}

} // namespace peelpack::demo
