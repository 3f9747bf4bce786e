#pragma once

#include "platform/session/session.h"
#include "platform/vault/memory_vault.h"
#include "tests/platform/support/clone_places.h"

#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <random>
#include <set>
#include <vector>

namespace peelpack::test {

struct ScheduleFigures {
    std::size_t writes = 0;
    std::size_t barred = 0;   ///< writes that were not made
    std::size_t restores = 0; ///< in place or elsewhere
    std::size_t newFeeds = 0;
    std::size_t exchanges = 0;
    std::size_t splits = 0; ///< places in feeds with two different entries that reached the instructor
    std::size_t schedulesWithSplit = 0;
};

using MakePlaces =
    std::function<std::unique_ptr<Places>(std::size_t count, const vault::Change& start, keys::RandomSource& random)>;

/// One random course of events: a student with up to three phones that write, are backed up, restored and cloned, and
/// now and then exchange with an instructor. After every exchange it requires that no feed was split silently.
class CloneSchedule {
public:
    /// With `marksToo`, restores and clones may bring the install mark along.
    CloneSchedule(const MakePlaces& make, std::uint32_t seed, bool marksToo);

    void run(std::size_t steps, ScheduleFigures& figures);

private:
    static constexpr std::size_t phones = 3;

    std::size_t roll(std::size_t sides) { return std::uniform_int_distribution<std::size_t>(0, sides - 1)(m_dice); }
    void openPhone(std::size_t phone);
    void step();
    void write(std::size_t phone);
    void backUp(std::size_t phone);
    void restore();
    void goOnAnew(std::size_t phone);
    void exchange(std::size_t phone);
    void deliver(session::Session& from, session::Session& to, bool toStaff);
    void grantIfNew(const session::Session& phone);
    void noteDelivered(const session::Session& phone);
    void requireNothingSilent(const session::Session& phone);

    bool m_marksToo;
    std::mt19937 m_dice;
    SeededRandom m_random;
    std::int64_t m_minute = 0;
    std::unique_ptr<Places> m_places;
    std::vector<std::unique_ptr<session::Session>> m_phones; ///< null: nothing there yet
    std::unique_ptr<session::Session> m_instructor;
    using Entries = std::map<journal::FeedId, std::map<std::uint32_t, std::set<keys::Hash>>>;
    Entries m_written;
    Entries m_delivered;
    ScheduleFigures m_figures;
};

} // namespace peelpack::test
