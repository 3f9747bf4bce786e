#pragma once

#include "platform/session/shared_sheets.h"
#include "platform/session/sheets.h"

namespace peelpack::session {

/// What every instructor's action on a sheet needs: it stands on the action in force, and names the newest entry of the
/// student about the sheet that is here.
base::Result<journal::Act> actOn(const Session& session, const SheetPlace& place, std::string reason);

/// One action to be written, alone or with others in one transaction; it is written as it is, so nothing may have come
/// about the sheet in between. BadValue: this person may not, the reason is missing where one is needed, the sheet is
/// void.
///
/// Nobody initials alone what only they attested. Where another student has a first scrub on the same operation,
/// initialing a first scrub needs a reason.
base::Result<Writing> initialing(const Session& session, const SheetPlace& place, bool confirmed, std::string reason,
                                 const SharedSheets& shared);
base::Result<Writing> returning(const Session& session, const SheetPlace& place, std::string reason);
base::Result<Writing> voiding(const Session& session, const SheetPlace& place, std::string reason);
base::Result<Writing> refiling(const Session& session, const SheetPlace& place, std::vector<journal::Choice> choices,
                               std::string reason);
/// What a change leaves empty stays.
struct SheetChange {
    std::vector<journal::SkillMark> marks;
    std::optional<journal::Head> head;
    std::vector<std::string> procedures;
};
base::Result<Writing> amending(const Session& session, const SheetPlace& place, const SheetChange& change,
                               std::string reason);
/// Accepts the student's newest pending request for a mark of the sheet; with a reason where it raises the role, or
/// where the sheet is first scrub then and another student's of the same operation is as well. A request is declined by
/// initialing or returning the sheet with a reason.
base::Result<Writing> acceptingReview(const Session& session, const SheetPlace& place,
                                      const std::optional<sheet::Skill>& skill, std::string reason,
                                      const SharedSheets& shared);

/// Writes one action at once.
base::Result<journal::Position> initialSheet(Session& session, const SheetPlace& place, bool confirmed,
                                             std::string reason, const SharedSheets& shared);
base::Result<journal::Position> returnSheet(Session& session, const SheetPlace& place, std::string reason);
base::Result<journal::Position> voidSheet(Session& session, const SheetPlace& place, std::string reason);
base::Result<journal::Position> refileSheet(Session& session, const SheetPlace& place,
                                            std::vector<journal::Choice> choices, std::string reason);
base::Result<journal::Position> amendSheet(Session& session, const SheetPlace& place, const SheetChange& change,
                                           std::string reason);
base::Result<journal::Position> acceptReview(Session& session, const SheetPlace& place,
                                             const std::optional<sheet::Skill>& skill, std::string reason,
                                             const SharedSheets& shared);

} // namespace peelpack::session
