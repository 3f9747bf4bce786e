#include "qml/instructor/check_words.h"

#include "platform/session/completion.h"
#include "qml/words/words.h"

#include <QCoreApplication>

#include <algorithm>

namespace peelpack::instructor {
namespace {

QString say(const char* text)
{
    return QCoreApplication::translate("CheckWords", text);
}

QString times(const record::Head& head)
{
    const QString start = words::minute(head.start);
    const QString end = words::minute(head.end);
    return start.isEmpty() && end.isEmpty() ? QString() : start + QStringLiteral("–") + end;
}

/// "Room: Room 4 was signed, Room 6 is in the log."
void compare(QStringList& found, const QString& what, const QString& wasSigned, const QString& logged)
{
    if (wasSigned != logged) {
        const QString nothing = say(QT_TRANSLATE_NOOP("CheckWords", "nothing"));
        found.append(say(QT_TRANSLATE_NOOP("CheckWords", "%1: \"%2\" was signed, \"%3\" is in the log."))
                         .arg(what, wasSigned.isEmpty() ? nothing : wasSigned, logged.isEmpty() ? nothing : logged));
    }
}

void compareHeads(QStringList& found, const record::Head& wasSigned, const record::Head& logged, base::Date today)
{
    const auto text = [](const std::string& value) { return words::fromUtf8(value); };
    compare(found, say(QT_TRANSLATE_NOOP("CheckWords", "Date")), words::day(wasSigned.date, today),
            words::day(logged.date, today));
    compare(found, say(QT_TRANSLATE_NOOP("CheckWords", "Surgeon")), text(wasSigned.surgeon), text(logged.surgeon));
    compare(found, say(QT_TRANSLATE_NOOP("CheckWords", "Site")), text(wasSigned.site), text(logged.site));
    compare(found, say(QT_TRANSLATE_NOOP("CheckWords", "Room")), text(wasSigned.room), text(logged.room));
    compare(found, say(QT_TRANSLATE_NOOP("CheckWords", "Times")), times(wasSigned), times(logged));
    if (wasSigned.canceled != logged.canceled) {
        found.append(logged.canceled
                         ? say(QT_TRANSLATE_NOOP("CheckWords", "The log says that the case was canceled."))
                         : say(QT_TRANSLATE_NOOP("CheckWords", "It was signed as canceled; the log says it was not.")));
    }
}

} // namespace

QString inWords(const questions::SheetQuestion& question)
{
    using Kind = questions::SheetQuestionKind;
    const QString skill = question.skill ? words::of(*question.skill) : QString();
    switch (question.kind) {
    case Kind::NotTheirs:
        return say(QT_TRANSLATE_NOOP("CheckWords", "The preceptor says that a signature on it is not theirs."));
    case Kind::ReviewAsked:
        return say(QT_TRANSLATE_NOOP("CheckWords", "The student asks for a review of \"%1\".")).arg(skill);
    case Kind::SignersDiffer:
        return say(QT_TRANSLATE_NOOP("CheckWords", "Two signers differ on \"%1\".")).arg(skill);
    case Kind::ChangedAfterSigned:
        return say(QT_TRANSLATE_NOOP("CheckWords", "The student changed the sheet after it was signed."));
    case Kind::AfterInitial:
        return say(QT_TRANSLATE_NOOP("CheckWords", "Something came after it was initialed."));
    case Kind::WithdrawalAsked:
        return say(QT_TRANSLATE_NOOP("CheckWords", "The student asks to take it back."));
    case Kind::OnlyByAttester:
        return say(QT_TRANSLATE_NOOP("CheckWords", "It is initialed only by who signed it: somebody else has to."));
    case Kind::WeakSignature:
        return say(QT_TRANSLATE_NOOP("CheckWords", "The signature is weak: confirm it with the preceptor."));
    case Kind::WrongPin:
        return QCoreApplication::translate("CheckWords", "A wrong PIN was tried for it, %n time(s).", nullptr,
                                           static_cast<int>(question.count));
    case Kind::ActedApart:
        return say(QT_TRANSLATE_NOOP("CheckWords",
                                     "Two instructors acted on it apart; one action is in force, the other stands "
                                     "beside it."));
    case Kind::SameCase: {
        QStringList sheets;
        for (const std::string& sheet : question.sheets) {
            sheets.append(words::fromUtf8(sheet));
        }
        return say(QT_TRANSLATE_NOOP("CheckWords", "It may be entered twice. Same date and procedure: %1."))
            .arg(words::listed(sheets));
    }
    case Kind::NotApplicableSkill:
        return say(QT_TRANSLATE_NOOP("CheckWords", "\"%1\" is N/A: was it not called for on this case?")).arg(skill);
    case Kind::NotApplicableCounts:
        return say(
            QT_TRANSLATE_NOOP("CheckWords", "Counts are N/A on a case that usually has counts: does the reason hold?"));
    case Kind::CredentialNotListed:
        return say(QT_TRANSLATE_NOOP("CheckWords",
                                     "The program does not list the credential with which %1 signed for this role."))
            .arg(words::fromUtf8(question.name));
    case Kind::NotOriented:
        return say(QT_TRANSLATE_NOOP("CheckWords", "By the day of the case the program had not oriented %1."))
            .arg(words::fromUtf8(question.name));
    case Kind::NotActive:
        return say(QT_TRANSLATE_NOOP("CheckWords", "%1 is not active as a preceptor of the program."))
            .arg(words::fromUtf8(question.name));
    case Kind::NoClinicalDay:
        return say(QT_TRANSLATE_NOOP("CheckWords", "The day of the case is no clinical day of the class."));
    case Kind::OtherSite:
        return say(QT_TRANSLATE_NOOP("CheckWords", "On that day the class was at %1."))
            .arg(words::fromUtf8(question.name));
    }
    return words::fromUtf8(question.sentence);
}

bool isGrave(questions::SheetQuestionKind kind)
{
    using Kind = questions::SheetQuestionKind;
    return kind == Kind::NotTheirs || kind == Kind::SignersDiffer || kind == Kind::ChangedAfterSigned ||
           kind == Kind::AfterInitial || kind == Kind::OnlyByAttester || kind == Kind::ActedApart ||
           kind == Kind::SameCase;
}

QString inWords(merge::TimeQuestion::Sort sort)
{
    using Sort = merge::TimeQuestion::Sort;
    switch (sort) {
    case Sort::BeforeCitedReceipt:
        return say(QT_TRANSLATE_NOOP("CheckWords", "It says it was written before a receipt that its phone had seen."));
    case Sort::AfterReceipt:
        return say(QT_TRANSLATE_NOOP("CheckWords", "It says it was written after the receipt for it."));
    case Sort::SteppedBack:
        return say(QT_TRANSLATE_NOOP("CheckWords", "The clock of the phone was set back before it was written."));
    case Sort::DatedBeforeReceipts:
        return say(
            QT_TRANSLATE_NOOP("CheckWords", "It is dated to a day that had been received before it was opened."));
    }
    return words::fromUtf8(merge::sentence(sort));
}

QString inWords(const questions::SignerQuestion& question, base::Date today)
{
    constexpr std::size_t mostShown = 10;
    const auto count = static_cast<int>(question.sheets.size());
    QString text;
    switch (question.kind) {
    case questions::SignerQuestionKind::Overlap:
        text = QCoreApplication::translate("CheckWords",
                                           "%1: %n sheet(s) overlap in time, at different sites or in different rooms. "
                                           "Was the preceptor at each of them?",
                                           nullptr, count);
        break;
    case questions::SignerQuestionKind::ManyInADay:
        text = QCoreApplication::translate(
            "CheckWords", "%1: %n sheet(s) of one day, more than usual. Did the preceptor sign each of them?", nullptr,
            count);
        break;
    case questions::SignerQuestionKind::SignedTogether:
        text = QCoreApplication::translate("CheckWords",
                                           "%1: %n sheet(s) of different sites, signed within a minute. Did the "
                                           "preceptor sign each of them?",
                                           nullptr, count);
        break;
    }
    QStringList lines{text.arg(words::fromUtf8(question.name))};
    for (std::size_t i = 0; i < question.sheets.size() && i < mostShown; ++i) {
        const questions::Signing& sheet = question.sheets[i];
        QStringList parts{words::day(sheet.date, today), words::fromUtf8(sheet.student)};
        for (const std::string* part : {&sheet.site, &sheet.room}) {
            if (!part->empty()) {
                parts.append(words::fromUtf8(*part));
            }
        }
        lines.append(parts.join(QStringLiteral(" · ")));
    }
    return lines.join(QLatin1Char('\n'));
}

QString headInWords(const record::Head& head, base::Date today)
{
    QStringList parts{words::day(head.date, today)};
    for (const std::string* part : {&head.surgeon, &head.site, &head.room}) {
        if (!part->empty()) {
            parts.append(words::fromUtf8(*part));
        }
    }
    if (const QString when = times(head); !when.isEmpty()) {
        parts.append(when);
    }
    return parts.join(QStringLiteral(" · "));
}

QString standingInWords(const record::SheetRecord& sheet)
{
    if (sheet.standing == record::SheetStanding::Signed && !sheet.signers.empty()) {
        QStringList names;
        for (const record::Signer& signer : sheet.signers) {
            names.append(words::fromUtf8(signer.statement.name));
        }
        names.removeDuplicates();
        return say(QT_TRANSLATE_NOOP("CheckWords", "Marked by %1 · %2"))
            .arg(words::listed(names), words::of(sheet.strength));
    }
    const QString beside = sheet.imported && sheet.standing != record::SheetStanding::Imported
                               ? QStringLiteral(" · ") + words::of(record::SheetStanding::Imported)
                               : QString();
    if (sheet.initial) {
        return say(QT_TRANSLATE_NOOP("CheckWords", "Initialed by %1")).arg(words::fromUtf8(sheet.initial->by.name)) +
               beside;
    }
    switch (sheet.standing) {
    case record::SheetStanding::Amended:
        return say(QT_TRANSLATE_NOOP("CheckWords", "Changed by an instructor, not initialed since")) + beside;
    case record::SheetStanding::Returned:
        return say(QT_TRANSLATE_NOOP("CheckWords", "Returned to the student")) + beside;
    case record::SheetStanding::Withdrawn:
        return say(QT_TRANSLATE_NOOP("CheckWords", "Taken back by the student")) + beside;
    default:
        return words::capitalized(words::of(sheet.standing)) + beside;
    }
}

QString filedInWords(const catalogue::Catalogue& catalogue, const record::Content& content, std::size_t procedure)
{
    const auto filed = filedUnder(catalogue, content, procedure);
    return filed ? words::of(*filed) : say(QT_TRANSLATE_NOOP("CheckWords", "not filed"));
}

QStringList differencesOf(const catalogue::Catalogue& catalogue, const record::SheetRecord& sheet, base::Date today)
{
    QStringList found;
    if (sheet.unsignedVersion && !sheet.signers.empty()) {
        const record::Attested& first = sheet.signers.front().statement;
        const record::Draft& draft = sheet.unsignedVersion->draft;
        compare(found, say(QT_TRANSLATE_NOOP("CheckWords", "Procedure")), words::listed(first.procedures),
                words::listed(draft.procedures));
        compareHeads(found, first.head, draft.head, today);
        for (const sheet::Skill skill : sheet::allSkills) {
            const sheet::Mark wanted = draft.marks.marks.of(skill);
            if (wanted != sheet::Mark::Unmarked && wanted != first.marks.marks.of(skill)) {
                compare(found, words::of(skill), words::of(first.marks.marks.of(skill)), words::of(wanted));
            }
        }
    }
    for (const record::Signer& signer : sheet.signers) {
        if (signer.otherContent) {
            found.append(say(QT_TRANSLATE_NOOP("CheckWords", "%1 signed otherwise: %2; %3."))
                             .arg(words::fromUtf8(signer.statement.name), words::listed(signer.statement.procedures),
                                  headInWords(signer.statement.head, today)));
        }
    }
    for (std::size_t i = 0; i < sheet.content.procedures.size(); ++i) {
        const QString procedure = words::fromUtf8(sheet.content.procedures[i]);
        const auto filed = filedUnder(catalogue, sheet.content, i);
        const catalogue::CategoryList usual = categoriesFor(catalogue, sheet.content.procedures[i]);
        if (!filed) {
            found.append(
                say(QT_TRANSLATE_NOOP("CheckWords", "%1 is not filed under a specialty: it does not count yet."))
                    .arg(procedure));
        } else if (std::find(usual.begin(), usual.end(), *filed) == usual.end()) {
            QStringList names;
            for (const catalogue::Category category : usual) {
                names.append(words::of(category));
            }
            found.append(say(QT_TRANSLATE_NOOP("CheckWords", "%1 is filed under %2; the catalog has it under %3."))
                             .arg(procedure, words::of(*filed), words::listed(names)));
        }
    }
    return found;
}

QString inWords(const session::CompletionDecision& decision, base::Date today)
{
    const QString when = words::moment({decision.time.seconds, decision.time.zone}, today);
    const QString by = words::fromUtf8(decision.by);
    const QString set = words::fromUtf8(decision.requirementSet);
    if (decision.exception.empty()) {
        return say(QT_TRANSLATE_NOOP("CheckWords", "Complete under %1, decided by %2, %3.")).arg(set, by, when);
    }
    return say(QT_TRANSLATE_NOOP("CheckWords",
                                 "Complete by exception under %1, %4 of %5 cases, decided by %2, %3. Reason: %6"))
        .arg(set, by, when)
        .arg(decision.counted)
        .arg(decision.required)
        .arg(words::fromUtf8(decision.exception));
}

} // namespace peelpack::instructor
