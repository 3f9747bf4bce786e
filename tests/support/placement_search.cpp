#include "tests/support/placement_search.h"

#include "tests/support/glpk_oracle.h"

namespace peelpack::support {
namespace {

class TryAll {
public:
    TryAll(const requirement::RequirementSet& set, std::span<const tally::Item> items)
        : m_set(set), m_items(items), m_seats(items.size())
    {
        m_best.seats.resize(items.size());
        m_best.value = {-1, 0, 0};
    }

    tally::Placement run()
    {
        extend(0);
        return m_best;
    }

private:
    void extend(std::size_t index)
    {
        if (index == m_items.size()) {
            const tally::Value value = valueOf(m_set, m_items, m_seats);
            // Vectors come in order, the smallest first: only a better value replaces what is there.
            if (value > m_best.value && isValidPlacement(m_set, m_items, pairsOf(m_seats))) {
                m_best = {m_seats, value};
            }
            return;
        }
        for (std::size_t target = 0; target < m_set.targets.size(); ++target) {
            for (std::size_t category = 0; category < catalogue::categoryCount; ++category) {
                const auto role = m_items[index].roleIn(catalogue::categoryAt(category));
                if (role && m_set.targets[target].accepts(*role) &&
                    m_set.targets[target].categories.contains(catalogue::categoryAt(category))) {
                    m_seats[index] = {static_cast<std::int8_t>(target), static_cast<std::int8_t>(category)};
                    extend(index + 1);
                }
            }
        }
        m_seats[index] = {};
        extend(index + 1);
    }

    const requirement::RequirementSet& m_set;
    std::span<const tally::Item> m_items;
    std::vector<tally::Seat> m_seats;
    tally::Placement m_best;
};

} // namespace

tally::Placement placementByTryingAll(const requirement::RequirementSet& set, std::span<const tally::Item> items)
{
    return TryAll(set, items).run();
}

std::vector<std::pair<int, int>> pairsOf(const std::vector<tally::Seat>& seats)
{
    std::vector<std::pair<int, int>> pairs;
    pairs.reserve(seats.size());
    for (const tally::Seat& seat : seats) {
        pairs.emplace_back(seat.target, seat.category);
    }
    return pairs;
}

tally::Value valueOf(const requirement::RequirementSet& set, std::span<const tally::Item> items,
                     const std::vector<tally::Seat>& seats)
{
    tally::Value value;
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (seats[i].counts()) {
            ++value.counted;
            value.firstScrub += set.targets[static_cast<std::size_t>(seats[i].target)].isFirstScrub() ? 1 : 0;
            value.underLogged += static_cast<int>(indexOf(items[i].logged)) == seats[i].category ? 1 : 0;
        }
    }
    return value;
}

} // namespace peelpack::support
