#include "qml/student/sheet_row.h"

#include "core/record/sheet_role.h"
#include "qml/parts/pack_seal.h"
#include "qml/words/words.h"
#include "sync/journal/reason.h"

#include <QCoreApplication>

#include <algorithm>

namespace peelpack::student {
namespace {

QString say(const char* text)
{
    return QCoreApplication::translate("SheetRow", text);
}

/// Somebody signed it with a phone of their own for which no instructor has vouched yet: the signature stands aside.
bool waitsForVouch(const record::SheetRecord& sheet)
{
    return sheet.standing == record::SheetStanding::Open &&
           std::any_of(sheet.history.begin(), sheet.history.end(), [](const record::HistoryLine& line) {
               return line.weight == record::Weight::Aside &&
                      line.whyNot == journal::sentence(journal::Reason::UnknownSigner);
           });
}

QString standingOf(const record::SheetRecord& sheet, const QString& waitingFor)
{
    QString text;
    switch (sheet.standing) {
    case record::SheetStanding::Open:
        text = waitsForVouch(sheet)   ? say(QT_TRANSLATE_NOOP("SheetRow", "signed, not vouched for yet"))
               : waitingFor.isEmpty() ? words::of(sheet.standing)
                                      : say(QT_TRANSLATE_NOOP("SheetRow", "waiting for %1")).arg(waitingFor);
        break;
    case record::SheetStanding::Initialed:
        text = sheet.initial
                   ? say(QT_TRANSLATE_NOOP("SheetRow", "initialed by %1")).arg(words::fromUtf8(sheet.initial->by.name))
                   : words::of(sheet.standing);
        break;
    case record::SheetStanding::Signed:
        text = sheet.signers.empty() ? words::of(sheet.standing)
                                     : say(QT_TRANSLATE_NOOP("SheetRow", "marked by %1"))
                                           .arg(words::fromUtf8(sheet.signers.front().statement.name));
        break;
    default:
        text = words::of(sheet.standing);
    }
    if (sheet.imported && sheet.standing != record::SheetStanding::Imported) {
        text += QStringLiteral(" · ") + words::of(record::SheetStanding::Imported);
    }
    return words::capitalized(text);
}

void remarkOn(const record::SheetRecord& sheet, role::Outcome outcome, SheetRow& row)
{
    if (sheet.returned && !sheet.returned->answered) {
        row.remark =
            say(QT_TRANSLATE_NOOP("SheetRow", "Your instructor asks: %1")).arg(words::fromUtf8(sheet.returned->reason));
        row.grave = true;
    } else if (sheet.unsignedVersion) {
        row.remark =
            say(QT_TRANSLATE_NOOP("SheetRow", "You changed it after it was signed: the signed version counts."));
    } else if (sheet.strength == sheet::Strength::Drawn && sheet.standing == record::SheetStanding::Signed) {
        row.remark =
            say(QT_TRANSLATE_NOOP("SheetRow", "Drawn signature: it counts once your instructor has confirmed it."));
    } else if (sheet.strength == sheet::Strength::CardNew && sheet.standing == record::SheetStanding::Signed) {
        row.remark = say(QT_TRANSLATE_NOOP("SheetRow", "Signed with a signing card that your program does not know "
                                                       "yet: it counts once an instructor vouches for it."));
    } else if (waitsForVouch(sheet)) {
        row.remark = say(QT_TRANSLATE_NOOP("SheetRow", "Signed with a phone that your program does not know yet: it "
                                                       "counts once an instructor vouches for it."));
    } else if (sheet.standing == record::SheetStanding::Signed && outcome == role::Outcome::Unmarked) {
        row.remark =
            say(QT_TRANSLATE_NOOP("SheetRow", "Not every skill is marked: ask a preceptor who saw the others."));
    } else if (sheet.standing == record::SheetStanding::Imported) {
        row.remark = say(QT_TRANSLATE_NOOP("SheetRow", "From %1. It counts once an instructor has initialed it."))
                         .arg(words::fromUtf8(sheet.imported->said.source));
    } else if (sheet.standing == record::SheetStanding::Open) {
        row.remark = say(QT_TRANSLATE_NOOP("SheetRow", "Ready for the preceptor"));
    }
}

} // namespace

int sealOf(const record::SheetRecord& sheet)
{
    using parts::PackSeal;
    switch (sheet.standing) {
    case record::SheetStanding::Open:
        return PackSeal::Open;
    case record::SheetStanding::Imported:
        return PackSeal::Imported;
    case record::SheetStanding::Signed:
        return PackSeal::Signed;
    case record::SheetStanding::Returned:
        return PackSeal::Returned;
    case record::SheetStanding::Initialed:
        return sheet.imported ? PackSeal::ImportedInitialed : PackSeal::Initialed;
    case record::SheetStanding::Amended:
        return sheet.imported ? PackSeal::Imported : PackSeal::Amended;
    case record::SheetStanding::Withdrawn:
        return PackSeal::Withdrawn;
    case record::SheetStanding::Void:
        return PackSeal::Void;
    }
    return PackSeal::Open;
}

std::optional<catalogue::Category> categoryOf(const catalogue::Catalogue& catalogue, const record::SheetRecord& sheet)
{
    for (const record::Choice& choice : sheet.content.choices) {
        if (choice.procedure == 0 && choice.category) {
            return choice.category;
        }
    }
    if (sheet.content.procedures.empty()) {
        return std::nullopt;
    }
    const std::vector<const catalogue::Procedure*> found = catalogue.byExactName(sheet.content.procedures.front());
    return found.size() == 1 ? std::optional(found.front()->categories.front()) : std::nullopt;
}

SheetRow sheetRow(const Desk& desk, const record::SheetRecord& sheet, const QString& waitingFor)
{
    const role::Outcome outcome = record::outcomeOf(sheet, desk.roleRules());
    SheetRow row;
    row.id = words::fromUtf8(sheet.id.hex());
    row.title = words::listed(sheet.content.procedures);
    QStringList details{words::day(sheet.content.head.date, desk.today())};
    for (const std::string* part : {&sheet.content.head.surgeon, &sheet.content.head.site, &sheet.content.head.room}) {
        if (!part->empty()) {
            details.append(words::fromUtf8(*part));
        }
    }
    row.detail = details.join(QStringLiteral(" · "));
    row.standing = standingOf(sheet, waitingFor);
    const bool marked = sheet.imported || !sheet.content.marks.marks.none() || sheet.content.head.canceled;
    row.role = marked ? words::of(outcome) : QString();
    row.roleCounts = outcome == role::Outcome::First || outcome == role::Outcome::Second;
    if (const auto category = categoryOf(desk.shelf().catalogue(), sheet)) {
        row.specialty = words::of(*category);
    }
    row.seal = sealOf(sheet);
    remarkOn(sheet, outcome, row);
    return row;
}

} // namespace peelpack::student
