#include "qml/instructor/pending_acts.h"

namespace peelpack::instructor {

PendingActs::PendingActs(StaffDesk& desk, QObject* parent) : QObject(parent), m_desk(desk)
{
    m_time.setSingleShot(true);
    m_time.setInterval(undoMs);
    connect(&m_time, &QTimer::timeout, this, &PendingActs::writeNow);
}

PendingActs::~PendingActs()
{
    if (!m_writings.empty()) {
        static_cast<void>(m_desk.session().append(m_writings)); // the screens are gone; there is nobody to tell
    }
}

void PendingActs::clear()
{
    m_time.stop();
    m_writings.clear();
    m_sheets.clear();
    m_text.clear();
}

bool PendingActs::decide(std::vector<session::Writing> writings, std::set<SheetKey> sheets, const QString& text)
{
    if (!writeNow()) {
        return false;
    }
    m_writings = std::move(writings);
    m_sheets = std::move(sheets);
    m_text = text;
    m_error.clear();
    m_time.start();
    Q_EMIT changed();
    return true;
}

void PendingActs::undo()
{
    if (m_writings.empty()) {
        return;
    }
    const QString sheet = m_sheets.begin()->text();
    clear();
    Q_EMIT changed();
    Q_EMIT cameBack(sheet);
}

bool PendingActs::writeNow()
{
    if (m_writings.empty()) {
        return true;
    }
    const std::vector<session::Writing> writings = std::move(m_writings);
    const QString sheet = m_sheets.begin()->text();
    clear();
    m_error = m_desk.write(writings);
    Q_EMIT changed();
    if (!m_error.isEmpty()) {
        Q_EMIT cameBack(sheet);
    }
    return m_error.isEmpty();
}

} // namespace peelpack::instructor
