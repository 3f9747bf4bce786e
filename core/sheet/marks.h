#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>

namespace peelpack::sheet {

/// The ten skills a preceptor marks, first-scrub skills first (counting rules, section 1).
enum class Skill : std::uint8_t { Verify, Setup, Counts, Pass, Technique, Sponge, Suction, Cut, Retract, Camera };

inline constexpr std::size_t skillCount = 10;
inline constexpr std::array<Skill, skillCount> allSkills{Skill::Verify,    Skill::Setup,  Skill::Counts,  Skill::Pass,
                                                         Skill::Technique, Skill::Sponge, Skill::Suction, Skill::Cut,
                                                         Skill::Retract,   Skill::Camera};

constexpr bool isFirstScrubSkill(Skill skill)
{
    return skill <= Skill::Technique;
}

/// The CSV column ("setup").
std::string_view column(Skill skill);
/// The label on screen, as the thing done ("Set up the sterile field").
std::string_view label(Skill skill);
/// Empty when no skill has that column.
std::optional<Skill> skillFromColumn(std::string_view column);

/// Unmarked: the preceptor did not see it, or has not marked it yet. NotApplicable: not called for on this case.
enum class Mark : std::uint8_t { Unmarked, Yes, No, NotApplicable };

/// The CSV cell: "Y", "N", "NA", "".
std::string_view cell(Mark mark);
/// The mark in words: "Yes", "No", "N/A", "not marked".
std::string_view inWords(Mark mark);
/// Empty when the cell is none of the four.
std::optional<Mark> markFromCell(std::string_view cell);

/// A set of skills as bits; default is empty.
class SkillSet {
public:
    constexpr void add(Skill skill)
    {
        m_bits = static_cast<std::uint16_t>(m_bits | (1U << static_cast<unsigned>(skill)));
    }
    [[nodiscard]] constexpr bool contains(Skill skill) const
    {
        return ((m_bits >> static_cast<unsigned>(skill)) & 1U) != 0;
    }
    static constexpr SkillSet allFirstScrub()
    {
        SkillSet set;
        set.m_bits = 0x1F;
        return set;
    }
    constexpr bool operator==(const SkillSet&) const = default;

private:
    std::uint16_t m_bits = 0;
};

/// The ten marks of one sheet in 20 bits; default is all unmarked.
class Marks {
public:
    [[nodiscard]] constexpr Mark of(Skill skill) const { return static_cast<Mark>((m_bits >> shift(skill)) & 3U); }
    constexpr void set(Skill skill, Mark mark)
    {
        m_bits = (m_bits & ~(3U << shift(skill))) | (static_cast<std::uint32_t>(mark) << shift(skill));
    }
    /// No skill is unmarked.
    [[nodiscard]] constexpr bool complete() const
    {
        constexpr std::uint32_t low = 0x55555;
        return ((m_bits | (m_bits >> 1U)) & low) == low;
    }
    /// Every skill is unmarked.
    [[nodiscard]] constexpr bool none() const { return m_bits == 0; }
    [[nodiscard]] constexpr bool any(Mark mark) const
    {
        for (const Skill skill : allSkills) {
            if (of(skill) == mark) {
                return true;
            }
        }
        return false;
    }
    constexpr bool operator==(const Marks&) const = default;

private:
    static constexpr unsigned shift(Skill skill) { return 2U * static_cast<unsigned>(skill); }
    std::uint32_t m_bits = 0;
};

} // namespace peelpack::sheet
