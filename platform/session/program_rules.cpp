#include "platform/session/program_rules.h"

#include "platform/files/resources.h"
#include "platform/session/set_files.h"
#include "sync/keys/hash.h"
#include "sync/merge/record_content.h"
#include "sync/trust/policy.h"

#include <algorithm>
#include <set>

namespace peelpack::session {

namespace {

SetByName byName(const trust::NamedSet& set)
{
    SetByName named{set.id, set.digest, {}, {}, {}};
    if (set.change != nullptr) {
        named.className = set.change->rule.className;
        named.from = set.change->rule.from;
        named.reason = set.change->rule.reason;
    }
    return named;
}

base::Date dayBefore(const base::Date& day)
{
    return base::Date::fromDays(day.days() - 1);
}

} // namespace

std::optional<journal::Policy> policyInForce(const Session& session)
{
    const auto* inForce = session.rules().policy();
    return inForce == nullptr ? std::nullopt : std::optional(inForce->rule);
}

std::vector<journal::Policy> policiesSoFar(const Session& session)
{
    std::vector<journal::Policy> found;
    for (const auto& policy : session.rules().policies) {
        found.push_back(policy.rule);
    }
    return found;
}

std::uint8_t countedBit(sheet::Strength strength)
{
    if (strength == sheet::Strength::None) {
        return 0;
    }
    const auto bit = static_cast<unsigned>(strength) - static_cast<unsigned>(sheet::Strength::OwnPhone);
    return static_cast<std::uint8_t>(1U << bit);
}

std::vector<std::string> classesOf(const Session& session, const keys::Id& student)
{
    std::set<std::string> classes;
    for (const auto& [device, holder] : session.authority().holders()) {
        if (holder.role == journal::Role::Student && holder.person == student) {
            classes.insert(holder.scopes.begin(), holder.scopes.end());
        }
    }
    return {classes.begin(), classes.end()};
}

std::vector<std::string> everyClass(const Session& session)
{
    std::set<std::string> classes;
    for (const auto& [device, holder] : session.authority().holders()) {
        if (holder.role == journal::Role::Student) {
            classes.insert(holder.scopes.begin(), holder.scopes.end());
        }
    }
    for (const auto& change : session.rules().changes) {
        classes.insert(change.rule.className);
    }
    for (const auto& [name, days] : session.rules().days) {
        classes.insert(name);
    }
    classes.erase(std::string());
    return {classes.begin(), classes.end()};
}

base::Date today(const Session& session)
{
    return merge::timeOf(session.now()).day();
}

SetByName namedSet(const Session& session, const std::vector<std::string>& classes, const base::Date& day)
{
    const std::optional<trust::NamedSet> set = trust::setOn(session.rules(), classes, day);
    return set ? byName(*set) : SetByName{files::usualSetId, {}, {}, {}, {}};
}

SetByName namedSet(const Session& session, const keys::Id& student, const base::Date& day)
{
    return namedSet(session, classesOf(session, student), day);
}

base::Result<requirement::RequirementSet> setNamed(const Session& session, const SetByName& named)
{
    base::Result<SetFile> file = setFileNamed(session, named);
    return file ? base::Result<requirement::RequirementSet>(std::move(file).value().set) : file.error();
}

base::Result<requirement::RequirementSet> setInForce(const Session& session, const keys::Id& student,
                                                     const base::Date& day)
{
    return setNamed(session, namedSet(session, student, day));
}

base::Result<requirement::RequirementSet> setInForce(const Session& session, const std::string& className,
                                                     const base::Date& day)
{
    return setNamed(session,
                    namedSet(session, className.empty() ? std::vector<std::string>() : std::vector{className}, day));
}

base::Result<requirement::RequirementSet> setOfPolicy(const Session& session)
{
    const std::optional<journal::Policy> policy = policyInForce(session);
    return setNamed(session, policy ? SetByName{policy->requirementSet, policy->setDigest, {}, {}, {}}
                                    : SetByName{files::usualSetId, {}, {}, {}, {}});
}

SetsAround setsAround(const Session& session, const keys::Id& student, const base::Date& day)
{
    const std::vector<std::string> classes = classesOf(session, student);
    SetsAround sets{namedSet(session, classes, day), {}};
    const std::vector<base::Date> changes = trust::changeDays(session.rules(), classes);
    const auto next = std::upper_bound(changes.begin(), changes.end(), day);
    for (auto change = next; change != changes.begin();) {
        --change;
        SetByName before = namedSet(session, classes, dayBefore(*change));
        if (!before.isSameSet(sets.inForce)) {
            sets.others.push_back({std::move(before), false, *change});
            break;
        }
    }
    for (auto change = next; change != changes.end(); ++change) {
        SetByName coming = namedSet(session, classes, *change);
        if (!coming.isSameSet(sets.inForce)) {
            sets.others.push_back({std::move(coming), true, *change});
            break;
        }
    }
    return sets;
}

std::vector<journal::RequirementsChange> requirementChanges(const Session& session)
{
    std::vector<journal::RequirementsChange> changes;
    for (const auto& change : session.rules().changes) {
        changes.push_back(change.rule);
    }
    return changes;
}

std::vector<journal::ClinicalDay> clinicalDays(const Session& session, const std::string& className)
{
    const auto& days = session.rules().days;
    const auto found = days.find(className);
    return found == days.end() ? std::vector<journal::ClinicalDay>() : found->second.rule.days;
}

std::vector<journal::ClinicalDay> clinicalDaysOf(const Session& session, const keys::Id& student)
{
    return trust::clinicalDaysOf(session.rules(), classesOf(session, student));
}

std::vector<journal::Site> sites(const Session& session)
{
    const auto& inForce = session.rules().sites;
    return inForce ? inForce->rule.sites : std::vector<journal::Site>();
}

std::vector<journal::MaySign> whoMaySign(const Session& session)
{
    const auto& inForce = session.rules().whoMaySign;
    return inForce ? inForce->rule.signers : std::vector<journal::MaySign>();
}

std::optional<journal::PreceptorStanding> standingOf(const Session& session, const keys::Id& preceptor)
{
    const auto& standings = session.rules().standings;
    const auto found = standings.find(preceptor);
    return found == standings.end() ? std::nullopt : std::optional(found->second.rule);
}

Acceptance acceptance(const std::optional<journal::Policy>& policy, sheet::Strength strength)
{
    const bool usual = strength == sheet::Strength::OwnPhone || strength == sheet::Strength::Card;
    if (!(policy ? trust::counts(*policy, strength) : usual)) {
        return Acceptance::Never;
    }
    const bool weak = strength == sheet::Strength::Drawn || strength == sheet::Strength::Paper;
    return weak ? Acceptance::OnceConfirmed : Acceptance::AsItIs;
}

base::Result<Rules> rulesOfShippedSet(const std::string& id)
{
    const base::Result<std::string> text = files::shippedText("requirements/" + id + ".json");
    if (!text) {
        return text.error();
    }
    Rules rules;
    rules.requirementSet = id;
    rules.setDigest = keys::hash({}, {keys::bytesOf(text.value())});
    return rules;
}

} // namespace peelpack::session
