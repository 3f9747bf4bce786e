#pragma once

#include "core/catalogue/category.h"
#include "core/sheet/marks.h"
#include "core/sheet/role.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace peelpack::requirement {

/// Of a target's seats, `specialties` × `each` are reserved: only the first `each` cases of a chosen specialty sit
/// there, and at most `specialties` may be chosen (counting rules, section 4, condition 4).
struct Spread {
    std::uint32_t specialties = 0;
    std::uint32_t each = 0;
    bool operator==(const Spread&) const = default;
};

/// One line of a requirement set: so many cases in these roles under these categories.
struct Target {
    std::string id;
    bool acceptsFirst = false;
    bool acceptsSecond = false;
    catalogue::CategorySet categories;
    std::uint32_t required = 0;       ///< cases
    std::optional<std::uint32_t> cap; ///< most cases of one category in this target; empty: no cap
    std::optional<Spread> spread;     ///< empty: any mix of categories

    /// A first-scrub target accepts first scrub only.
    [[nodiscard]] bool isFirstScrub() const { return acceptsFirst && !acceptsSecond; }
    [[nodiscard]] bool accepts(sheet::Role role) const
    {
        return (role == sheet::Role::First && acceptsFirst) || (role == sheet::Role::Second && acceptsSecond);
    }
    bool operator==(const Target&) const = default;
};

/// At most so many cases of a category over all targets.
struct Limit {
    catalogue::Category category = catalogue::Category::General;
    std::uint32_t most = 0;
    bool operator==(const Limit&) const = default;
};

/// What a program requires (counting rules, section 3). Data: the program's director decides which set is in force.
struct RequirementSet {
    std::string id;
    std::string title;
    std::string source;
    sheet::SkillSet notApplicable; ///< first-scrub skills whose N/A stands for Yes
    bool assistCounts = false;     ///< in the two categories apart, any Yes of the ten is second scrub
    std::vector<Target> targets;   ///< 1 to mostTargets, in the order in which they are shown and filled
    std::vector<Limit> limits;     ///< at most one for a category

    /// Sum of the targets.
    [[nodiscard]] std::uint32_t required() const;
    bool operator==(const RequirementSet&) const = default;
};

inline constexpr std::size_t mostTargets = 8;
/// Larger numbers are slips of the pen.
inline constexpr std::uint32_t mostCases = 10'000;

/// One thing that is wrong with a set, where ("targets[1].spread") and how to mend it.
struct Flaw {
    std::string place;
    std::string reason;
    std::string mend;
    bool operator==(const Flaw&) const = default;
};

/// Everything that keeps the set from being used; empty when it is sound.
std::vector<Flaw> validate(const RequirementSet& set);

} // namespace peelpack::requirement
