#include "core/tally/flow_network.h"

#include <algorithm>
#include <cassert>
#include <functional>
#include <limits>

namespace peelpack::tally {
namespace {

constexpr FlowNetwork::Cost unreached = std::numeric_limits<FlowNetwork::Cost>::max() / 4;

std::size_t at(std::int32_t index)
{
    return static_cast<std::size_t>(index);
}

} // namespace

void FlowNetwork::clear()
{
    m_to.clear();
    m_cost.clear();
    m_residual.clear();
    m_capacity.clear();
    m_locked.clear();
    m_nodeCount = 2;
    m_prepared = false;
}

FlowNetwork::Node FlowNetwork::addNode()
{
    m_prepared = false;
    return static_cast<Node>(m_nodeCount++);
}

FlowNetwork::Arc FlowNetwork::addArc(Node from, Node to, Amount capacity, Cost cost)
{
    assert(from != sink && (from < to || to == sink));
    m_prepared = false;
    const auto arc = static_cast<Arc>(m_to.size());
    m_to.push_back(to);
    m_to.push_back(from);
    m_cost.push_back(cost);
    m_cost.push_back(-cost);
    m_capacity.push_back(capacity);
    return arc;
}

void FlowNetwork::prepare()
{
    if (!m_prepared) {
        m_prepared = true;
        m_first.assign(m_nodeCount + 1, 0);
        for (std::size_t arc = 0; arc < m_to.size(); ++arc) {
            ++m_first[at(m_to[arc ^ 1U]) + 1];
        }
        for (std::size_t node = 0; node < m_nodeCount; ++node) {
            m_first[node + 1] += m_first[node];
        }
        m_arcs.resize(m_to.size());
        std::vector<std::int32_t> next(m_first.begin(), m_first.end() - 1);
        for (std::size_t arc = 0; arc < m_to.size(); ++arc) {
            m_arcs[at(next[at(m_to[arc ^ 1U])]++)] = static_cast<Arc>(arc);
        }
        m_mark.resize(m_nodeCount);
        m_distance.resize(m_nodeCount);
        m_cameBy.resize(m_nodeCount);
        m_next.resize(m_nodeCount);
    }
    m_residual.resize(m_to.size());
    m_locked.assign(m_capacity.size(), 0);
    for (std::size_t pair = 0; pair < m_capacity.size(); ++pair) {
        m_residual[2 * pair] = m_capacity[pair];
        m_residual[2 * pair + 1] = 0;
    }
}

void FlowNetwork::initialPotentials()
{
    m_potential.assign(m_nodeCount, unreached);
    m_potential[0] = 0;
    for (std::size_t node = 0; node < m_nodeCount; ++node) {
        if (m_potential[node] == unreached || node == at(sink)) {
            continue;
        }
        for (std::int32_t i = m_first[node]; i < m_first[node + 1]; ++i) {
            const Arc arc = m_arcs[at(i)];
            if (m_residual[at(arc)] > 0) {
                Cost& there = m_potential[at(m_to[at(arc)])];
                there = std::min(there, m_potential[node] + m_cost[at(arc)]);
            }
        }
    }
    // Nodes that nothing reaches never will be reached; any potential that keeps their arcs' reduced costs from being
    // negative does.
    m_potential[at(sink)] = m_potential[at(sink)] == unreached ? 0 : m_potential[at(sink)];
    for (std::size_t node = m_nodeCount; node-- > 0;) {
        if (m_potential[node] != unreached) {
            continue;
        }
        Cost least = 0;
        bool any = false;
        for (std::int32_t i = m_first[node]; i < m_first[node + 1]; ++i) {
            const Arc arc = m_arcs[at(i)];
            if (m_residual[at(arc)] > 0) {
                const Cost need = m_potential[at(m_to[at(arc)])] - m_cost[at(arc)];
                least = any ? std::max(least, need) : need;
                any = true;
            }
        }
        m_potential[node] = least;
    }
}

bool FlowNetwork::shortestPaths()
{
    std::fill(m_distance.begin(), m_distance.end(), unreached);
    m_distance[0] = 0;
    m_heap.assign(1, {0, 0});
    while (!m_heap.empty()) {
        std::pop_heap(m_heap.begin(), m_heap.end(), std::greater<>());
        const auto [distance, node] = m_heap.back();
        m_heap.pop_back();
        if (distance > m_distance[at(node)]) {
            continue;
        }
        if (node == sink) {
            break;
        }
        for (std::int32_t i = m_first[at(node)]; i < m_first[at(node) + 1]; ++i) {
            const Arc arc = m_arcs[at(i)];
            if (m_residual[at(arc)] <= 0) {
                continue;
            }
            const Node to = m_to[at(arc)];
            const Cost there = distance + m_cost[at(arc)] + m_potential[at(node)] - m_potential[at(to)];
            if (there < m_distance[at(to)]) {
                m_distance[at(to)] = there;
                m_heap.emplace_back(there, to);
                std::push_heap(m_heap.begin(), m_heap.end(), std::greater<>());
            }
        }
    }
    const Cost toSink = m_distance[at(sink)];
    if (toSink == unreached) {
        return false;
    }
    for (std::size_t node = 0; node < m_nodeCount; ++node) {
        m_potential[node] += std::min(m_distance[node], toSink);
    }
    return true;
}

/// Depth first along arcs of least cost. A node that can send no more stays marked for the pass; so does, wrongly but
/// harmlessly, one whose only ways led back to the path at hand: the next pass sees it again.
FlowNetwork::Amount FlowNetwork::push(Node node, Amount limit)
{
    if (node == sink) {
        return limit;
    }
    m_mark[at(node)] = 1;
    Amount pushed = 0;
    for (std::int32_t& i = m_next[at(node)]; i < m_first[at(node) + 1]; ++i) {
        const Arc arc = m_arcs[at(i)];
        const Node to = m_to[at(arc)];
        if (m_residual[at(arc)] <= 0 || m_mark[at(to)] != 0 || (m_useCost && !tight(arc, node))) {
            continue;
        }
        const Amount got = push(to, std::min(limit - pushed, m_residual[at(arc)]));
        m_residual[at(arc)] -= got;
        m_residual[at(arc) ^ 1U] += got;
        pushed += got;
        if (pushed == limit) {
            m_mark[at(node)] = 0;
            break;
        }
    }
    return pushed;
}

/// All that can be sent at the present potentials.
FlowNetwork::Amount FlowNetwork::pushAll()
{
    Amount sent = 0;
    while (true) {
        std::fill(m_mark.begin(), m_mark.end(), std::uint8_t{0});
        std::copy(m_first.begin(), m_first.end() - 1, m_next.begin());
        const Amount got = push(source, std::numeric_limits<Amount>::max());
        if (got == 0) {
            return sent;
        }
        sent += got;
    }
}

FlowNetwork::Outcome FlowNetwork::run()
{
    prepare();
    m_useCost = true;
    initialPotentials();
    Outcome outcome;
    for (bool first = true; first || shortestPaths(); first = false) {
        const Amount sent = pushAll();
        outcome.flow += sent;
        outcome.cost += sent * (m_potential[at(sink)] - m_potential[at(source)]);
    }
    return outcome;
}

FlowNetwork::Amount FlowNetwork::runFlowOnly()
{
    prepare();
    m_useCost = false;
    return pushAll();
}

/// Breadth first over arcs with room; m_cameBy then leads back from `to`.
bool FlowNetwork::search(Node from, Node to, Arc except, bool tightOnly)
{
    std::fill(m_mark.begin(), m_mark.end(), std::uint8_t{0});
    m_queue.assign(1, from);
    m_mark[at(from)] = 1;
    for (std::size_t head = 0; head < m_queue.size() && m_mark[at(to)] == 0; ++head) {
        const Node node = m_queue[head];
        for (std::int32_t i = m_first[at(node)]; i < m_first[at(node) + 1]; ++i) {
            const Arc step = m_arcs[at(i)];
            const Node next = m_to[at(step)];
            if (m_residual[at(step)] > 0 && m_mark[at(next)] == 0 && step != except &&
                (!tightOnly || tight(step, node))) {
                m_mark[at(next)] = 1;
                m_cameBy[at(next)] = step;
                m_queue.push_back(next);
            }
        }
    }
    return m_mark[at(to)] != 0;
}

void FlowNetwork::moveAlong(Node from, Node to)
{
    for (Node node = to; node != from;) {
        const Arc step = m_cameBy[at(node)];
        --m_residual[at(step)];
        ++m_residual[at(step) ^ 1U];
        node = m_to[at(step) ^ 1U];
    }
}

bool FlowNetwork::tryCycle(Arc arc)
{
    const Node start = m_to[at(arc)];
    const Node goal = m_to[at(arc) ^ 1U];
    if (m_residual[at(arc)] <= 0 || !tight(arc, goal) || !search(start, goal, arc ^ 1, true)) {
        return false;
    }
    moveAlong(start, goal);
    --m_residual[at(arc)];
    ++m_residual[at(arc) ^ 1U];
    return true;
}

bool FlowNetwork::trySend(Node from)
{
    constexpr Arc none = -1;
    if (!search(from, sink, none, false)) {
        return false;
    }
    moveAlong(from, sink);
    return true;
}

const std::vector<std::uint8_t>& FlowNetwork::nodesReachingSink()
{
    std::fill(m_mark.begin(), m_mark.end(), std::uint8_t{0});
    m_queue.assign(1, sink);
    m_mark[at(sink)] = 1;
    for (std::size_t head = 0; head < m_queue.size(); ++head) {
        const Node node = m_queue[head];
        for (std::int32_t i = m_first[at(node)]; i < m_first[at(node) + 1]; ++i) {
            const Arc back = m_arcs[at(i)] ^ 1; // arrives at node
            const Node from = m_to[at(back) ^ 1U];
            if (m_residual[at(back)] > 0 && m_mark[at(from)] == 0) {
                m_mark[at(from)] = 1;
                m_queue.push_back(from);
            }
        }
    }
    return m_mark;
}

} // namespace peelpack::tally
