#include "platform/session/program_rules.h"

#include "platform/files/requirement_json.h"
#include "platform/files/resources.h"
#include "sync/keys/hash.h"
#include "sync/trust/policy.h"

namespace peelpack::session {

std::optional<journal::Policy> policyInForce(const Session& session)
{
    const auto inForce = trust::policyInForce(session.authority(), session.ledger().feeds());
    return inForce ? std::optional(inForce->policy) : std::nullopt;
}

std::vector<journal::Policy> policiesSoFar(const Session& session)
{
    std::vector<journal::Policy> found;
    for (const trust::PolicyInForce& one : trust::policies(session.authority(), session.ledger().feeds())) {
        found.push_back(one.policy);
    }
    return found;
}

base::Result<bool> changeRules(Session& session, const Rules& rules)
{
    if (session.role() != journal::Role::Director) {
        return base::Error{base::ErrorCode::BadValue, "Only the director changes the rules."};
    }
    const auto inForce = trust::policyInForce(session.authority(), session.ledger().feeds());
    const journal::Policy policy{inForce ? inForce->entry.hash : keys::Hash{},
                                 rules.requirementSet,
                                 rules.setDigest,
                                 rules.term,
                                 rules.firstDay,
                                 rules.lastDay,
                                 rules.counted,
                                 1};
    const auto written = session.append(session.programStream(), policy);
    return written ? base::Result<bool>(true) : written.error();
}

std::uint8_t countedBit(sheet::Strength strength)
{
    if (strength == sheet::Strength::None) {
        return 0;
    }
    const auto bit = static_cast<unsigned>(strength) - static_cast<unsigned>(sheet::Strength::OwnPhone);
    return static_cast<std::uint8_t>(1U << bit);
}

base::Result<requirement::RequirementSet> setInForce(const Session& session)
{
    const std::optional<journal::Policy> policy = policyInForce(session);
    return files::requirementSet(policy ? policy->requirementSet : files::usualSetId);
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
