#include "platform/session/acts.h"

#include "core/base/text.h"
#include "core/questions/sheet_questions.h"
#include "core/record/sheet_role.h"
#include "core/role/classifier.h"
#include "platform/session/sets_in_force.h"
#include "sync/merge/actions.h"
#include "sync/merge/student_events.h"

#include <algorithm>

namespace peelpack::session {
namespace {

base::Error bad(std::string sentence)
{
    return {base::ErrorCode::BadValue, std::move(sentence)};
}

keys::Hash hashOf(const base::EntryHash& hash)
{
    return keys::Hash{hash.bytes};
}

/// The act, or why nobody may write one now.
base::Result<journal::Act> checkedAct(const Session& session, const SheetPlace& place, std::string reason,
                                      bool needsReason)
{
    if (!session.isStaff()) {
        return bad("Only an instructor or the director can do this.");
    }
    if (needsReason && base::trimmed(reason).empty()) {
        return bad("This needs a reason; it stays beside the sheet for good.");
    }
    if (place.record.standing == record::SheetStanding::Void) {
        return bad("The sheet is void; nothing more can be done with it.");
    }
    return actOn(session, place, std::move(reason));
}

template <class Payload>
base::Result<Writing> writing(const SheetPlace& place, base::Result<journal::Act> act, Payload payload)
{
    if (!act) {
        return act.error();
    }
    payload.act = std::move(act).value();
    return Writing{place.student, std::move(payload)};
}

base::Result<journal::Position> write(Session& session, const base::Result<Writing>& made)
{
    return made ? session.append(made.value().stream, made.value().payload)
                : base::Result<journal::Position>(made.error());
}

role::Outcome outcomeOf(const record::Content& content, const role::RoleRules& rules)
{
    return role::classify(content.marks.marks, content.head.canceled, rules);
}

/// The sheet with the mark that is asked for.
record::Content asAsked(record::Content content, const record::ReviewAsked& asked)
{
    content.marks.set(asked.skill, asked.wanted);
    return content;
}

/// Another student has a first scrub on the operation of this sheet.
bool hasFirstScrubBeside(const SheetPlace& place, const SharedSheets& shared)
{
    return shared.hasFirstScrubBeside({idOf(place.student), idOf(place.sheet)});
}

constexpr const char* twoFirstScrubs =
    "Another student has a first scrub on this operation. Say why both count; it stays beside the sheet for good.";

} // namespace

base::Result<journal::Act> actOn(const Session& session, const SheetPlace& place, std::string reason)
{
    journal::Act act;
    act.sheet = place.sheet;
    act.reason = std::move(reason);
    const record::StudentEvents events = merge::studentEvents(session.authority(), session.ledger(), place.student);
    for (const record::Event& event : events.events) {
        if (event.sheet != idOf(place.sheet)) {
            continue;
        }
        if (const auto* made = std::get_if<record::Act>(&event.what)) {
            if (made->inForce) {
                act.standsOn = hashOf(event.entry); // in the order of the walk: the last one stays
            }
        } else if (!std::holds_alternative<record::Imported>(event.what)) {
            act.about = hashOf(event.entry);
        }
    }
    if (act.about.isZero() && place.record.imported) {
        act.about = hashOf(place.record.imported->entry);
    }
    if (act.about.isZero()) {
        return base::Error{base::ErrorCode::NotFound, "There is no such sheet here."};
    }
    return act;
}

base::Result<Writing> initialing(const Session& session, const SheetPlace& place, bool confirmed, std::string reason,
                                 const SharedSheets& shared)
{
    if (place.record.standing == record::SheetStanding::Withdrawn) {
        return bad("The student took the sheet back; void it, or ask them to open another.");
    }
    if (questions::attestedOnlyBy(place.record, idOf(session.person()))) {
        return bad("You signed this sheet yourself. Nobody initials alone what they signed: another instructor "
                   "initials it.");
    }
    if (base::trimmed(reason).empty() && hasFirstScrubBeside(place, shared) &&
        record::outcomeOf(place.record, roleRulesInForce(session, place.student)) == role::Outcome::First) {
        return bad(twoFirstScrubs);
    }
    return writing(place, checkedAct(session, place, std::move(reason), false), journal::Initial{{}, confirmed});
}

base::Result<Writing> returning(const Session& session, const SheetPlace& place, std::string reason)
{
    return writing(place, checkedAct(session, place, std::move(reason), true), journal::Return{});
}

base::Result<Writing> voiding(const Session& session, const SheetPlace& place, std::string reason)
{
    return writing(place, checkedAct(session, place, std::move(reason), true), journal::Void{});
}

base::Result<Writing> refiling(const Session& session, const SheetPlace& place, std::vector<journal::Choice> choices,
                               std::string reason)
{
    return writing(place, checkedAct(session, place, std::move(reason), true), journal::Refile{{}, std::move(choices)});
}

base::Result<Writing> amending(const Session& session, const SheetPlace& place, const SheetChange& change,
                               std::string reason)
{
    if (change.marks.empty() && !change.head && change.procedures.empty()) {
        return bad("Nothing is changed.");
    }
    if (place.record.imported && !change.marks.empty()) {
        return bad("The sheet was imported from a paper log and has no marks to change; void it if its role is wrong.");
    }
    return writing(place, checkedAct(session, place, std::move(reason), true),
                   journal::Amend{{}, change.marks, change.head, change.procedures});
}

base::Result<Writing> acceptingReview(const Session& session, const SheetPlace& place,
                                      const std::optional<sheet::Skill>& skill, std::string reason,
                                      const SharedSheets& shared)
{
    const auto& reviews = place.record.reviews;
    const auto pending = std::find_if(reviews.rbegin(), reviews.rend(), [&](const record::Review& review) {
        return review.answer == record::Review::Answer::Pending && (!skill || review.asked.skill == *skill);
    });
    if (pending == reviews.rend()) {
        return bad("Nobody has asked for a review of that mark, or it was answered already.");
    }
    const role::RoleRules rules = roleRulesInForce(session, place.student);
    const role::Outcome after = outcomeOf(asAsked(place.record.content, pending->asked), rules);
    const bool raises = after < outcomeOf(place.record.content, rules); // first scrub is the first of the outcomes
    if (base::trimmed(reason).empty() && after == role::Outcome::First && hasFirstScrubBeside(place, shared)) {
        return bad(twoFirstScrubs);
    }
    return writing(
        place, checkedAct(session, place, std::move(reason), raises),
        journal::ReviewAccepted{{}, hashOf(pending->request), {pending->asked.skill, pending->asked.wanted, {}}});
}

base::Result<journal::Position> initialSheet(Session& session, const SheetPlace& place, bool confirmed,
                                             std::string reason, const SharedSheets& shared)
{
    return write(session, initialing(session, place, confirmed, std::move(reason), shared));
}

base::Result<journal::Position> returnSheet(Session& session, const SheetPlace& place, std::string reason)
{
    return write(session, returning(session, place, std::move(reason)));
}

base::Result<journal::Position> voidSheet(Session& session, const SheetPlace& place, std::string reason)
{
    return write(session, voiding(session, place, std::move(reason)));
}

base::Result<journal::Position> refileSheet(Session& session, const SheetPlace& place,
                                            std::vector<journal::Choice> choices, std::string reason)
{
    return write(session, refiling(session, place, std::move(choices), std::move(reason)));
}

base::Result<journal::Position> amendSheet(Session& session, const SheetPlace& place, const SheetChange& change,
                                           std::string reason)
{
    return write(session, amending(session, place, change, std::move(reason)));
}

base::Result<journal::Position> acceptReview(Session& session, const SheetPlace& place,
                                             const std::optional<sheet::Skill>& skill, std::string reason,
                                             const SharedSheets& shared)
{
    return write(session, acceptingReview(session, place, skill, std::move(reason), shared));
}

} // namespace peelpack::session
