#include "core/tally/placement_model.h"

#include <algorithm>
#include <cassert>
#include <functional>
#include <limits>
#include <numeric>
#include <utility>

namespace peelpack::tally {
namespace {

using catalogue::Category;
using catalogue::categoryAt;
using catalogue::categoryCount;
using catalogue::CategorySet;
using sheet::Role;
using Arc = FlowNetwork::Arc;
using Node = FlowNetwork::Node;

constexpr std::int32_t plenty = std::numeric_limits<std::int32_t>::max() / 2;
// One number holds three: settled items above first-scrub seats above logged categories. At most 8 targets of 10,000.
constexpr FlowNetwork::Cost loggedWorth = 1;
constexpr FlowNetwork::Cost firstScrubWorth = FlowNetwork::Cost{1} << 20U;
constexpr FlowNetwork::Cost settledWorth = FlowNetwork::Cost{1} << 42U;

constexpr Node firstClassNode = 2; // after source and sink

constexpr std::array<Role, 2> countedRoles{Role::First, Role::Second};

std::size_t at(Role role)
{
    return static_cast<std::size_t>(role);
}

} // namespace

void PlacementModel::build(const requirement::RequirementSet& set, std::span<const Item> items)
{
    m_set = &set;
    m_classes.clear();
    m_places.clear();
    m_limit.fill(-1);
    for (const requirement::Limit& limit : set.limits) {
        m_limit[indexOf(limit.category)] = static_cast<std::int32_t>(limit.most);
    }
    findUsable();
    groupItems(items);
    buildNetwork();
    m_branches = std::any_of(m_places.begin(), m_places.end(), [](const Place& place) { return place.contested(); });
    for (std::size_t category = 0; category < categoryCount; ++category) {
        m_branches = m_branches || limitIsShared(category);
    }
}

void PlacementModel::findUsable()
{
    m_usable = {};
    m_spreadTarget = -1;
    for (std::size_t i = 0; i < m_set->targets.size(); ++i) {
        const requirement::Target& target = m_set->targets[i];
        for (const Role role : countedRoles) {
            if (target.accepts(role)) {
                m_usable[at(role)] = m_usable[at(role)] | target.categories;
            }
        }
        if (target.spread) {
            m_spreadTarget = static_cast<std::int32_t>(i);
            m_spreadEach = static_cast<std::int32_t>(target.spread->each);
            m_spreadMost = static_cast<std::int32_t>(target.spread->specialties);
            m_spreadFree = static_cast<std::int32_t>(target.required) - m_spreadEach * m_spreadMost;
        }
    }
}

void PlacementModel::addClass(const Item& item, std::int32_t count)
{
    ItemClass added;
    added.item = item;
    added.count = count;
    added.toCategory.fill(-1);
    added.place.fill(-1);
    m_classes.push_back(added);
}

/// Items that are alike and free of conflicts share a class; each item that could clash with another of its operation
/// has one of its own.
void PlacementModel::groupItems(std::span<const Item> items)
{
    m_classOfItem.assign(items.size(), -1);
    m_reach = {};
    m_order.resize(items.size());
    std::iota(m_order.begin(), m_order.end(), 0U);
    std::stable_sort(m_order.begin(), m_order.end(),
                     [&](std::uint32_t a, std::uint32_t b) { return items[a].operation < items[b].operation; });
    const std::size_t slots = std::bit_ceil(items.size() * 2 + 2);
    m_classIndex.assign(slots, SIZE_MAX);

    const auto usable = [&](const Item& item) {
        Item reduced = item;
        reduced.asFirst = item.asFirst & m_usable[at(Role::First)];
        reduced.asSecond = item.asSecond & m_usable[at(Role::Second)];
        return reduced;
    };
    const auto sharedClass = [&](const Item& item) {
        const std::uint64_t key = item.asFirst.bits() | (std::uint64_t{item.asSecond.bits()} << 16U) |
                                  (static_cast<std::uint64_t>(item.logged) << 32U);
        std::size_t slot = (key * 0x9E3779B97F4A7C15ULL >> 32U) & (slots - 1);
        while (m_classIndex[slot] != SIZE_MAX) {
            const Item& known = m_classes[m_classIndex[slot]].item;
            if (known.asFirst == item.asFirst && known.asSecond == item.asSecond && known.logged == item.logged) {
                return m_classIndex[slot];
            }
            slot = (slot + 1) & (slots - 1);
        }
        m_classIndex[slot] = m_classes.size();
        addClass(item, 0);
        return m_classIndex[slot];
    };

    for (std::size_t first = 0; first < m_order.size();) {
        std::size_t end = first + 1;
        while (end < m_order.size() && items[m_order[end]].operation == items[m_order[first]].operation) {
            ++end;
        }
        CategorySet once;
        CategorySet twice;
        for (std::size_t i = first; i < end; ++i) {
            const CategorySet categories = usable(items[m_order[i]]).categories();
            twice = twice | (once & categories);
            once = once | categories;
        }
        std::array<std::int32_t, categoryCount> placeOf{};
        for (std::size_t category = 0; category < categoryCount; ++category) {
            placeOf[category] = -1;
            if (twice.contains(categoryAt(category))) {
                placeOf[category] = static_cast<std::int32_t>(m_places.size());
                m_places.emplace_back();
                m_places.back().category = category;
            }
        }
        for (std::size_t i = first; i < end; ++i) {
            const Item item = usable(items[m_order[i]]);
            if (item.categories().empty()) {
                continue;
            }
            std::size_t index = m_classes.size();
            if ((item.categories() & twice).empty()) {
                index = sharedClass(item);
            } else {
                addClass(item, 0);
                m_classes.back().place = placeOf;
            }
            for (std::size_t category = 0; category < categoryCount; ++category) {
                if (const std::optional<Role> role = item.roleIn(categoryAt(category))) {
                    ++m_reach[at(*role)][category];
                    if (placeOf[category] >= 0) {
                        m_places[static_cast<std::size_t>(placeOf[category])].entered[at(*role)] = true;
                    }
                }
            }
            ++m_classes[index].count;
            m_classOfItem[m_order[i]] = static_cast<std::int32_t>(index);
        }
        first = end;
    }
}

bool PlacementModel::limitIsShared(std::size_t category) const
{
    return m_limit[category] >= 0 && !isApart(categoryAt(category)) &&
           m_usable[at(Role::First)].contains(categoryAt(category)) &&
           m_usable[at(Role::Second)].contains(categoryAt(category));
}

void PlacementModel::buildNetwork()
{
    m_network.clear();
    for (std::size_t i = 0; i < m_classes.size(); ++i) {
        m_network.addNode();
        m_classes[i].supply =
            m_network.addArc(FlowNetwork::source, firstClassNode + static_cast<Node>(i), m_classes[i].count, 0);
    }
    addPlaceNodes();
    addCategoryNodes();
    connectClasses();
    for (std::size_t target = 0; target < m_set->targets.size(); ++target) {
        m_settledArc[target].fill(-1);
    }
    m_chosenArc.fill(-1);
    m_openArc.fill(-1);
    m_openTotalArc = -1;
    for (std::size_t target = 0; target < m_set->targets.size(); ++target) {
        connectTarget(target);
    }
}

void PlacementModel::addPlaceNodes()
{
    for (Place& place : m_places) {
        place.in = {m_network.addNode(), m_network.addNode()};
        if (place.contested()) {
            const Node poolIn = m_network.addNode();
            place.poolOut = m_network.addNode();
            place.pool = m_network.addArc(poolIn, place.poolOut, 1, 0);
            for (const Role role : countedRoles) {
                place.toPool[at(role)] = m_network.addArc(place.in[at(role)], poolIn, 0, 0);
            }
        }
    }
}

void PlacementModel::addCategoryNodes()
{
    m_poolArc.fill(-1);
    for (const Role role : countedRoles) {
        m_limitArc[at(role)].fill(-1);
        m_poolIn[at(role)].fill(-1);
        m_poolOut[at(role)].fill(-1);
        m_extraArc[at(role)].fill(-1);
        m_categoryNode[at(role)].fill(-1);
        for (std::size_t category = 0; category < categoryCount; ++category) {
            m_toTarget[at(role)][category].fill(-1);
            if (m_usable[at(role)].contains(categoryAt(category))) {
                const Node in = m_network.addNode();
                m_categoryNode[at(role)][category] = in;
                m_extraArc[at(role)][category] = m_network.addArc(FlowNetwork::source, in, 0, 0);
            }
        }
    }
    m_outNode = m_categoryNode;
    for (std::size_t category = 0; category < categoryCount; ++category) {
        if (m_limit[category] < 0) {
            continue;
        }
        const bool shared = limitIsShared(category);
        const Node poolIn = shared ? m_network.addNode() : -1;
        const Node poolOut = shared ? m_network.addNode() : -1;
        if (shared) {
            m_poolArc[category] = m_network.addArc(poolIn, poolOut, 0, 0);
        }
        for (const Role role : countedRoles) {
            const Node in = m_categoryNode[at(role)][category];
            if (in < 0) {
                continue;
            }
            const Node out = m_network.addNode();
            m_outNode[at(role)][category] = out;
            m_limitArc[at(role)][category] = m_network.addArc(in, out, m_limit[category], 0);
            if (shared) {
                m_poolIn[at(role)][category] = m_network.addArc(in, poolIn, 0, 0);
                m_poolOut[at(role)][category] = m_network.addArc(poolOut, out, 0, 0);
            }
        }
    }
}

void PlacementModel::connectClasses()
{
    for (std::size_t i = 0; i < m_classes.size(); ++i) {
        ItemClass& itemClass = m_classes[i];
        const Node from = firstClassNode + static_cast<Node>(i);
        for (std::size_t category = 0; category < categoryCount; ++category) {
            const std::optional<Role> role = itemClass.item.roleIn(categoryAt(category));
            if (!role) {
                continue;
            }
            const FlowNetwork::Cost cost = indexOf(itemClass.item.logged) == category ? -loggedWorth : 0;
            const std::int32_t placeIndex = itemClass.place[category];
            if (placeIndex < 0) {
                itemClass.toCategory[category] =
                    m_network.addArc(from, m_categoryNode[at(*role)][category], plenty, cost);
                continue;
            }
            const Place& place = m_places[static_cast<std::size_t>(placeIndex)];
            itemClass.toCategory[category] = m_network.addArc(from, place.in[at(*role)], 1, cost);
        }
    }
    for (Place& place : m_places) {
        for (const Role role : countedRoles) {
            if (!place.entered[at(role)]) {
                continue;
            }
            const Node onward = m_categoryNode[at(role)][place.category];
            place.apart[at(role)] = m_network.addArc(place.in[at(role)], onward, 1, 0);
            if (place.contested()) {
                place.fromPool[at(role)] = m_network.addArc(place.poolOut, onward, 0, 0);
            }
        }
    }
}

void PlacementModel::connectTarget(std::size_t index)
{
    const requirement::Target& target = m_set->targets[index];
    const FlowNetwork::Cost worth = target.isFirstScrub() ? -firstScrubWorth : 0;
    const bool byCategory = target.cap.has_value() || target.spread.has_value();

    std::array<Node, categoryCount> entry{};
    std::array<Node, categoryCount> exit{};
    if (byCategory) {
        for (std::size_t category = 0; category < categoryCount; ++category) {
            if (target.categories.contains(categoryAt(category))) {
                entry[category] = exit[category] = m_network.addNode();
                if (target.cap) {
                    exit[category] = m_network.addNode();
                    m_network.addArc(entry[category], exit[category], static_cast<std::int32_t>(*target.cap), 0);
                }
            }
        }
    }
    const Node open = target.spread ? m_network.addNode() : -1;
    const Node whole = m_network.addNode();
    for (std::size_t category = 0; category < categoryCount; ++category) {
        if (!target.categories.contains(categoryAt(category))) {
            continue;
        }
        const Node into = byCategory ? entry[category] : whole;
        m_settledArc[index][category] = m_network.addArc(FlowNetwork::source, into, 0, -settledWorth);
        for (const Role role : countedRoles) {
            if (target.accepts(role)) {
                m_toTarget[at(role)][category][index] =
                    m_network.addArc(m_outNode[at(role)][category], into, plenty, 0);
            }
        }
        if (byCategory) {
            m_network.addArc(exit[category], whole, plenty, 0);
        }
        if (target.spread) {
            m_openArc[category] = m_network.addArc(exit[category], open, 0, 0);
            m_chosenArc[category] = m_network.addArc(exit[category], FlowNetwork::sink, 0, worth);
        }
    }
    if (target.spread) {
        m_openTotalArc = m_network.addArc(open, FlowNetwork::sink, 0, worth);
        m_network.addArc(whole, FlowNetwork::sink, m_spreadFree, worth);
    } else {
        m_network.addArc(whole, FlowNetwork::sink, static_cast<std::int32_t>(target.required), worth);
    }
}

Settled PlacementModel::freshSettled() const
{
    Settled settled;
    settled.left.reserve(m_classes.size());
    for (const ItemClass& itemClass : m_classes) {
        settled.left.push_back(itemClass.count);
    }
    settled.placeTaken.assign(m_places.size(), 0);
    return settled;
}

Choices PlacementModel::freshChoices() const
{
    Choices choices;
    choices.places.resize(m_places.size());
    for (std::size_t category = 0; category < categoryCount; ++category) {
        choices.limits[category].mostFirst = choices.limits[category].mostSecond = std::max(m_limit[category], 0);
    }
    choices.openSeats = m_spreadTarget >= 0 && !spreadNeedsChoice() ? m_spreadMost : 0;
    return choices;
}

void PlacementModel::applyCapacities(FlowNetwork& network, const Choices& choices, const Settled& settled,
                                     const Extra& extra) const
{
    for (std::size_t i = 0; i < m_classes.size(); ++i) {
        network.setCapacity(m_classes[i].supply, settled.left[i]);
    }
    applyPlaces(network, choices, settled);
    for (std::size_t category = 0; category < categoryCount; ++category) {
        for (const Role role : countedRoles) {
            if (const Arc arc = m_extraArc[at(role)][category]; arc >= 0) {
                const bool here = extra.role == role && indexOf(extra.category) == category;
                network.setCapacity(arc, here ? extra.count : 0);
            }
        }
    }
    applyLimits(network, choices, settled, extra);
    for (std::size_t target = 0; target < m_set->targets.size(); ++target) {
        for (std::size_t category = 0; category < categoryCount; ++category) {
            if (const Arc arc = m_settledArc[target][category]; arc >= 0) {
                network.setCapacity(arc, settled.seats[target][category]);
            }
        }
    }
    if (m_spreadTarget >= 0) {
        for (std::size_t category = 0; category < categoryCount; ++category) {
            if (m_openArc[category] >= 0) {
                const bool chosen = choices.specialties.contains(categoryAt(category));
                network.setCapacity(m_chosenArc[category], chosen ? m_spreadEach : 0);
                network.setCapacity(m_openArc[category], !chosen && choices.openSeats > 0 ? m_spreadEach : 0);
            }
        }
        network.setCapacity(m_openTotalArc, choices.openSeats);
    }
}

void PlacementModel::applyPlaces(FlowNetwork& network, const Choices& choices, const Settled& settled) const
{
    for (std::size_t i = 0; i < m_places.size(); ++i) {
        const Place& place = m_places[i];
        const Choices::PlaceChoice& choice = choices.places[i];
        const std::int32_t room = settled.placeTaken[i] != 0 ? 0 : 1;
        const bool pooled = place.contested() && choice.owner == Choices::Owner::Anyone && isPooled(choice.relaxation);
        for (const Role role : countedRoles) {
            if (!place.entered[at(role)]) {
                continue;
            }
            const Choices::Owner other = role == Role::First ? Choices::Owner::SecondOnly : Choices::Owner::FirstOnly;
            network.setCapacity(place.apart[at(role)], pooled || choice.owner == other ? 0 : room);
            if (place.contested()) {
                network.setCapacity(place.toPool[at(role)], pooled ? room : 0);
                network.setCapacity(place.fromPool[at(role)], pooled ? room : 0);
            }
        }
        if (place.contested()) {
            network.setCapacity(place.pool, pooled ? room : 0);
        }
    }
}

void PlacementModel::applyLimits(FlowNetwork& network, const Choices& choices, const Settled& settled,
                                 const Extra& extra) const
{
    for (std::size_t category = 0; category < categoryCount; ++category) {
        const Choices::LimitChoice& choice = choices.limits[category];
        const bool pooled = m_poolArc[category] >= 0 && isPooled(choice.relaxation);
        if (m_poolArc[category] >= 0) {
            network.setCapacity(m_poolArc[category],
                                pooled ? std::max(0, m_limit[category] - settled.inCategory(category)) : 0);
        }
        for (const Role role : countedRoles) {
            const Arc arc = m_limitArc[at(role)][category];
            if (arc < 0) {
                continue;
            }
            const std::int32_t share = role == Role::First ? choice.mostFirst : choice.mostSecond;
            const std::int32_t most =
                std::max(0, std::min(share, m_limit[category] - settled.byRole[1 - at(role)][category]) -
                                settled.byRole[at(role)][category]);
            network.setCapacity(arc, pooled ? 0 : most);
            if (m_poolArc[category] >= 0) {
                const bool more = extra.role == role && indexOf(extra.category) == category;
                const std::int32_t reach = m_reach[at(role)][category] + (more ? extra.count : 0);
                network.setCapacity(m_poolIn[at(role)][category], pooled ? most : 0);
                network.setCapacity(m_poolOut[at(role)][category], pooled ? std::min(most, reach) : 0);
            }
        }
    }
}

bool PlacementModel::limitsFit(const Choices& choices, const Settled& settled) const
{
    for (std::size_t category = 0; category < categoryCount; ++category) {
        if (m_limit[category] >= 0 &&
            (settled.byRole[at(Role::First)][category] > choices.limits[category].mostFirst ||
             settled.byRole[at(Role::Second)][category] > choices.limits[category].mostSecond ||
             settled.inCategory(category) > m_limit[category])) {
            return false;
        }
    }
    return true;
}

PlacementModel::Solution PlacementModel::solve(FlowNetwork& network, const Choices& choices,
                                               const Settled& settled) const
{
    Solution solution;
    if (!limitsFit(choices, settled)) {
        return solution;
    }
    applyCapacities(network, choices, settled, {});
    const FlowNetwork::Outcome outcome = network.run();
    FlowNetwork::Cost worth = -outcome.cost;
    solution.feasible = worth / settledWorth == settled.total;
    worth %= settledWorth;
    solution.value.counted = outcome.flow;
    solution.value.firstScrub = static_cast<std::int32_t>(worth / firstScrubWorth);
    solution.value.underLogged = static_cast<std::int32_t>(worth % firstScrubWorth);
    return solution;
}

std::int32_t PlacementModel::mostCounted(FlowNetwork& network, const Choices& choices, const Extra& extra) const
{
    applyCapacities(network, choices, freshSettled(), extra);
    return network.runFlowOnly();
}

std::vector<PlacementModel::SpreadChoice> PlacementModel::spreadChoices() const
{
    std::vector<SpreadChoice> choices;
    if (m_spreadTarget < 0) {
        return choices;
    }
    const requirement::Target& target = m_set->targets[static_cast<std::size_t>(m_spreadTarget)];
    std::vector<Category> specialties;
    for (std::size_t category = 0; category < categoryCount; ++category) {
        if (target.categories.contains(categoryAt(category))) {
            specialties.push_back(categoryAt(category));
        }
    }
    const auto packed = [&](CategorySet set) {
        std::size_t bits = 0;
        for (std::size_t i = 0; i < specialties.size(); ++i) {
            bits |= set.contains(specialties[i]) ? std::size_t{1} << i : 0;
        }
        return bits;
    };
    // inside[X]: items that can sit in no specialty but those of X; by summing over subsets.
    const std::size_t subsets = std::size_t{1} << specialties.size();
    std::vector<std::int32_t> inside(subsets, 0);
    std::int32_t total = 0;
    const auto add = [&](CategorySet set, std::int32_t count) {
        if (const std::size_t bits = packed(set); bits != 0) {
            inside[bits] += count;
            total += count;
        }
    };
    std::array<std::int32_t, categoryCount> logged{};
    for (const ItemClass& itemClass : m_classes) {
        const std::optional<Role> role = itemClass.item.roleIn(itemClass.item.logged);
        logged[indexOf(itemClass.item.logged)] += role && target.accepts(*role) ? itemClass.count : 0;
        add((target.acceptsFirst ? itemClass.item.asFirst : CategorySet()) |
                (target.acceptsSecond ? itemClass.item.asSecond : CategorySet()),
            itemClass.count);
    }
    for (std::size_t i = 0; i < specialties.size(); ++i) {
        for (std::size_t set = 0; set < subsets; ++set) {
            inside[set] += (set >> i & 1U) != 0 ? inside[set ^ (std::size_t{1} << i)] : 0;
        }
    }
    std::vector<std::uint8_t> sizeOf(subsets, 0);
    for (std::size_t set = 1; set < subsets; ++set) {
        sizeOf[set] = static_cast<std::uint8_t>(sizeOf[set >> 1U] + (set & 1U));
    }
    const std::size_t size = std::min<std::size_t>(specialties.size(), static_cast<std::size_t>(m_spreadMost));
    for (std::size_t set = 0; set < subsets; ++set) {
        if (sizeOf[set] != size) {
            continue;
        }
        SpreadChoice choice;
        choice.reservedSeats = std::numeric_limits<std::int32_t>::max();
        choice.ceiling.fill(choice.reservedSeats);
        for (std::size_t i = 0; i < specialties.size(); ++i) {
            if ((set >> i & 1U) != 0) {
                choice.specialties.add(specialties[i]);
                choice.underLogged += std::min(m_spreadEach, logged[indexOf(specialties[i])]);
            }
        }
        // Hall: each subset of the choice offers its seats, the rest is bounded by the items that touch it.
        for (std::size_t full = set;; full = (full - 1) & set) {
            const std::int32_t touching = total - inside[(subsets - 1) ^ (set ^ full)];
            const std::int32_t bound = m_spreadEach * sizeOf[full] + touching;
            choice.reservedSeats = std::min(choice.reservedSeats, bound);
            for (std::size_t i = 0; i < specialties.size(); ++i) {
                if (((set ^ full) >> i & 1U) == 0) {
                    std::int32_t& ceiling = choice.ceiling[indexOf(specialties[i])];
                    ceiling = std::min(ceiling, bound);
                }
            }
            if (full == 0) {
                break;
            }
        }
        choices.push_back(choice);
    }
    std::stable_sort(choices.begin(), choices.end(), [](const SpreadChoice& a, const SpreadChoice& b) {
        return std::pair(a.reservedSeats, a.underLogged) > std::pair(b.reservedSeats, b.underLogged);
    });
    return choices;
}

bool PlacementModel::spreadHolds(const std::array<std::int32_t, categoryCount>& inSpread, CategorySet specialties) const
{
    std::int32_t free = 0;
    for (std::size_t category = 0; category < categoryCount; ++category) {
        const bool chosen = specialties.contains(categoryAt(category));
        free += std::max(0, inSpread[category] - (chosen ? m_spreadEach : 0));
    }
    return free <= m_spreadFree;
}

bool PlacementModel::spreadHolds(const std::array<std::int32_t, categoryCount>& inSpread) const
{
    std::array<std::int32_t, categoryCount> reserved{};
    std::int32_t total = 0;
    for (std::size_t category = 0; category < categoryCount; ++category) {
        reserved[category] = std::min(inSpread[category], m_spreadEach);
        total += inSpread[category];
    }
    std::sort(reserved.begin(), reserved.end(), std::greater<>());
    for (std::size_t i = 0; i < reserved.size() && static_cast<std::int32_t>(i) < m_spreadMost; ++i) {
        total -= reserved[i];
    }
    return total <= m_spreadFree;
}

std::int32_t PlacementModel::casesIn(const FlowNetwork& network, Role role, std::size_t category,
                                     const Settled& settled) const
{
    std::int32_t cases = settled.byRole[at(role)][category];
    for (const Arc arc : {m_limitArc[at(role)][category], m_poolIn[at(role)][category]}) {
        cases += arc >= 0 ? network.flow(arc) : 0;
    }
    return cases;
}

bool PlacementModel::placeIsBroken(const FlowNetwork& network, const Choices& choices, std::size_t index) const
{
    const Place& place = m_places[index];
    if (!place.contested() || choices.places[index].owner != Choices::Owner::Anyone) {
        return false;
    }
    if (isPooled(choices.places[index].relaxation)) {
        return network.flow(place.toPool[at(Role::First)]) != network.flow(place.fromPool[at(Role::First)]);
    }
    return network.flow(place.apart[at(Role::First)]) + network.flow(place.apart[at(Role::Second)]) > 1;
}

bool PlacementModel::limitIsBroken(const FlowNetwork& network, const Choices& choices, std::size_t category,
                                   const Settled& settled) const
{
    if (m_poolArc[category] < 0) {
        return false;
    }
    if (isPooled(choices.limits[category].relaxation)) {
        return network.flow(m_poolIn[at(Role::First)][category]) != network.flow(m_poolOut[at(Role::First)][category]);
    }
    return casesIn(network, Role::First, category, settled) + casesIn(network, Role::Second, category, settled) >
           m_limit[category];
}

bool PlacementModel::isValid(const FlowNetwork& network, const Choices& choices, const Settled& settled) const
{
    for (std::size_t place = 0; place < m_places.size(); ++place) {
        if (placeIsBroken(network, choices, place)) {
            return false;
        }
    }
    for (std::size_t category = 0; category < categoryCount; ++category) {
        if (limitIsBroken(network, choices, category, settled)) {
            return false;
        }
    }
    return true;
}

/// First every broken rule is relaxed in the other way, all at once; what stays broken is split, one at a time.
PlacementModel::Step PlacementModel::nextStep(const FlowNetwork& network, const Choices& choices,
                                              const Settled& settled) const
{
    using Relaxation = Choices::Relaxation;
    Step step;
    if (!m_branches) {
        return step;
    }
    step.first = choices;
    std::size_t brokenPlace = m_places.size();
    std::size_t brokenLimit = categoryCount;
    for (std::size_t place = 0; place < m_places.size(); ++place) {
        if (!placeIsBroken(network, choices, place)) {
            continue;
        }
        if (choices.places[place].relaxation == Relaxation::PooledFirst) {
            step.first.places[place].relaxation = Relaxation::ApartAgain;
            step.kind = Step::Kind::Relax;
        } else {
            brokenPlace = std::min(brokenPlace, place);
        }
    }
    for (std::size_t category = 0; category < categoryCount; ++category) {
        if (!limitIsBroken(network, choices, category, settled)) {
            continue;
        }
        Relaxation& relaxation = step.first.limits[category].relaxation;
        if (relaxation == Relaxation::Apart || relaxation == Relaxation::Pooled) {
            // A split must exclude the solution at hand, which only one of a limit relaxed apart is sure to do.
            relaxation = relaxation == Relaxation::Apart ? Relaxation::Pooled : Relaxation::ApartAgain;
            step.kind = Step::Kind::Relax;
        } else {
            brokenLimit = std::min(brokenLimit, category);
        }
    }
    if (step.kind == Step::Kind::Relax) {
        return step;
    }
    if (brokenPlace < m_places.size()) {
        return splitPlace(choices, brokenPlace);
    }
    return brokenLimit < categoryCount ? splitLimit(network, choices, brokenLimit, settled) : step;
}

/// Gives the place to the one role or to the other.
PlacementModel::Step PlacementModel::splitPlace(const Choices& choices, std::size_t place) const
{
    Step step{Step::Kind::Branch, choices, choices};
    step.first.places[place].owner = Choices::Owner::FirstOnly;
    step.second.places[place].owner = Choices::Owner::SecondOnly;
    return step;
}

/// Splits the limit at a point between what each role uses: either first scrubs stay below it or second scrubs do.
PlacementModel::Step PlacementModel::splitLimit(const FlowNetwork& network, const Choices& choices,
                                                std::size_t category, const Settled& settled) const
{
    const std::int32_t first = casesIn(network, Role::First, category, settled);
    const std::int32_t second = casesIn(network, Role::Second, category, settled);
    const std::int32_t limit = m_limit[category];
    const std::int32_t split = std::clamp(first * limit / (first + second), limit - second, first - 1);
    Step step{Step::Kind::Branch, choices, choices};
    Choices::LimitChoice& below = step.first.limits[category];
    Choices::LimitChoice& above = step.second.limits[category];
    below.mostFirst = std::min(below.mostFirst, split);
    above.mostSecond = std::min(above.mostSecond, limit - split - 1);
    below.relaxation = above.relaxation = Choices::Relaxation::Apart;
    return step;
}

bool PlacementModel::reachesSink(const std::vector<std::uint8_t>& nodes, Role role, std::size_t category) const
{
    const Node node = m_categoryNode[at(role)][category];
    return node >= 0 && nodes[static_cast<std::size_t>(node)] != 0;
}

} // namespace peelpack::tally
