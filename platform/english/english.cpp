#include "platform/english/english.h"

#include "core/base/text.h"

#include <QDateTime>

namespace peelpack::english {

using catalogue::Category;
using catalogue::categoryAt;
using catalogue::categoryCount;

std::string timeInWords(const record::Time& time)
{
    constexpr int secondsInMinute = 60;
    return QDateTime::fromSecsSinceEpoch(time.seconds, Qt::OffsetFromUTC, time.zone * secondsInMinute)
        .toString(QStringLiteral("yyyy-MM-dd HH:mm"))
        .toStdString();
}

std::string headInWords(const record::Head& head)
{
    std::string text = head.date.iso();
    for (const auto& [what, value] :
         {std::pair("surgeon ", &head.surgeon), {"at ", &head.site}, {"room ", &head.room}}) {
        if (!value->empty()) {
            text += ", " + std::string(what) + *value;
        }
    }
    if (head.start != record::notSaid) {
        text += ", " + record::timeOfDay(head.start) +
                (head.end == record::notSaid ? std::string() : " to " + record::timeOfDay(head.end));
    }
    return text + (head.canceled ? ", canceled before incision" : "");
}

std::string standingInWords(const record::SheetRecord& sheet)
{
    if (sheet.imported) {
        const std::string_view words = "imported, not attested";
        return sheet.standing == record::SheetStanding::Imported
                   ? std::string(words)
                   : std::string(record::id(sheet.standing)) + " (" + std::string(words) + ")";
    }
    std::string text(record::id(sheet.standing));
    const bool showsStrength = sheet.standing != record::SheetStanding::Open && sheet.strength != sheet::Strength::None;
    if (showsStrength) {
        text += " (" + std::string(sheet::id(sheet.strength)) + ")";
    }
    return text;
}

std::string importInWords(const record::ImportInEffect& import)
{
    const record::Imported& said = import.said;
    std::string text = "Imported, not attested, from " + said.source + " by " + writerName(import.by);
    if (!said.preceptor.empty()) {
        text +=
            "; preceptor as written there: " + said.preceptor + (said.credential.empty() ? "" : ", " + said.credential);
    }
    return text + ".";
}

std::string choicesInWords(const record::Content& content)
{
    std::vector<std::string> labels;
    labels.reserve(content.choices.size());
    for (const record::Choice& choice : content.choices) {
        labels.emplace_back(choice.category ? catalogue::label(*choice.category)
                                            : std::string_view("a category of a newer Peelpack"));
    }
    return labels.empty() ? "not logged yet" : base::listed(labels, "and");
}

std::string_view inWords(record::Weight weight)
{
    switch (weight) {
    case record::Weight::Counts:
        return "";
    case record::Weight::NoEffect:
        return "without effect";
    case record::Weight::Beside:
        return "beside, not in force";
    case record::Weight::Aside:
        return "aside, not counted";
    case record::Weight::Refused:
        return "refused";
    }
    return "";
}

std::string writerName(const record::Writer& writer)
{
    return writer.name.empty() ? std::string("somebody unknown") : writer.name;
}

std::string categoriesInWords(catalogue::CategorySet categories, std::string_view specialty, std::string_view joint)
{
    std::vector<std::string> parts;
    const bool specialties =
        (categories & catalogue::CategorySet::specialties()) == catalogue::CategorySet::specialties();
    for (std::size_t i = 0; i < categoryCount; ++i) {
        const Category category = categoryAt(i);
        if (!categories.contains(category)) {
            continue;
        }
        if (specialties && catalogue::CategorySet::specialties().contains(category)) {
            if (category == Category::Cardiothoracic) {
                parts.emplace_back(specialty);
            }
            continue;
        }
        std::string label(catalogue::label(category));
        label.front() = static_cast<char>(label.front() - 'A' + 'a');
        parts.push_back(std::move(label));
    }
    return base::listed(parts, joint);
}

std::string targetLabel(const requirement::Target& target)
{
    const std::string roles =
        target.isFirstScrub() ? "First scrub, " : (target.acceptsFirst ? "First or second scrub, " : "Second scrub, ");
    return roles + categoriesInWords(target.categories, "specialties", "and");
}

} // namespace peelpack::english
