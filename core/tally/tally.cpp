#include "core/tally/tally.h"

namespace peelpack::tally {

using catalogue::Category;
using role::Outcome;

StudentTally Tallier::tally(const sheet::SheetBook& book, const sheet::BookStudent& student, const Wanted& wanted)
{
    StudentTally out;
    out.level = m_level;
    out.candidates = candidatesOf(book, student, m_set, m_level, m_accepted);
    out.sheets = student.sheetCount;
    for (const sheet::BookSheet& sheet : book.sheetsOf(student)) {
        const Outcome outcome = outcomeOf(sheet, m_set);
        out.observed += outcome == Outcome::Observed ? 1 : 0;
        out.unmarked += outcome == Outcome::Unmarked ? 1 : 0;
        out.canceled += outcome == Outcome::Canceled ? 1 : 0;
    }
    std::vector<Item> items;
    items.reserve(out.candidates.size());
    for (const Candidate& candidate : out.candidates) {
        items.push_back(candidate.item);
    }
    if (wanted.best) {
        out.best = count(items);
        if (wanted.next) {
            out.next = m_placer.needs(items, {out.best.seats, out.best.value});
        }
    }
    if (wanted.asLogged) {
        for (Item& item : items) {
            item = item.asLogged();
        }
        out.asLogged = count(items);
    }
    return out;
}

Count Tallier::count(std::span<const Item> items)
{
    Placement placement = m_placer.best(items);
    Count count;
    count.value = placement.value;
    count.seats = std::move(placement.seats);
    count.targets.resize(m_set.targets.size());
    for (const Seat& seat : count.seats) {
        if (seat.counts()) {
            TargetCount& target = count.targets[static_cast<std::size_t>(seat.target)];
            ++target.placed;
            ++target.byCategory[static_cast<std::uint8_t>(seat.category)];
        }
    }
    return count;
}

Outcome countedOutcome(const Candidate& candidate, std::optional<Category> category)
{
    if (candidate.outcome == Outcome::Unmarked || candidate.outcome == Outcome::Canceled) {
        return candidate.outcome;
    }
    const Category there = category.value_or(candidate.item.logged);
    if (const std::optional<sheet::Role> role = candidate.item.roleIn(there)) {
        return *role == sheet::Role::First ? Outcome::First : Outcome::Second;
    }
    if (isApart(there) && candidate.outcome == Outcome::First) {
        return Outcome::Second;
    }
    return candidate.outcome;
}

namespace {

std::string strengthIsNotEnough(const Candidate& candidate, Level level)
{
    if (level == Level::Initialed) {
        return "No instructor has initialed this sheet yet.";
    }
    switch (candidate.sheet->attested) {
    case sheet::Strength::None:
        return "No preceptor has signed this sheet yet.";
    case sheet::Strength::CardNew:
        return "The signing card was made on the spot and has not been vouched for yet.";
    case sheet::Strength::Drawn:
        return "A drawn signature counts only after an instructor has confirmed it.";
    case sheet::Strength::Paper:
        return "A pen-signed stub counts only after an instructor has confirmed it.";
    case sheet::Strength::OwnPhone:
    case sheet::Strength::Card:
        break;
    }
    return "The policy does not accept this signature.";
}

std::string anotherOfTheOperation(const StudentTally& tally, const Count& count, std::size_t index, Category category)
{
    const Candidate& candidate = tally.candidates[index];
    for (std::size_t other = 0; other < tally.candidates.size(); ++other) {
        if (other != index && tally.candidates[other].item.operation == candidate.item.operation &&
            count.seats[other].counts() && count.seats[other].category == static_cast<std::int8_t>(indexOf(category))) {
            return "Two procedures of one operation are one case in a category, and another procedure of this "
                   "operation "
                   "counts under " +
                   std::string(label(category)) + ".";
        }
    }
    return {};
}

bool targetIsFull(const requirement::Target& target, const TargetCount& count, Category category)
{
    return count.placed >= target.required || (target.cap && count.byCategory[indexOf(category)] >= *target.cap);
}

std::uint32_t countedUnder(const Count& count, Category category)
{
    std::uint32_t cases = 0;
    for (const TargetCount& target : count.targets) {
        cases += target.byCategory[indexOf(category)];
    }
    return cases;
}

} // namespace

std::string whyNotCounted(const requirement::RequirementSet& set, const StudentTally& tally, const Count& count,
                          std::size_t index)
{
    const Candidate& candidate = tally.candidates[index];
    switch (candidate.bar) {
    case Bar::Canceled:
        return "The case was canceled before incision.";
    case Bar::Unmarked:
        return "Not every skill is marked yet.";
    case Bar::Observed:
        return "It is an observation: recorded, never counted.";
    case Bar::BelowLevel:
        return strengthIsNotEnough(candidate, tally.level);
    case Bar::Countable:
        break;
    }
    const Category logged = candidate.item.logged;
    if (std::string sentence = anotherOfTheOperation(tally, count, index, logged); !sentence.empty()) {
        return sentence;
    }
    for (const requirement::Limit& limit : set.limits) {
        if (limit.category == logged && countedUnder(count, logged) >= limit.most) {
            return "At most " + std::to_string(limit.most) + " cases of " + std::string(label(logged)) +
                   " count, and they are reached.";
        }
    }
    bool accepted = false;
    bool cap = false;
    bool spread = false;
    for (std::size_t i = 0; i < set.targets.size(); ++i) {
        const requirement::Target& target = set.targets[i];
        const std::optional<sheet::Role> role = candidate.item.roleIn(logged);
        if (!role || !target.accepts(*role) || !target.categories.contains(logged)) {
            continue;
        }
        accepted = true;
        if (!targetIsFull(target, count.targets[i], logged)) {
            spread = spread || target.spread.has_value();
        } else if (count.targets[i].placed < target.required) {
            cap = true;
        }
    }
    if (!accepted) {
        return "No target of the requirements takes this category in this role.";
    }
    if (spread) {
        return "The seats that any specialty may fill are taken; the rest are kept for specialties that are still "
               "short.";
    }
    if (cap) {
        return "Only so many cases of " + std::string(label(logged)) +
               " may count as first scrub, and the second-scrub targets that take it are full.";
    }
    return "The targets that take this case are full.";
}

} // namespace peelpack::tally
