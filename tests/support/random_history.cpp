#include "tests/support/random_history.h"

#include <algorithm>

namespace peelpack::support {
namespace {

using catalogue::Category;
using catalogue::categoryAt;
using catalogue::categoryCount;
using catalogue::CategoryList;
using catalogue::CategorySet;

CategoryList randomCategories(Dice& dice, std::uint32_t variety)
{
    if (dice.chance(10)) {
        return {dice.chance(60) ? Category::DiagnosticEndoscopy : Category::LaborDelivery};
    }
    const auto any = [&] { return dice.chance(25) ? Category::General : categoryAt(1 + dice.below(variety)); };
    CategoryList list{any()};
    while (dice.chance(35) && list.size() < 3) {
        list.add(any());
    }
    return list;
}

tally::Item itemOf(const CategoryList& categories, std::uint32_t role, bool assists, std::uint32_t operation)
{
    tally::Item item;
    item.operation = operation;
    item.logged = categories.front();
    for (const Category category : categories) {
        if (isApart(category)) {
            if (role < 2 || assists) {
                item.asSecond.add(category);
            }
        } else if (role == 0) {
            item.asFirst.add(category);
        } else if (role == 1) {
            item.asSecond.add(category);
        }
    }
    return item;
}

} // namespace

std::vector<tally::Item> randomItems(Dice& dice, std::uint32_t mostSheets)
{
    std::vector<tally::Item> items;
    const std::uint32_t sheets = dice.below(mostSheets + 1);
    const std::uint32_t variety = 2 + dice.below(10);
    const std::uint32_t firstShare = 20 + dice.below(75);
    const std::uint32_t joinShare = dice.chance(30) ? 30 : 3;
    std::uint32_t operation = 0;
    for (std::uint32_t sheet = 0; sheet < sheets; ++sheet) {
        const bool joinsThePrevious = sheet > 0 && dice.chance(joinShare);
        operation += joinsThePrevious ? 0 : 1;
        const std::uint32_t role = dice.chance(firstShare) ? 0 : (dice.chance(85) ? 1 : 2);
        const bool assists = dice.chance(20);
        std::uint32_t procedures = 1;
        while (procedures < 4 && dice.chance(20)) {
            ++procedures;
        }
        for (std::uint32_t i = 0; i < procedures; ++i) {
            CategoryList categories = randomCategories(dice, variety);
            if (dice.chance(5)) { // joined rows: the union, which may reach over the categories apart
                for (const Category category : randomCategories(dice, variety)) {
                    categories.add(category);
                }
            }
            items.push_back(itemOf(categories, role, assists, operation));
        }
    }
    return items;
}

requirement::RequirementSet randomSet(Dice& dice)
{
    while (true) {
        requirement::RequirementSet set;
        set.id = "random";
        set.title = "random";
        const std::uint32_t targets = 1 + dice.below(requirement::mostTargets);
        const std::uint32_t withSpread = dice.chance(60) ? dice.below(targets) : targets;
        for (std::uint32_t i = 0; i < targets; ++i) {
            requirement::Target target;
            target.id = "t" + std::to_string(i);
            const std::uint32_t roles = dice.below(4);
            target.acceptsFirst = roles != 1;
            target.acceptsSecond = roles == 1 || roles == 2;
            if (dice.chance(40)) {
                target.categories = CategorySet::specialties();
            }
            const std::uint32_t more = 1 + dice.below(5);
            for (std::uint32_t n = 0; n < more; ++n) {
                target.categories.add(categoryAt(dice.below(i == withSpread ? 12 : categoryCount)));
            }
            target.required = 1 + dice.below(60);
            if (dice.chance(35)) {
                target.cap = 1 + dice.below(20);
            }
            if (i == withSpread) {
                target.spread = requirement::Spread{1 + dice.below(6), 1 + dice.below(12)};
            }
            set.targets.push_back(target);
        }
        const std::uint32_t limits = dice.below(4);
        for (std::uint32_t i = 0; i < limits; ++i) {
            set.limits.push_back({categoryAt(dice.below(categoryCount)), dice.below(15)});
        }
        if (requirement::validate(set).empty()) {
            return set;
        }
    }
}

} // namespace peelpack::support
