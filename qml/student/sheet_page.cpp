#include "qml/student/sheet_page.h"

#include "core/record/sheet_role.h"
#include "platform/session/directory.h"
#include "qml/words/bridge.h"
#include "qml/words/history.h"
#include "qml/words/words.h"

#include <algorithm>

namespace peelpack::student {
namespace {

constexpr qsizetype mostReason = 400;

/// The categories under which a procedure may be filed, the usual one first; all of them for one that the catalogue
/// does not have.
catalogue::CategoryList categoriesOf(const catalogue::Catalogue& catalogue, const std::string& procedure)
{
    const auto found = catalogue.byExactName(procedure);
    if (found.size() == 1) {
        return found.front()->categories;
    }
    catalogue::CategoryList all;
    for (std::size_t i = 0; i < catalogue::categoryCount; ++i) {
        if (!catalogue::isApart(catalogue::categoryAt(i))) {
            all.add(catalogue::categoryAt(i));
        }
    }
    return all;
}

} // namespace

SheetPage::SheetPage(Desk& desk, WaitingList& waitingFor, QObject* parent)
    : QObject(parent), m_desk(desk), m_waitingFor(waitingFor)
{
    connect(&desk, &Desk::changed, this, &SheetPage::refresh);
}

void SheetPage::show(const QString& id)
{
    m_id = id;
    m_error.clear();
    refresh();
}

void SheetPage::refresh()
{
    const record::SheetRecord* sheet = m_desk.sheet(m_id);
    if (sheet == nullptr) {
        m_row = {};
        m_imported.clear();
        m_open = m_canSign = m_canFile = m_canWithdraw = m_marked = false;
        m_places.put({});
        m_marks.put({});
        Q_EMIT changed();
        return;
    }
    using record::SheetStanding;
    m_waiting = m_waitingFor.of(*sheet);
    m_row = sheetRow(m_desk, *sheet, m_waiting);
    const bool gone = sheet->standing == SheetStanding::Withdrawn || sheet->standing == SheetStanding::Void;
    m_open = sheet->standing == SheetStanding::Open;
    m_canSign = !gone && !sheet->imported && sheet->standing != SheetStanding::Initialed &&
                !sheet->content.marks.marks.complete() && !(sheet->content.head.canceled && sheet->isSigned());
    m_canFile = !gone && !sheet->imported && sheet->standing != SheetStanding::Initialed &&
                sheet->standing != SheetStanding::Amended;
    m_canWithdraw = !gone;
    m_imported = words::importOf(*sheet);
    m_marked = sheet->imported || !sheet->content.marks.marks.none() || sheet->content.head.canceled;
    const role::Outcome outcome = record::outcomeOf(*sheet, m_desk.roleRules());
    m_role = words::of(outcome);
    m_why = words::roleReason(*sheet, m_desk.roleRules());

    m_signers.clear();
    for (const record::Signer& signer : sheet->signers) {
        const record::Attested& by = signer.statement;
        QString line = words::fromUtf8(by.name);
        if (!by.credential.empty()) {
            line += QStringLiteral(", ") + words::fromUtf8(by.credential);
        }
        line += QStringLiteral(" · ") + words::of(by.strength);
        if (signer.afterInitial) {
            line += QStringLiteral(" · ") + tr("after it was initialed: without effect");
        } else if (signer.otherContent) {
            line += QStringLiteral(" · ") + tr("signed another procedure, date, site or room");
        }
        m_signers.append(line);
    }
    m_feedback = words::feedback(*sheet);
    m_history = words::history(*sheet, m_desk.today());
    m_original.clear();
    if (sheet->original && sheet->imported) {
        m_original = tr("As it was imported: %1.").arg(words::listed(sheet->original->procedures));
    } else if (sheet->original) {
        m_original = tr("As it was signed: %1; %2.")
                         .arg(words::listed(sheet->original->procedures),
                              words::of(role::classify(sheet->original->marks.marks, sheet->original->head.canceled,
                                                       m_desk.roleRules())));
    }
    m_preceptors.clear();
    if (m_open) {
        readPreceptors(*sheet);
    }
    readMarks(*sheet);
    readPlaces(*sheet, outcome);
    readCounting(*sheet);
    Q_EMIT changed();
}

void SheetPage::readPreceptors(const record::SheetRecord& sheet)
{
    const session::Directory directory(m_desk.session());
    for (const session::Preceptor& preceptor : directory.preceptors()) {
        if (sheet.content.head.site.empty() || preceptor.site == sheet.content.head.site) {
            m_preceptors.append(words::fromUtf8(preceptor.name));
        }
    }
}

void SheetPage::readMarks(const record::SheetRecord& sheet)
{
    std::vector<MarkRow> rows;
    for (const sheet::Skill skill : sheet::allSkills) {
        const sheet::Mark mark = sheet.content.marks.marks.of(skill);
        MarkRow row{static_cast<int>(skill), words::of(skill), words::of(mark), {}, false};
        const std::string& why = sheet.content.marks.reason(skill);
        row.note = words::fromUtf8(why);
        bool asked = false;
        for (const record::Review& review : sheet.reviews) {
            if (review.asked.skill != skill) {
                continue;
            }
            asked = asked || review.answer == record::Review::Answer::Pending;
            row.note = review.answer == record::Review::Answer::Pending    ? tr("You asked for a review: %1")
                       : review.answer == record::Review::Answer::Accepted ? tr("Your review was accepted: %1")
                                                                           : tr("Your review was declined: %1");
            row.note = row.note.arg(words::fromUtf8(
                review.answer == record::Review::Answer::Pending ? review.asked.reason : review.reason));
        }
        for (const record::DisputedMark& disputed : sheet.disputed) {
            if (disputed.skill == skill && !disputed.settled) {
                row.note = tr("Two preceptors differ; No stands until your instructor rules.");
            }
        }
        row.canAsk = sheet.isSigned() && !asked && mark != sheet::Mark::Yes && mark != sheet::Mark::Unmarked &&
                     sheet.standing != record::SheetStanding::Withdrawn &&
                     sheet.standing != record::SheetStanding::Void;
        rows.push_back(row);
    }
    m_marks.put(std::move(rows));
}

void SheetPage::readPlaces(const record::SheetRecord& sheet, role::Outcome outcome)
{
    std::vector<PlaceRow> rows;
    const Desk::Counted* counted = m_desk.counted();
    const bool second = outcome == role::Outcome::Second;
    const bool counts = second || outcome == role::Outcome::First;
    for (std::size_t p = 0; p < sheet.content.procedures.size(); ++p) {
        const std::string& procedure = sheet.content.procedures[p];
        const catalogue::CategoryList categories = categoriesOf(m_desk.shelf().catalogue(), procedure);
        std::optional<catalogue::Category> logged;
        for (const record::Choice& choice : sheet.content.choices) {
            if (choice.procedure == p) {
                logged = choice.category;
            }
        }
        const bool known = m_desk.shelf().catalogue().byExactName(procedure).size() == 1;
        if (!logged && known) {
            logged = categories.front();
        }
        std::optional<catalogue::Category> best;
        if (counted != nullptr && counts) {
            const auto candidate = counted->candidateOf(m_desk.shortName(sheet), static_cast<std::uint32_t>(p + 1));
            if (candidate && counted->tally.best.seats[*candidate].counts()) {
                best = catalogue::categoryAt(static_cast<std::size_t>(counted->tally.best.seats[*candidate].category));
            }
        }
        for (const catalogue::Category category : categories) {
            PlaceRow row;
            row.procedure = static_cast<int>(p);
            row.procedureName = words::fromUtf8(procedure);
            row.category = words::fromUtf8(catalogue::id(category));
            row.label = words::of(category);
            row.outlined = second || catalogue::isApart(category);
            row.chosen = logged == category;
            if (counted != nullptr) {
                for (std::size_t t = 0; t < counted->set.targets.size(); ++t) {
                    if (counted->set.targets[t].isFirstScrub() != row.outlined) {
                        row.count +=
                            static_cast<int>(counted->tally.best.targets[t].byCategory[catalogue::indexOf(category)]);
                    }
                }
                row.words = row.outlined ? tr("Counted so far, second scrub: %1").arg(row.count)
                                         : tr("Counted so far, first scrub: %1").arg(row.count);
            }
            if (category == catalogue::Category::LaborDelivery) {
                row.words += (row.words.isEmpty() ? QString() : QStringLiteral("\n")) +
                             tr("A C-section is obstetrics and gynecology.");
            }
            if (categories.size() > 1 && best == category && known) {
                row.hint = tr("Helps most");
            }
            rows.push_back(row);
        }
    }
    m_places.put(std::move(rows));
}

void SheetPage::readCounting(const record::SheetRecord& sheet)
{
    m_counts.clear();
    const Desk::Counted* counted = m_desk.counted();
    if (counted == nullptr) {
        m_counts = m_desk.countError();
        return;
    }
    const tally::StudentTally& tally = counted->tally;
    QStringList lines;
    for (std::size_t i = 0; i < tally.candidates.size(); ++i) {
        if (tally.candidates[i].sheet->id != m_desk.shortName(sheet)) {
            continue;
        }
        const tally::Seat& seat = tally.best.seats[i];
        if (seat.counts()) {
            lines.append(tr("Filed under %1. Counts toward: %2.")
                             .arg(words::of(catalogue::categoryAt(static_cast<std::size_t>(seat.category))),
                                  words::of(counted->set.targets[static_cast<std::size_t>(seat.target)])));
        } else {
            lines.append(words::of(tally::whyNotCounted(counted->set, tally, tally.best, i)));
        }
    }
    lines.removeDuplicates();
    m_counts = lines.join(QLatin1Char('\n'));
}

bool SheetPage::write(const journal::Payload& payload)
{
    m_error = m_desk.write({payload});
    Q_EMIT changed();
    return m_error.isEmpty();
}

bool SheetPage::file(int procedure, const QString& category)
{
    const record::SheetRecord* sheet = m_desk.sheet(m_id);
    if (sheet == nullptr || !m_canFile) {
        return false;
    }
    journal::Logged logged{session::idOf(sheet->id), {}};
    for (std::size_t p = 0; p < sheet->content.procedures.size(); ++p) {
        journal::Choice choice{static_cast<std::uint8_t>(p), {}, 0};
        for (const record::Choice& known : sheet->content.choices) {
            if (known.procedure == p) {
                choice.joined = known.joined;
                choice.category = known.category ? std::string(catalogue::id(*known.category)) : std::string();
            }
        }
        if (choice.category.empty()) {
            const auto found = m_desk.shelf().catalogue().byExactName(sheet->content.procedures[p]);
            if (found.size() == 1) {
                choice.category = catalogue::id(found.front()->categories.front());
            }
        }
        if (static_cast<int>(p) == procedure) {
            choice.category = category.toStdString();
        }
        if (!choice.category.empty()) {
            logged.choices.push_back(choice);
        }
    }
    return write(logged);
}

bool SheetPage::askReview(int skill, const QString& reason)
{
    const record::SheetRecord* sheet = m_desk.sheet(m_id);
    if (sheet == nullptr || skill < 0 || skill >= static_cast<int>(sheet::skillCount)) {
        return false;
    }
    if (reason.simplified().isEmpty()) {
        m_error = tr("Say why the mark should be Yes; your instructor reads it.");
        Q_EMIT changed();
        return false;
    }
    return write(journal::ReviewAsked{session::idOf(sheet->id),
                                      {static_cast<sheet::Skill>(skill), sheet::Mark::Yes, {}},
                                      words::line(reason, mostReason)});
}

bool SheetPage::withdraw(const QString& reason)
{
    const record::SheetRecord* sheet = m_desk.sheet(m_id);
    if (sheet == nullptr) {
        return false;
    }
    if (reason.simplified().isEmpty()) {
        m_error = tr("Say why you withdraw the sheet; it stays visible with your reason.");
        Q_EMIT changed();
        return false;
    }
    return write(journal::Withdrawn{session::idOf(sheet->id), words::line(reason, mostReason)});
}

bool SheetPage::cancelBeforeIncision()
{
    const record::SheetRecord* sheet = m_desk.sheet(m_id);
    if (sheet == nullptr || !m_open) {
        return false;
    }
    journal::HeadChanged change{session::idOf(sheet->id), session::idOf(sheet->operation),
                                session::draftOf(sheet->content)};
    change.draft.head.canceled = !change.draft.head.canceled;
    return write(change);
}

bool SheetPage::waitFor(const QString& preceptor)
{
    m_error = m_waitingFor.note(m_id, preceptor);
    Q_EMIT changed();
    return m_error.isEmpty();
}

} // namespace peelpack::student
