#pragma once

#include <cstddef>
#include <cstdint>
#include <random>

namespace peelpack::demo {

/// Seeded choices. The standard fixes the engine's numbers; drawing from them directly keeps what is invented the same
/// everywhere.
class Dice {
public:
    explicit Dice(std::uint32_t seed) : m_engine(seed) {}
    std::size_t below(std::size_t below) { return m_engine() % below; }
    bool chance(std::size_t percent) { return this->below(100) < percent; }
    template <class List>
    auto pick(const List& list)
    {
        return list[below(list.size())];
    }

private:
    std::mt19937 m_engine;
};

} // namespace peelpack::demo
