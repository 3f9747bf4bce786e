#include "core/tally/placement_model.h"

#include "core/tally/placement_terms.h"

#include <algorithm>
#include <cassert>
#include <functional>
#include <limits>
#include <numeric>
#include <utility>

namespace peelpack::tally {
namespace {

using catalogue::categoryAt;
using catalogue::categoryCount;
using catalogue::CategorySet;
using sheet::Role;
using Arc = FlowNetwork::Arc;
using Node = FlowNetwork::Node;

constexpr std::int32_t plenty = std::numeric_limits<std::int32_t>::max() / 2;
constexpr Node firstClassNode = 2; // after source and sink

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
    m_freshSettled = {};
    for (const ItemClass& itemClass : m_classes) {
        m_freshSettled.left.push_back(itemClass.count);
    }
    m_freshSettled.placeTaken.assign(m_places.size(), 0);
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

} // namespace peelpack::tally
