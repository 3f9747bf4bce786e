#pragma once

#include "core/base/date.h"
#include "sync/journal/rule_payloads.h"

#include <QString>
#include <QStringList>

#include <span>

/// How the program's rules are said on screen, in the language of the app.
namespace peelpack::words {

/// "Phones in the lounge only"
QString of(journal::PhoneRule phones);
/// The title of a shipped requirement set; another's id.
QString setTitle(const std::string& id);
/// "first scrub and observation"; bits of the roles of a sheet.
QString roles(std::uint8_t bits);
/// "Mar 12 · 07:00 to 15:30 · North Campus", or "today".
QString of(const journal::ClinicalDay& day, base::Date today);
/// The same with the rule about phones of its site, where the sites name one.
QString withPhones(const journal::ClinicalDay& day, std::span<const journal::Site> sites, base::Date today);
/// "Spring class · from Aug 24 · Title of the set · the accreditor's new list"
QString of(const journal::RequirementsChange& change, base::Date today);
/// Above every page: why nothing may be signed here, and that the program's own procedures do not fit the shipped
/// catalogue. Empty: neither.
QString bar(const std::string& writeBar, bool overlayMisfits);
/// The class, or that it is every class.
QString ofClass(const std::string& className);

} // namespace peelpack::words
