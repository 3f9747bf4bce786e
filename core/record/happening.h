#pragma once

#include "core/record/event.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// What one entry did to a sheet, as a value that every language says in its own words.
namespace peelpack::record {

enum class Happened : std::uint8_t {
    Opened,
    HeadChanged,
    Withdrawn,
    WithdrawalAsked, ///< it had been initialed before
    Signed,
    Logged,
    ReviewAsked,
    HandOverEnded, ///< and nothing was signed
    Declined,      ///< by the preceptor
    Initialed,
    InitialedConfirmed, ///< and the signature was confirmed with the preceptor
    Returned,
    ReviewAccepted,
    Amended,
    Refiled,
    Voided,
    Imported, ///< from a paper log
};
inline constexpr std::size_t happenedCount = 17;

/// A mark that was asked for, or that is now.
struct SkillMark {
    sheet::Skill skill = sheet::Skill::Verify;
    sheet::Mark mark = sheet::Mark::Yes;
    bool operator==(const SkillMark&) const = default;
};

/// What happened, and what it needs to be said. What its sort does not name is empty.
struct Happening {
    Happened what = Happened::Opened;
    std::vector<std::string> procedures; ///< of Opened, HeadChanged and Imported
    /// Of Logged and Refiled: each once; empty: one of a newer version.
    std::vector<std::optional<catalogue::Category>> categories;
    std::vector<SkillMark> marks; ///< one of ReviewAsked and ReviewAccepted; of Amended those that it changed
    bool amendedHead = false;
    bool amendedProcedures = false;
    std::string signer; ///< of Signed
    std::string credential;
    sheet::Strength strength = sheet::Strength::None; ///< of Signed; None: a signer who cannot be told
    HandOverCause cause = HandOverCause::Canceled;    ///< of HandOverEnded
    std::string source;                               ///< of Imported: where it comes from
    sheet::Role role = sheet::Role::First;            ///< of Imported, as it is written there
    std::size_t count = 0;                            ///< marks of Signed, wrong tries of HandOverEnded

    bool operator==(const Happening&) const = default;
};

/// `withdrawalIsRequest`: a withdrawal came after an initial, so that it only asks.
Happening happeningOf(const What& what, bool withdrawalIsRequest);

} // namespace peelpack::record
