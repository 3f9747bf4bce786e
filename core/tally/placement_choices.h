#pragma once

#include "core/catalogue/category.h"
#include "core/requirement/requirement_set.h"
#include "core/sheet/role.h"

#include <array>
#include <compare>
#include <cstdint>
#include <vector>

namespace peelpack::tally {

/// Lexicographic: more counted, then more in first-scrub targets, then more under the logged category.
struct Value {
    std::int32_t counted = 0;
    std::int32_t firstScrub = 0;
    std::int32_t underLogged = 0;
    auto operator<=>(const Value&) const = default;
};

/// How the rules that do not fit a flow network are handled. Default sizes come from PlacementModel::freshChoices().
///
/// Two of them, a limit shared by two roles and a category contested by two roles within one operation, are shares of
/// something between first and second scrub. Each may be relaxed in two ways: `Apart`, where each role has its own
/// share and both may use more than there is, and `Pooled`, where there is no more than there is but a case may enter
/// in one role and leave in the other. One way often bounds well where the other does not.
struct Choices {
    /// In which way, and whether it is the first way tried: the other follows before anything is split. A limit begins
    /// Apart, then Pooled, then ApartAgain, because only apart is a split sure to exclude the solution at hand. A place
    /// begins PooledFirst, then ApartAgain; either can be split.
    enum class Relaxation : std::uint8_t { Apart, Pooled, PooledFirst, ApartAgain };
    enum class Owner : std::uint8_t { Anyone, FirstOnly, SecondOnly };
    struct PlaceChoice {
        Owner owner = Owner::Anyone;
        Relaxation relaxation = Relaxation::PooledFirst;
    };
    struct LimitChoice {
        std::int32_t mostFirst = 0; ///< share that first scrubs may use
        std::int32_t mostSecond = 0;
        Relaxation relaxation = Relaxation::Apart;
    };
    catalogue::CategorySet specialties; ///< those chosen for the spread
    std::int32_t openSeats = 0;         ///< reserved seats that any specialty may use: more than 0 is a relaxation
    std::vector<PlaceChoice> places;    ///< by place within an operation
    std::array<LimitChoice, catalogue::categoryCount> limits{};
};

constexpr bool isPooled(Choices::Relaxation relaxation)
{
    return relaxation == Choices::Relaxation::Pooled || relaxation == Choices::Relaxation::PooledFirst;
}

/// What is already settled while the smallest placement vector is sought. Default sizes come from
/// PlacementModel::freshSettled().
struct Settled {
    std::vector<std::int32_t> left;       ///< by class: items not yet settled
    std::vector<std::uint8_t> placeTaken; ///< by place
    std::array<std::array<std::int32_t, catalogue::categoryCount>, requirement::mostTargets> seats{}; ///< taken
    std::array<std::array<std::int32_t, catalogue::categoryCount>, 2> byRole{}; ///< [role][category] taken
    std::array<std::int32_t, requirement::mostTargets> inTarget{};
    std::int32_t total = 0;

    [[nodiscard]] std::int32_t inCategory(std::size_t category) const
    {
        return byRole[0][category] + byRole[1][category];
    }
};

/// Further cases that are imagined: `count` of one category and role.
struct Extra {
    catalogue::Category category = catalogue::Category::General;
    sheet::Role role = sheet::Role::First;
    std::int32_t count = 0;
};

} // namespace peelpack::tally
