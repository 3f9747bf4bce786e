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

base::Result<Writing> sayingNotTheirs(const Session& session, const keys::Id& student, const base::EntryHash& entry)
{
    if (!session.isStaff()) {
        return base::Error{base::ErrorCode::BadValue,
                           "Only an instructor or the director keeps what a preceptor says."};
    }
    std::optional<journal::Statement> said;
    const auto wanted = journal::ofKind({journal::Kind::Attestation});
    for (const auto& [id, feed] : session.ledger().feeds()) {
        if (id.stream != student) {
            continue;
        }
        journal::eachEntry(feed, wanted, [&](const journal::Decoded& one) {
            if (one.position.hash.bytes == entry.bytes) {
                const auto statement = journal::decodeStatement(std::get<journal::Attestation>(one.payload).statement);
                said = statement ? std::optional(statement.value()) : std::nullopt;
            }
        });
    }
    if (!said) {
        return base::Error{base::ErrorCode::NotFound, "There is no such signature here."};
    }
    if (said->signer.kind != journal::SignerKind::Card) {
        return base::Error{base::ErrorCode::BadValue,
                           "Only of what a card signed can its preceptor say so here; void the sheet with a reason."};
    }
    const base::Date day = said->head.date;
    return Writing{student, journal::CardStatement{
                                said->signer.card, said->signer.epoch, day, day, {{keys::Hash{entry.bytes}, true}}}};
}

} // namespace peelpack::session
