#pragma once

#include "core/record/sheet_record.h"
#include "core/requirement/requirement_set.h"
#include "core/role/classifier.h"
#include "core/tally/why_not_counted.h"

#include <QString>
#include <QStringList>

#include <string>
#include <vector>

/// How the trade's values are said on screen, in the language of the app. English where a language has no words yet.
namespace peelpack::words {

QString fromUtf8(std::string_view text);

QString of(sheet::Skill skill);
/// The skill as a noun among others: "passing instruments".
QString inList(sheet::Skill skill);
QString of(sheet::Mark mark);
QString of(role::Outcome outcome);
QString of(catalogue::Category category);
QString of(record::SheetStanding standing);
/// "signing card + PIN", "drawn on this phone: weak"
QString of(sheet::Strength strength);
QString of(const requirement::Target& target);
/// In a sentence to the student.
QString of(const tally::WhyNotCounted& why);

/// "Mar 12", with the year when it is not `today`'s; "12 mar" in Spanish.
QString day(base::Date date, base::Date today);
/// "Mar"
QString month(base::Date date);
/// "Thursday, March 12"
QString longDay(base::Date date);
/// The day and the minute in the zone in which it was written: "Mar 12, 10:42".
QString moment(const record::Time& time, base::Date today);
/// "07:30"; empty when nobody said it.
QString minute(record::MinuteOfDay minute);

/// What was said to the student, a line for each signer who said something: "L. Brandt: ..."
QStringList feedback(const record::SheetRecord& sheet);

/// "a", "a and b", "a, b and c"
QString listed(const QStringList& items);
QString listed(const std::vector<std::string>& items);
/// With a capital at the beginning.
QString capitalized(QString text);
/// Why the role is what it is, in a sentence to the student.
/// The same of a sheet, which may be from a paper log.
QString roleReason(const record::SheetRecord& sheet, const role::RoleRules& rules);
/// Where an imported sheet comes from; empty for another.
QString importOf(const record::SheetRecord& sheet);
QString roleReason(const sheet::Marks& marks, bool canceled, const role::RoleRules& rules);

} // namespace peelpack::words
