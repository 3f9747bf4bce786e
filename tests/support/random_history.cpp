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

RandomFile randomFile(Dice& dice, std::uint32_t mostSheets)
{
    constexpr const char* marksByRole[] = {"Y,Y,NA,Y,Y,N,N,Y,N,NA", "Y,N,Y,Y,NA,N,Y,N,N,N", "Y,N,Y,Y,Y,N,NA,N,N,N"};
    constexpr const char* unmarked = "Y,Y,Y,Y,Y,Y,,N,N,N";
    RandomFile file;
    file.csv =
        "sheet,date,student,procedure,categories,verify,setup,counts,pass,technique,sponge,suction,cut,retract,camera,"
        "operation,one_pathology,canceled\r\n";
    const std::uint32_t students = 1 + dice.below(4);
    for (std::uint32_t student = 0; student < students; ++student) {
        file.students.push_back("Student " + std::to_string(student));
        std::vector<tally::Item>& items = file.items.emplace_back();
        const std::uint32_t sheets = dice.below(mostSheets + 1);
        const std::uint32_t variety = 2 + dice.below(10);
        std::uint32_t operation = 0;
        for (std::uint32_t sheet = 0; sheet < sheets; ++sheet) {
            // The same operation names recur among students, who do not share operations.
            const bool joinsThePrevious = sheet % 7 == 3 && dice.chance(40);
            operation += joinsThePrevious ? 0 : 1;
            const std::uint32_t role = dice.chance(60) ? 0 : (dice.chance(85) ? 1 : 2);
            const bool canceled = dice.chance(4);
            const bool complete = !dice.chance(4);
            std::uint32_t procedures = 1;
            while (procedures < 4 && dice.chance(20)) {
                ++procedures;
            }
            CategoryList joined;
            for (std::uint32_t i = 0; i < procedures; ++i) {
                const bool isJoined = procedures > 1 && i < 2 && sheet % 3 == 0;
                const CategoryList categories = randomCategories(dice, variety);
                std::string cell;
                for (const Category category : categories) {
                    cell += (cell.empty() ? "" : "|") + std::string(id(category));
                    joined.add(category);
                }
                file.csv += "s" + std::to_string(1000 + sheet) + ",2026-03-" + std::to_string(10 + sheet % 20) + "," +
                            file.students.back() + ",Thing," + cell + "," + (complete ? marksByRole[role] : unmarked) +
                            ",op" + std::to_string(operation) + "," + (isJoined ? "1" : "") + "," +
                            (canceled ? "Y" : "") + "\r\n";
                if (!complete || canceled || role == 2 || (isJoined && i == 0)) {
                    continue; // counts nowhere, or with the next row
                }
                items.push_back(itemOf(isJoined ? joined : categories, role, false, operation));
            }
        }
    }
    return file;
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
