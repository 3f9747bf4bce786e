#include "core/sheet/case_row.h"

#include <array>

namespace peelpack::sheet {
namespace {

constexpr std::array<std::string_view, 6> strengthIds{"", "own-phone", "card", "card-new", "drawn", "paper"};

} // namespace

std::string_view id(Strength strength)
{
    return strengthIds[static_cast<std::size_t>(strength)];
}

std::optional<Strength> strengthFromId(std::string_view id)
{
    for (std::size_t i = 0; i < strengthIds.size(); ++i) {
        if (strengthIds[i] == id) {
            return static_cast<Strength>(i);
        }
    }
    return std::nullopt;
}

} // namespace peelpack::sheet
