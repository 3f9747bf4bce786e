#include "tests/bench/rounds.h"

#include <algorithm>
#include <cstdio>

namespace peelpack::bench {

std::vector<std::vector<double>> takeTurns(int rounds, const std::vector<Work>& things)
{
    std::vector<std::vector<double>> seconds(things.size());
    for (int round = 0; round < rounds; ++round) {
        for (std::size_t i = 0; i < things.size(); ++i) {
            seconds[i].push_back(things[i]());
        }
    }
    return seconds;
}

double median(std::vector<double> values)
{
    std::sort(values.begin(), values.end());
    return values.empty() ? 0 : values[values.size() / 2];
}

void printRatio(const std::string& what, const std::vector<double>& ours, const std::vector<double>& theirs,
                const std::string& target)
{
    std::vector<double> ratios;
    for (std::size_t i = 0; i < ours.size(); ++i) {
        ratios.push_back(ours[i] / theirs[i]);
    }
    std::sort(ratios.begin(), ratios.end());
    const double often = median(ratios);
    const double few = ratios[ratios.size() / 10];
    const double most = ratios[ratios.size() - 1 - ratios.size() / 10];
    std::printf("%-66s %10.2f %10.2f %7.2f  %.2f-%.2f  %s\n", what.c_str(), 1e3 * median(ours), 1e3 * median(theirs),
                often, few, most, target.c_str());
    std::fflush(stdout);
}

} // namespace peelpack::bench
