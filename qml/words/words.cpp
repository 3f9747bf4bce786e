#include "qml/words/words.h"

#include "qml/words/sentences.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>

namespace peelpack::words {
namespace {

QString say(const char* text)
{
    return QCoreApplication::translate("Words", text);
}

QDate dateOf(base::Date date)
{
    return QDate(1970, 1, 1).addDays(date.days());
}

bool english()
{
    return QLocale().language() == QLocale::English || QLocale().language() == QLocale::C;
}

QString inLocale(const QDate& date, const char* us, const char* elsewhere)
{
    const QLocale locale = english() ? QLocale(QLocale::English, QLocale::UnitedStates) : QLocale();
    return locale.toString(date, QString::fromLatin1(english() ? us : elsewhere));
}

QStringList skillsWith(const sheet::Marks& marks, sheet::Mark mark, bool firstScrub)
{
    QStringList labels;
    for (const sheet::Skill skill : sheet::allSkills) {
        if (sheet::isFirstScrubSkill(skill) == firstScrub && marks.of(skill) == mark) {
            labels.append(inList(skill));
        }
    }
    return labels;
}

} // namespace

QString fromUtf8(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

QString of(sheet::Skill skill)
{
    switch (skill) {
    case sheet::Skill::Verify:
        return say(QT_TRANSLATE_NOOP("Words", "Checked supplies and equipment"));
    case sheet::Skill::Setup:
        return say(QT_TRANSLATE_NOOP("Words", "Set up the sterile field"));
    case sheet::Skill::Counts:
        return say(QT_TRANSLATE_NOOP("Words", "Counts, initial and closing"));
    case sheet::Skill::Pass:
        return say(QT_TRANSLATE_NOOP("Words", "Passed instruments"));
    case sheet::Skill::Technique:
        return say(QT_TRANSLATE_NOOP("Words", "Kept sterile technique"));
    case sheet::Skill::Sponge:
        return say(QT_TRANSLATE_NOOP("Words", "Sponged the wound"));
    case sheet::Skill::Suction:
        return say(QT_TRANSLATE_NOOP("Words", "Suctioned"));
    case sheet::Skill::Cut:
        return say(QT_TRANSLATE_NOOP("Words", "Cut suture"));
    case sheet::Skill::Retract:
        return say(QT_TRANSLATE_NOOP("Words", "Held retractors"));
    case sheet::Skill::Camera:
        return say(QT_TRANSLATE_NOOP("Words", "Handled the camera"));
    }
    return {};
}

QString inList(sheet::Skill skill)
{
    switch (skill) {
    case sheet::Skill::Verify:
        return say(QT_TRANSLATE_NOOP("Words", "checking supplies and equipment"));
    case sheet::Skill::Setup:
        return say(QT_TRANSLATE_NOOP("Words", "setting up the sterile field"));
    case sheet::Skill::Counts:
        return say(QT_TRANSLATE_NOOP("Words", "initial and closing counts"));
    case sheet::Skill::Pass:
        return say(QT_TRANSLATE_NOOP("Words", "passing instruments"));
    case sheet::Skill::Technique:
        return say(QT_TRANSLATE_NOOP("Words", "sterile technique"));
    case sheet::Skill::Sponge:
        return say(QT_TRANSLATE_NOOP("Words", "sponging the wound"));
    case sheet::Skill::Suction:
        return say(QT_TRANSLATE_NOOP("Words", "suctioning"));
    case sheet::Skill::Cut:
        return say(QT_TRANSLATE_NOOP("Words", "cutting suture"));
    case sheet::Skill::Retract:
        return say(QT_TRANSLATE_NOOP("Words", "holding retractors"));
    case sheet::Skill::Camera:
        return say(QT_TRANSLATE_NOOP("Words", "handling the camera"));
    }
    return {};
}

QString of(sheet::Mark mark)
{
    switch (mark) {
    case sheet::Mark::Unmarked:
        return say(QT_TRANSLATE_NOOP("Words", "not marked"));
    case sheet::Mark::Yes:
        return say(QT_TRANSLATE_NOOP("Words", "Yes"));
    case sheet::Mark::No:
        return say(QT_TRANSLATE_NOOP("Words", "No"));
    case sheet::Mark::NotApplicable:
        return say(QT_TRANSLATE_NOOP("Words", "N/A"));
    }
    return {};
}

QString of(role::Outcome outcome)
{
    switch (outcome) {
    case role::Outcome::First:
        return say(QT_TRANSLATE_NOOP("Words", "First scrub"));
    case role::Outcome::Second:
        return say(QT_TRANSLATE_NOOP("Words", "Second scrub"));
    case role::Outcome::Observed:
        return say(QT_TRANSLATE_NOOP("Words", "Observation"));
    case role::Outcome::Unmarked:
        return say(QT_TRANSLATE_NOOP("Words", "Not fully marked"));
    case role::Outcome::Canceled:
        return say(QT_TRANSLATE_NOOP("Words", "Canceled"));
    }
    return {};
}

QString of(catalogue::Category category)
{
    static constexpr std::array labels = std::to_array<const char*>({
        QT_TRANSLATE_NOOP("Words", "General"),
        QT_TRANSLATE_NOOP("Words", "Cardiothoracic"),
        QT_TRANSLATE_NOOP("Words", "Ear, nose and throat"),
        QT_TRANSLATE_NOOP("Words", "Eye"),
        QT_TRANSLATE_NOOP("Words", "Genitourinary"),
        QT_TRANSLATE_NOOP("Words", "Neurosurgery"),
        QT_TRANSLATE_NOOP("Words", "Obstetrics and gynecology"),
        QT_TRANSLATE_NOOP("Words", "Oral and maxillofacial"),
        QT_TRANSLATE_NOOP("Words", "Orthopedics"),
        QT_TRANSLATE_NOOP("Words", "Peripheral vascular"),
        QT_TRANSLATE_NOOP("Words", "Plastic and reconstructive"),
        QT_TRANSLATE_NOOP("Words", "Procurement and transplant"),
        QT_TRANSLATE_NOOP("Words", "Diagnostic endoscopy"),
        QT_TRANSLATE_NOOP("Words", "Vaginal delivery"),
    });
    static_assert(labels.size() == catalogue::categoryCount);
    return say(labels[catalogue::indexOf(category)]);
}

QString of(record::SheetStanding standing)
{
    switch (standing) {
    case record::SheetStanding::Open:
        return say(QT_TRANSLATE_NOOP("Words", "not signed yet"));
    case record::SheetStanding::Imported:
        return say(QT_TRANSLATE_NOOP("Words", "imported, not attested"));
    case record::SheetStanding::Signed:
        return say(QT_TRANSLATE_NOOP("Words", "signed"));
    case record::SheetStanding::Returned:
        return say(QT_TRANSLATE_NOOP("Words", "returned with a question"));
    case record::SheetStanding::Initialed:
        return say(QT_TRANSLATE_NOOP("Words", "initialed"));
    case record::SheetStanding::Amended:
        return say(QT_TRANSLATE_NOOP("Words", "changed by your instructor"));
    case record::SheetStanding::Withdrawn:
        return say(QT_TRANSLATE_NOOP("Words", "withdrawn"));
    case record::SheetStanding::Void:
        return say(QT_TRANSLATE_NOOP("Words", "void"));
    }
    return {};
}

QString of(sheet::Strength strength)
{
    switch (strength) {
    case sheet::Strength::None:
        return {};
    case sheet::Strength::OwnPhone:
        return say(QT_TRANSLATE_NOOP("Words", "on the preceptor's own phone"));
    case sheet::Strength::Card:
        return say(QT_TRANSLATE_NOOP("Words", "signing card and PIN"));
    case sheet::Strength::CardNew:
        return say(QT_TRANSLATE_NOOP("Words", "new signing card, not vouched for yet"));
    case sheet::Strength::Drawn:
        return say(QT_TRANSLATE_NOOP("Words", "drawn on this phone, the weakest way"));
    case sheet::Strength::Paper:
        return say(QT_TRANSLATE_NOOP("Words", "pen-signed stub"));
    }
    return {};
}

QString of(const requirement::Target& target)
{
    const QString roles = target.isFirstScrub() ? say(QT_TRANSLATE_NOOP("Words", "first scrub"))
                          : target.acceptsFirst ? say(QT_TRANSLATE_NOOP("Words", "first or second scrub"))
                                                : say(QT_TRANSLATE_NOOP("Words", "second scrub"));
    QStringList parts;
    const catalogue::CategorySet all = catalogue::CategorySet::specialties();
    const bool everySpecialty = (target.categories & all) == all;
    for (std::size_t i = 0; i < catalogue::categoryCount; ++i) {
        const catalogue::Category category = catalogue::categoryAt(i);
        if (!target.categories.contains(category) || catalogue::isApart(category)) {
            continue;
        }
        if (everySpecialty && all.contains(category)) {
            if (category == catalogue::Category::Cardiothoracic) {
                parts.append(say(QT_TRANSLATE_NOOP("Words", "Specialty")));
            }
        } else {
            parts.append(of(category));
        }
    }
    return QCoreApplication::translate("Words", "%1, %2").arg(listed(parts), roles);
}

QString day(base::Date date, base::Date today)
{
    const QDate when = dateOf(date);
    return when.year() == dateOf(today).year() ? inLocale(when, "MMM d", "d MMM")
                                               : inLocale(when, "MMM d, yyyy", "d MMM yyyy");
}

QString month(base::Date date)
{
    return inLocale(dateOf(date), "MMM", "MMM");
}

QString longDay(base::Date date)
{
    return inLocale(dateOf(date), "dddd, MMMM d", "dddd, d 'de' MMMM");
}

QString moment(const record::Time& time, base::Date today)
{
    constexpr int secondsInMinute = 60;
    const QDateTime when = QDateTime::fromSecsSinceEpoch(time.seconds, Qt::OffsetFromUTC, time.zone * secondsInMinute);
    return day(time.day(), today) + QStringLiteral(", ") + when.toString(QStringLiteral("HH:mm"));
}

QString minute(record::MinuteOfDay minute)
{
    return fromUtf8(record::timeOfDay(minute));
}

QStringList feedback(const record::SheetRecord& sheet)
{
    QStringList lines;
    for (const record::FeedbackText& text : sheet.feedback) {
        lines.append(fromUtf8(text.from) + QStringLiteral(": ") + fromUtf8(text.text));
    }
    return lines;
}

QString listed(const QStringList& items)
{
    if (items.size() < 2) {
        return items.join(QString());
    }
    return QCoreApplication::translate("Words", "%1 and %2")
        .arg(items.mid(0, items.size() - 1).join(QStringLiteral(", ")), items.last());
}

QString listed(const std::vector<std::string>& items)
{
    QStringList list;
    for (const std::string& item : items) {
        list.append(fromUtf8(item));
    }
    return listed(list);
}

QString capitalized(QString text)
{
    if (!text.isEmpty()) {
        text[0] = text[0].toUpper();
    }
    return text;
}

QString of(const tally::WhyNotCounted& why)
{
    using tally::Obstacle;
    switch (why.obstacle) {
    case Obstacle::Canceled:
        return say(QT_TRANSLATE_NOOP("Words", "The case was canceled before incision."));
    case Obstacle::Unmarked:
        return say(QT_TRANSLATE_NOOP("Words", "Not every skill is marked yet."));
    case Obstacle::Observed:
        return say(QT_TRANSLATE_NOOP("Words", "It is an observation: recorded, never counted."));
    case Obstacle::ImportNotInitialed:
        return say(
            QT_TRANSLATE_NOOP("Words", "Imported, not attested: it counts once an instructor has initialed it."));
    case Obstacle::NotInitialed:
        return say(QT_TRANSLATE_NOOP("Words", "No instructor has initialed this sheet yet."));
    case Obstacle::NotSigned:
        return say(QT_TRANSLATE_NOOP("Words", "No preceptor has signed this sheet yet."));
    case Obstacle::CardNotVouched:
        return say(
            QT_TRANSLATE_NOOP("Words", "The signing card was made on the spot and has not been vouched for yet."));
    case Obstacle::DrawnNotConfirmed:
        return say(QT_TRANSLATE_NOOP("Words", "A drawn signature counts only after an instructor has confirmed it."));
    case Obstacle::StubNotConfirmed:
        return say(QT_TRANSLATE_NOOP("Words", "A pen-signed stub counts only after an instructor has confirmed it."));
    case Obstacle::SignatureNotAccepted:
        return say(QT_TRANSLATE_NOOP("Words", "The program's rules do not accept this signature."));
    case Obstacle::SameOperation:
        return say(QT_TRANSLATE_NOOP("Words", "Two procedures of one operation are one case in a category, and another "
                                              "procedure of this operation counts under %1."))
            .arg(of(why.category));
    case Obstacle::LimitReached:
        return say(QT_TRANSLATE_NOOP("Words", "At most %1 cases of %2 count, and they are reached."))
            .arg(why.most)
            .arg(of(why.category));
    case Obstacle::NoTarget:
        return say(QT_TRANSLATE_NOOP("Words", "No target of the requirements takes this category in this role."));
    case Obstacle::SeatsKept:
        return say(QT_TRANSLATE_NOOP("Words", "The seats that any specialty may fill are taken; the rest are kept for "
                                              "specialties that are still short."));
    case Obstacle::CapReached:
        return say(QT_TRANSLATE_NOOP("Words", "Only so many cases of %1 may count as first scrub, and the second-scrub "
                                              "targets that take it are full."))
            .arg(of(why.category));
    case Obstacle::TargetsFull:
        return say(QT_TRANSLATE_NOOP("Words", "The targets that take this case are full."));
    }
    return {};
}

QString roleReason(const record::SheetRecord& sheet, const role::RoleRules& rules)
{
    const bool canceled = sheet.content.head.canceled;
    return sheet.imported && !canceled
               ? say(QT_TRANSLATE_NOOP("Words", "The role was written on a paper log, which carries no marks."))
               : roleReason(sheet.content.marks.marks, canceled, rules);
}

QString importOf(const record::SheetRecord& sheet)
{
    if (!sheet.imported) {
        return {};
    }
    const record::Imported& said = sheet.imported->said;
    QString text = say(QT_TRANSLATE_NOOP("Words", "Imported, not attested, by %1. It comes from: %2."))
                       .arg(fromUtf8(sheet.imported->by.name), fromUtf8(said.source));
    if (!said.preceptor.empty()) {
        const std::string& preceptor = said.preceptor;
        text += QLatin1Char(' ') +
                say(QT_TRANSLATE_NOOP("Words", "Preceptor as written there: %1."))
                    .arg(fromUtf8(said.credential.empty() ? preceptor : preceptor + ", " + said.credential));
    }
    return text;
}

QString roleReason(const sheet::Marks& marks, bool canceled, const role::RoleRules& rules)
{
    switch (role::classify(marks, canceled, rules)) {
    case role::Outcome::Canceled:
        return say(QT_TRANSLATE_NOOP("Words", "The case was canceled before incision, so it has no role."));
    case role::Outcome::Unmarked: {
        QStringList open = skillsWith(marks, sheet::Mark::Unmarked, true);
        open += skillsWith(marks, sheet::Mark::Unmarked, false);
        return open.size() == static_cast<qsizetype>(sheet::skillCount)
                   ? say(QT_TRANSLATE_NOOP("Words", "No skill is marked yet, so there is no role yet."))
                   : QCoreApplication::translate("Words", "There is no role until every skill is marked. Missing: %1.")
                         .arg(listed(open));
    }
    case role::Outcome::First: {
        const QStringList notCalledFor = skillsWith(marks, sheet::Mark::NotApplicable, true);
        return notCalledFor.isEmpty()
                   ? say(QT_TRANSLATE_NOOP("Words", "All five first-scrub skills are Yes, so the second-scrub marks do "
                                                    "not change the role."))
                   : QCoreApplication::translate("Words", "Every first-scrub skill is Yes, or N/A: %1.")
                         .arg(listed(notCalledFor));
    }
    case role::Outcome::Second: {
        const QStringList no = skillsWith(marks, sheet::Mark::No, true);
        return no.isEmpty()
                   ? say(QT_TRANSLATE_NOOP("Words", "Not every first-scrub skill is Yes, and a second-scrub skill is."))
                   : QCoreApplication::translate(
                         "Words", "Not first scrub, because these are No: %1. A second-scrub skill is Yes.")
                         .arg(listed(no));
    }
    case role::Outcome::Observed:
        return say(QT_TRANSLATE_NOOP("Words",
                                     "Not every first-scrub skill is Yes and no second-scrub skill is, so it is "
                                     "an observation."));
    }
    return {};
}

} // namespace peelpack::words
