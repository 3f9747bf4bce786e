#include "sync/trust/program_rules.h"

#include <algorithm>
#include <tuple>

namespace peelpack::trust {
namespace {

using journal::Kind;

/// The chains of every sort of rule.
struct Chains {
    Chain<journal::Policy> policies;
    Chain<journal::RequirementsChange> changes;
    std::map<std::string, Chain<journal::ClinicalDays>> days;
    Chain<journal::Sites> sites;
    Chain<journal::WhoMaySign> whoMaySign;
    std::map<keys::Id, Chain<journal::PreceptorStanding>> standings;
    Chain<journal::CatalogueOverlay> overlays;

    Chain<journal::Policy>& of(const journal::Policy& /*rule*/) { return policies; }
    Chain<journal::RequirementsChange>& of(const journal::RequirementsChange& /*rule*/) { return changes; }
    Chain<journal::ClinicalDays>& of(const journal::ClinicalDays& rule) { return days[rule.className]; }
    Chain<journal::Sites>& of(const journal::Sites& /*rule*/) { return sites; }
    Chain<journal::WhoMaySign>& of(const journal::WhoMaySign& /*rule*/) { return whoMaySign; }
    Chain<journal::PreceptorStanding>& of(const journal::PreceptorStanding& rule) { return standings[rule.person]; }
    Chain<journal::CatalogueOverlay>& of(const journal::CatalogueOverlay& /*rule*/) { return overlays; }
};

template <class Rule>
std::optional<InForce<Rule>> endOf(const Chain<Rule>& chain)
{
    std::vector<InForce<Rule>> steps = chain.walk();
    return steps.empty() ? std::nullopt : std::optional(std::move(steps.back()));
}

template <class Key, class Rule>
std::map<Key, InForce<Rule>> endsOf(const std::map<Key, Chain<Rule>>& chains)
{
    std::map<Key, InForce<Rule>> ends;
    for (const auto& [key, chain] : chains) {
        if (auto end = endOf(chain)) {
            ends.emplace(key, std::move(*end));
        }
    }
    return ends;
}

bool concerns(const journal::RequirementsChange& change, const std::string& className)
{
    return change.className.empty() || change.className == className;
}

const InForce<journal::RequirementsChange>* changeOn(const ProgramRules& rules, const std::string& className,
                                                     const base::Date& day)
{
    const InForce<journal::RequirementsChange>* found = nullptr;
    for (const InForce<journal::RequirementsChange>& change : rules.changes) {
        if (concerns(change.rule, className) && change.rule.from <= day &&
            (found == nullptr || change.rule.from >= found->rule.from)) {
            found = &change;
        }
    }
    return found;
}

/// The classes, or one without a name that only what is for every class concerns.
std::vector<std::string> orNone(const std::vector<std::string>& classes)
{
    return classes.empty() ? std::vector<std::string>{std::string()} : classes;
}

} // namespace

ProgramRules rulesInForce(const Authority& authority, const Feeds& feeds)
{
    Chains chains;
    const auto isOne = [](std::uint16_t kind) {
        return kind == static_cast<std::uint16_t>(Kind::Policy) || journal::isRule(kind);
    };
    for (const auto& [id, feed] : feeds) {
        const Authority::FeedView view = authority.viewOf(id);
        journal::eachTrunkEntry(feed, authority.limit(id), isOne, [&](journal::Decoded&& entry) {
            if (authority.judge(entry, view).standing != Judgment::Standing::Counts) {
                return;
            }
            std::visit(
                [&]<class Rule>(Rule& rule) {
                    if constexpr (requires { chains.of(rule); }) {
                        auto& chain = chains.of(rule);
                        chain.add({std::move(rule), entry.position}, *view.writer);
                    }
                },
                entry.payload);
        });
    }
    return {chains.policies.walk(),   chains.changes.walk(),    endsOf(chains.days),   endOf(chains.sites),
            endOf(chains.whoMaySign), endsOf(chains.standings), endOf(chains.overlays)};
}

std::optional<NamedSet> setOn(const ProgramRules& rules, const std::vector<std::string>& classes, const base::Date& day)
{
    for (const std::string& className : orNone(classes)) {
        if (const auto* change = changeOn(rules, className, day)) {
            return NamedSet{change->rule.requirementSet, change->rule.setDigest, change};
        }
    }
    const InForce<journal::Policy>* policy = rules.policy();
    return policy == nullptr ? std::nullopt
                             : std::optional(NamedSet{policy->rule.requirementSet, policy->rule.setDigest, nullptr});
}

std::vector<base::Date> changeDays(const ProgramRules& rules, const std::vector<std::string>& classes)
{
    std::vector<base::Date> days;
    const std::vector<std::string> all = orNone(classes);
    for (const InForce<journal::RequirementsChange>& change : rules.changes) {
        if (std::any_of(all.begin(), all.end(), [&](const auto& name) { return concerns(change.rule, name); })) {
            days.push_back(change.rule.from);
        }
    }
    std::sort(days.begin(), days.end());
    days.erase(std::unique(days.begin(), days.end()), days.end());
    return days;
}

std::vector<journal::ClinicalDay> clinicalDaysOf(const ProgramRules& rules, const std::vector<std::string>& classes)
{
    std::vector<journal::ClinicalDay> days;
    std::vector<std::string> all = classes;
    all.emplace_back();
    for (const std::string& className : all) {
        if (const auto found = rules.days.find(className); found != rules.days.end()) {
            days.insert(days.end(), found->second.rule.days.begin(), found->second.rule.days.end());
        }
    }
    const auto key = [](const journal::ClinicalDay& day) { return std::tie(day.date, day.start, day.site, day.end); };
    std::sort(days.begin(), days.end(), [&](const auto& a, const auto& b) { return key(a) < key(b); });
    days.erase(std::unique(days.begin(), days.end()), days.end());
    return days;
}

} // namespace peelpack::trust
