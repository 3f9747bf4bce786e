#pragma once

#include "core/record/event.h"
#include "sync/journal/sheet_payloads.h"
#include "sync/journal/statement.h"

#include <string>
#include <vector>

/// What the journal's payloads say, in the words of core/record. Payloads are given up to it.
namespace peelpack::merge {

base::Id idOf(const keys::Id& id);
base::EntryHash hashOf(const keys::Hash& hash);
record::Time timeOf(const journal::Time& time);
record::Head headOf(journal::Head&& head);
record::ReasonedMarks marksOf(std::vector<journal::SkillMark>&& marks);
std::vector<record::Choice> choicesOf(const std::vector<journal::Choice>& choices);
record::Draft draftOf(const keys::Id& operation, journal::Draft&& draft);
record::Imported importedOf(journal::Imported&& imported);
record::HandOverEnded handOverOf(const journal::HandOverEnded& ended);
/// Without person and strength: the authority knows them.
record::Attested attestedOf(journal::Statement&& statement);

} // namespace peelpack::merge
