#include "platform/session/repudiations.h"

namespace peelpack::session {

std::set<base::EntryHash> repudiatedIn(const Session& session, const keys::Id& student)
{
    std::set<base::EntryHash> found;
    const auto wanted = journal::ofKind({journal::Kind::CardStatement});
    for (const auto& [id, feed] : session.ledger().feeds()) {
        if (id.stream != student) {
            continue;
        }
        journal::eachEntry(feed, wanted, [&](const journal::Decoded& entry) {
            if (session.authority().judge(entry).standing != trust::Judgment::Standing::Counts) {
                return;
            }
            for (const journal::StatementItem& item : std::get<journal::CardStatement>(entry.payload).items) {
                if (item.repudiated) {
                    found.insert(base::EntryHash{item.attestation.bytes});
                }
            }
        });
    }
    return found;
}

} // namespace peelpack::session
