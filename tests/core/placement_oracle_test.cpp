#include "tests/support/catch.h"

#include "core/sheet/sheet_reader.h"
#include "core/tally/tally.h"
#include "platform/files/resources.h"
#include "tests/support/glpk_oracle.h"
#include "tests/support/placement_search.h"
#include "tests/support/random_history.h"
#include "tests/support/shipped_sets.h"

#include <cstdlib>
#include <string>

using namespace peelpack;

namespace {

constexpr std::uint32_t parts = 4;
constexpr std::uint32_t historiesOfPart = 510;
constexpr std::uint32_t filesOfPart = 120;

std::uint32_t part()
{
    const char* text = std::getenv("PEELPACK_PART");
    return text == nullptr ? 0 : static_cast<std::uint32_t>(std::atoi(text)); // NOLINT(cert-err34-c): set by the build
}

void requireEqual(const requirement::RequirementSet& set, const std::vector<tally::Item>& items)
{
    const tally::Value expected = support::bestByIntegerProgram(set, items);
    const tally::Placement placed = tally::Placer(set).best(items);
    CHECK(placed.value.counted == expected.counted);
    CHECK(placed.value.firstScrub == expected.firstScrub);
    CHECK(placed.value.underLogged == expected.underLogged);
    CHECK(support::valueOf(set, items, placed.seats) == expected);
    CHECK(support::isValidPlacement(set, items, support::pairsOf(placed.seats)));
}

} // namespace

// Against the GNU Linear Programming Kit: more than 2,000 random histories of 0 to 250 sheets in four parts, half of
// them under the shipped sets in turn, half under random valid sets; best and as logged.
TEST_CASE("Placement equals the integer program", "[placement][oracle]")
{
    const char* const ids[] = {"cap15", "spread10", "cap15-four", "spread10-140"};
    for (std::uint32_t i = 0; i < historiesOfPart; ++i) {
        const std::uint32_t seed = i * parts + part();
        support::Dice dice(seed + 77'000);
        const std::vector<tally::Item> items = support::randomItems(dice, i % 2 == 0 ? 250 : 120);
        const requirement::RequirementSet set =
            i % 2 == 0 ? support::shippedSet(ids[i / 2 % 4]) : support::randomSet(dice);
        CAPTURE(seed);
        requireEqual(set, items);
        std::vector<tally::Item> logged;
        for (const tally::Item& item : items) {
            logged.push_back(item.asLogged());
        }
        requireEqual(set, logged);
    }
}

// The whole way from a file of several students, with canceled sheets, joined rows and joined sheets.
TEST_CASE("Tallies of a file equal the integer program", "[tally][oracle]")
{
    const catalogue::Catalogue catalogue = files::shippedCatalogue().value();
    const char* const ids[] = {"cap15", "spread10", "cap15-four", "spread10-140"};
    for (std::uint32_t i = 0; i < filesOfPart; ++i) {
        const std::uint32_t seed = i * parts + part();
        support::Dice dice(seed + 5'000);
        const support::RandomFile file = support::randomFile(dice, 200);
        const requirement::RequirementSet set = support::shippedSet(ids[seed % 4]);
        sheet::SheetReader reader(catalogue);
        reader.feed(file.csv);
        const base::Result<sheet::SheetReader::Reading> reading = reader.finish();
        REQUIRE(reading.ok());
        REQUIRE(reading.value().report.refused.empty());
        const sheet::SheetBook& book = reading.value().book;
        tally::Tallier tallier(set, tally::Level::Recorded);
        std::size_t student = 0;
        for (std::size_t known = 0; known < file.students.size(); ++known) {
            CAPTURE(seed, file.students[known]);
            const tally::Value expected = support::bestByIntegerProgram(set, file.items[known]);
            if (student == book.students().size() || book.students()[student].name != file.students[known]) {
                CHECK(file.items[known].empty()); // a student without a sheet is not in the book
                continue;
            }
            const tally::StudentTally tally = tallier.tally(book, book.students()[student++], {true, true, false});
            CHECK(tally.best.value == expected);
            std::vector<tally::Item> logged;
            for (const tally::Item& item : file.items[known]) {
                logged.push_back(item.asLogged());
            }
            CHECK(tally.asLogged.value == support::bestByIntegerProgram(set, logged));
        }
        CHECK(student == book.students().size());
    }
}
