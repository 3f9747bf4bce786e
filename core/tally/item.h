#pragma once

#include "core/catalogue/category.h"
#include "core/sheet/role.h"

#include <cstdint>
#include <optional>

namespace peelpack::tally {

/// What placing needs to know of one candidate: under which categories it may count, and in which role there.
/// Items stand in the order of their candidates: by date, sheet and row.
struct Item {
    catalogue::CategorySet asFirst;  ///< categories in which it counts as first scrub
    catalogue::CategorySet asSecond; ///< categories in which it counts as second scrub; disjoint from asFirst
    catalogue::Category logged = catalogue::Category::General; ///< where the student logged it
    std::uint32_t operation = 0;                               ///< items with the same number never share a category

    [[nodiscard]] catalogue::CategorySet categories() const { return asFirst | asSecond; }
    /// The role in which it counts there; empty when it cannot count there.
    [[nodiscard]] std::optional<sheet::Role> roleIn(catalogue::Category category) const
    {
        if (asFirst.contains(category)) {
            return sheet::Role::First;
        }
        return asSecond.contains(category) ? std::optional(sheet::Role::Second) : std::nullopt;
    }
    /// The same candidate held to its logged category.
    [[nodiscard]] Item asLogged() const
    {
        catalogue::CategorySet only;
        only.add(logged);
        return {asFirst & only, asSecond & only, logged, operation};
    }
    bool operator==(const Item&) const = default;
};

} // namespace peelpack::tally
