#pragma once

#include "tests/sync/support/world.h"

namespace peelpack::test {

base::Date dayOf(const char* iso);

journal::RequirementsChange requirementsChange(const keys::Hash& standsOn, std::string className, const char* from,
                                               std::string set);
journal::Sites sitesOf(const std::vector<std::string>& names, const keys::Hash& standsOn = {});
journal::ClinicalDays daysOf(std::string className, const std::vector<const char*>& dates,
                             const keys::Hash& standsOn = {});
/// A table with one row, of which these are the first cells.
journal::CatalogueOverlay overlayOf(std::string_view row, const keys::Hash& standsOn = {});

/// A rule of every kind from 5 to 10, ascending, each the first of its chain.
std::vector<journal::Payload> everyRule();

/// The number of a payload's kind.
std::uint16_t kindOf(const journal::Payload& payload);

} // namespace peelpack::test
