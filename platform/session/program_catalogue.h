#pragma once

#include "core/catalogue/catalogue.h"
#include "platform/session/session.h"

#include <string>

/// The program's own table of procedures over the shipped catalogue (FORMAT.md section 4, kind 10).
namespace peelpack::session {

/// The table in force; empty: the shipped catalogue as it is.
std::string overlayInForce(const Session& session);
/// The shipped catalogue with the table in force laid over it. BadInput: the table does not fit this version's
/// catalogue; the sentence names the line.
base::Result<catalogue::Catalogue> withOverlayInForce(const Session& session, const catalogue::Catalogue& shipped);

} // namespace peelpack::session
