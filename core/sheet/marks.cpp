#include "core/sheet/marks.h"

namespace peelpack::sheet {
namespace {

struct SkillName {
    std::string_view column;
    std::string_view label;
};

constexpr std::array<SkillName, skillCount> skillNames{{
    {"verify", "Checked supplies and equipment"},
    {"setup", "Set up the sterile field"},
    {"counts", "Counts, initial and closing"},
    {"pass", "Passed instruments and supplies"},
    {"technique", "Kept sterile technique"},
    {"sponge", "Sponged the wound"},
    {"suction", "Suctioned"},
    {"cut", "Cut suture"},
    {"retract", "Held retractors"},
    {"camera", "Handled the camera"},
}};

struct MarkName {
    std::string_view cell;
    std::string_view words;
};

constexpr std::array<MarkName, 4> markNames{{{"", "not marked"}, {"Y", "Yes"}, {"N", "No"}, {"NA", "N/A"}}};

} // namespace

std::string_view column(Skill skill)
{
    return skillNames[static_cast<std::size_t>(skill)].column;
}

std::string_view label(Skill skill)
{
    return skillNames[static_cast<std::size_t>(skill)].label;
}

std::optional<Skill> skillFromColumn(std::string_view column)
{
    for (const Skill skill : allSkills) {
        if (skillNames[static_cast<std::size_t>(skill)].column == column) {
            return skill;
        }
    }
    return std::nullopt;
}

std::string_view cell(Mark mark)
{
    return markNames[static_cast<std::size_t>(mark)].cell;
}

std::string_view inWords(Mark mark)
{
    return markNames[static_cast<std::size_t>(mark)].words;
}

std::optional<Mark> markFromCell(std::string_view cell)
{
    for (std::size_t i = 0; i < markNames.size(); ++i) {
        if (markNames[i].cell == cell) {
            return static_cast<Mark>(i);
        }
    }
    return std::nullopt;
}

} // namespace peelpack::sheet
