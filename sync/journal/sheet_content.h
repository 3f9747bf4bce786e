#pragma once

#include "core/base/date.h"
#include "core/sheet/marks.h"
#include "sync/keys/bytes.h"

#include <string>
#include <vector>

namespace peelpack::journal {

/// Minutes after midnight; notSaid when nobody wrote it down.
using MinuteOfDay = std::uint16_t;
inline constexpr MinuteOfDay notSaid = 0xFFFF;
inline constexpr MinuteOfDay minutesInDay = 1440;

/// Procedures of one sheet.
inline constexpr std::size_t mostProcedures = 8;

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

/// One skill as it was marked. Skills that are not in a list are unmarked.
struct SkillMark {
    sheet::Skill skill = sheet::Skill::Verify;
    sheet::Mark mark = sheet::Mark::Yes; ///< never Unmarked
    std::string reason;                  ///< only with N/A, and may be empty

    bool operator==(const SkillMark&) const = default;
};

/// What a student wrote on a sheet that nobody has signed.
struct Draft {
    std::vector<std::string> procedures; ///< as performed, 1 to 8
    Head head;
    std::vector<SkillMark> marks; ///< skills ascending

    bool operator==(const Draft&) const = default;
};

/// Where one procedure of a sheet is filed.
struct Choice {
    std::uint8_t procedure = 0; ///< index into the sheet's procedures
    std::string category;       ///< the category's id
    std::uint8_t joined = 0;    ///< equal and not 0: joined by one pathology

    bool operator==(const Choice&) const = default;
};

} // namespace peelpack::journal
