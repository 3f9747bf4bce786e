#include "qml/instructor/checked_sheet.h"

#include "core/sheet/identifiers.h"

#include "platform/session/checks.h"
#include "qml/instructor/check_words.h"
#include "qml/words/bridge.h"
#include "qml/words/history.h"
#include "qml/words/sentences.h"
#include "qml/words/words.h"

#include <algorithm>

namespace peelpack::instructor {

CheckedSheet::CheckedSheet(StaffDesk& desk, Checks& checks, CheckList& list, PendingActs& pending, QObject* parent)
    : QObject(parent), m_desk(desk), m_checks(checks), m_list(list), m_pending(pending)
{
    connect(&list, &CheckList::changed, this, &CheckedSheet::refresh);
}

std::optional<session::SheetPlace> CheckedSheet::place()
{
    const auto key = SheetKey::fromText(m_key);
    const record::SheetRecord* sheet = key ? m_desk.sheet(*key) : nullptr;
    return sheet == nullptr ? std::nullopt
                            : std::optional(session::SheetPlace{key->student, session::idOf(sheet->id), *sheet});
}

void CheckedSheet::refresh()
{
    if (m_key != m_list.current()) {
        m_key = m_list.current();
        m_error.clear();
    }
    const auto key = SheetKey::fromText(m_key);
    const Student* student = key ? m_desk.student(key->student) : nullptr;
    const record::SheetRecord* sheet = student == nullptr ? nullptr : m_desk.sheet(*key);
    if (sheet == nullptr) {
        m_key.clear();
        m_row = {};
        m_canAct = m_canInitial = false;
        Q_EMIT changed();
        return;
    }
    readWords(*student, *sheet);
    readMarks(*sheet);
    readBeside(*sheet);
    readReviews(*student, *sheet);
    readOthers(*student, *sheet);
    readFilings(*sheet);
    readRights(*key, *sheet);
    Q_EMIT changed();
}

void CheckedSheet::readWords(const Student& student, const record::SheetRecord& sheet)
{
    const std::vector<questions::SheetQuestion> asked = m_checks.questionsOf(student, sheet);
    m_row = m_list.rowOf(student, sheet, asked);
    m_questions.clear();
    for (const questions::SheetQuestion& question : asked) {
        m_questions.append(inWords(question));
    }
    for (const session::TimeQuestion& question : session::timeQuestions(m_desk.session(), student.person.id)) {
        if (question.sheet && session::idOf(*question.sheet) == sheet.id) {
            m_questions.append(inWords(question.asked.sort));
        }
    }
    if (sheet.withdrawal && !sheet.withdrawal->stands) {
        m_questions.append(tr("The student's reason: %1").arg(words::fromUtf8(sheet.withdrawal->reason)));
    }
    m_differences = differencesOf(m_desk.catalogue(), sheet, m_desk.today());
    m_why = words::roleReason(sheet, student.rules.roles);
    m_imported = words::importOf(sheet);
    m_signers.clear();
    for (const record::Signer& signer : sheet.signers) {
        const record::Attested& by = signer.statement;
        QStringList line{words::fromUtf8(by.credential.empty() ? by.name : by.name + ", " + by.credential),
                         words::of(by.strength), words::moment(by.signedAt, m_desk.today())};
        if (student.notTheirs.contains(signer.entry)) {
            line.append(tr("says: not mine"));
        }
        if (signer.confirmed) {
            line.append(tr("confirmed with the preceptor"));
        }
        if (signer.afterInitial) {
            line.append(tr("after it was initialed: without effect"));
        }
        m_signers.append(line.join(QStringLiteral(" · ")));
    }
    m_feedback = words::feedback(sheet);
    m_history = words::history(sheet, m_desk.today());
    m_original.clear();
    if (sheet.original && sheet.imported) {
        m_original =
            tr("As it was imported: %1; %2; %3.")
                .arg(words::listed(sheet.original->procedures), headInWords(sheet.original->head, m_desk.today()),
                     filedInWords(m_desk.catalogue(), *sheet.original, 0));
    } else if (sheet.original) {
        m_original =
            tr("As it was signed and logged: %1; %2; %3; %4.")
                .arg(words::listed(sheet.original->procedures), headInWords(sheet.original->head, m_desk.today()),
                     words::of(outcomeOf(student, *sheet.original)),
                     filedInWords(m_desk.catalogue(), *sheet.original, 0));
    }
}

void CheckedSheet::readMarks(const record::SheetRecord& sheet)
{
    std::vector<CheckedMarkRow> rows;
    for (const sheet::Skill skill : sheet::allSkills) {
        if (sheet.imported) {
            break; // it has none
        }
        const sheet::Mark mark = sheet.content.marks.marks.of(skill);
        CheckedMarkRow row{static_cast<int>(skill),
                           words::of(skill),
                           words::of(mark),
                           {},
                           words::fromUtf8(sheet.content.marks.reason(skill)),
                           sheet::isFirstScrubSkill(skill),
                           mark == sheet::Mark::Yes};
        QStringList given;
        bool otherwise = false;
        for (const record::Signer& signer : sheet.signers) {
            const sheet::Mark theirs = signer.statement.marks.marks.of(skill);
            if (theirs != sheet::Mark::Unmarked) {
                given.append(words::fromUtf8(signer.statement.name) + QStringLiteral(": ") + words::of(theirs));
                otherwise = otherwise || theirs != mark;
            }
        }
        if (otherwise) {
            row.given = given.join(QStringLiteral(" · "));
        } else if (given.isEmpty() && mark != sheet::Mark::Unmarked && !sheet.signers.empty()) {
            row.given = tr("not marked by the preceptor");
        }
        rows.push_back(row);
    }
    m_marks.put(std::move(rows));
}

void CheckedSheet::readBeside(const record::SheetRecord& sheet)
{
    const catalogue::Catalogue& catalogue = m_desk.catalogue();
    // What the preceptor read before signing, or what stands where nobody signed.
    record::Content left = sheet.original.value_or(sheet.content);
    record::Content right = left;
    if (sheet.isSigned()) {
        left.procedures = sheet.signers.front().statement.procedures;
        left.head = sheet.signers.front().statement.head;
    }
    if (sheet.unsignedVersion) {
        right.procedures = sheet.unsignedVersion->draft.procedures;
        right.head = sheet.unsignedVersion->draft.head;
    }
    std::vector<BesideRow> rows;
    const auto add = [&](const QString& label, const QString& one, const QString& other) {
        if (!one.isEmpty() || !other.isEmpty()) {
            rows.push_back({label, one, other, one != other});
        }
    };
    const auto text = [](const std::string& value) { return words::fromUtf8(value); };
    const auto times = [](const record::Head& head) {
        return head.start == record::notSaid
                   ? QString()
                   : words::minute(head.start) + QStringLiteral("–") + words::minute(head.end);
    };
    add(tr("Procedure"), words::listed(left.procedures), words::listed(right.procedures));
    add(tr("Date"), words::day(left.head.date, m_desk.today()), words::day(right.head.date, m_desk.today()));
    add(tr("Surgeon"), text(left.head.surgeon), text(right.head.surgeon));
    add(tr("Site"), text(left.head.site), text(right.head.site));
    add(tr("Room"), text(left.head.room), text(right.head.room));
    add(tr("Times"), times(left.head), times(right.head));
    for (std::size_t i = 0; i < right.procedures.size(); ++i) {
        QStringList names;
        const catalogue::CategoryList usual = categoriesFor(catalogue, right.procedures[i]);
        for (const catalogue::Category category : usual) {
            names.append(words::of(category));
        }
        const auto filed = filedUnder(catalogue, right, i);
        const bool fits = filed && std::find(usual.begin(), usual.end(), *filed) != usual.end();
        const bool known = catalogue.byExactName(right.procedures[i]).size() == 1;
        rows.push_back(
            {right.procedures.size() > 1 ? tr("Filed under (%1)").arg(text(right.procedures[i])) : tr("Filed under"),
             known ? tr("catalog: %1").arg(names.join(QStringLiteral(", "))) : tr("not in the catalog"),
             filedInWords(catalogue, right, i), !fits});
    }
    m_beside.put(std::move(rows));
}

void CheckedSheet::readReviews(const Student& student, const record::SheetRecord& sheet)
{
    std::vector<AskedReviewRow> rows;
    for (const record::Review& review : sheet.reviews) {
        if (review.answer != record::Review::Answer::Pending) {
            continue;
        }
        const sheet::Mark now = sheet.content.marks.marks.of(review.asked.skill);
        record::Content then = sheet.content;
        then.marks.set(review.asked.skill, review.asked.wanted);
        const role::Outcome before = outcomeOf(student, sheet.content);
        const role::Outcome after = outcomeOf(student, then);
        rows.push_back({static_cast<int>(review.asked.skill),
                        tr("%1 is %2; the student asks for %3.")
                            .arg(words::of(review.asked.skill), words::of(now), words::of(review.asked.wanted)),
                        words::fromUtf8(review.asked.reason),
                        before == after ? tr("If you accept it, the role stays: %1.").arg(words::of(after))
                                        : tr("If you accept it, the role becomes: %1.").arg(words::of(after))});
    }
    m_reviews.put(std::move(rows));
}

void CheckedSheet::readOthers(const Student& owner, const record::SheetRecord& sheet)
{
    std::vector<OtherSheetRow> rows;
    const bool first = outcomeOf(owner, sheet) == role::Outcome::First;
    for (const SheetKey& other : m_checks.sharedWith({owner.person.id, sheet.id})) {
        const Student* student = m_desk.student(other.student);
        const record::SheetRecord* found = m_desk.sheet(other);
        if (student == nullptr || found == nullptr) {
            continue;
        }
        QStringList yes;
        for (const sheet::Skill skill : sheet::allSkills) {
            if (found->content.marks.marks.of(skill) == sheet::Mark::Yes) {
                yes.append(words::of(skill));
            }
        }
        const role::Outcome outcome = outcomeOf(*student, *found);
        rows.push_back({other.text(), words::fromUtf8(student->person.name), words::of(outcome),
                        standingInWords(*found),
                        words::listed(found->content.procedures) + QStringLiteral(" · ") +
                            headInWords(found->content.head, m_desk.today()),
                        yes.isEmpty() ? tr("No skill is Yes.") : tr("Yes: %1.").arg(words::listed(yes)),
                        first && outcome == role::Outcome::First});
    }
    m_others.put(std::move(rows));
}

void CheckedSheet::readFilings(const record::SheetRecord& sheet)
{
    std::vector<FilingRow> rows;
    for (std::size_t i = 0; i < sheet.content.procedures.size(); ++i) {
        const auto filed = filedUnder(m_desk.catalogue(), sheet.content, i);
        catalogue::CategoryList places = categoriesFor(m_desk.catalogue(), sheet.content.procedures[i]);
        for (std::size_t c = 0; c < catalogue::categoryCount; ++c) {
            if (std::find(places.begin(), places.end(), catalogue::categoryAt(c)) == places.end()) {
                places.add(catalogue::categoryAt(c));
            }
        }
        for (const catalogue::Category category : places) {
            rows.push_back({static_cast<int>(i), words::fromUtf8(sheet.content.procedures[i]),
                            words::fromUtf8(catalogue::id(category)), words::of(category), filed == category});
        }
    }
    m_filings.put(std::move(rows));
}

void CheckedSheet::readRights(const SheetKey& key, const record::SheetRecord& sheet)
{
    m_bar = words::said(m_desk.session().writeBar().sentence);
    const bool pending = m_pending.concerns(key);
    m_canAct = m_bar.isEmpty() && sheet.standing != record::SheetStanding::Void && !pending;
    m_canInitial =
        m_canAct && sheet.standing != record::SheetStanding::Withdrawn && (sheet.isSigned() || sheet.imported) &&
        !(sheet.standing == record::SheetStanding::Initialed && !Checks::waits(*m_desk.student(key.student), sheet));
    if (pending) {
        m_bar = tr("Decided a moment ago: undo it to change your mind.");
    } else if (sheet.standing == record::SheetStanding::Void) {
        m_bar = tr("The sheet is void; nothing more can be done with it.");
    } else if (m_canInitial && m_checks.isOwn(sheet)) {
        m_canInitial = false;
        m_bar = tr("You signed this sheet yourself. Nobody initials alone what they signed: another instructor "
                   "initials it.");
    }
    m_asksToConfirm = !sheet.imported && m_checks.acceptance(sheet) != session::Acceptance::AsItIs;
    m_needsReason.clear();
    if (m_checks.isSecondFirstScrub(key, sheet)) {
        m_needsReason = tr("Another student has a first scrub on this operation. Say why both count.");
    } else if (questions::isReviewAsked(sheet)) {
        m_needsReason = tr("Initialing declines the mark review. Say why the mark stands.");
    }
}

bool CheckedSheet::refuse(const QString& why)
{
    m_error = why;
    Q_EMIT changed();
    return false;
}

std::string CheckedSheet::reasonFrom(const QString& text)
{
    std::string reason = words::line(text, mostReason);
    if (reason.empty()) {
        refuse(tr("This needs a reason; it stays beside the sheet for good."));
    }
    return reason;
}

bool CheckedSheet::decide(base::Result<session::Writing> made, const QString& what)
{
    const auto key = SheetKey::fromText(m_key);
    if (!made || !key) {
        return refuse(made ? tr("There is no such sheet here.") : words::why(made.error()));
    }
    if (!m_canAct) {
        return refuse(m_bar);
    }
    const int from = m_list.at();
    constexpr qsizetype mostTitle = 40;
    const bool tooLong = m_row.title.size() > mostTitle;
    const QString title = tooLong ? m_row.title.left(mostTitle).trimmed() + QStringLiteral("…") : m_row.title;
    const QString text = what.arg(m_row.student, title);
    if (!m_pending.decide({std::move(made).value()}, {*key}, text)) {
        return refuse(m_pending.error());
    }
    if (from >= 0) {
        m_list.moveOn(from);
    }
    return true;
}

bool CheckedSheet::initial(const QString& reason, bool confirmed)
{
    const auto at = place();
    if (!at) {
        return false;
    }
    if (!m_canInitial) {
        return refuse(m_bar.isEmpty() ? tr("Nobody has signed this sheet yet.") : m_bar);
    }
    const std::string why = words::line(reason, mostReason);
    if (!m_needsReason.isEmpty() && why.empty()) {
        return refuse(m_needsReason);
    }
    return decide(session::initialing(m_desk.session(), *at, confirmed, why, m_checks.shared()),
                  tr("Initialed: %1, %2"));
}

bool CheckedSheet::giveBack(const QString& question)
{
    const auto at = place();
    const std::string why = reasonFrom(question);
    return at && !why.empty() && decide(session::returning(m_desk.session(), *at, why), tr("Returned: %1, %2"));
}

bool CheckedSheet::voidSheet(const QString& reason)
{
    const auto at = place();
    const std::string why = reasonFrom(reason);
    return at && !why.empty() && decide(session::voiding(m_desk.session(), *at, why), tr("Voided: %1, %2"));
}

bool CheckedSheet::acceptReview(int skill, const QString& reason)
{
    const auto at = place();
    const std::string why = reasonFrom(reason);
    if (!at || why.empty() || skill < 0 || skill >= static_cast<int>(sheet::skillCount)) {
        return false;
    }
    return decide(
        session::acceptingReview(m_desk.session(), *at, static_cast<sheet::Skill>(skill), why, m_checks.shared()),
        tr("Mark review accepted: %1, %2"));
}

bool CheckedSheet::refile(int procedure, const QString& category, const QString& reason)
{
    const auto at = place();
    const std::string why = reasonFrom(reason);
    if (!at || why.empty()) {
        return false;
    }
    std::vector<journal::Choice> choices;
    const record::Content& content = at->record.content;
    for (std::size_t i = 0; i < content.procedures.size(); ++i) {
        journal::Choice choice{static_cast<std::uint8_t>(i), {}, 0};
        for (const record::Choice& known : content.choices) {
            choice.joined = known.procedure == i ? known.joined : choice.joined;
        }
        if (const auto filed = filedUnder(m_desk.catalogue(), content, i)) {
            choice.category = catalogue::id(*filed);
        }
        if (static_cast<int>(i) == procedure) {
            choice.category = category.toStdString();
        }
        if (!choice.category.empty()) {
            choices.push_back(std::move(choice));
        }
    }
    return decide(session::refiling(m_desk.session(), *at, std::move(choices), why), tr("Re-filed: %1, %2"));
}

bool CheckedSheet::amend(const session::SheetChange& change, const QString& reason)
{
    const auto at = place();
    const std::string why = reasonFrom(reason);
    return at && !why.empty() && decide(session::amending(m_desk.session(), *at, change, why), tr("Changed: %1, %2"));
}

QString CheckedSheet::suspicion(const QString& text) const
{
    const std::vector<sheet::IdentifierHit> hits = sheet::findIdentifiers(text.toStdString());
    return hits.empty() ? QString()
                        : tr("This looks like %1. No patient identifiers belong here, and what is written stays.")
                              .arg(words::of(hits.front().kind));
}

} // namespace peelpack::instructor
