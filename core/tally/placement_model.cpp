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
    for (Place& place : m_places) {
        const Node in = m_network.addNode();
        const Node out = m_network.addNode();
        place.through = m_network.addArc(in, out, 1, 0);
    }
    for (const Role role : countedRoles) {
        m_limitArc[at(role)].fill(-1);
        m_extraArc[at(role)].fill(-1);
        m_categoryNode[at(role)].fill(-1);
        for (std::size_t category = 0; category < categoryCount; ++category) {
            m_toTarget[at(role)][category].fill(-1);
            if (!m_usable[at(role)].contains(categoryAt(category))) {
                continue;
            }
            const Node in = m_network.addNode();
            m_categoryNode[at(role)][category] = in;
            m_extraArc[at(role)][category] = m_network.addArc(FlowNetwork::source, in, 0, 0);
            if (m_limit[category] >= 0) {
                const Node out = m_network.addNode();
                m_limitArc[at(role)][category] = m_network.addArc(in, out, m_limit[category], 0);
            }
        }
    }
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

void PlacementModel::connectClasses()
{
    const Node firstPlace = firstClassNode + static_cast<Node>(m_classes.size());
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
            Place& place = m_places[static_cast<std::size_t>(placeIndex)];
            const Node in = firstPlace + 2 * placeIndex;
            itemClass.toCategory[category] = m_network.addArc(from, in, 1, cost);
            (*role == Role::First ? place.fromFirst : place.fromSecond).push_back(itemClass.toCategory[category]);
            Arc& onward = *role == Role::First ? place.toFirst : place.toSecond;
            if (onward < 0) {
                onward = m_network.addArc(in + 1, m_categoryNode[at(*role)][category], 1, 0);
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
                const Node from = m_categoryNode[at(role)][category] + (m_limitArc[at(role)][category] >= 0 ? 1 : 0);
                m_toTarget[at(role)][category][index] = m_network.addArc(from, into, plenty, 0);
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
    for (std::size_t category = 0; category < categoryCount; ++category) {
        choices.mostFirst[category] = choices.mostSecond[category] = std::max(m_limit[category], 0);
    }
    choices.owner.assign(m_places.size(), Choices::Anyone);
    choices.openSeats = m_spreadTarget >= 0 && !spreadNeedsChoice() ? m_spreadMost : 0;
    return choices;
}

void PlacementModel::applyCapacities(FlowNetwork& network, const Choices& choices, const Settled& settled,
                                     const Extra& extra) const
{
    for (std::size_t i = 0; i < m_classes.size(); ++i) {
        network.setCapacity(m_classes[i].supply, settled.left[i]);
    }
    for (std::size_t i = 0; i < m_places.size(); ++i) {
        const Place& place = m_places[i];
        network.setCapacity(place.through, settled.placeTaken[i] != 0 ? 0 : 1);
        if (place.contested()) {
            const std::int32_t first = choices.owner[i] == Choices::SecondOnly ? 0 : 1;
            const std::int32_t second = choices.owner[i] == Choices::FirstOnly ? 0 : 1;
            network.setCapacity(place.toFirst, first);
            network.setCapacity(place.toSecond, second);
            for (const Arc arc : place.fromFirst) {
                network.setCapacity(arc, first);
            }
            for (const Arc arc : place.fromSecond) {
                network.setCapacity(arc, second);
            }
        }
    }
    for (std::size_t category = 0; category < categoryCount; ++category) {
        for (const Role role : countedRoles) {
            if (const Arc arc = m_limitArc[at(role)][category]; arc >= 0) {
                const std::int32_t share = (role == Role::First ? choices.mostFirst : choices.mostSecond)[category];
                const std::int32_t most = std::min(share, m_limit[category] - settled.byRole[1 - at(role)][category]);
                network.setCapacity(arc, std::max(0, most - settled.byRole[at(role)][category]));
            }
            if (const Arc arc = m_extraArc[at(role)][category]; arc >= 0) {
                const bool here = extra.role == role && indexOf(extra.category) == category;
                network.setCapacity(arc, here ? extra.count : 0);
            }
        }
    }
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

bool PlacementModel::limitsFit(const Choices& choices, const Settled& settled) const
{
    for (std::size_t category = 0; category < categoryCount; ++category) {
        if (m_limit[category] >= 0 && (settled.byRole[at(Role::First)][category] > choices.mostFirst[category] ||
                                       settled.byRole[at(Role::Second)][category] > choices.mostSecond[category] ||
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

std::int32_t PlacementModel::flowIn(const FlowNetwork& network, Role role, std::size_t category,
                                    const Settled& settled) const
{
    const Arc arc = m_limitArc[at(role)][category];
    return settled.byRole[at(role)][category] + (arc >= 0 ? network.flow(arc) : 0);
}

PlacementModel::Branches PlacementModel::branch(const FlowNetwork& network, const Choices& choices,
                                                const Settled& settled) const
{
    Branches out;
    out.valid =
        !m_branches || (!branchOnPlaces(network, choices, out) && !branchOnLimits(network, choices, settled, out));
    return out;
}

/// A place that one role entered and the other left: give it to the one or to the other.
bool PlacementModel::branchOnPlaces(const FlowNetwork& network, const Choices& choices, Branches& out) const
{
    for (std::size_t i = 0; i < m_places.size(); ++i) {
        const Place& place = m_places[i];
        if (!place.contested() || choices.owner[i] != Choices::Anyone) {
            continue;
        }
        std::int32_t enteredFirst = 0;
        for (const Arc arc : place.fromFirst) {
            enteredFirst += network.flow(arc);
        }
        if (enteredFirst != network.flow(place.toFirst)) {
            out.first = choices;
            out.first.owner[i] = Choices::FirstOnly;
            out.second = choices;
            out.second.owner[i] = Choices::SecondOnly;
            return true;
        }
    }
    return false;
}

/// A limit that both roles together break: split it at a point between what each uses.
bool PlacementModel::branchOnLimits(const FlowNetwork& network, const Choices& choices, const Settled& settled,
                                    Branches& out) const
{
    for (std::size_t category = 0; category < categoryCount; ++category) {
        if (!limitIsShared(category)) {
            continue;
        }
        const std::int32_t first = flowIn(network, Role::First, category, settled);
        const std::int32_t second = flowIn(network, Role::Second, category, settled);
        if (first + second <= m_limit[category]) {
            continue;
        }
        const std::int32_t split =
            std::clamp(first * m_limit[category] / (first + second), m_limit[category] - second, first - 1);
        out.first = choices;
        out.first.mostFirst[category] = std::min(choices.mostFirst[category], split);
        out.second = choices;
        out.second.mostSecond[category] = std::min(choices.mostSecond[category], m_limit[category] - split - 1);
        return true;
    }
    return false;
}

Choices PlacementModel::frozen(const FlowNetwork& network, const Choices& choices, const Settled& settled) const
{
    Choices out = choices;
    for (std::size_t i = 0; i < m_places.size(); ++i) {
        const Place& place = m_places[i];
        if (place.contested() && out.owner[i] == Choices::Anyone) {
            out.owner[i] = network.flow(place.toSecond) > 0 ? Choices::SecondOnly : Choices::FirstOnly;
        }
    }
    for (std::size_t category = 0; category < categoryCount; ++category) {
        if (limitIsShared(category)) {
            out.mostFirst[category] = flowIn(network, Role::First, category, settled);
            out.mostSecond[category] = m_limit[category] - out.mostFirst[category];
        }
    }
    return out;
}

bool PlacementModel::reachesSink(const std::vector<std::uint8_t>& nodes, Role role, std::size_t category) const
{
    const Node node = m_categoryNode[at(role)][category];
    return node >= 0 && nodes[static_cast<std::size_t>(node)] != 0;
}

} // namespace peelpack::tally
