#pragma once

#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace peelpack::tally {

/// A flow network with integer capacities and costs, and its exact maximum flow of least cost.
///
/// Successive shortest paths with node potentials (primal-dual). Node 0 is the source, node 1 the sink; the others are
/// numbered in topological order: every arc goes from a lower to a higher node or to the sink. Memory is kept between
/// uses.
class FlowNetwork {
public:
    using Node = std::int32_t;
    using Arc = std::int32_t;
    using Amount = std::int32_t;
    using Cost = std::int64_t;

    static constexpr Node source = 0;
    static constexpr Node sink = 1;

    /// Only source and sink.
    void clear();
    Node addNode();
    /// Returns the arc's number, always even; its reverse is number + 1. Only upward in node order.
    Arc addArc(Node from, Node to, Amount capacity, Cost cost);

    /// Takes effect at the next run().
    void setCapacity(Arc arc, Amount capacity) { m_capacity[static_cast<std::size_t>(arc) / 2] = capacity; }

    struct Outcome {
        Amount flow = 0;
        Cost cost = 0;
    };
    /// Maximum flow of least cost, from nothing.
    Outcome run();
    /// Maximum flow, whatever it costs; quicker. tryCycle() must not be used after it.
    Amount runFlowOnly();

    /// Units on the arc.
    [[nodiscard]] Amount flow(Arc arc) const
    {
        return m_residual[static_cast<std::size_t>(arc) + 1] + m_locked[static_cast<std::size_t>(arc) / 2];
    }
    /// Units on the arc that may still be moved.
    [[nodiscard]] Amount movable(Arc arc) const { return m_residual[static_cast<std::size_t>(arc) + 1]; }
    /// Units that still fit.
    [[nodiscard]] Amount room(Arc arc) const { return m_residual[static_cast<std::size_t>(arc)]; }

    /// Moves one more unit over the arc without changing flow or cost, by re-routing others. False, and nothing
    /// changed, when that is impossible. Only after run().
    bool tryCycle(Arc arc);
    /// Sends one more unit from a node to the sink, re-routing others whatever it costs. False, and nothing changed,
    /// when that is impossible.
    bool trySend(Node from);
    /// Holds one movable unit on the arc for good (until the next run).
    void lock(Arc arc)
    {
        --m_residual[static_cast<std::size_t>(arc) + 1];
        ++m_locked[static_cast<std::size_t>(arc) / 2];
    }
    void unlock(Arc arc)
    {
        ++m_residual[static_cast<std::size_t>(arc) + 1];
        --m_locked[static_cast<std::size_t>(arc) / 2];
    }
    /// Takes away one unit of room for good (until the next run).
    void block(Arc arc) { --m_residual[static_cast<std::size_t>(arc)]; }

    /// For every node, whether one more unit put in there could reach the sink.
    const std::vector<std::uint8_t>& nodesReachingSink();

private:
    bool search(Node from, Node to, Arc except, bool tightOnly);
    void moveAlong(Node from, Node to);
    void prepare();
    void initialPotentials();
    bool shortestPaths();
    Amount push(Node node, Amount limit);
    Amount pushAll();
    [[nodiscard]] bool tight(Arc arc, Node from) const
    {
        return m_cost[static_cast<std::size_t>(arc)] + m_potential[static_cast<std::size_t>(from)] -
                   m_potential[static_cast<std::size_t>(m_to[static_cast<std::size_t>(arc)])] ==
               0;
    }

    std::vector<Node> m_to;            // by arc
    std::vector<Cost> m_cost;          // by arc
    std::vector<Amount> m_residual;    // by arc
    std::vector<Amount> m_capacity;    // by arc pair
    std::vector<Amount> m_locked;      // by arc pair
    std::vector<std::int32_t> m_first; // by node: where its arcs start in m_arcs
    std::vector<std::int32_t> m_next;  // by node: the first of its arcs that this pass has not used up
    std::vector<Arc> m_arcs;
    std::size_t m_nodeCount = 0;
    bool m_prepared = false;
    bool m_useCost = true;

    std::vector<Cost> m_potential;
    std::vector<Cost> m_distance;
    std::vector<std::uint8_t> m_mark;
    std::vector<Node> m_queue;
    std::vector<Arc> m_cameBy;
    std::vector<std::pair<Cost, Node>> m_heap;
};

} // namespace peelpack::tally
