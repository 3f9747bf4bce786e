#include "core/sheet/role.h"

#include <array>

namespace peelpack::sheet {
namespace {

struct RoleName {
    std::string_view id;
    std::string_view words;
};

constexpr std::array<RoleName, 3> roleNames{
    {{"first", "first scrub"}, {"second", "second scrub"}, {"observed", "observation"}}};

} // namespace

std::string_view id(Role role)
{
    return roleNames[static_cast<std::size_t>(role)].id;
}

std::string_view inWords(Role role)
{
    return roleNames[static_cast<std::size_t>(role)].words;
}

std::optional<Role> roleFromId(std::string_view id)
{
    for (std::size_t i = 0; i < roleNames.size(); ++i) {
        if (roleNames[i].id == id) {
            return static_cast<Role>(i);
        }
    }
    return std::nullopt;
}

} // namespace peelpack::sheet
