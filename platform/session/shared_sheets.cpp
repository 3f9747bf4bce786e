#include "platform/session/shared_sheets.h"

#include "core/questions/shared_operations.h"
#include "core/record/sheet_role.h"
#include "platform/session/checks.h"
#include "platform/session/sets_in_force.h"

#include <algorithm>

namespace peelpack::session {
namespace {

bool isOfAnOperation(const record::SheetRecord& sheet)
{
    return sheet.standing != record::SheetStanding::Void && sheet.standing != record::SheetStanding::Withdrawn &&
           !sheet.content.head.canceled;
}

} // namespace

SharedSheets::SharedSheets(std::span<const Of> students)
{
    std::vector<questions::OperationPlace> places;
    std::map<Key, bool> firstScrub;
    for (const Of& student : students) {
        for (const record::SheetRecord& sheet : student.record->sheets) {
            if (isOfAnOperation(sheet)) {
                places.push_back(questions::placeOf(student.record->student, sheet));
                firstScrub.emplace(Key{student.record->student, sheet.id},
                                   (sheet.isSigned() || sheet.imported) &&
                                       record::outcomeOf(sheet, student.roles) == role::Outcome::First);
            }
        }
    }
    for (const questions::SharedOperation& shared : questions::sharedOperations(places)) {
        for (const questions::OperationPlace* one : shared) {
            const Key key{one->student, one->sheet};
            m_firstScrub[key] = firstScrub.at(key);
            for (const questions::OperationPlace* other : shared) {
                if (one->student != other->student) {
                    m_with[key].push_back({other->student, other->sheet});
                }
            }
        }
    }
}

SharedSheets SharedSheets::of(const Session& session)
{
    const std::vector<keys::Id> students = studentsOf(session);
    const std::vector<record::StudentRecord> records = session.recordsOf(students);
    const std::vector<role::RoleRules> roles = roleRulesInForce(session, students);
    std::vector<Of> lent;
    lent.reserve(records.size());
    for (std::size_t i = 0; i < records.size(); ++i) {
        lent.push_back({&records[i], roles[i]});
    }
    return SharedSheets(lent);
}

const std::vector<SharedSheets::Key>& SharedSheets::with(const Key& sheet) const
{
    static const std::vector<Key> none;
    const auto found = m_with.find(sheet);
    return found == m_with.end() ? none : found->second;
}

bool SharedSheets::hasFirstScrubBeside(const Key& sheet) const
{
    const std::vector<Key>& others = with(sheet);
    return std::any_of(others.begin(), others.end(), [&](const Key& other) { return m_firstScrub.at(other); });
}

} // namespace peelpack::session
