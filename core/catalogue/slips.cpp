#include "core/catalogue/slips.h"

#include <algorithm>
#include <array>

namespace peelpack::catalogue {
namespace {

constexpr std::size_t longest = 40;

} // namespace

std::size_t slipsAllowed(std::size_t length)
{
    if (length <= 5) {
        return 0;
    }
    return length <= 8 ? 1 : 2;
}

std::size_t slipsBetween(std::string_view typed, std::string_view word, bool partly, std::size_t most)
{
    if (typed.size() >= longest || word.size() >= longest || typed.size() > word.size() + most ||
        (!partly && word.size() > typed.size() + most)) {
        return most + 1;
    }
    // Optimal string alignment, three rows.
    std::array<std::array<std::size_t, longest + 1>, 3> rows{};
    for (std::size_t j = 0; j <= word.size(); ++j) {
        rows[0][j] = j;
    }
    for (std::size_t i = 1; i <= typed.size(); ++i) {
        auto& row = rows[i % 3];
        const auto& before = rows[(i + 2) % 3];
        const auto& twoBefore = rows[(i + 1) % 3];
        row[0] = i;
        std::size_t least = i;
        for (std::size_t j = 1; j <= word.size(); ++j) {
            const bool same = typed[i - 1] == word[j - 1];
            row[j] = std::min({before[j] + 1, row[j - 1] + 1, before[j - 1] + (same ? 0U : 1U)});
            if (i > 1 && j > 1 && typed[i - 1] == word[j - 2] && typed[i - 2] == word[j - 1]) {
                row[j] = std::min(row[j], twoBefore[j - 2] + 1);
            }
            least = std::min(least, row[j]);
        }
        if (least > most) {
            return most + 1;
        }
    }
    const auto& last = rows[typed.size() % 3];
    const std::size_t slips =
        partly ? *std::min_element(last.begin(), last.begin() + static_cast<std::ptrdiff_t>(word.size()) + 1)
               : last[word.size()];
    return std::min(slips, most + 1);
}

} // namespace peelpack::catalogue
