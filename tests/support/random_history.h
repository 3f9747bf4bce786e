#pragma once

#include "core/requirement/requirement_set.h"
#include "core/tally/item.h"

#include <cstdint>
#include <random>
#include <string>
#include <vector>

namespace peelpack::support {

/// Seeded, so that a failure can be seen again; the standard fixes the engine's numbers and this draws from it
/// directly, so that they are the same everywhere.
class Dice {
public:
    explicit Dice(std::uint32_t seed) : m_engine(seed) {}
    /// 0 to below - 1.
    std::uint32_t below(std::uint32_t below) { return static_cast<std::uint32_t>(m_engine() % below); }
    bool chance(std::uint32_t percent) { return this->below(100) < percent; }

private:
    std::mt19937 m_engine;
};

/// Up to `mostSheets` sheets: many two-specialty procedures, several procedures in a sheet, sheets joined to one
/// operation with other roles, joined rows, the categories apart, assisting. By operation; not more than that is in
/// order.
std::vector<tally::Item> randomItems(Dice& dice, std::uint32_t mostSheets);

/// A case-sheet file of several students, and what each of them must come to as items, made alongside and not from the
/// file: observations, unmarked and canceled sheets, joined rows, sheets joined to one operation, the categories apart.
struct RandomFile {
    std::string csv;
    std::vector<std::string> students;           ///< in the order of their names
    std::vector<std::vector<tally::Item>> items; ///< by student; those that can count nowhere are left out
};
RandomFile randomFile(Dice& dice, std::uint32_t mostSheets);

/// A valid set with up to eight targets, caps, a spread and limits, as odd as the rules allow.
requirement::RequirementSet randomSet(Dice& dice);

} // namespace peelpack::support
