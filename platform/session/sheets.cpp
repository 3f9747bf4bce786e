#include "platform/session/sheets.h"

#include "platform/files/time_of_day.h"
#include "platform/session/program_rules.h"

#include <algorithm>

namespace peelpack::session {
namespace {

constexpr std::size_t leastDigits = 4;

} // namespace

keys::Id idOf(const base::Id& id)
{
    return keys::Id{id.bytes};
}

base::Id idOf(const keys::Id& id)
{
    return base::Id{id.bytes};
}

base::Result<keys::Id> openSheet(Session& session, const journal::Draft& draft,
                                 const std::optional<keys::Id>& sameOperationAs)
{
    const keys::Id sheet = session.random().id();
    const keys::Id operation = sameOperationAs ? *sameOperationAs : session.random().id();
    const auto written = session.append(session.person(), journal::SheetOpened{sheet, operation, draft});
    if (!written) {
        return written.error();
    }
    return sheet;
}

base::Result<std::vector<keys::Id>> openSheets(Session& session, const std::vector<journal::Draft>& drafts)
{
    std::vector<Writing> writings;
    std::vector<keys::Id> sheets;
    for (const journal::Draft& draft : drafts) {
        sheets.push_back(session.random().id());
        writings.push_back({session.person(), journal::SheetOpened{sheets.back(), session.random().id(), draft}});
    }
    const auto written = session.append(writings);
    if (!written) {
        return written.error();
    }
    return sheets;
}

base::Result<SheetPlace> findSheet(const Session& session, const keys::Id& student, std::string_view shortName)
{
    if (shortName.size() < leastDigits) {
        return base::Error{base::ErrorCode::BadValue, "A sheet is named by at least 4 digits of its id."};
    }
    record::StudentRecord whole = session.recordOf(student);
    record::SheetRecord* found = nullptr;
    for (record::SheetRecord& sheet : whole.sheets) {
        if (sheet.id.hex().starts_with(shortName)) {
            if (found != nullptr) {
                return base::Error{base::ErrorCode::BadValue,
                                   "Several sheets begin with " + std::string(shortName) + "; give more digits."};
            }
            found = &sheet;
        }
    }
    if (found == nullptr) {
        return base::Error{base::ErrorCode::NotFound, "There is no sheet " + std::string(shortName) + " here."};
    }
    return SheetPlace{student, idOf(found->id), std::move(*found)};
}

journal::Head headOf(const record::Head& head)
{
    return {head.date, head.surgeon, head.site, head.room, head.start, head.end, head.canceled};
}

journal::Draft draftOf(const record::Content& content)
{
    journal::Draft draft{content.procedures, headOf(content.head), {}};
    for (const sheet::Skill skill : sheet::allSkills) {
        const sheet::Mark mark = content.marks.marks.of(skill);
        if (mark != sheet::Mark::Unmarked) {
            draft.marks.push_back({skill, mark, content.marks.reason(skill)});
        }
    }
    return draft;
}

journal::Head headOfRow(const sheet::CaseRow& row)
{
    return {row.date,
            row.surgeon,
            row.site,
            row.room,
            files::minuteOf(row.start).value_or(journal::notSaid),
            files::minuteOf(row.end).value_or(journal::notSaid),
            row.canceled};
}

record::RowRules rowRules(const Session& session, const catalogue::Catalogue& catalogue)
{
    const auto categoriesOf = [&catalogue](std::string_view procedure) {
        const std::vector<const catalogue::Procedure*> found = catalogue.byExactName(procedure);
        return found.size() == 1 ? found.front()->categories : catalogue::CategoryList{};
    };
    const auto counts = [policy = policyInForce(session)](sheet::Strength strength, bool confirmed) {
        const Acceptance how = acceptance(policy, strength);
        return how == Acceptance::AsItIs || (how == Acceptance::OnceConfirmed && confirmed);
    };
    return {categoriesOf, counts};
}

std::size_t onlyHere(const Session& session)
{
    std::size_t count = 0;
    for (const auto& [id, feed] : session.ledger().feeds()) {
        const trust::Holder* holder = session.authority().holder(id.device);
        const auto own = session.ownFeed(session.person());
        const bool mine = (own && own.value() == id) || (holder != nullptr && holder->person == session.person());
        if (mine && id.stream == session.person()) {
            count += feed.count() - std::min(feed.count(), merge::receiptedCount(session.authority(), id));
        }
    }
    return count;
}

} // namespace peelpack::session
