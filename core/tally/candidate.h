#pragma once

#include "core/requirement/requirement_set.h"
#include "core/role/classifier.h"
#include "core/sheet/sheet_book.h"
#include "core/tally/item.h"

#include <cstdint>
#include <initializer_list>
#include <span>
#include <vector>

namespace peelpack::tally {

/// Which sheets a tally takes (counting rules, section 2).
enum class Level : std::uint8_t { Recorded, Attested, Initialed };

/// "recorded", "attested", "initialed".
std::string_view id(Level level);
std::optional<Level> levelFromId(std::string_view id);

/// Which signatures reach the level `attested`.
class AcceptedStrengths {
public:
    constexpr AcceptedStrengths(std::initializer_list<sheet::Strength> strengths)
    {
        for (const sheet::Strength strength : strengths) {
            m_bits |= 1U << static_cast<unsigned>(strength);
        }
    }
    [[nodiscard]] constexpr bool contains(sheet::Strength strength) const
    {
        return ((m_bits >> static_cast<unsigned>(strength)) & 1U) != 0;
    }

private:
    std::uint32_t m_bits = 0;
};
/// What a program accepts that says nothing else (counting rules, section 2).
inline constexpr AcceptedStrengths usualStrengths{sheet::Strength::OwnPhone, sheet::Strength::Card};
/// For rows that carry only strengths that a policy has accepted already.
inline constexpr AcceptedStrengths everyStrength{sheet::Strength::OwnPhone, sheet::Strength::Card,
                                                 sheet::Strength::CardNew, sheet::Strength::Drawn,
                                                 sheet::Strength::Paper};

/// Why a candidate cannot be placed at all; Countable when it can.
enum class Bar : std::uint8_t { Countable, Observed, Unmarked, Canceled, BelowLevel, ImportNotInitialed };

/// One procedure row of a sheet after joining: what may become a counted case.
struct Candidate {
    const sheet::BookSheet* sheet = nullptr;
    std::uint32_t row = 0;                           ///< number of its first row in the sheet
    std::uint32_t procedure = 0;                     ///< of its first row: SheetBook::procedures
    catalogue::CategoryList categories;              ///< union of the joined rows in row order, the logged one first
    role::Outcome outcome = role::Outcome::Unmarked; ///< of the sheet
    Bar bar = Bar::Countable;
    Item item; ///< empty category sets when barred
};

/// The outcome of a sheet: from its marks, or for a paper log the role written there.
role::Outcome outcomeOf(const sheet::BookSheet& sheet, const requirement::RequirementSet& set);

/// The candidates of one student by date, sheet and row.
std::vector<Candidate> candidatesOf(const sheet::SheetBook& book, const sheet::BookStudent& student,
                                    const requirement::RequirementSet& set, Level level,
                                    const AcceptedStrengths& accepted = usualStrengths);

} // namespace peelpack::tally
