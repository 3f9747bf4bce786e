#include "qml/words/history.h"

#include "core/role/classifier.h"
#include "qml/words/sentences.h"
#include "qml/words/words.h"

#include <QCoreApplication>

namespace peelpack::words {
namespace {

using record::Happened;
using record::Happening;

QString say(const char* text)
{
    return QCoreApplication::translate("History", text);
}

QString counted(const char* text, std::size_t count)
{
    return QCoreApplication::translate("History", text, nullptr, static_cast<int>(count));
}

QString filedUnder(const Happening& happening)
{
    QStringList labels;
    for (const auto& category : happening.categories) {
        labels.append(category ? of(*category) : say(QT_TRANSLATE_NOOP("History", "a specialty of a newer version")));
    }
    return listed(labels);
}

/// `pattern` has the skill and the mark.
QString ofMarks(const Happening& happening, const QString& pattern)
{
    QStringList marks;
    for (const record::SkillMark& mark : happening.marks) {
        marks.append(pattern.arg(of(mark.skill), of(mark.mark)));
    }
    return listed(marks);
}

QString markIs()
{
    return say(QT_TRANSLATE_NOOP("History", "\"%1\" is %2"));
}

QString amended(const Happening& happening)
{
    QStringList changes;
    if (!happening.marks.empty()) {
        changes.append(ofMarks(happening, markIs()));
    }
    if (happening.amendedHead) {
        changes.append(say(QT_TRANSLATE_NOOP("History", "date, place, surgeon or times")));
    }
    if (happening.amendedProcedures) {
        changes.append(say(QT_TRANSLATE_NOOP("History", "the procedures")));
    }
    return say(QT_TRANSLATE_NOOP("History", "Changed the sheet: %1.")).arg(listed(changes));
}

QString signedBy(const Happening& happening)
{
    const QString name = happening.credential.empty()
                             ? fromUtf8(happening.signer)
                             : fromUtf8(happening.signer) + QStringLiteral(", ") + fromUtf8(happening.credential);
    const QString way = happening.strength == sheet::Strength::None
                            ? say(QT_TRANSLATE_NOOP("History", "nobody can tell whose signature it is"))
                            : of(happening.strength);
    return say(QT_TRANSLATE_NOOP("History", "Signed by %1 (%2): %3."))
        .arg(name, way, counted(QT_TRANSLATE_N_NOOP("History", "%n mark(s)"), happening.count));
}

QString of(record::HandOverCause cause)
{
    switch (cause) {
    case record::HandOverCause::Canceled:
        return say(QT_TRANSLATE_NOOP("History", "The hand-over was taken back unsigned."));
    case record::HandOverCause::WrongPin:
        return say(QT_TRANSLATE_NOOP("History", "The hand-over ended unsigned: the PIN was wrong."));
    case record::HandOverCause::WrongCard:
        return say(QT_TRANSLATE_NOOP("History", "The hand-over ended unsigned: it was not the right card."));
    case record::HandOverCause::TimedOut:
        return say(QT_TRANSLATE_NOOP("History", "The hand-over ended unsigned: it took too long."));
    }
    return {};
}

QString handOverEnded(const Happening& happening)
{
    return happening.count == 0
               ? of(happening.cause)
               : of(happening.cause) + QLatin1Char(' ') +
                     counted(QT_TRANSLATE_N_NOOP("History", "A wrong PIN was tried %n time(s)."), happening.count);
}

} // namespace

QString of(const Happening& happening)
{
    switch (happening.what) {
    case Happened::Opened:
        return say(QT_TRANSLATE_NOOP("History", "Opened the sheet: %1.")).arg(listed(happening.procedures));
    case Happened::HeadChanged:
        return say(QT_TRANSLATE_NOOP("History", "Changed the sheet: %1.")).arg(listed(happening.procedures));
    case Happened::Withdrawn:
        return say(QT_TRANSLATE_NOOP("History", "Took the sheet back."));
    case Happened::WithdrawalAsked:
        return say(QT_TRANSLATE_NOOP("History", "Asked to take the sheet back."));
    case Happened::Signed:
        return signedBy(happening);
    case Happened::Logged:
        return say(QT_TRANSLATE_NOOP("History", "Filed under %1.")).arg(filedUnder(happening));
    case Happened::ReviewAsked:
        return say(QT_TRANSLATE_NOOP("History", "Asked for a mark review: %1."))
            .arg(ofMarks(happening, say(QT_TRANSLATE_NOOP("History", "\"%1\" should be %2"))));
    case Happened::HandOverEnded:
        return handOverEnded(happening);
    case Happened::Declined:
        return say(QT_TRANSLATE_NOOP("History", "The preceptor declined to sign."));
    case Happened::Initialed:
        return say(QT_TRANSLATE_NOOP("History", "Initialed."));
    case Happened::InitialedConfirmed:
        return say(QT_TRANSLATE_NOOP("History", "Initialed, and confirmed the signature with the preceptor."));
    case Happened::Returned:
        return say(QT_TRANSLATE_NOOP("History", "Returned the sheet."));
    case Happened::ReviewAccepted:
        return say(QT_TRANSLATE_NOOP("History", "Accepted a mark review: %1.")).arg(ofMarks(happening, markIs()));
    case Happened::Amended:
        return amended(happening);
    case Happened::Refiled:
        return say(QT_TRANSLATE_NOOP("History", "Filed anew under %1.")).arg(filedUnder(happening));
    case Happened::Voided:
        return say(QT_TRANSLATE_NOOP("History", "Made the sheet void."));
    case Happened::Imported:
        return say(QT_TRANSLATE_NOOP("History", "Imported from %1: %2, %3."))
            .arg(fromUtf8(happening.source), listed(happening.procedures), of(role::classify(happening.role, false)));
    }
    return {};
}

QStringList history(const record::SheetRecord& sheet, base::Date today)
{
    QStringList lines;
    for (const record::HistoryLine& line : sheet.history) {
        const QString who =
            line.who.name.empty() ? say(QT_TRANSLATE_NOOP("History", "somebody unknown")) : fromUtf8(line.who.name);
        QString text = moment(line.claimed, today) + QStringLiteral(" · ") + who + QStringLiteral(": ") + of(line.what);
        if (!line.why.empty()) {
            text += QLatin1Char(' ') + say(QT_TRANSLATE_NOOP("History", "Reason: %1")).arg(fromUtf8(line.why));
        }
        if (!line.whyNot.empty()) {
            text += QLatin1Char(' ') + said(line.whyNot);
        }
        lines.append(text);
    }
    return lines;
}

} // namespace peelpack::words
