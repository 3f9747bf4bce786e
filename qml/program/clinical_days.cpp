#include "qml/program/clinical_days.h"

#include "platform/session/program_rules.h"
#include "platform/session/rule_writing.h"
#include "qml/words/bridge.h"
#include "qml/words/rules.h"

namespace peelpack::program {
namespace {

constexpr qsizetype mostSite = 80;

} // namespace

ClinicalDayLists::ClinicalDayLists(ProgramDesk& desk, QObject* parent) : QObject(parent), m_desk(desk)
{
    connect(&desk, &ProgramDesk::written, this, &ClinicalDayLists::read);
}

bool ClinicalDayLists::mayChange()
{
    return session::mayWriteRule(m_desk.session(), journal::Kind::ClinicalDays);
}

void ClinicalDayLists::read()
{
    const std::string before = className();
    m_classes = session::everyClass(m_desk.session());
    m_classes.insert(m_classes.begin(), std::string());
    m_names.clear();
    m_ofClass = 0;
    for (const std::string& name : m_classes) {
        if (name == before) {
            m_ofClass = static_cast<int>(m_names.size());
        }
        m_names.append(words::ofClass(name));
    }
    m_coming.clear();
    m_past.clear();
    const base::Date today = m_desk.today();
    for (const journal::ClinicalDay& day : session::clinicalDays(m_desk.session(), className())) {
        if (day.date < today) {
            m_past.prepend(words::of(day, today));
        } else {
            m_coming.append(words::of(day, today));
        }
    }
    Q_EMIT changed();
}

void ClinicalDayLists::setOfClass(int index)
{
    if (index >= 0 && index < static_cast<int>(m_classes.size()) && index != m_ofClass) {
        m_ofClass = index;
        m_done.clear();
        read();
    }
}

void ClinicalDayLists::setSite(const QString& site)
{
    if (site != m_site) {
        m_site = site;
        readFile();
    }
}

void ClinicalDayLists::setZone(const QString& zone)
{
    if (zone != m_zone) {
        m_zone = zone;
        readFile();
    }
}

void ClinicalDayLists::open(const QString& name, const QByteArray& bytes)
{
    forget();
    m_file = name;
    m_text = bytes.toStdString();
    readFile();
}

void ClinicalDayLists::readFile()
{
    m_days.clear();
    m_inFile.clear();
    m_error.clear();
    if (!m_file.isEmpty()) {
        const base::Date today = m_desk.today();
        calendar::DaysWanted wanted = calendar::usualDays(today);
        wanted.site = words::line(m_site, mostSite);
        wanted.zone = m_zone.trimmed().toStdString();
        base::Result<std::vector<journal::ClinicalDay>> days = calendar::daysFrom(m_file.toStdString(), m_text, wanted);
        m_error = words::problem(days);
        if (days) {
            m_days = std::move(days).value();
        }
        for (const journal::ClinicalDay& day : m_days) {
            m_inFile.append(words::of(day, today));
        }
        if (m_error.isEmpty() && m_days.empty()) {
            m_error = tr("No day from a year ago to two years ahead is in this file. Choose another one.");
        }
    }
    Q_EMIT changed();
}

void ClinicalDayLists::write(std::vector<journal::ClinicalDay> days, const QString& done)
{
    m_done.clear();
    m_error = m_desk.write(
        [&] { return words::problem(session::setClinicalDays(m_desk.session(), className(), std::move(days))); });
    if (m_error.isEmpty()) {
        forget();
        m_done = done;
    }
    Q_EMIT changed();
}

void ClinicalDayLists::takeIn()
{
    if (!m_days.empty()) {
        write(m_days, tr("Signed. The days reach the students with your next parcels."));
    }
}

void ClinicalDayLists::takeAway()
{
    write({}, tr("Signed: this list has no clinical days any more."));
}

void ClinicalDayLists::forget()
{
    m_file.clear();
    m_text.clear();
    m_days.clear();
    m_inFile.clear();
    m_site.clear();
    m_zone.clear();
    m_error.clear();
    m_done.clear();
    Q_EMIT changed();
}

QByteArray ClinicalDayLists::calendar()
{
    const base::Result<std::string> text =
        calendar::daysAsCalendar(session::clinicalDays(m_desk.session(), className()), m_desk.session().now().seconds);
    m_error = words::problem(text);
    Q_EMIT changed();
    return text ? QByteArray::fromStdString(text.value()) : QByteArray();
}

} // namespace peelpack::program
