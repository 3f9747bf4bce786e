#include "qml/preceptor/sitting.h"

#include <algorithm>

namespace peelpack::preceptor {

void Sitting::begin(std::vector<MarkedSheet> sheets)
{
    m_sheets = std::move(sheets);
    showMarks();
}

void Sitting::dropSheet()
{
    if (m_sheets.size() > 1) {
        m_sheets.erase(m_sheets.begin() + static_cast<std::ptrdiff_t>(m_place));
        m_place = std::min(m_place, m_sheets.size() - 1);
        showMarks();
    }
}

void Sitting::fail(QString error)
{
    m_error = std::move(error);
    Q_EMIT changed();
}

void Sitting::showMarks()
{
    if (!m_sheets.empty()) {
        m_rows.put(now().rows());
        Q_EMIT changed();
    }
}

void Sitting::setCanceled(bool canceled)
{
    now().setCanceled(canceled);
    Q_EMIT changed();
}

void Sitting::setFeedback(const QString& text)
{
    now().setFeedback(text);
    Q_EMIT changed();
}

QStringList Sitting::readBack() const
{
    QStringList lines;
    for (const MarkedSheet& sheet : m_sheets) {
        lines += sheet.readBack(today(), student());
    }
    return lines;
}

void Sitting::correct(int procedure, const QString& text)
{
    now().correct(procedure, text);
    Q_EMIT changed();
}

void Sitting::mark(int skill, int mark)
{
    now().mark(skill, mark);
    showMarks();
}

void Sitting::reason(int skill, const QString& text)
{
    now().reason(skill, text);
    showMarks();
}

void Sitting::markFirstScrubYes()
{
    now().markFirstScrubYes();
    showMarks();
}

void Sitting::next()
{
    m_error.clear();
    const bool sheetIsDone = (m_step == Performed && now().canceled()) || (m_step == Marking && missing().isEmpty());
    if (sheetIsDone && !isLast()) {
        ++m_place;
        m_step = Performed;
    } else if (sheetIsDone) {
        m_step = ReadingBack;
    } else if (m_step == Performed) {
        m_step = Marking;
    } else if (m_step == ReadingBack) {
        m_step = Signing;
    }
    showMarks();
}

void Sitting::back()
{
    m_error.clear();
    switch (m_step) {
    case Marking:
        m_step = Performed;
        break;
    case Performed:
        if (m_place > 0) {
            --m_place;
            m_step = now().canceled() ? Performed : Marking;
        }
        break;
    case ReadingBack:
        m_step = now().canceled() ? Performed : Marking;
        break;
    case Signing:
    case Drawing:
        m_step = m_step == Drawing ? Signing : ReadingBack;
        break;
    case OwnPhone:
    case Declining:
        m_step = Performed;
        break;
    case Signed:
    case Declined:
        break;
    }
    showMarks();
}

} // namespace peelpack::preceptor
