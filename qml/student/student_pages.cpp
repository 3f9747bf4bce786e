#include "qml/student/student_pages.h"

#include "qml/words/rules.h"
#include "qml/words/words.h"

namespace peelpack::student {

StudentPages::StudentPages(Desk& desk, QObject* parent)
    : QObject(parent), m_desk(desk), m_waitingFor(desk), m_today(desk, m_waitingFor), m_newSheet(desk),
      m_sheets(desk, m_waitingFor), m_sheet(desk, m_waitingFor), m_tally(desk), m_parcels(desk)
{
    connect(&desk, &Desk::changed, this, &StudentPages::changed);
}

QString StudentPages::bar() const
{
    return words::bar(m_desk.session().writeBar().sentence, m_desk.shelf().misfits());
}

} // namespace peelpack::student
