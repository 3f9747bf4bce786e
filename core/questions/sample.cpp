#include "core/questions/sample.h"

#include <algorithm>
#include <random>
#include <tuple>
#include <utility>

namespace peelpack::questions {
namespace {

/// A number below `limit`, each equally likely. std::uniform_int_distribution may differ from machine to machine.
std::size_t below(std::size_t limit, std::mt19937_64& generator)
{
    const std::uint64_t uneven = (UINT64_MAX % limit + 1) % limit; // numbers too many for whole rounds
    std::uint64_t number = generator();
    while (number > UINT64_MAX - uneven) {
        number = generator();
    }
    return static_cast<std::size_t>(number % limit);
}

} // namespace

Sample sampleOf(std::vector<Signing> signings, std::size_t count, std::uint64_t seed)
{
    std::erase_if(signings, [](const Signing& signing) { return signing.confirmed; });
    std::sort(signings.begin(), signings.end(), [](const Signing& a, const Signing& b) {
        return std::tie(a.student, a.sheet, a.signer, a.signedAt, a.entry) <
               std::tie(b.student, b.sheet, b.signer, b.signedAt, b.entry);
    });
    std::vector<std::pair<std::size_t, std::size_t>> sheets; // from, to among the signings
    for (std::size_t i = 0; i < signings.size(); ++i) {
        const bool same =
            i > 0 && signings[i - 1].student == signings[i].student && signings[i - 1].sheet == signings[i].sheet;
        if (!same) {
            sheets.emplace_back(i, i);
        }
        sheets.back().second = i + 1;
    }
    Sample sample;
    sample.of = sheets.size();
    sample.sheets = std::min(count, sheets.size());
    std::mt19937_64 generator(seed);
    for (std::size_t i = 0; i < sample.sheets; ++i) {
        std::swap(sheets[i], sheets[i + below(sheets.size() - i, generator)]);
        for (std::size_t at = sheets[i].first; at < sheets[i].second; ++at) {
            sample.signings.push_back(signings[at]);
        }
    }
    std::sort(sample.signings.begin(), sample.signings.end(), [](const Signing& a, const Signing& b) {
        return std::tie(a.name, a.signer, a.date, a.student, a.sheet, a.entry) <
               std::tie(b.name, b.signer, b.date, b.student, b.sheet, b.entry);
    });
    return sample;
}

} // namespace peelpack::questions
