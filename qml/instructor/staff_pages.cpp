#include "qml/instructor/staff_pages.h"

#include "qml/words/rules.h"
#include "qml/words/words.h"

namespace peelpack::instructor {

StaffPages::StaffPages(StaffDesk& desk, QObject* parent)
    : QObject(parent), m_desk(desk), m_checks(desk), m_pending(desk), m_list(desk, m_checks, m_pending),
      m_sheet(desk, m_checks, m_list, m_pending), m_amending(desk, m_sheet), m_board(desk, m_checks),
      m_student(desk, m_checks, m_list), m_parcels(desk, m_pending), m_rules(desk)
{
    connect(&desk, &StaffDesk::changed, this, &StaffPages::changed);
}

QString StaffPages::bar() const
{
    return words::bar(m_desk.session().writeBar().sentence, m_desk.shelf().misfits());
}

} // namespace peelpack::instructor
