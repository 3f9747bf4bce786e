#include "qml/instructor/checks.h"

#include "core/record/sheet_role.h"
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

role::Outcome outcomeOf(const Student& student, const record::Content& content)
{
    return role::classify(content.marks.marks, content.head.canceled, student.rules.roles);
}

role::Outcome outcomeOf(const Student& student, const record::SheetRecord& sheet)
{
    return record::outcomeOf(sheet, student.rules.roles);
}

bool Checks::waits(const Student& student, const record::SheetRecord& sheet)
{
    return questions::waits(sheet, questions::isRepudiated(sheet, student.notTheirs));
}

std::vector<questions::SheetQuestion> Checks::questionsOf(const Student& student,
                                                          const record::SheetRecord& sheet) const
{
    return session::sheetQuestions(student.record, sheet, questions::isRepudiated(sheet, student.notTheirs),
                                   m_desk.catalogue(), student.rules);
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
    m_shared.reset();
    m_policy.reset();
}

void Checks::readShared()
{
    forgetWhatChanged();
    if (!m_shared && m_desk.foldedCount() == m_desk.students().size()) {
        readEverybody();
    }
}

void Checks::readEverybody()
{
    std::vector<session::SharedSheets::Of> everybody;
    for (const Student& student : m_desk.students()) {
        const Student& folded = *m_desk.student(student.person.id);
        everybody.push_back({&folded.record, folded.rules.roles});
    }
    m_stamp = m_desk.stamp();
    m_shared.emplace(everybody);
}

const session::SharedSheets& Checks::shared()
{
    forgetWhatChanged();
    if (!m_shared) {
        readEverybody();
    }
    return *m_shared;
}

std::vector<SheetKey> Checks::sharedWith(const SheetKey& key)
{
    readShared();
    std::vector<SheetKey> others;
    if (m_shared) {
        for (const session::SharedSheets::Key& other : m_shared->with({session::idOf(key.student), key.sheet})) {
            others.push_back({session::idOf(other.student), other.sheet});
        }
    }
    return others;
}

bool Checks::isSecondFirstScrub(const SheetKey& key, const record::SheetRecord& sheet)
{
    readShared();
    const Student* student = m_desk.student(key.student);
    return m_shared && student != nullptr && outcomeOf(*student, sheet) == role::Outcome::First &&
           m_shared->hasFirstScrubBeside({session::idOf(key.student), key.sheet});
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
    const bool signedWell = sheet.standing == record::SheetStanding::Signed && !isOwn(sheet) &&
                            acceptance(sheet) == session::Acceptance::AsItIs;
    return (signedWell || sheet.standing == record::SheetStanding::Imported) && !sheet.returned &&
           sharedWith(key).empty() && !differs(sheet) && role::roleOf(outcomeOf(student, sheet)) &&
           questionsOf(student, sheet).empty();
}

} // namespace peelpack::instructor
