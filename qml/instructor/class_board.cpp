#include "qml/instructor/class_board.h"

#include "core/base/text.h"
#include "platform/session/completion.h"
#include "qml/words/words.h"

#include <algorithm>

namespace peelpack::instructor {
namespace {

enum Order { ByName, MostMissing, MostWaiting, LongestAgo };
constexpr int quietDays = 21; ///< without a sheet: worth a word to the student

} // namespace

ClassBoard::ClassBoard(StaffDesk& desk, Checks& checks, QObject* parent)
    : QObject(parent), m_desk(desk), m_checks(checks)
{
    connect(&desk, &StaffDesk::changed, this, &ClassBoard::read);
    read();
}

QStringList ClassBoard::orders()
{
    return {tr("By name"), tr("Most missing first"), tr("Most waiting first"), tr("Longest without a sheet first")};
}

void ClassBoard::readSets()
{
    m_sets.clear();
    for (const requirement::RequirementSet& set : m_desk.sets()) {
        BoardRow& said = m_sets[&set];
        for (const requirement::Target& target : set.targets) {
            said.targets.append(words::capitalized(words::of(target)));
            said.needed.append(static_cast<int>(target.required));
            said.outlined.append(!target.isFirstScrub());
        }
        said.required = static_cast<int>(set.required());
    }
}

BoardRow ClassBoard::rowOf(const Student& student) const
{
    const auto set = m_sets.find(m_desk.setOf(student));
    BoardRow row = set == m_sets.end() ? BoardRow() : set->second;
    row.id = QString::fromStdString(keys::hex(student.person.id.view()));
    row.name = words::fromUtf8(student.person.name);
    row.ofClass = words::listed(student.person.scopes);
    std::optional<base::Date> last;
    int returned = 0;
    int reviews = 0;
    for (const record::SheetRecord& sheet : student.record.sheets) {
        if (sheet.standing == record::SheetStanding::Void || sheet.standing == record::SheetStanding::Withdrawn) {
            continue;
        }
        last = last ? std::max(*last, sheet.content.head.date) : sheet.content.head.date;
        returned += sheet.standing == record::SheetStanding::Returned ? 1 : 0;
        reviews += questions::isReviewAsked(sheet) ? 1 : 0;
        if (Checks::waits(student, sheet)) {
            ++row.waiting;
            row.toCheck += m_checks.questionsOf(student, sheet).empty() ? 0 : 1;
        }
    }
    if (last) {
        row.lastSheet = words::day(*last, m_desk.today());
    }
    row.read = student.counted != nullptr;
    if (student.counted) {
        const tally::Count& best = student.counted->tally.best;
        for (const tally::TargetCount& target : best.targets) {
            row.placed.append(static_cast<int>(target.placed));
        }
        row.counted = static_cast<int>(best.value.counted);
        row.missing = std::max(0, row.required - row.counted);
    }
    QStringList state;
    const auto decisions = session::decisionsAbout(m_desk.session(), student.person.id);
    if (!decisions.empty()) {
        state.append(decisions.back().exception.empty() ? tr("complete") : tr("complete by exception"));
    }
    if (reviews > 0) {
        state.append(tr("%n mark review(s)", nullptr, reviews));
    }
    if (returned > 0) {
        state.append(tr("%n returned", nullptr, returned));
    }
    if (student.folded && decisions.empty() && (!last || m_desk.today().days() - last->days() > quietDays)) {
        state.append(last ? tr("no sheet for %n day(s)", nullptr, m_desk.today().days() - last->days())
                          : tr("no sheet yet"));
    }
    row.state = state.join(QStringLiteral(" · "));
    return row;
}

const BoardRow& ClassBoard::madeRow(const Student& student)
{
    auto& [stamp, row] = m_made[student.person.id];
    if (stamp != student.stamp || stamp == 0) {
        stamp = student.stamp;
        row = rowOf(student);
    }
    return row;
}

void ClassBoard::read()
{
    readSets();
    m_classes = QStringList{tr("All classes")} + m_desk.classes();
    std::vector<std::pair<BoardRow, const Student*>> all;
    const std::string wanted = base::foldCaseAndSpaces(m_text.toStdString());
    m_ofClass = std::min(m_ofClass, static_cast<int>(m_classes.size()) - 1);
    const std::string ofClass = m_ofClass > 0 ? m_classes[m_ofClass].toStdString() : std::string();
    for (const Student& student : m_desk.students()) {
        const bool fits =
            student.isIn(ofClass) && base::foldCaseAndSpaces(student.person.name).find(wanted) != std::string::npos;
        if (fits) {
            all.emplace_back(madeRow(student), &student);
        }
    }
    const auto lastDay = [](const Student& student) {
        base::Date last;
        for (const record::SheetRecord& sheet : student.record.sheets) {
            last = std::max(last, sheet.content.head.date);
        }
        return last;
    };
    std::stable_sort(all.begin(), all.end(), [&](const auto& a, const auto& b) {
        switch (m_order) {
        case MostMissing:
            return a.first.missing > b.first.missing;
        case MostWaiting:
            return a.first.waiting > b.first.waiting;
        case LongestAgo:
            return lastDay(*a.second) < lastDay(*b.second);
        default:
            return false; // they come by name
        }
    });
    std::vector<BoardRow> rows;
    int met = 0;
    m_targets = all.empty() ? QStringList() : all.front().first.targets;
    for (auto& [row, student] : all) {
        if (m_desk.setOf(*student) != m_desk.setOf(*all.front().second)) {
            m_targets.clear();
        }
        met += row.read && row.missing == 0 ? 1 : 0;
        rows.push_back(std::move(row));
    }
    const auto people = static_cast<int>(m_desk.students().size());
    const auto done = static_cast<int>(m_desk.countedCount());
    m_summary = done < people ? tr("Counting: %1 of %n student(s)", nullptr, people).arg(done)
                              : tr("%n student(s)", nullptr, static_cast<int>(rows.size())) + QStringLiteral(" · ") +
                                    tr("%n with all cases recorded", nullptr, met);
    m_rows.put(std::move(rows));
    Q_EMIT changed();
}

void ClassBoard::setText(const QString& text)
{
    m_text = text;
    read();
}

void ClassBoard::setOfClass(int ofClass)
{
    m_ofClass = std::clamp(ofClass, 0, static_cast<int>(m_classes.size()) - 1);
    read();
}

void ClassBoard::setOrder(int order)
{
    m_order = std::clamp(order, 0, static_cast<int>(LongestAgo));
    read();
}

} // namespace peelpack::instructor
