#pragma once

#include "core/sheet/marks.h"
#include "core/sheet/role.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace peelpack::role {

/// What follows from the marks: one of the three roles, or none with its cause.
enum class Outcome : std::uint8_t { First, Second, Observed, Unmarked, Canceled };

/// Which first-scrub skills may be N/A and still let a sheet be first scrub. Comes from the requirement set; the
/// default is all five (common practice, no source).
struct RoleRules {
    sheet::SkillSet notApplicableStands = sheet::SkillSet::allFirstScrub();
};

/// The role of a sheet (counting rules, section 1). Total: every one of the 4^10 mark patterns has an outcome.
Outcome classify(const sheet::Marks& marks, bool canceled, const RoleRules& rules);

/// The outcome of a sheet from a paper log, which carries its role instead of marks.
Outcome classify(sheet::Role written, bool canceled);

/// Empty for Unmarked and Canceled.
std::optional<sheet::Role> roleOf(Outcome outcome);
/// "first", "second", "observed", "unmarked", "canceled".
std::string_view id(Outcome outcome);
/// "First scrub", "Second scrub", "Observation", "Not fully marked", "Canceled".
std::string_view label(Outcome outcome);

/// Why classify() answers as it does, in one sentence to the student.
std::string reason(const sheet::Marks& marks, bool canceled, const RoleRules& rules);

/// The same of a sheet from a paper log.
std::string reasonOnPaper(bool canceled);

/// Something an instructor should check before initialing. Never an accusation, never changes the role.
enum class QuestionKind : std::uint8_t {
    NotApplicableSkill,  ///< N/A on a first-scrub skill other than counts
    NotApplicableCounts, ///< N/A on counts where the catalogue does not say that counts are often not needed
};

struct Question {
    QuestionKind kind;
    sheet::Skill skill;
    std::string sentence;
};

/// The questions that the marks alone raise. `countsOftenNotNeeded`: every procedure of the sheet has that flag in the
/// catalogue. A canceled sheet raises none.
std::vector<Question> questions(const sheet::Marks& marks, bool canceled, bool countsOftenNotNeeded);

} // namespace peelpack::role
