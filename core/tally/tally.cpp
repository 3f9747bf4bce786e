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

} // namespace peelpack::tally
