#include "core/base/parallel.h"

#include "tests/support/catch.h"

#include <set>
#include <thread>

using namespace peelpack;

TEST_CASE("Work in parallel is done once for each thing, and all of it before it comes back", "[parallel]")
{
    for (const std::size_t count : {0U, 1U, 2U, 1000U}) {
        for (const std::size_t threads : {0U, 1U, 2U, 5U}) {
            std::vector<int> done(count);
            base::inParallel(count, threads, [&](std::size_t i) { ++done[i]; });
            CHECK(std::count(done.begin(), done.end(), 1) == static_cast<std::ptrdiff_t>(count));
        }
    }
}

TEST_CASE("Few things are not cut into parts", "[parallel]")
{
    CHECK(base::partsFor(0, 4) == 1);
    CHECK(base::partsFor(7, 4) == 1);
    CHECK(base::partsFor(1000, 0) >= 1);
    CHECK(base::partsFor(1'000'000, 1) <= 4);
    CHECK(base::partsFor(1'000'000, 1) <= std::max(1U, std::thread::hardware_concurrency()));
}
