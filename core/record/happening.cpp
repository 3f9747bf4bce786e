#include "core/record/happening.h"

#include <algorithm>

namespace peelpack::record {
namespace {

using sheet::Mark;
using sheet::Skill;

Happening plain(Happened what)
{
    Happening happening;
    happening.what = what;
    return happening;
}

Happening ofProcedures(Happened what, const std::vector<std::string>& procedures)
{
    Happening happening = plain(what);
    happening.procedures = procedures;
    return happening;
}

Happening filing(Happened what, const std::vector<Choice>& choices)
{
    Happening happening = plain(what);
    for (const Choice& choice : choices) {
        auto& categories = happening.categories;
        if (std::find(categories.begin(), categories.end(), choice.category) == categories.end()) {
            categories.push_back(choice.category);
        }
    }
    return happening;
}

Happening ofMark(Happened what, Skill skill, Mark mark)
{
    Happening happening = plain(what);
    happening.marks.push_back({skill, mark});
    return happening;
}

struct OfDecision {
    Happening operator()(const Initial& initial) const
    {
        return plain(initial.confirmed ? Happened::InitialedConfirmed : Happened::Initialed);
    }
    Happening operator()(const Return& /*back*/) const { return plain(Happened::Returned); }
    Happening operator()(const ReviewAccepted& accepted) const
    {
        return ofMark(Happened::ReviewAccepted, accepted.skill, accepted.mark);
    }
    Happening operator()(const Amend& amend) const
    {
        Happening happening = plain(Happened::Amended);
        for (const Skill skill : sheet::allSkills) {
            if (const Mark mark = amend.marks.marks.of(skill); mark != Mark::Unmarked) {
                happening.marks.push_back({skill, mark});
            }
        }
        happening.amendedHead = amend.head.has_value();
        happening.amendedProcedures = !amend.procedures.empty();
        return happening;
    }
    Happening operator()(const Refile& refile) const { return filing(Happened::Refiled, refile.choices); }
    Happening operator()(const Void& /*gone*/) const { return plain(Happened::Voided); }
};

struct OfWhat {
    bool withdrawalIsRequest = false;

    Happening operator()(const Opened& opened) const { return ofProcedures(Happened::Opened, opened.draft.procedures); }
    Happening operator()(const HeadChanged& changed) const
    {
        return ofProcedures(Happened::HeadChanged, changed.draft.procedures);
    }
    Happening operator()(const Withdrawn& /*withdrawn*/) const
    {
        return plain(withdrawalIsRequest ? Happened::WithdrawalAsked : Happened::Withdrawn);
    }
    Happening operator()(const Attested& attested) const
    {
        Happening happening = plain(Happened::Signed);
        happening.signer = attested.name;
        happening.credential = attested.credential;
        happening.strength = attested.strength;
        happening.count =
            static_cast<std::size_t>(std::count_if(sheet::allSkills.begin(), sheet::allSkills.end(), [&](Skill skill) {
                return attested.marks.marks.of(skill) != Mark::Unmarked;
            }));
        return happening;
    }
    Happening operator()(const Logged& logged) const { return filing(Happened::Logged, logged.choices); }
    Happening operator()(const ReviewAsked& asked) const
    {
        return ofMark(Happened::ReviewAsked, asked.skill, asked.wanted);
    }
    Happening operator()(const HandOverEnded& ended) const
    {
        Happening happening = plain(Happened::HandOverEnded);
        happening.cause = ended.cause;
        happening.count = ended.wrongTries;
        return happening;
    }
    Happening operator()(const Declined& /*declined*/) const { return plain(Happened::Declined); }
    Happening operator()(const Imported& imported) const
    {
        Happening happening = ofProcedures(Happened::Imported, imported.procedures);
        happening.source = imported.source;
        happening.role = imported.role;
        return happening;
    }
    Happening operator()(const Act& act) const { return std::visit(OfDecision{}, act.decision); }
};

} // namespace

Happening happeningOf(const What& what, bool withdrawalIsRequest)
{
    return std::visit(OfWhat{withdrawalIsRequest}, what);
}

} // namespace peelpack::record
