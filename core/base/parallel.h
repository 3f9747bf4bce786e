#pragma once

#include <algorithm>
#include <atomic>
#include <cstddef>
#include <thread>
#include <vector>

namespace peelpack::base {

/// Into how many parts work on that many things is worth cutting on this machine, with at least `leastEach` things in
/// each: 1 on one core or for few things, never more than 4.
inline std::size_t partsFor(std::size_t things, std::size_t leastEach)
{
    constexpr std::size_t most = 4;
    const std::size_t cores = std::clamp<std::size_t>(std::thread::hardware_concurrency(), 1, most);
    return std::clamp<std::size_t>(things / std::max<std::size_t>(leastEach, 1), 1, cores);
}

/// Does work(i) for every i below `count` on `threads` threads, this one among them; each takes the next i when it is
/// done with one. Comes back when all is done. `work` must neither throw nor touch what another i changes.
template <class Work>
void inParallel(std::size_t count, std::size_t threads, const Work& work)
{
    std::atomic<std::size_t> next{0};
    const auto takeTurns = [&] {
        for (std::size_t i = next++; i < count; i = next++) {
            work(i);
        }
    };
    std::vector<std::jthread> others;
    for (std::size_t i = 1; i < std::min(threads, count); ++i) {
        others.emplace_back(takeTurns);
    }
    takeTurns();
}

} // namespace peelpack::base
