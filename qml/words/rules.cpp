#include "qml/words/rules.h"

#include "platform/files/requirement_json.h"
#include "platform/files/resources.h"
#include "qml/words/sentences.h"
#include "qml/words/words.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace peelpack::words {
namespace {

QString say(const char* text)
{
    return QCoreApplication::translate("Rules", text);
}

QString joined(const QStringList& parts)
{
    return parts.join(QStringLiteral(" · "));
}

} // namespace

QString of(journal::PhoneRule phones)
{
    static constexpr std::array texts = std::to_array<const char*>({
        QT_TRANSLATE_NOOP("Rules", "Nothing said about phones"),
        QT_TRANSLATE_NOOP("Rules", "Phones allowed in the core"),
        QT_TRANSLATE_NOOP("Rules", "Phones in the lounge only"),
        QT_TRANSLATE_NOOP("Rules", "No phones at all: take printed stubs"),
    });
    return say(texts.at(static_cast<std::size_t>(phones)));
}

QString setTitle(const std::string& id)
{
    const std::vector<std::string>& shipped = files::shippedSetIds();
    if (std::find(shipped.begin(), shipped.end(), id) != shipped.end()) {
        if (const auto found = files::requirementSet(id)) {
            return fromUtf8(found.value().title);
        }
    }
    return fromUtf8(id);
}

QString roles(std::uint8_t bits)
{
    QStringList said;
    const auto add = [&](std::uint8_t bit, const char* text) {
        if ((bits & bit) != 0) {
            said.append(say(text));
        }
    };
    add(journal::signsFirstScrub, QT_TRANSLATE_NOOP("Rules", "first scrub"));
    add(journal::signsSecondScrub, QT_TRANSLATE_NOOP("Rules", "second scrub"));
    add(journal::signsObservation, QT_TRANSLATE_NOOP("Rules", "observation"));
    return listed(said);
}

QString of(const journal::ClinicalDay& day, base::Date today)
{
    QStringList parts{day.date == today ? say(QT_TRANSLATE_NOOP("Rules", "today")) : words::day(day.date, today)};
    if (day.start != journal::notSaid && day.end != journal::notSaid) {
        parts.append(say(QT_TRANSLATE_NOOP("Rules", "%1 to %2")).arg(minute(day.start), minute(day.end)));
    } else if (day.start != journal::notSaid) {
        parts.append(say(QT_TRANSLATE_NOOP("Rules", "from %1")).arg(minute(day.start)));
    }
    parts.append(fromUtf8(day.site));
    return joined(parts);
}

QString withPhones(const journal::ClinicalDay& day, std::span<const journal::Site> sites, base::Date today)
{
    const QString name = fromUtf8(day.site).simplified();
    const auto site = std::find_if(sites.begin(), sites.end(), [&](const journal::Site& one) {
        return fromUtf8(one.name).simplified().compare(name, Qt::CaseInsensitive) == 0;
    });
    const QString line = of(day, today);
    return site == sites.end() || site->phones == journal::PhoneRule::NotSaid ? line : joined({line, of(site->phones)});
}

QString of(const journal::RequirementsChange& change, base::Date today)
{
    return joined({ofClass(change.className),
                   say(QT_TRANSLATE_NOOP("Rules", "from %1")).arg(words::day(change.from, today)),
                   setTitle(change.requirementSet), fromUtf8(change.reason)});
}

QString bar(const std::string& writeBar, bool overlayMisfits)
{
    QStringList bars;
    if (!writeBar.empty()) {
        bars.append(said(writeBar));
    }
    if (overlayMisfits) {
        bars.append(say(QT_TRANSLATE_NOOP("Rules", "The program's own procedures do not fit this version of Peelpack "
                                                   "and are left out. Tell the director.")));
    }
    return bars.join(QLatin1Char(' '));
}

QString ofClass(const std::string& className)
{
    return className.empty() ? say(QT_TRANSLATE_NOOP("Rules", "Every class")) : fromUtf8(className);
}

} // namespace peelpack::words
