#include "qml/student/other_sets.h"

#include "platform/session/program_rules.h"
#include "qml/words/words.h"

#include <QCoreApplication>

namespace peelpack::student {
namespace {

QString say(const char* text)
{
    return QCoreApplication::translate("TallyPage", text);
}

} // namespace

QStringList otherSets(const session::Session& session, const keys::Id& student, const session::CaseBook& cases,
                      const requirement::RequirementSet& inForce, std::int32_t counted, tally::Level level)
{
    QStringList lines;
    const base::Date today = session::today(session);
    const session::SetsAround around = session::setsAround(session, student, today);
    for (const session::OtherSet& other : around.others) {
        const QString now = say(QT_TRANSLATE_NOOP("TallyPage", "Under %1, in force now: %2 of %3."))
                                .arg(words::fromUtf8(inForce.title))
                                .arg(counted)
                                .arg(inForce.required());
        const QString day = words::day(other.change, today);
        QString then;
        if (const auto set = session::setNamed(session, other.set)) {
            tally::Tallier tallier(set.value(), level, tally::everyStrength);
            const tally::StudentTally tally = cases.tally(tallier, 0, {true, false, false});
            then = (other.coming ? say(QT_TRANSLATE_NOOP("TallyPage", "Under %1, from %2 on: %3 of %4."))
                                 : say(QT_TRANSLATE_NOOP("TallyPage", "Under %1, before %2: %3 of %4.")))
                       .arg(words::fromUtf8(set.value().title), day)
                       .arg(tally.best.value.counted)
                       .arg(set.value().required());
        } else {
            then = (other.coming ? say(QT_TRANSLATE_NOOP("TallyPage", "%1, from %2 on, is not at hand here."))
                                 : say(QT_TRANSLATE_NOOP("TallyPage", "%1, before %2, is not at hand here.")))
                       .arg(words::fromUtf8(other.set.id), day);
        }
        lines.append(now + QLatin1Char(' ') + then);
    }
    return lines;
}

} // namespace peelpack::student
