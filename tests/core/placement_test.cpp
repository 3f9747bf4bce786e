#include "tests/support/catch.h"

#include "core/tally/placement.h"
#include "tests/support/glpk_oracle.h"
#include "tests/support/placement_search.h"
#include "tests/support/random_history.h"
#include "tests/support/shipped_sets.h"

#include <algorithm>

using namespace peelpack;
using catalogue::Category;
using catalogue::categoryAt;
using tally::Item;

namespace {

constexpr bool first = true;
constexpr bool second = false;

class History {
public:
    History& add(int count, bool isFirst, std::initializer_list<Category> categories)
    {
        for (int i = 0; i < count; ++i) {
            Item item;
            item.operation = m_operation++;
            item.logged = *categories.begin();
            for (const Category category : categories) {
                (isFirst && !isApart(category) ? item.asFirst : item.asSecond).add(category);
            }
            m_items.push_back(item);
        }
        return *this;
    }
    History& sameOperation()
    {
        m_items.back().operation = m_items[m_items.size() - 2].operation;
        return *this;
    }
    [[nodiscard]] const std::vector<Item>& items() const { return m_items; }
    [[nodiscard]] std::vector<Item> asLogged() const
    {
        std::vector<Item> out;
        for (const Item& item : m_items) {
            out.push_back(item.asLogged());
        }
        return out;
    }

private:
    std::vector<Item> m_items;
    std::uint32_t m_operation = 0;
};

void requireCount(const std::string& set, const std::vector<Item>& items, int counted, int firstScrub)
{
    const requirement::RequirementSet rules = support::shippedSet(set);
    const tally::Placement placement = tally::Placer(rules).best(items);
    CAPTURE(set);
    CHECK(placement.value.counted == counted);
    CHECK(placement.value.firstScrub == firstScrub);
    CHECK(support::isValidPlacement(rules, items, support::pairsOf(placement.seats)));
}

History specialtiesFirst(std::initializer_list<int> counts)
{
    History history;
    std::size_t category = 1;
    for (const int count : counts) {
        history.add(count, first, {categoryAt(category++)});
    }
    return history;
}

std::uint32_t needed(const std::vector<tally::Need>& needs, Category category, sheet::Role role)
{
    const auto found = std::find_if(needs.begin(), needs.end(), [&](const tally::Need& need) {
        return need.category == category && need.role == role;
    });
    REQUIRE(found != needs.end());
    return found->needed;
}

} // namespace

// The worked values of the counting rules. The counting examples published with the revised 6th edition's Surgical
// Rotation Case Requirements (Core Curriculum for Surgical Technology), as restated by Berkeley College (supplement
// 2023-24), Harper College and Mohave Community College, are named at their checks; the others follow from the text of
// the rule.

TEST_CASE("A full history meets the four-times-ten rule and lacks a fifth specialty under the other", "[placement]")
{
    History history;
    history.add(20, first, {Category::General}).add(10, second, {Category::General});
    for (std::size_t i = 1; i <= 4; ++i) {
        history.add(15, first, {categoryAt(i)});
    }
    history.add(30, second, {Category::Orthopedics});
    requireCount("spread10", history.items(), 120, 80);
    requireCount("cap15", history.items(), 119, 79);
    requireCount("cap15-four", history.items(), 120, 80);
}

TEST_CASE("Surplus first scrubs fill the second-scrub targets", "[placement]")
{
    History history = specialtiesFirst({10, 10, 10, 60});
    history.add(30, first, {Category::General});
    requireCount("spread10", history.items(), 120, 80);
}

TEST_CASE("Reserved seats are not for surplus of another specialty", "[placement]")
{
    requireCount("spread10", specialtiesFirst({10, 10, 10, 9, 21}).items(), 60, 60);
    requireCount("spread10", specialtiesFirst({11, 11, 11, 9, 9, 9}).items(), 60, 59);
    requireCount("cap15", specialtiesFirst({20, 10, 10, 10, 10}).items(), 60, 55);
}

TEST_CASE("General cases fill their two targets only", "[placement]")
{
    History history;
    history.add(19, first, {Category::General}).add(25, second, {Category::General});
    requireCount("cap15", history.items(), 29, 19);
    requireCount("spread10", history.items(), 29, 19);
}

TEST_CASE("Scopes and deliveries are limited and may fill either second-scrub target", "[placement]")
{
    History history = specialtiesFirst({15, 15, 15, 15});
    history.add(12, first, {Category::DiagnosticEndoscopy}).add(6, first, {Category::LaborDelivery});
    history.add(15, second, {Category::Eye});
    requireCount("spread10", history.items(), 90, 60);
    requireCount("cap15", history.items(), 90, 59);
}

// Published counting example: two procedures of two specialties on one patient, as in trauma (splenectomy, and repair
// of a Le Fort I fracture), are two cases.
TEST_CASE("Two specialties in one operation are two cases", "[placement]")
{
    History history;
    history.add(1, first, {Category::General}).add(1, first, {Category::OralMaxillofacial}).sameOperation();
    for (const char* set : {"cap15", "spread10", "cap15-four", "spread10-140"}) {
        requireCount(set, history.items(), 2, 2);
    }
}

// Published counting example: mastectomy, then reconstruction with a flap in the same operation, are two cases.
TEST_CASE("Mastectomy with immediate flap reconstruction is two cases", "[placement]")
{
    History history;
    history.add(1, first, {Category::General});
    history.add(1, first, {Category::PlasticReconstructive, Category::General}).sameOperation();
    requireCount("spread10", history.items(), 2, 2);
}

// Common practice, no source: two procedures of one specialty in one operation are one case.
TEST_CASE("One category counts once in an operation", "[placement]")
{
    History history;
    history.add(1, first, {Category::Orthopedics, Category::Neurosurgery});
    history.add(1, first, {Category::Orthopedics}).sameOperation();
    requireCount("spread10", history.items(), 2, 2);
    requireCount("spread10", history.asLogged(), 1, 1);
}

TEST_CASE("What to ask for next", "[placement][needs]")
{
    const requirement::RequirementSet cap15 = support::shippedSet("cap15");
    History full;
    full.add(20, first, {Category::General}).add(10, second, {Category::General});
    for (std::size_t i = 1; i <= 4; ++i) {
        full.add(15, first, {categoryAt(i)});
    }
    full.add(30, second, {Category::Orthopedics});
    tally::Placer placer(cap15);
    const tally::Placement placement = placer.best(full.items());
    const std::vector<tally::Need> needs = placer.needs(full.items(), placement);
    CHECK(needed(needs, categoryAt(5), sheet::Role::First) == 1); // the fifth specialty
    CHECK(needed(needs, categoryAt(1), sheet::Role::First) == 0); // capped, and all else is full
    CHECK(needed(needs, Category::General, sheet::Role::Second) == 0);
    CHECK(needs.front().needed == 1);
    CHECK(needs.front().role == sheet::Role::First);
}

TEST_CASE("A specialty that is far behind needs several more before one counts", "[placement][needs]")
{
    // Three specialties full, all free seats taken, the fourth best at 4, another at 3; second-scrub targets full.
    const requirement::RequirementSet set = support::shippedSet("spread10");
    History history = specialtiesFirst({30, 10, 10, 4, 3});
    history.add(30, second, {Category::Orthopedics});
    tally::Placer placer(set);
    const tally::Placement placement = placer.best(history.items());
    CHECK(placement.value.firstScrub == 54);
    const std::vector<tally::Need> needs = placer.needs(history.items(), placement);
    CHECK(needed(needs, categoryAt(4), sheet::Role::First) == 1);
    CHECK(needed(needs, categoryAt(5), sheet::Role::First) ==
          2); // beside the fourth it has no seat; it must overtake it
    CHECK(needed(needs, categoryAt(1), sheet::Role::First) == 0);
}

TEST_CASE("Needs equal counting again with further cases", "[placement][needs]")
{
    for (std::uint32_t seed = 0; seed < 60; ++seed) {
        support::Dice dice(seed + 9000);
        const std::vector<Item> items = support::randomItems(dice, 90);
        const requirement::RequirementSet set =
            seed % 2 == 0 ? support::shippedSet("spread10") : support::randomSet(dice);
        tally::Placer placer(set);
        const tally::Placement placement = placer.best(items);
        for (const tally::Need& need : placer.needs(items, placement)) {
            const auto countWith = [&](std::uint32_t more) {
                std::vector<Item> longer = items;
                for (std::uint32_t i = 0; i < more; ++i) {
                    Item item;
                    item.operation = 100'000 + i;
                    item.logged = need.category;
                    (need.role == sheet::Role::First ? item.asFirst : item.asSecond).add(need.category);
                    longer.push_back(item);
                }
                return tally::Placer(set).bestValue(longer).counted;
            };
            CAPTURE(seed, std::string(id(need.category)), std::string(sheet::id(need.role)), need.needed);
            if (need.needed == 0) {
                CHECK(countWith(set.required()) == placement.value.counted);
            } else {
                CHECK(countWith(need.needed) > placement.value.counted);
                CHECK(countWith(need.needed - 1) == placement.value.counted);
            }
        }
    }
}

TEST_CASE("The placement is the smallest of the best, found by trying all", "[placement]")
{
    int tried = 0;
    for (std::uint32_t seed = 0; tried < 400; ++seed) {
        support::Dice dice(seed);
        const std::vector<Item> items = support::randomItems(dice, 6);
        const requirement::RequirementSet set =
            seed % 3 == 0 ? support::shippedSet("spread10") : support::randomSet(dice);
        if (items.size() > 6) {
            continue;
        }
        // Small targets make the seats scarce.
        requirement::RequirementSet small = set;
        for (requirement::Target& target : small.targets) {
            target.required = 1 + dice.below(4);
            if (target.cap) {
                target.cap = 1 + dice.below(2);
            }
            if (target.spread) {
                target.spread = requirement::Spread{1, 1 + dice.below(target.cap ? *target.cap : target.required)};
                target.required = std::max(target.required, target.spread->each);
            }
        }
        for (requirement::Limit& limit : small.limits) {
            limit.most = dice.below(3);
        }
        const tally::Placement all = support::placementByTryingAll(small, items);
        const tally::Placement placed = tally::Placer(small).best(items);
        CAPTURE(seed);
        CHECK(placed.value == all.value);
        CHECK(placed.seats == all.seats);
        ++tried;
    }
}

TEST_CASE("Properties of placing", "[placement]")
{
    for (std::uint32_t seed = 0; seed < 150; ++seed) {
        support::Dice dice(seed + 500);
        std::vector<Item> items = support::randomItems(dice, 120);
        const requirement::RequirementSet set =
            seed % 2 == 0 ? support::shippedSet("spread10") : support::randomSet(dice);
        tally::Placer placer(set);
        const tally::Placement best = placer.best(items);
        CAPTURE(seed);
        CHECK(support::isValidPlacement(set, items, support::pairsOf(best.seats)));
        CHECK(support::valueOf(set, items, best.seats) == best.value);

        std::vector<Item> logged;
        for (const Item& item : items) {
            logged.push_back(item.asLogged());
        }
        CHECK(placer.best(logged).value.counted <= best.value.counted);

        if (!items.empty()) { // adding a case never lowers the count
            const Item last = items.back();
            items.pop_back();
            CHECK(placer.bestValue(items).counted <= best.value.counted);
            items.insert(items.begin(), last); // nor does another order change the value
            CHECK(placer.bestValue(items) == best.value);
        }
    }
}

TEST_CASE("No items, no seats", "[placement]")
{
    const requirement::RequirementSet set = support::shippedSet("spread10");
    tally::Placer placer(set);
    const tally::Placement placement = placer.best({});
    CHECK(placement.value.counted == 0);
    CHECK(placement.seats.empty());
    CHECK(placer.needs({}, placement).front().needed == 1);
}
