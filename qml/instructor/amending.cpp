#include "qml/instructor/amending.h"

#include "platform/session/acts.h"
#include "qml/words/bridge.h"
#include "qml/words/words.h"

namespace peelpack::instructor {
namespace {

constexpr qsizetype mostLetters = 120;

} // namespace

Amending::Amending(StaffDesk& desk, CheckedSheet& sheet, QObject* parent)
    : QObject(parent), m_desk(desk), m_sheet(sheet)
{
    // Another sheet: what was put together is for the one before.
    connect(&sheet, &CheckedSheet::changed, this, [this, shown = QString()]() mutable {
        if (shown != m_sheet.key()) {
            shown = m_sheet.key();
            drop();
        }
    });
}

void Amending::begin()
{
    const auto place = m_sheet.place();
    if (!place || !m_sheet.canAct()) {
        return;
    }
    m_student = place->student;
    m_before = place->record.content;
    m_marks = m_before.marks.marks;
    m_hasMarks = !place->record.imported;
    QStringList procedures;
    for (const std::string& procedure : m_before.procedures) {
        procedures.append(words::fromUtf8(procedure));
    }
    m_procedures = procedures.join(QStringLiteral("; "));
    m_date = words::fromUtf8(m_before.head.date.iso());
    m_surgeon = words::fromUtf8(m_before.head.surgeon);
    m_site = words::fromUtf8(m_before.head.site);
    m_room = words::fromUtf8(m_before.head.room);
    m_canceled = m_before.head.canceled;
    m_open = true;
    Q_EMIT changed();
}

void Amending::drop()
{
    put(m_open, false);
}

QList<int> Amending::marks() const
{
    QList<int> marks;
    for (const sheet::Skill skill : sheet::allSkills) {
        marks.append(static_cast<int>(m_marks.of(skill)));
    }
    return marks;
}

QStringList Amending::skills()
{
    QStringList labels;
    for (const sheet::Skill skill : sheet::allSkills) {
        labels.append(words::of(skill));
    }
    return labels;
}

void Amending::mark(int skill, int mark)
{
    // A mark can be changed, and one that is missing given; none can be taken away.
    if (skill >= 0 && skill < static_cast<int>(sheet::skillCount) && mark > 0 &&
        mark <= static_cast<int>(sheet::Mark::NotApplicable)) {
        m_marks.set(static_cast<sheet::Skill>(skill), static_cast<sheet::Mark>(mark));
    }
    Q_EMIT changed();
}

std::vector<std::string> Amending::procedureList() const
{
    std::vector<std::string> list;
    for (const QString& one : m_procedures.split(QLatin1Char(';'))) {
        if (std::string line = words::line(one, mostLetters); !line.empty()) {
            list.push_back(std::move(line));
        }
    }
    return list;
}

journal::Head Amending::head() const
{
    journal::Head head = session::headOf(m_before.head);
    if (const auto date = base::Date::fromIso(m_date.trimmed().toStdString())) {
        head.date = *date;
    }
    head.surgeon = words::line(m_surgeon, mostLetters);
    head.site = words::line(m_site, mostLetters);
    head.room = words::line(m_room, mostLetters);
    head.canceled = m_canceled;
    return head;
}

QString Amending::problem() const
{
    if (!m_open) {
        return {};
    }
    if (!base::Date::fromIso(m_date.trimmed().toStdString())) {
        return tr("Write the date as year-month-day: 2026-03-12.");
    }
    return procedureList().empty() ? tr("Which procedure was it?") : QString();
}

QStringList Amending::changes() const
{
    QStringList list;
    if (!m_open) {
        return list;
    }
    const auto compare = [&](const QString& what, const QString& old, const QString& now) {
        if (old != now) {
            list.append(tr("%1: \"%2\" becomes \"%3\"")
                            .arg(what, old.isEmpty() ? tr("nothing") : old, now.isEmpty() ? tr("nothing") : now));
        }
    };
    for (const sheet::Skill skill : sheet::allSkills) {
        compare(words::of(skill), words::of(m_before.marks.marks.of(skill)), words::of(m_marks.of(skill)));
    }
    const journal::Head now = head();
    compare(tr("Procedure"), words::listed(m_before.procedures), words::listed(procedureList()));
    compare(tr("Date"), words::day(m_before.head.date, m_desk.today()), words::day(now.date, m_desk.today()));
    compare(tr("Surgeon"), words::fromUtf8(m_before.head.surgeon), words::fromUtf8(now.surgeon));
    compare(tr("Site"), words::fromUtf8(m_before.head.site), words::fromUtf8(now.site));
    compare(tr("Room"), words::fromUtf8(m_before.head.room), words::fromUtf8(now.room));
    if (m_before.head.canceled != m_canceled) {
        list.append(m_canceled ? tr("It becomes canceled before incision") : tr("It is no longer canceled"));
    }
    record::Content then = m_before;
    then.marks.marks = m_marks;
    then.head.canceled = m_canceled;
    if (const Student* student = m_desk.student(m_student)) {
        compare(tr("Role"), words::of(outcomeOf(*student, m_before)), words::of(outcomeOf(*student, then)));
    }
    return list;
}

bool Amending::done(const QString& reason)
{
    if (!m_open || !problem().isEmpty()) {
        return false;
    }
    session::SheetChange change;
    for (const sheet::Skill skill : sheet::allSkills) {
        if (m_marks.of(skill) != m_before.marks.marks.of(skill)) {
            change.marks.push_back({skill, m_marks.of(skill), {}});
        }
    }
    const journal::Head now = head();
    if (now != session::headOf(m_before.head)) {
        change.head = now;
    }
    if (std::vector<std::string> procedures = procedureList(); procedures != m_before.procedures) {
        change.procedures = std::move(procedures);
    }
    if (!m_sheet.amend(change, reason)) {
        return false;
    }
    drop();
    return true;
}

} // namespace peelpack::instructor
