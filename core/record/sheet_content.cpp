#include "core/record/sheet_content.h"

#include <algorithm>

namespace peelpack::record {

std::string timeOfDay(MinuteOfDay minute)
{
    if (minute == notSaid) {
        return {};
    }
    const auto twoDigits = [](unsigned value) { return (value < 10 ? "0" : "") + std::to_string(value); };
    return twoDigits(minute / 60U) + ":" + twoDigits(minute % 60U);
}

void ReasonedMarks::set(sheet::Skill skill, sheet::Mark mark, std::string reason)
{
    marks.set(skill, mark);
    if (reasons.empty() && reason.empty()) {
        return;
    }
    auto place = std::lower_bound(reasons.begin(), reasons.end(), skill,
                                  [](const NaReason& one, sheet::Skill wanted) { return one.skill < wanted; });
    if (place != reasons.end() && place->skill == skill) {
        place = reasons.erase(place);
    }
    if (mark == sheet::Mark::NotApplicable && !reason.empty()) {
        reasons.insert(place, NaReason{skill, std::move(reason)});
    }
}

const std::string& ReasonedMarks::reason(sheet::Skill skill) const
{
    static const std::string none;
    const auto found =
        std::find_if(reasons.begin(), reasons.end(), [&](const NaReason& one) { return one.skill == skill; });
    return found == reasons.end() ? none : found->text;
}

void ReasonedMarks::overlay(const ReasonedMarks& other)
{
    for (const sheet::Skill skill : sheet::allSkills) {
        if (const sheet::Mark mark = other.marks.of(skill); mark != sheet::Mark::Unmarked) {
            set(skill, mark, other.reason(skill));
        }
    }
}

} // namespace peelpack::record
