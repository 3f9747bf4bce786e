#pragma once

#include "core/catalogue/catalogue.h"
#include "core/tally/tally.h"
#include "platform/session/case_book.h"

#include <array>
#include <vector>

namespace peelpack::print {

inline constexpr std::size_t levelCount = 3;

/// One student with their sheets, counted at every level.
struct CountedStudent {
    record::StudentRecord record;
    std::string name;                                    ///< never empty
    std::array<tally::StudentTally, levelCount> tallies; ///< by tally::Level
    record::ShortNames names;
    std::size_t set = 0; ///< of CountedClass::sets

    [[nodiscard]] const tally::StudentTally& at(tally::Level level) const
    {
        return tallies[static_cast<std::size_t>(level)];
    }
    /// Cases that are placed in a target at a level; 0 when nothing counts.
    [[nodiscard]] std::uint32_t placed(tally::Level level, std::size_t target) const;
    [[nodiscard]] std::uint32_t placed(tally::Level level) const;
};

/// Students of a program as papers need them, each counted under the set in force for them today.
struct CountedClass {
    /// Each once, in the order of the first student under it; without students the policy's.
    std::vector<requirement::RequirementSet> sets;
    session::CaseBook cases;
    std::vector<CountedStudent> students; ///< in the order asked for

    [[nodiscard]] const requirement::RequirementSet& setOf(const CountedStudent& student) const
    {
        return sets.at(student.set);
    }
};

/// Counts. The catalogue must outlive it; BadValue, NotFound: a set in force is not at hand.
base::Result<std::unique_ptr<CountedClass>> countClass(const session::Session& session,
                                                       const std::vector<keys::Id>& students,
                                                       const catalogue::Catalogue& catalogue);

} // namespace peelpack::print
