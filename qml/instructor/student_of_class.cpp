#include "qml/instructor/student_of_class.h"

#include "platform/session/checks.h"
#include "platform/session/completion.h"
#include "qml/instructor/check_words.h"
#include "qml/student/other_sets.h"
#include "qml/words/words.h"

#include <algorithm>

namespace peelpack::instructor {
namespace {

/// "2026-03"
std::string monthOf(base::Date date)
{
    constexpr std::size_t digits = 7;
    return date.iso().substr(0, digits);
}

std::vector<const record::SheetRecord*> latestFirst(const record::StudentRecord& student)
{
    std::vector<const record::SheetRecord*> sheets;
    for (const record::SheetRecord& sheet : student.sheets) {
        sheets.push_back(&sheet);
    }
    std::stable_sort(sheets.begin(), sheets.end(),
                     [](const auto* a, const auto* b) { return a->content.head.date > b->content.head.date; });
    return sheets;
}

} // namespace

StudentOfClass::StudentOfClass(StaffDesk& desk, Checks& checks, CheckList& list, QObject* parent)
    : QObject(parent), m_desk(desk), m_checks(checks), m_list(list)
{
    connect(&desk, &StaffDesk::changed, this, &StudentOfClass::refresh);
}

void StudentOfClass::show(const QString& id)
{
    m_id = id;
    m_level = 0;
    refresh();
}

void StudentOfClass::setLevel(int level)
{
    m_level = std::clamp(level, 0, static_cast<int>(tally::Level::Initialed));
    refresh();
}

void StudentOfClass::refresh()
{
    const auto key = SheetKey::fromText(m_id + QLatin1Char(':') + m_id);
    const Student* student = key ? m_desk.student(key->student) : nullptr;
    if (student == nullptr) {
        return;
    }
    m_name = words::fromUtf8(student->person.name);
    m_ofClass = words::listed(student->person.scopes);
    m_feedback.clear();
    for (const record::SheetRecord* sheet : latestFirst(student->record)) {
        for (const record::FeedbackText& text : sheet->feedback) {
            m_feedback.append(words::day(sheet->content.head.date, m_desk.today()) + QStringLiteral(" · ") +
                              words::fromUtf8(text.from) + QStringLiteral(": ") + words::fromUtf8(text.text));
        }
    }
    m_toAsk.clear();
    for (const session::TimeQuestion& question : session::timeQuestions(m_desk.session(), student->person.id)) {
        const journal::Time& claimed = question.asked.claimed;
        m_toAsk.append(words::moment({claimed.seconds, claimed.zone}, m_desk.today()) + QStringLiteral(" · ") +
                       inWords(question.asked.sort));
    }
    const auto decisions = session::decisionsAbout(m_desk.session(), student->person.id);
    m_decision = decisions.empty() ? QString() : inWords(decisions.back(), m_desk.today());
    readTally(*student);
    readTrends(*student);
    readSheets(*student);
    Q_EMIT changed();
}

void StudentOfClass::readTally(const Student& student)
{
    m_levels.clear();
    m_next.clear();
    m_outside.clear();
    m_otherSets.clear();
    std::vector<student::CountRow> rows;
    const requirement::RequirementSet* set = m_desk.setOf(student);
    const QString names[]{tr("Recorded: %1 of %2"), tr("Signed: %1 of %2"), tr("Initialed: %1 of %2")};
    for (int i = 0; set != nullptr && i <= static_cast<int>(tally::Level::Initialed); ++i) {
        const auto tally = m_desk.tallyAt(student.person.id, static_cast<tally::Level>(i));
        if (!tally) {
            break;
        }
        m_levels.append(names[i].arg(tally->best.value.counted).arg(set->required()));
        if (i != m_level) {
            continue;
        }
        rows = student::countRows(*set, tally->best);
        m_next = student::nextInWords(tally->next);
        m_otherSets = student::otherSets(m_desk.session(), student.person.id, student.counted->cases, *set,
                                         tally->best.value.counted, static_cast<tally::Level>(i));
        QStringList left;
        if (tally->observed > 0) {
            left.append(tr("%n observation(s)", nullptr, static_cast<int>(tally->observed)));
        }
        if (tally->unmarked > 0) {
            left.append(tr("%n sheet(s) not fully marked", nullptr, static_cast<int>(tally->unmarked)));
        }
        if (tally->canceled > 0) {
            left.append(tr("%n canceled case(s)", nullptr, static_cast<int>(tally->canceled)));
        }
        m_outside = left.isEmpty() ? QString() : tr("Also recorded, not counted: %1.").arg(words::listed(left));
    }
    m_counts.put(std::move(rows));
}

void StudentOfClass::readTrends(const Student& student)
{
    struct Seen {
        base::Date day;
        std::array<int, sheet::skillCount> yes{};
        std::array<int, sheet::skillCount> marked{};
    };
    std::map<std::string, Seen> months;
    for (const record::SheetRecord& sheet : student.record.sheets) {
        if (!sheet.isSigned() || sheet.standing == record::SheetStanding::Void ||
            sheet.standing == record::SheetStanding::Withdrawn) {
            continue;
        }
        Seen& seen = months[monthOf(sheet.content.head.date)];
        seen.day = sheet.content.head.date;
        for (std::size_t i = 0; i < sheet::skillCount; ++i) {
            const sheet::Mark mark = sheet.content.marks.marks.of(sheet::allSkills.at(i));
            seen.yes.at(i) += mark == sheet::Mark::Yes ? 1 : 0;
            seen.marked.at(i) += mark == sheet::Mark::Yes || mark == sheet::Mark::No ? 1 : 0;
        }
    }
    while (months.size() > mostMonths) {
        months.erase(months.begin());
    }
    std::vector<TrendRow> rows;
    for (std::size_t i = 0; i < sheet::skillCount && !months.empty(); ++i) {
        TrendRow row;
        row.label = words::of(sheet::allSkills.at(i));
        QStringList parts;
        for (const auto& [month, seen] : months) {
            row.yes.append(seen.yes.at(i));
            row.marked.append(seen.marked.at(i));
            parts.append(tr("%1: %2 of %3").arg(words::month(seen.day)).arg(seen.yes.at(i)).arg(seen.marked.at(i)));
        }
        row.words = parts.join(QStringLiteral(" · "));
        rows.push_back(std::move(row));
    }
    m_trends.put(std::move(rows));
}

void StudentOfClass::readSheets(const Student& student)
{
    std::vector<WaitingRow> rows;
    for (const record::SheetRecord* sheet : latestFirst(student.record)) {
        WaitingRow row = m_list.rowOf(student, *sheet,
                                      Checks::waits(student, *sheet) ? m_checks.questionsOf(student, *sheet)
                                                                     : std::vector<questions::SheetQuestion>());
        row.looked = false;
        rows.push_back(std::move(row));
    }
    m_sheets.put(std::move(rows));
}

} // namespace peelpack::instructor
