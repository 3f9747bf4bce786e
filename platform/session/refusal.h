#pragma once

#include "core/base/result.h"
#include "sync/journal/reason.h"

#include <string>

namespace peelpack::session {

/// A reason of the journal's as an error for a person.
inline base::Error refused(journal::Reason reason, base::ErrorCode code = base::ErrorCode::BadValue)
{
    return {code, std::string(journal::sentence(reason))};
}

} // namespace peelpack::session
