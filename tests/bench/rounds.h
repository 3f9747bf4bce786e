#pragma once

#include <ctime>
#include <functional>
#include <string>
#include <vector>

namespace peelpack::bench {

/// Seconds on one of the system's clocks. ProcessTime leaves out what other programs took from this machine.
enum class Watch { WallTime, ProcessTime };

class Stopwatch {
public:
    explicit Stopwatch(Watch watch) : m_watch(watch), m_start(now()) {}
    [[nodiscard]] double seconds() const { return now() - m_start; }

private:
    [[nodiscard]] double now() const
    {
        timespec time{};
        clock_gettime(m_watch == Watch::WallTime ? CLOCK_MONOTONIC : CLOCK_PROCESS_CPUTIME_ID, &time);
        return static_cast<double>(time.tv_sec) + 1e-9 * static_cast<double>(time.tv_nsec);
    }

    Watch m_watch;
    double m_start;
};

/// One of the things compared: does its work once and answers the seconds that count.
using Work = std::function<double()>;

/// Seconds of each thing, in the order given, by round. The things take turns, so that noise meets all of them alike.
std::vector<std::vector<double>> takeTurns(int rounds, const std::vector<Work>& things);

double median(std::vector<double> values);

/// Prints the median of both, and the median, least and most of their ratios by round.
void printRatio(const std::string& what, const std::vector<double>& ours, const std::vector<double>& theirs,
                const std::string& target);

} // namespace peelpack::bench
