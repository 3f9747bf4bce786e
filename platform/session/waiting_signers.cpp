#include "platform/session/waiting_signers.h"

#include <algorithm>
#include <tuple>

namespace peelpack::session {
namespace {

/// Nobody vouches for the key, and somebody could.
bool waits(const trust::Authority& authority, const journal::Statement& statement)
{
    const journal::Signer& signer = statement.signer;
    const sheet::Strength strength = authority.strengthOf(statement);
    switch (signer.kind) {
    case journal::SignerKind::Card:
        return strength == sheet::Strength::CardNew &&
               !authority.signerRevoked(journal::KeyKind::Card, signer.key, signer.card, signer.epoch);
    case journal::SignerKind::Device:
        return strength == sheet::Strength::None && authority.holder(signer.key) == nullptr &&
               !authority.signerRevoked(journal::KeyKind::Device, signer.key, {}, 0);
    case journal::SignerKind::Drawn:
    case journal::SignerKind::Paper:
        break;
    }
    return false;
}

} // namespace

std::vector<WaitingSigner> waitingSigners(const Session& session)
{
    using Key = std::tuple<keys::VerifyKey, keys::Id, std::uint32_t>;
    std::map<Key, WaitingSigner> found;
    const trust::Authority& authority = session.authority();
    const auto wanted = journal::ofKind({journal::Kind::Attestation});
    for (const auto& [id, feed] : session.ledger().feeds()) {
        const trust::Holder* student = authority.holder(id.device);
        if (student == nullptr || student->person != id.stream) {
            continue;
        }
        journal::eachTrunkEntry(feed, authority.limit(id), wanted, [&](const journal::Decoded& entry) {
            const auto read = journal::decodeStatement(std::get<journal::Attestation>(entry.payload).statement);
            if (!read || !waits(authority, read.value())) {
                return;
            }
            const journal::Statement& statement = read.value();
            const journal::Signer& signer = statement.signer;
            WaitingSigner& waiting = found[{signer.key, signer.card, signer.epoch}];
            waiting.signer = signer;
            std::erase_if(waiting.sheets, [&](const WaitingSheet& sheet) {
                return sheet.sheet == statement.sheet && sheet.student == statement.student;
            });
            waiting.sheets.push_back({statement.student, statement.sheet, statement.head.date, statement.procedures});
        });
    }
    std::vector<WaitingSigner> list;
    for (auto& [key, waiting] : found) {
        std::stable_sort(waiting.sheets.begin(), waiting.sheets.end(),
                         [](const WaitingSheet& a, const WaitingSheet& b) { return b.date < a.date; });
        list.push_back(std::move(waiting));
    }
    std::stable_sort(list.begin(), list.end(),
                     [](const WaitingSigner& a, const WaitingSigner& b) { return a.signer.name < b.signer.name; });
    return list;
}

} // namespace peelpack::session
