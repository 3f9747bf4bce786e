#include "qml/student/tally_page.h"

#include "platform/session/completion.h"
#include "qml/student/other_sets.h"
#include "qml/words/rules.h"
#include "qml/words/words.h"
#include "sync/merge/record_content.h"

#include <QCoreApplication>

#include <map>

namespace peelpack::student {
namespace {

constexpr std::size_t mostNext = 3;

CountRow rowOf(const requirement::Target& target, const tally::TargetCount& count)
{
    return {words::capitalized(words::of(target)),
            QCoreApplication::translate("TallyPage", "%1 of %2").arg(count.placed).arg(target.required),
            static_cast<int>(count.placed),
            static_cast<int>(target.required),
            !target.isFirstScrub(),
            true};
}

} // namespace

QString nextInWords(const std::vector<tally::Need>& needs)
{
    std::map<std::pair<std::uint32_t, sheet::Role>, QStringList> groups;
    for (const tally::Need& need : needs) {
        if (need.needed > 0) {
            groups[{need.needed, need.role}].append(words::of(need.category));
        }
    }
    QStringList lines;
    for (const auto& [key, categories] : groups) {
        if (static_cast<std::size_t>(lines.size()) == mostNext) {
            break;
        }
        const bool first = key.second == sheet::Role::First;
        const bool many = static_cast<std::size_t>(categories.size()) > mostNext;
        const int others = static_cast<int>(categories.size()) - 2;
        const QString where = many ? QCoreApplication::translate("TallyPage", "%1 and %n more", nullptr, others)
                                         .arg(QStringList(categories.mid(0, 2)).join(QStringLiteral(", ")))
                                   : words::listed(categories);
        if (key.first == 1) {
            lines.append((first ? QCoreApplication::translate("TallyPage", "First scrub in %1: the next one counts.")
                                : QCoreApplication::translate("TallyPage", "Second scrub in %1: the next one counts."))
                             .arg(where));
        } else {
            lines.append(
                (first ? QCoreApplication::translate("TallyPage", "First scrub in %1: it takes %2 of one specialty.")
                       : QCoreApplication::translate("TallyPage", "Second scrub in %1: it takes %2 of one specialty."))
                    .arg(where)
                    .arg(key.first));
        }
    }
    return lines.join(QLatin1Char('\n'));
}

std::vector<CountRow> countRows(const requirement::RequirementSet& set, const tally::Count& count)
{
    std::vector<CountRow> rows;
    for (std::size_t i = 0; i < set.targets.size() && i < count.targets.size(); ++i) {
        rows.push_back(rowOf(set.targets[i], count.targets[i]));
        for (std::size_t c = 0; c < catalogue::categoryCount; ++c) {
            const auto placed = static_cast<int>(count.targets[i].byCategory[c]);
            if (placed > 0 && set.targets[i].categories.size() > 1) {
                rows.push_back({words::of(catalogue::categoryAt(c)), QString::number(placed), placed, 0,
                                !set.targets[i].isFirstScrub(), false});
            }
        }
    }
    return rows;
}

TallyPage::TallyPage(Desk& desk, QObject* parent) : QObject(parent), m_desk(desk)
{
    connect(&desk, &Desk::changed, this, &TallyPage::refresh);
    refresh();
}

void TallyPage::readCompletion()
{
    m_completion.clear();
    m_completionLines.clear();
    const std::vector<session::CompletionDecision> decisions =
        session::decisionsAbout(m_desk.session(), m_desk.session().person());
    if (decisions.empty()) {
        return;
    }
    const session::CompletionDecision& last = decisions.back();
    const bool exception = !last.exception.empty();
    m_completion = exception ? tr("Complete by exception") : tr("Complete");
    m_completionLines.append(tr("Marked complete on %1 by %2, under %3.")
                                 .arg(words::day(merge::timeOf(last.time).day(), m_desk.today()),
                                      words::fromUtf8(last.by), words::setTitle(last.requirementSet)));
    if (exception) {
        m_completionLines.append(tr("%1 of %2 cases counted when it was decided.")
                                     .arg(QString::number(last.counted), QString::number(last.required)));
        m_completionLines.append(tr("Why: %1").arg(words::fromUtf8(last.exception)));
    }
}

void TallyPage::refresh()
{
    readCompletion();
    std::vector<CountRow> counts;
    std::vector<NotCountedRow> notCounted;
    m_summary.clear();
    m_next.clear();
    m_left.clear();
    m_otherSets.clear();
    m_setTitle.clear();
    const Desk::Counted* counted = m_desk.counted();
    m_error = m_desk.countError();
    if (counted != nullptr) {
        const tally::StudentTally& tally = counted->tally;
        const requirement::RequirementSet& set = counted->set;
        m_summary = tr("%1 of %2").arg(tally.best.value.counted).arg(set.required());
        m_setTitle = words::fromUtf8(set.title);
        m_next = nextInWords(tally.next);
        m_otherSets = student::otherSets(m_desk.session(), m_desk.session().person(), counted->cases, set,
                                         tally.best.value.counted, tally::Level::Recorded);
        counts = countRows(set, tally.best);
        const record::SheetsByName byName = m_desk.sheetsByName();
        for (std::size_t i = 0; i < tally.candidates.size(); ++i) {
            if (tally.best.seats[i].counts()) {
                continue;
            }
            const tally::Candidate& candidate = tally.candidates[i];
            const auto sheet = byName.find(candidate.sheet->id);
            notCounted.push_back({sheet == byName.end() ? QString() : words::fromUtf8(sheet->second->id.hex()),
                                  words::day(candidate.sheet->date, m_desk.today()) + QStringLiteral(" · ") +
                                      words::fromUtf8(counted->cases.reading.book.procedureText(candidate.procedure)),
                                  words::of(tally::whyNotCounted(set, tally, tally.best, i))});
        }
        QStringList left;
        if (tally.observed > 0) {
            left.append(tr("%n observation(s)", nullptr, static_cast<int>(tally.observed)));
        }
        if (tally.unmarked > 0) {
            left.append(tr("%n sheet(s) not fully marked", nullptr, static_cast<int>(tally.unmarked)));
        }
        if (tally.canceled > 0) {
            left.append(tr("%n canceled case(s)", nullptr, static_cast<int>(tally.canceled)));
        }
        if (!counted->cases.notLogged.empty()) {
            left.append(
                tr("%n sheet(s) without a specialty", nullptr, static_cast<int>(counted->cases.notLogged.size())));
        }
        m_left = left.isEmpty() ? QString() : tr("Also recorded, not counted: %1.").arg(words::listed(left));
    }
    m_counts.put(std::move(counts));
    m_notCounted.put(std::move(notCounted));
    Q_EMIT changed();
}

} // namespace peelpack::student
