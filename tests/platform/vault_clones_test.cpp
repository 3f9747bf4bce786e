#include "tests/platform/support/clone_schedule.h"
#include "tests/sync/support/catch.h"

#include <cstdlib>
#include <iostream>

// Attack 14: backups restored, vaults cloned, machines rolled back, in 10,000 random courses of events: no feed is ever
// split silently, and none is split at all where the install mark stays behind. PEELPACK_PART says which part of them.
namespace peelpack::test {
namespace {

constexpr std::uint32_t parts = 4;
constexpr std::size_t steps = 26;
#ifdef PEELPACK_SANITIZE
constexpr std::uint32_t schedulesOfPart = 100;
constexpr std::uint32_t fileSchedulesOfPart = 2;
#else
constexpr std::uint32_t schedulesOfPart = 2500;
constexpr std::uint32_t fileSchedulesOfPart = 12;
#endif

std::uint32_t part()
{
    const char* text = std::getenv("PEELPACK_PART");
    return text == nullptr ? 0 : static_cast<std::uint32_t>(std::atoi(text)); // NOLINT(cert-err34-c): set by the build
}

ScheduleFigures runAll(const MakePlaces& make, std::uint32_t count, bool marksToo)
{
    ScheduleFigures figures;
    for (std::uint32_t i = 0; i < count; ++i) {
        const std::uint32_t seed = i * parts + part() + (marksToo ? 0 : 1'000'000);
        CAPTURE(seed);
        CloneSchedule(make, seed, marksToo).run(steps, figures);
    }
    std::cout << count << " schedules, " << (marksToo ? "mark sometimes copied" : "mark never copied") << ": "
              << figures.writes << " entries, " << figures.restores << " restores and clones, " << figures.exchanges
              << " exchanges, " << figures.barred << " writings refused, " << figures.newFeeds << " new feeds, "
              << figures.splits << " split places in " << figures.schedulesWithSplit << " schedules\n";
    CHECK(figures.writes > count);
    CHECK(figures.restores > count / 2);
    CHECK(figures.barred > 0);
    CHECK(figures.newFeeds > 0);
    return figures;
}

} // namespace

TEST_CASE("Attack 14: where the mark is not copied, no feed is ever split", "[clones][attack]")
{
    CHECK(runAll(modelPlaces, schedulesOfPart / 2, false).splits == 0);
}

TEST_CASE("Attack 14: where the mark is copied, every split is found at the exchange", "[clones][attack]")
{
    CHECK(runAll(modelPlaces, schedulesOfPart / 2, true).schedulesWithSplit > schedulesOfPart / 20);
}

TEST_CASE("Attack 14: the same with vaults in files", "[clones][attack]")
{
    CHECK(runAll(filePlaces, fileSchedulesOfPart, false).splits == 0);
    CHECK(runAll(filePlaces, fileSchedulesOfPart, true).splits > 0);
}

} // namespace peelpack::test
