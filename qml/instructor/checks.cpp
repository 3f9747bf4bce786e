#include "qml/instructor/checks.h"

#include "platform/session/checks.h"
#include "platform/session/sheets.h"

#include <algorithm>

namespace peelpack::instructor {

catalogue::CategoryList categoriesFor(const catalogue::Catalogue& catalogue, const std::string& procedure)
{
    const auto found = catalogue.byExactName(procedure);
    if (found.size() == 1) {
        return found.front()->categories;
    }
    catalogue::CategoryList all;
    for (std::size_t i = 0; i < catalogue::categoryCount; ++i) {
        all.add(catalogue::categoryAt(i));
    }
    return all;
}

std::optional<catalogue::Category> filedUnder(const catalogue::Catalogue& catalogue, const record::Content& content,
                                              std::size_t procedure)
{
    for (const record::Choice& choice : content.choices) {
        if (choice.procedure == procedure) {
            return choice.category;
        }
    }
    const auto found = procedure < content.procedures.size() ? catalogue.byExactName(content.procedures[procedure])
                                                             : std::vector<const catalogue::Procedure*>();
    return found.size() == 1 ? std::optional(found.front()->categories.front()) : std::nullopt;
}

role::Outcome outcomeOf(const StaffDesk& desk, const record::Content& content)
{
    return role::classify(content.marks.marks, content.head.canceled, desk.roleRules());
}

bool Checks::waits(const Student& student, const record::SheetRecord& sheet)
{
    return questions::waits(sheet, questions::isRepudiated(sheet, student.notTheirs));
}

std::vector<questions::SheetQuestion> Checks::questionsOf(const Student& student,
                                                          const record::SheetRecord& sheet) const
{
    return session::sheetQuestions(sheet, questions::isRepudiated(sheet, student.notTheirs), m_desk.catalogue(),
                                   student.rules);
}

bool Checks::isOwn(const record::SheetRecord& sheet) const
{
    return questions::attestedOnlyBy(sheet, session::idOf(m_desk.session().person()));
}

session::Acceptance Checks::acceptance(const record::SheetRecord& sheet)
{
    forgetWhatChanged();
    if (!m_policy) {
        m_policy.emplace(session::policyInForce(m_desk.session()));
    }
    return session::acceptance(*m_policy, sheet.strength);
}

void Checks::forgetWhatChanged()
{
    if (m_stamp == m_desk.stamp()) {
        return;
    }
    m_stamp = m_desk.stamp();
    m_shared.clear();
    m_sharedRead = false;
    m_policy.reset();
}

void Checks::readShared()
{
    forgetWhatChanged();
    if (m_sharedRead || m_desk.foldedCount() < m_desk.students().size()) {
        return;
    }
    m_sharedRead = true;
    std::vector<questions::OperationPlace> places;
    for (const Student& student : m_desk.students()) {
        for (const record::SheetRecord& sheet : student.record.sheets) {
            const bool gone = sheet.standing == record::SheetStanding::Void ||
                              sheet.standing == record::SheetStanding::Withdrawn || sheet.content.head.canceled;
            if (!gone) {
                places.push_back(questions::placeOf(session::idOf(student.person.id), sheet));
            }
        }
    }
    const auto keyOf = [](const questions::OperationPlace& place) {
        return SheetKey{session::idOf(place.student), place.sheet};
    };
    for (const questions::SharedOperation& shared : questions::sharedOperations(places)) {
        for (const questions::OperationPlace* one : shared) {
            for (const questions::OperationPlace* other : shared) {
                if (one->student != other->student) {
                    m_shared[keyOf(*one)].push_back(keyOf(*other));
                }
            }
        }
    }
}

const std::vector<SheetKey>& Checks::sharedWith(const SheetKey& key)
{
    static const std::vector<SheetKey> none;
    readShared();
    const auto found = m_shared.find(key);
    return found == m_shared.end() ? none : found->second;
}

bool Checks::isSecondFirstScrub(const SheetKey& key, const record::SheetRecord& sheet)
{
    if (outcomeOf(m_desk, sheet.content) != role::Outcome::First) {
        return false;
    }
    const std::vector<SheetKey>& shared = sharedWith(key);
    return std::any_of(shared.begin(), shared.end(), [&](const SheetKey& other) {
        const record::SheetRecord* found = m_desk.sheet(other);
        return found != nullptr && found->isSigned() && outcomeOf(m_desk, found->content) == role::Outcome::First;
    });
}

bool Checks::differs(const record::SheetRecord& sheet) const
{
    if (sheet.unsignedVersion || std::any_of(sheet.signers.begin(), sheet.signers.end(),
                                             [](const record::Signer& signer) { return signer.otherContent; })) {
        return true;
    }
    for (std::size_t i = 0; i < sheet.content.procedures.size(); ++i) {
        const auto filed = filedUnder(m_desk.catalogue(), sheet.content, i);
        const catalogue::CategoryList usual = categoriesFor(m_desk.catalogue(), sheet.content.procedures[i]);
        if (!filed || std::find(usual.begin(), usual.end(), *filed) == usual.end()) {
            return true;
        }
    }
    return false;
}

bool Checks::isPlain(const Student& student, const record::SheetRecord& sheet)
{
    const SheetKey key{student.person.id, sheet.id};
    return sheet.standing == record::SheetStanding::Signed && !sheet.returned && !isOwn(sheet) &&
           acceptance(sheet) == session::Acceptance::AsItIs && sharedWith(key).empty() && !differs(sheet) &&
           role::roleOf(outcomeOf(m_desk, sheet.content)) && questionsOf(student, sheet).empty();
}

} // namespace peelpack::instructor
