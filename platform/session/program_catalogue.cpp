#include "platform/session/program_catalogue.h"

namespace peelpack::session {

std::string overlayInForce(const Session& session)
{
    const auto& overlay = session.rules().overlay;
    return overlay ? std::string(overlay->rule.table.begin(), overlay->rule.table.end()) : std::string();
}

base::Result<catalogue::Catalogue> withOverlayInForce(const Session& session, const catalogue::Catalogue& shipped)
{
    const std::string table = overlayInForce(session);
    return table.empty() ? base::Result<catalogue::Catalogue>(shipped) : shipped.withOverlay(table);
}

} // namespace peelpack::session
