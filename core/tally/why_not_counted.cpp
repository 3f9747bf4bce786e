#include "core/tally/why_not_counted.h"

namespace peelpack::tally {

using catalogue::Category;

namespace {

Obstacle signatureMissing(const Candidate& candidate, Level level)
{
    if (level == Level::Initialed) {
        return Obstacle::NotInitialed;
    }
    switch (candidate.sheet->attested) {
    case sheet::Strength::None:
        return Obstacle::NotSigned;
    case sheet::Strength::CardNew:
        return Obstacle::CardNotVouched;
    case sheet::Strength::Drawn:
        return Obstacle::DrawnNotConfirmed;
    case sheet::Strength::Paper:
        return Obstacle::StubNotConfirmed;
    case sheet::Strength::OwnPhone:
    case sheet::Strength::Card:
        break;
    }
    return Obstacle::SignatureNotAccepted;
}

/// Another procedure of the operation counts under the category.
bool isCountedAlready(const StudentTally& tally, const Count& count, std::size_t index, Category category)
{
    const Candidate& candidate = tally.candidates[index];
    for (std::size_t other = 0; other < tally.candidates.size(); ++other) {
        if (other != index && tally.candidates[other].item.operation == candidate.item.operation &&
            count.seats[other].counts() && count.seats[other].category == static_cast<std::int8_t>(indexOf(category))) {
            return true;
        }
    }
    return false;
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

Obstacle inTargets(const requirement::RequirementSet& set, const Candidate& candidate, const Count& count)
{
    const Category logged = candidate.item.logged;
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
        return Obstacle::NoTarget;
    }
    if (spread) {
        return Obstacle::SeatsKept;
    }
    return cap ? Obstacle::CapReached : Obstacle::TargetsFull;
}

} // namespace

WhyNotCounted whyNotCounted(const requirement::RequirementSet& set, const StudentTally& tally, const Count& count,
                            std::size_t candidate)
{
    const Candidate& one = tally.candidates[candidate];
    const Category logged = one.item.logged;
    switch (one.bar) {
    case Bar::Canceled:
        return {Obstacle::Canceled, logged, 0};
    case Bar::Unmarked:
        return {Obstacle::Unmarked, logged, 0};
    case Bar::Observed:
        return {Obstacle::Observed, logged, 0};
    case Bar::ImportNotInitialed:
        return {Obstacle::ImportNotInitialed, logged, 0};
    case Bar::BelowLevel:
        return {signatureMissing(one, tally.level), logged, 0};
    case Bar::Countable:
        break;
    }
    if (isCountedAlready(tally, count, candidate, logged)) {
        return {Obstacle::SameOperation, logged, 0};
    }
    for (const requirement::Limit& limit : set.limits) {
        if (limit.category == logged && countedUnder(count, logged) >= limit.most) {
            return {Obstacle::LimitReached, logged, limit.most};
        }
    }
    return {inTargets(set, one, count), logged, 0};
}

std::string sentence(const WhyNotCounted& why)
{
    const std::string category(label(why.category));
    switch (why.obstacle) {
    case Obstacle::Canceled:
        return "The case was canceled before incision.";
    case Obstacle::Unmarked:
        return "Not every skill is marked yet.";
    case Obstacle::Observed:
        return "It is an observation: recorded, never counted.";
    case Obstacle::ImportNotInitialed:
        return "Imported, not attested: it counts once an instructor has initialed it.";
    case Obstacle::NotInitialed:
        return "No instructor has initialed this sheet yet.";
    case Obstacle::NotSigned:
        return "No preceptor has signed this sheet yet.";
    case Obstacle::CardNotVouched:
        return "The signing card was made on the spot and has not been vouched for yet.";
    case Obstacle::DrawnNotConfirmed:
        return "A drawn signature counts only after an instructor has confirmed it.";
    case Obstacle::StubNotConfirmed:
        return "A pen-signed stub counts only after an instructor has confirmed it.";
    case Obstacle::SignatureNotAccepted:
        return "The policy does not accept this signature.";
    case Obstacle::SameOperation:
        return "Two procedures of one operation are one case in a category, and another procedure of this operation "
               "counts under " +
               category + ".";
    case Obstacle::LimitReached:
        return "At most " + std::to_string(why.most) + " cases of " + category + " count, and they are reached.";
    case Obstacle::NoTarget:
        return "No target of the requirements takes this category in this role.";
    case Obstacle::SeatsKept:
        return "The seats that any specialty may fill are taken; the rest are kept for specialties that are still "
               "short.";
    case Obstacle::CapReached:
        return "Only so many cases of " + category +
               " may count as first scrub, and the second-scrub targets that take it are full.";
    case Obstacle::TargetsFull:
        return "The targets that take this case are full.";
    }
    return {};
}

} // namespace peelpack::tally
