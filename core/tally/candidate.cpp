#include "core/tally/candidate.h"

#include <array>
#include <optional>
#include <unordered_map>

namespace peelpack::tally {
namespace {

using catalogue::Category;
using role::Outcome;

constexpr std::array<std::string_view, 3> levelIds{"recorded", "attested", "initialed"};

bool reaches(const sheet::BookSheet& sheet, Level level, const AcceptedStrengths& accepted)
{
    switch (level) {
    case Level::Recorded:
        return true;
    case Level::Attested:
        return accepted.contains(sheet.attested);
    case Level::Initialed:
        return sheet.initialed.has_value();
    }
    return false;
}

Bar barOf(const sheet::BookSheet& sheet, Outcome outcome, Level level, const AcceptedStrengths& accepted)
{
    if (sheet.importNotInitialed) {
        return Bar::ImportNotInitialed;
    }
    switch (outcome) {
    case Outcome::Canceled:
        return Bar::Canceled;
    case Outcome::Unmarked:
        return Bar::Unmarked;
    default:
        return reaches(sheet, level, accepted) ? Bar::Countable : Bar::BelowLevel;
    }
}

/// In the two categories apart first scrub counts as second scrub, and assisting does where the set says so.
void fileUnder(Item& item, Category category, Outcome outcome, bool assists)
{
    if (isApart(category)) {
        if (outcome == Outcome::First || outcome == Outcome::Second || assists) {
            item.asSecond.add(category);
        }
    } else if (outcome == Outcome::First) {
        item.asFirst.add(category);
    } else if (outcome == Outcome::Second) {
        item.asSecond.add(category);
    }
}

} // namespace

std::string_view id(Level level)
{
    return levelIds[static_cast<std::size_t>(level)];
}

std::optional<Level> levelFromId(std::string_view id)
{
    for (std::size_t i = 0; i < levelIds.size(); ++i) {
        if (levelIds[i] == id) {
            return static_cast<Level>(i);
        }
    }
    return std::nullopt;
}

Outcome outcomeOf(const sheet::BookSheet& sheet, const requirement::RequirementSet& set)
{
    if (sheet.importedRole) {
        return role::classify(*sheet.importedRole, sheet.canceled);
    }
    return role::classify(sheet.marks, sheet.canceled, {set.notApplicable});
}

std::vector<Candidate> candidatesOf(const sheet::SheetBook& book, const sheet::BookStudent& student,
                                    const requirement::RequirementSet& set, Level level,
                                    const AcceptedStrengths& accepted)
{
    std::vector<Candidate> candidates;
    std::unordered_map<std::uint32_t, std::uint32_t> operations; // of the file, to a number of the student
    std::uint32_t nextOperation = 0;
    for (const sheet::BookSheet& sheet : book.sheetsOf(student)) {
        const Outcome outcome = outcomeOf(sheet, set);
        const Bar bar = barOf(sheet, outcome, level, accepted);
        const bool assists = set.assistCounts && sheet.marks.any(sheet::Mark::Yes);
        const std::uint32_t operation = sheet.operation == 0 ? nextOperation++ : [&] {
            const auto [at, fresh] = operations.emplace(sheet.operation, nextOperation);
            nextOperation += fresh ? 1 : 0;
            return at->second;
        }();
        const std::size_t firstOfSheet = candidates.size();
        std::vector<std::pair<std::uint32_t, std::size_t>> joined; // pathology, candidate
        for (const sheet::BookRow& row : book.rowsOf(sheet)) {
            if (row.onePathology) {
                std::size_t known = candidates.size();
                for (const auto& [pathology, candidate] : joined) {
                    known = pathology == *row.onePathology ? candidate : known;
                }
                if (known < candidates.size()) {
                    for (const Category category : row.categories) {
                        candidates[known].categories.add(category);
                    }
                    continue;
                }
                joined.emplace_back(*row.onePathology, candidates.size());
            }
            Candidate candidate;
            candidate.sheet = &sheet;
            candidate.row = row.number;
            candidate.procedure = row.procedure;
            candidate.categories = row.categories;
            candidate.outcome = outcome;
            candidate.bar = bar;
            candidates.push_back(candidate);
        }
        for (std::size_t i = firstOfSheet; i < candidates.size(); ++i) {
            Candidate& candidate = candidates[i];
            candidate.item.operation = operation;
            candidate.item.logged = candidate.categories.front();
            if (bar != Bar::Countable) {
                continue;
            }
            for (const Category category : candidate.categories) {
                fileUnder(candidate.item, category, outcome, assists);
            }
            if (candidate.item.categories().empty()) {
                candidate.bar = Bar::Observed;
            }
        }
    }
    return candidates;
}

} // namespace peelpack::tally
