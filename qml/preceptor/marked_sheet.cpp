#include "qml/preceptor/marked_sheet.h"

#include "core/sheet/identifiers.h"
#include "qml/preceptor/sitting.h"
#include "qml/words/bridge.h"
#include "qml/words/sentences.h"
#include "qml/words/words.h"

#include <algorithm>
#include <array>

namespace peelpack::preceptor {
namespace {

constexpr qsizetype mostProcedure = 120;
constexpr qsizetype mostReason = 200;
constexpr qsizetype mostFeedback = 500;

QString helpFor(sheet::Skill skill)
{
    switch (skill) {
    case sheet::Skill::Verify:
        return Sitting::tr("against the preference card");
    case sheet::Skill::Counts:
        return Sitting::tr("with the circulator");
    case sheet::Skill::Technique:
        return Sitting::tr("a break that was seen and mended is Yes");
    default:
        return {};
    }
}

bool isSkill(int skill)
{
    return skill >= 0 && skill < static_cast<int>(sheet::skillCount);
}

} // namespace

MarkedSheet::MarkedSheet(const record::SheetRecord& record)
    : m_id(words::fromUtf8(record.id.hex())), m_before(record.content.marks.marks),
      m_reasons(static_cast<qsizetype>(sheet::skillCount))
{
    m_marks.sheet = session::idOf(record.id);
    m_marks.procedures = record.content.procedures;
    m_marks.head = session::headOf(record.content.head);
}

MarkedSheet::MarkedSheet(const journal::SigningRequest& request)
    : m_id(words::fromUtf8(keys::hex(request.sheet.view()))), m_reasons(static_cast<qsizetype>(sheet::skillCount))
{
    m_marks.sheet = request.sheet;
    m_marks.procedures = request.procedures;
    m_marks.head = request.head;
}

QString MarkedSheet::head(base::Date today) const
{
    const journal::Head& head = m_marks.head;
    QStringList parts{words::day(head.date, today)};
    for (const std::string* part : {&head.surgeon, &head.site, &head.room}) {
        if (!part->empty()) {
            parts.append(words::fromUtf8(*part));
        }
    }
    const QString start = words::minute(head.start);
    if (!start.isEmpty()) {
        const QString end = words::minute(head.end);
        parts.append(end.isEmpty() ? start : Sitting::tr("%1 to %2").arg(start, end));
    }
    return parts.join(QStringLiteral(" · "));
}

QStringList MarkedSheet::procedures() const
{
    QStringList list;
    for (const std::string& procedure : m_marks.procedures) {
        list.append(words::fromUtf8(procedure));
    }
    return list;
}

const journal::SkillMark* MarkedSheet::markOf(sheet::Skill skill) const
{
    const auto found = std::find_if(m_marks.marks.begin(), m_marks.marks.end(),
                                    [&](const journal::SkillMark& mark) { return mark.skill == skill; });
    return found == m_marks.marks.end() ? nullptr : &*found;
}

std::vector<MarkingRow> MarkedSheet::rows() const
{
    std::vector<MarkingRow> rows;
    for (const sheet::Skill skill : sheet::allSkills) {
        const journal::SkillMark* made = markOf(skill);
        const sheet::Mark mark = made == nullptr ? sheet::Mark::Unmarked : made->mark;
        MarkingRow row;
        row.skill = static_cast<int>(skill);
        row.label = words::of(skill);
        row.help = helpFor(skill);
        row.firstScrub = sheet::isFirstScrubSkill(skill);
        row.mark = static_cast<int>(mark);
        row.reason = m_reasons[row.skill];
        row.asksWhy = mark == sheet::Mark::NotApplicable && row.firstScrub && row.reason.simplified().isEmpty();
        const sheet::Mark before = m_before.of(skill);
        if (before != sheet::Mark::Unmarked) {
            row.before = Sitting::tr("marked already: %1").arg(words::of(before));
        }
        rows.push_back(row);
    }
    return rows;
}

int MarkedSheet::open() const
{
    return static_cast<int>(sheet::skillCount - m_marks.marks.size());
}

QString MarkedSheet::missing() const
{
    if (canceled()) {
        return {};
    }
    if (m_marks.marks.empty()) {
        return Sitting::tr("Mark what you saw.");
    }
    const std::vector<MarkingRow> all = rows();
    const auto asks = std::find_if(all.begin(), all.end(), [](const MarkingRow& row) { return row.asksWhy; });
    return asks == all.end() ? QString() : Sitting::tr("Say why \"%1\" is N/A.").arg(asks->label);
}

QString MarkedSheet::feedbackWarning() const
{
    const auto hits = sheet::findIdentifiers(m_marks.feedback);
    return hits.empty() ? QString()
                        : Sitting::tr("This looks like %1. No patient names, numbers, ages or birth dates belong here.")
                              .arg(words::of(hits.front().kind));
}

QStringList MarkedSheet::readBack(base::Date today, const QString& student) const
{
    QStringList lines{Sitting::tr("%1: %2 for %3")
                          .arg(words::day(m_marks.head.date, today), words::listed(m_marks.procedures), student)};
    if (canceled()) {
        lines.append(Sitting::tr("The case was canceled before incision."));
    }
    if (!canceled() || !m_marks.marks.empty()) {
        std::array<QStringList, 4> byMark; // by sheet::Mark
        for (const sheet::Skill skill : sheet::allSkills) {
            const journal::SkillMark* made = markOf(skill);
            QString label = words::inList(skill);
            if (made != nullptr && !made->reason.empty()) {
                label += QStringLiteral(" (") + words::fromUtf8(made->reason) + QStringLiteral(")");
            }
            byMark.at(static_cast<std::size_t>(made == nullptr ? sheet::Mark::Unmarked : made->mark)).append(label);
        }
        const std::pair<sheet::Mark, QString> groups[]{{sheet::Mark::Yes, Sitting::tr("Yes: %1")},
                                                       {sheet::Mark::No, Sitting::tr("No: %1")},
                                                       {sheet::Mark::NotApplicable, Sitting::tr("N/A: %1")},
                                                       {sheet::Mark::Unmarked, Sitting::tr("You did not see: %1")}};
        for (const auto& [mark, form] : groups) {
            const QStringList& labels = byMark.at(static_cast<std::size_t>(mark));
            if (!labels.isEmpty()) {
                lines.append(form.arg(words::listed(labels)));
            }
        }
    }
    if (!m_marks.feedback.empty()) {
        lines.append(Sitting::tr("Feedback: %1").arg(words::fromUtf8(m_marks.feedback)));
    }
    return lines;
}

void MarkedSheet::correct(int procedure, const QString& text)
{
    const std::string line = words::line(text, mostProcedure);
    if (procedure >= 0 && procedure < static_cast<int>(m_marks.procedures.size()) && !line.empty()) {
        m_marks.procedures[static_cast<std::size_t>(procedure)] = line;
    }
}

void MarkedSheet::setFeedback(const QString& text)
{
    m_feedback = text.left(mostFeedback);
    m_marks.feedback = words::line(text, mostFeedback);
}

void MarkedSheet::put(sheet::Skill skill, sheet::Mark mark)
{
    std::vector<journal::SkillMark>& marks = m_marks.marks;
    std::erase_if(marks, [&](const journal::SkillMark& old) { return old.skill == skill; });
    if (mark != sheet::Mark::Unmarked) {
        const std::string why = mark == sheet::Mark::NotApplicable
                                    ? words::line(m_reasons[static_cast<int>(skill)], mostReason)
                                    : std::string();
        const auto place =
            std::find_if(marks.begin(), marks.end(), [&](const journal::SkillMark& old) { return old.skill > skill; });
        marks.insert(place, {skill, mark, why});
    }
}

void MarkedSheet::mark(int skill, int mark)
{
    if (isSkill(skill) && mark >= 0 && mark <= static_cast<int>(sheet::Mark::NotApplicable)) {
        put(static_cast<sheet::Skill>(skill), static_cast<sheet::Mark>(mark));
    }
}

void MarkedSheet::reason(int skill, const QString& text)
{
    if (!isSkill(skill)) {
        return;
    }
    m_reasons[skill] = text.left(mostReason);
    if (const journal::SkillMark* made = markOf(static_cast<sheet::Skill>(skill))) {
        put(made->skill, made->mark);
    }
}

void MarkedSheet::markFirstScrubYes()
{
    for (const sheet::Skill skill : sheet::allSkills) {
        if (sheet::isFirstScrubSkill(skill)) {
            put(skill, sheet::Mark::Yes);
        }
    }
}

} // namespace peelpack::preceptor
