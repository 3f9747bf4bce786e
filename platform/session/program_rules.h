#pragma once

#include "core/requirement/requirement_set.h"
#include "platform/session/setup.h"
#include "sync/journal/program_payloads.h"

#include <array>

namespace peelpack::session {

/// The policy in force; empty while none has come in.
std::optional<journal::Policy> policyInForce(const Session& session);
/// Every policy that was ever in force, the first first, the one in force last.
std::vector<journal::Policy> policiesSoFar(const Session& session);
/// Puts other rules in force. BadValue: only the director does, or it may not write.
base::Result<bool> changeRules(Session& session, const Rules& rules);
/// The requirement set that the policy in force names, the usual one while there is none. BadValue, NotFound: it is not
/// at hand.
base::Result<requirement::RequirementSet> setInForce(const Session& session);

/// The strengths that a policy names, strongest first.
inline constexpr std::array strengths{sheet::Strength::OwnPhone, sheet::Strength::Card, sheet::Strength::CardNew,
                                      sheet::Strength::Drawn, sheet::Strength::Paper};
/// The bit of one of them in Rules::counted; 0 for None.
std::uint8_t countedBit(sheet::Strength strength);

/// How a signature counts.
enum class Acceptance : std::uint8_t { Never, OnceConfirmed, AsItIs };
/// Of a strength under a policy; without one, own phone and card count (counting rules, section 2). Drawn and paper
/// signatures never count before they are confirmed with the preceptor.
Acceptance acceptance(const std::optional<journal::Policy>& policy, sheet::Strength strength);

/// The rules that name a shipped set, with its digest and nothing else said.
base::Result<Rules> rulesOfShippedSet(const std::string& id);
/// Rules::counted of the invented programs: all but cards that nobody vouches for.
inline constexpr std::uint8_t countsAllButNewCards = 0b11011;

} // namespace peelpack::session
