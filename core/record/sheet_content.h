#pragma once

#include "core/base/date.h"
#include "core/catalogue/category.h"
#include "core/sheet/marks.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace peelpack::record {

/// Minutes after midnight, below 1440; notSaid when nobody wrote it down.
using MinuteOfDay = std::uint16_t;
inline constexpr MinuteOfDay notSaid = 0xFFFF;
/// "07:30"; empty when nobody said it.
std::string timeOfDay(MinuteOfDay minute);

/// The head of a case sheet without its procedures. Empty texts: not said.
struct Head {
    base::Date date;
    std::string surgeon;
    std::string site;
    std::string room;
    MinuteOfDay start = notSaid;
    MinuteOfDay end = notSaid;
    bool canceled = false; ///< before incision

    bool operator==(const Head&) const = default;
};

/// Why a skill was N/A.
struct NaReason {
    sheet::Skill skill = sheet::Skill::Verify;
    std::string text; ///< never empty

    bool operator==(const NaReason&) const = default;
};

/// Marks with the reasons that were given for N/A. Default: all unmarked.
struct ReasonedMarks {
    sheet::Marks marks;
    std::vector<NaReason> reasons; ///< skills ascending, each of them N/A

    /// Also takes away or replaces the reason; `reason` is kept only with N/A.
    void set(sheet::Skill skill, sheet::Mark mark, std::string reason = {});
    /// Empty when none was given.
    [[nodiscard]] const std::string& reason(sheet::Skill skill) const;
    /// Every mark of `other` replaces the one here; what is unmarked there stays.
    void overlay(const ReasonedMarks& other);

    bool operator==(const ReasonedMarks&) const = default;
};

/// Where one procedure of a sheet is filed.
struct Choice {
    std::uint8_t procedure = 0;                  ///< index into the sheet's procedures
    std::optional<catalogue::Category> category; ///< empty: one that this version does not know
    std::uint8_t joined = 0;                     ///< equal and not 0: joined by one pathology

    bool operator==(const Choice&) const = default;
};

/// One version of a case sheet.
struct Content {
    std::vector<std::string> procedures; ///< as performed; empty only when nothing that counts says what was done
    Head head;
    ReasonedMarks marks;
    std::vector<Choice> choices; ///< procedures ascending; a procedure without one: not logged

    bool operator==(const Content&) const = default;
};

} // namespace peelpack::record
