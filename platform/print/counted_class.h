#pragma once

#include "core/catalogue/catalogue.h"
#include "core/tally/tally.h"
#include "platform/session/case_book.h"
#include "platform/session/completion.h"
#include "platform/session/counting_rules.h"

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
    std::optional<session::CompletionDecision> decision; ///< of the director, in force
    std::size_t place = 0;                               ///< in CountedClass::students

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
    session::SetsInForce sets; ///< of the students, in their order
    session::CaseBook cases;
    std::vector<CountedStudent> students; ///< in the order asked for

    [[nodiscard]] const requirement::RequirementSet& setOf(const CountedStudent& student) const
    {
        return sets.of(student.place);
    }
};

/// What is to be counted, as values: the journal is not needed any more, and another thread may count.
struct ClassToCount {
    session::CountingRules rules;
    std::vector<record::StudentRecord> records;
    std::vector<std::optional<session::CompletionDecision>> decisions; ///< by student
};
/// BadValue, NotFound: a set in force is not at hand. The catalogue must outlive it.
base::Result<ClassToCount> classToCount(const session::Session& session, std::vector<record::StudentRecord> records,
                                        const catalogue::Catalogue& catalogue);
base::Result<std::unique_ptr<CountedClass>> countClass(ClassToCount&& input, const catalogue::Catalogue& catalogue);
/// Both at once.
base::Result<std::unique_ptr<CountedClass>> countClass(const session::Session& session,
                                                       const std::vector<keys::Id>& students,
                                                       const catalogue::Catalogue& catalogue);

} // namespace peelpack::print
