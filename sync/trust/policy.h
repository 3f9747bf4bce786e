#pragma once

#include "sync/trust/authority.h"

#include <optional>

namespace peelpack::trust {

struct PolicyInForce {
    journal::Policy policy;
    journal::Position entry;
};

/// The policy at the end of the walk from zero by "stands on" (FORMAT.md section 7): latest by chain, whatever the
/// clocks said. Empty when the director has not made one.
std::optional<PolicyInForce> policyInForce(const Authority& authority, const Feeds& feeds);

/// Whether the policy counts signatures of this strength; None never counts, Drawn and Paper only once confirmed by an
/// instructor as well.
bool counts(const journal::Policy& policy, sheet::Strength strength);

} // namespace peelpack::trust
