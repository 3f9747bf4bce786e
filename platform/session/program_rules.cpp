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
