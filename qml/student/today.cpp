#include "qml/student/today.h"

#include "platform/session/program_rules.h"
#include "qml/student/tally_page.h"
#include "qml/words/rules.h"
#include "qml/words/words.h"

namespace peelpack::student {
namespace {

constexpr std::size_t mostLatest = 4;
constexpr std::size_t mostWaiting = 8;

bool waits(const record::SheetRecord& sheet)
{
    return sheet.standing == record::SheetStanding::Open ||
           (sheet.returned && !sheet.returned->answered && sheet.standing == record::SheetStanding::Returned);
}

} // namespace

Today::Today(Desk& desk, const WaitingList& waitingFor, QObject* parent)
    : QObject(parent), m_desk(desk), m_waitingFor(waitingFor)
{
    connect(&desk, &Desk::changed, this, &Today::refresh);
    refresh();
}

void Today::refresh()
{
    std::vector<SheetRow> waiting;
    std::vector<SheetRow> latest;
    int more = 0;
    for (const record::SheetRecord* sheet : m_desk.latestFirst()) {
        if (waits(*sheet) && waiting.size() == mostWaiting) {
            ++more;
        } else if (waits(*sheet)) {
            waiting.push_back(sheetRow(m_desk, *sheet, m_waitingFor.of(*sheet)));
        } else if (latest.size() < mostLatest && sheet->standing != record::SheetStanding::Withdrawn) {
            latest.push_back(sheetRow(m_desk, *sheet, {}));
        }
    }
    m_more = more == 0 ? QString() : tr("%n more sheet(s) wait", nullptr, more);
    m_waiting.put(std::move(waiting));
    m_latest.put(std::move(latest));
    m_standing.clear();
    m_next.clear();
    if (const Desk::Counted* counted = m_desk.counted()) {
        m_standing = tr("%1 of %2 cases counted").arg(counted->tally.best.value.counted).arg(counted->set.required());
        m_next = nextInWords(counted->tally.next);
    }
    readClinicalDay();
    Q_EMIT changed();
}

void Today::readClinicalDay()
{
    const base::Date today = m_desk.today();
    const std::vector<journal::ClinicalDay> days = session::clinicalDaysOf(m_desk.session(), m_desk.session().person());
    std::optional<base::Date> next;
    for (const journal::ClinicalDay& day : days) {
        if (day.date >= today && (!next || day.date < *next)) {
            next = day.date;
        }
    }
    const std::vector<journal::Site> sites = session::sites(m_desk.session());
    QStringList lines;
    for (const journal::ClinicalDay& day : days) {
        if (day.date == next) {
            lines.append(tr("Clinical day: %1").arg(words::withPhones(day, sites, today)));
        }
    }
    m_clinicalDay = lines.join(QLatin1Char('\n'));
}

QString Today::day() const
{
    return words::longDay(m_desk.today());
}

QString Today::onlyHere() const
{
    const std::size_t entries = session::onlyHere(m_desk.session());
    return entries == 0 ? QString()
                        : tr("What you did since your last parcel is only on this phone. Send it to your instructor.");
}

} // namespace peelpack::student
