#include "qml/student/sheet_list.h"

#include "core/base/text.h"
#include "core/record/sheet_role.h"
#include "qml/words/words.h"

#include <algorithm>

namespace peelpack::student {
namespace {

constexpr std::array standings{record::SheetStanding::Open,      record::SheetStanding::Imported,
                               record::SheetStanding::Signed,    record::SheetStanding::Returned,
                               record::SheetStanding::Initialed, record::SheetStanding::Amended,
                               record::SheetStanding::Withdrawn, record::SheetStanding::Void};
constexpr std::array outcomes{role::Outcome::First, role::Outcome::Second, role::Outcome::Observed,
                              role::Outcome::Unmarked, role::Outcome::Canceled};

} // namespace

SheetList::SheetList(Desk& desk, const WaitingList& waitingFor, QObject* parent)
    : QObject(parent), m_desk(desk), m_waitingFor(waitingFor)
{
    connect(&desk, &Desk::changed, this, &SheetList::read);
    read();
}

void SheetList::read()
{
    m_sheets = m_desk.latestFirst();
    filter();
}

bool SheetList::fits(const record::SheetRecord& sheet) const
{
    if (m_state > 0 && sheet.standing != standings.at(static_cast<std::size_t>(m_state - 1))) {
        return false;
    }
    if (m_role > 0 &&
        record::outcomeOf(sheet, m_desk.roleRules()) != outcomes.at(static_cast<std::size_t>(m_role - 1))) {
        return false;
    }
    if (m_specialty > 0) {
        const auto category = categoryOf(m_desk.shelf().catalogue(), sheet);
        if (!category || catalogue::indexOf(*category) != static_cast<std::size_t>(m_specialty - 1)) {
            return false;
        }
    }
    const std::string wanted = base::foldCaseAndSpaces(m_text.toStdString());
    if (wanted.empty()) {
        return true;
    }
    std::string all;
    for (const std::string& procedure : sheet.content.procedures) {
        all += procedure + " ";
    }
    all += sheet.content.head.surgeon + " " + sheet.content.head.site + " " + sheet.content.head.room;
    return base::foldCaseAndSpaces(all).find(wanted) != std::string::npos;
}

void SheetList::filter()
{
    std::vector<SheetRow> rows;
    for (const record::SheetRecord* sheet : m_sheets) {
        if (fits(*sheet)) {
            rows.push_back(sheetRow(m_desk, *sheet, m_waitingFor.of(*sheet)));
        }
    }
    m_rows.put(std::move(rows));
    Q_EMIT changed();
}

void SheetList::setText(const QString& text)
{
    if (text != m_text) {
        m_text = text.left(120);
        filter();
    }
}

void SheetList::setState(int state)
{
    m_state = std::clamp(state, 0, static_cast<int>(standings.size()));
    filter();
}

void SheetList::setRole(int role)
{
    m_role = std::clamp(role, 0, static_cast<int>(outcomes.size()));
    filter();
}

void SheetList::setSpecialty(int specialty)
{
    m_specialty = std::clamp(specialty, 0, static_cast<int>(catalogue::categoryCount));
    filter();
}

QStringList SheetList::states()
{
    QStringList list{tr("Any state")};
    for (const record::SheetStanding standing : standings) {
        list.append(words::capitalized(words::of(standing)));
    }
    return list;
}

QStringList SheetList::roles()
{
    QStringList list{tr("Any role")};
    for (const role::Outcome outcome : outcomes) {
        list.append(words::of(outcome));
    }
    return list;
}

QStringList SheetList::specialties()
{
    QStringList list{tr("Any specialty")};
    for (std::size_t i = 0; i < catalogue::categoryCount; ++i) {
        list.append(words::of(catalogue::categoryAt(i)));
    }
    return list;
}

QString SheetList::summary() const
{
    const auto all = static_cast<int>(m_sheets.size());
    const int shown = m_rows.rowCount();
    return shown == all ? tr("%n sheet(s)", nullptr, all) : tr("%1 of %n sheet(s)", nullptr, all).arg(shown);
}

} // namespace peelpack::student
