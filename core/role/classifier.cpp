#include "core/role/classifier.h"

#include "core/base/text.h"

#include <array>

namespace peelpack::role {
namespace {

using sheet::Mark;
using sheet::Marks;
using sheet::Skill;

std::vector<std::string> labelsOf(const Marks& marks, bool firstScrub, Mark mark)
{
    std::vector<std::string> labels;
    for (const Skill skill : sheet::allSkills) {
        if (sheet::isFirstScrubSkill(skill) == firstScrub && marks.of(skill) == mark) {
            labels.push_back('"' + std::string(sheet::label(skill)) + '"');
        }
    }
    return labels;
}

bool standsForYes(const Marks& marks, Skill skill, const RoleRules& rules)
{
    const Mark mark = marks.of(skill);
    return mark == Mark::Yes || (mark == Mark::NotApplicable && rules.notApplicableStands.contains(skill));
}

bool anyYes(const Marks& marks, bool firstScrub)
{
    for (const Skill skill : sheet::allSkills) {
        if (sheet::isFirstScrubSkill(skill) == firstScrub && marks.of(skill) == Mark::Yes) {
            return true;
        }
    }
    return false;
}

bool isFirstScrub(const Marks& marks, const RoleRules& rules)
{
    for (const Skill skill : sheet::allSkills) {
        if (sheet::isFirstScrubSkill(skill) && !standsForYes(marks, skill, rules)) {
            return false;
        }
    }
    return anyYes(marks, true);
}

std::string isOrAre(std::size_t count)
{
    return count == 1 ? " is " : " are ";
}

/// "X is No", or what else keeps the sheet from being first scrub. Only for a complete sheet that is not first scrub.
std::string whyNotFirst(const Marks& marks, const RoleRules& rules)
{
    const std::vector<std::string> no = labelsOf(marks, true, Mark::No);
    if (!no.empty()) {
        return base::listed(no, "and") + isOrAre(no.size()) + "No";
    }
    if (!anyYes(marks, true)) {
        return "no first-scrub skill is Yes";
    }
    std::vector<std::string> notEnough;
    for (const Skill skill : sheet::allSkills) {
        if (sheet::isFirstScrubSkill(skill) && !standsForYes(marks, skill, rules)) {
            notEnough.push_back('"' + std::string(sheet::label(skill)) + '"');
        }
    }
    return base::listed(notEnough, "and") + isOrAre(notEnough.size()) +
           "N/A, which the requirements in force do not let stand for Yes";
}

} // namespace

Outcome classify(const Marks& marks, bool canceled, const RoleRules& rules)
{
    if (canceled) {
        return Outcome::Canceled;
    }
    if (!marks.complete()) {
        return Outcome::Unmarked;
    }
    if (isFirstScrub(marks, rules)) {
        return Outcome::First;
    }
    return anyYes(marks, false) ? Outcome::Second : Outcome::Observed;
}

Outcome classify(sheet::Role written, bool canceled)
{
    if (canceled) {
        return Outcome::Canceled;
    }
    switch (written) {
    case sheet::Role::First:
        return Outcome::First;
    case sheet::Role::Second:
        return Outcome::Second;
    case sheet::Role::Observed:
        break;
    }
    return Outcome::Observed;
}

std::optional<sheet::Role> roleOf(Outcome outcome)
{
    switch (outcome) {
    case Outcome::First:
        return sheet::Role::First;
    case Outcome::Second:
        return sheet::Role::Second;
    case Outcome::Observed:
        return sheet::Role::Observed;
    case Outcome::Unmarked:
    case Outcome::Canceled:
        break;
    }
    return std::nullopt;
}

std::string_view id(Outcome outcome)
{
    constexpr std::array<std::string_view, 5> ids{"first", "second", "observed", "unmarked", "canceled"};
    return ids[static_cast<std::size_t>(outcome)];
}

std::string_view label(Outcome outcome)
{
    constexpr std::array<std::string_view, 5> labels{"First scrub", "Second scrub", "Observation", "Not fully marked",
                                                     "Canceled"};
    return labels[static_cast<std::size_t>(outcome)];
}

std::string reason(const Marks& marks, bool canceled, const RoleRules& rules)
{
    switch (classify(marks, canceled, rules)) {
    case Outcome::Canceled:
        return "The case was canceled before incision, so it has no role; the sheet stays, for practice.";
    case Outcome::Unmarked: {
        if (marks.none()) {
            return "No skill is marked yet, so there is no role.";
        }
        std::vector<std::string> missing = labelsOf(marks, true, Mark::Unmarked);
        const std::vector<std::string> second = labelsOf(marks, false, Mark::Unmarked);
        missing.insert(missing.end(), second.begin(), second.end());
        return base::listed(missing, "and") + isOrAre(missing.size()) + "not marked yet, so there is no role.";
    }
    case Outcome::First: {
        const std::vector<std::string> notApplicable = labelsOf(marks, true, Mark::NotApplicable);
        if (notApplicable.empty()) {
            return "All five first-scrub skills are Yes, so it is first scrub; the second-scrub marks do not change "
                   "that.";
        }
        return "Every first-scrub skill is Yes or stands as N/A (" + base::listed(notApplicable, "and") +
               "), so it is first scrub; the second-scrub marks do not change that.";
    }
    case Outcome::Second:
        return "It is not first scrub because " + whyNotFirst(marks, rules) + "; it is second scrub because " +
               base::listed(labelsOf(marks, false, Mark::Yes), "and") +
               isOrAre(labelsOf(marks, false, Mark::Yes).size()) + "Yes.";
    case Outcome::Observed:
        break;
    }
    return "It is an observation, recorded but not counted: " + whyNotFirst(marks, rules) +
           ", and no second-scrub skill is Yes.";
}

std::string reasonOnPaper(bool canceled)
{
    return canceled ? reason(sheet::Marks{}, canceled, {})
                    : "The role was written on a paper log, which carries no marks.";
}

std::vector<Question> questions(const Marks& marks, bool canceled, bool countsOftenNotNeeded)
{
    std::vector<Question> out;
    if (canceled) {
        return out;
    }
    for (const Skill skill : sheet::allSkills) {
        if (!sheet::isFirstScrubSkill(skill) || marks.of(skill) != Mark::NotApplicable) {
            continue;
        }
        if (skill != Skill::Counts) {
            out.push_back(
                {QuestionKind::NotApplicableSkill, skill,
                 '"' + std::string(sheet::label(skill)) + "\" is N/A: was it really not called for on this case?"});
        } else if (!countsOftenNotNeeded) {
            out.push_back({QuestionKind::NotApplicableCounts, skill,
                           "Counts are N/A, and the catalogue does not say that this procedure often needs none: did "
                           "the facility's policy call for none?"});
        }
    }
    return out;
}

} // namespace peelpack::role
