#include "sync/merge/actions.h"

#include <algorithm>
#include <set>

namespace peelpack::merge {

using journal::Kind;
using journal::Role;
using Standing = trust::Judgment::Standing;

namespace {

/// The smaller is taken first: void, return, amend, re-file, review accepted, initial.
int rank(std::uint16_t kind)
{
    switch (static_cast<Kind>(kind)) {
    case Kind::Void:
        return 0;
    case Kind::Return:
        return 1;
    case Kind::Amend:
        return 2;
    case Kind::Refile:
        return 3;
    case Kind::ReviewAccepted:
        return 4;
    default:
        return 5;
    }
}

bool takenBefore(const Action& a, const Action& b)
{
    const auto order = [](const Action& action) {
        return std::tuple(action.role == Role::Director ? 0 : 1, rank(action.entry.kind), action.entry.position.hash);
    };
    return order(a) < order(b);
}

} // namespace

SheetActions walkOf(std::vector<Action> actions)
{
    std::sort(actions.begin(), actions.end(), takenBefore);
    std::map<keys::Hash, const Action*> children; // the one that is taken
    for (const Action& action : actions) {
        children.try_emplace(action.act().standsOn, &action);
    }
    SheetActions result;
    std::set<keys::Hash> walked;
    for (auto at = children.find(keys::Hash{}); at != children.end();
         at = children.find(result.inForce.back().entry.position.hash)) {
        walked.insert(at->second->entry.position.hash);
        result.inForce.push_back(*at->second);
    }
    std::copy_if(actions.begin(), actions.end(), std::back_inserter(result.beside),
                 [&](const Action& action) { return !walked.contains(action.entry.position.hash); });
    std::sort(result.beside.begin(), result.beside.end(),
              [](const Action& a, const Action& b) { return a.entry.position.hash < b.entry.position.hash; });
    return result;
}

std::map<keys::Id, SheetActions> actionsOf(const trust::Authority& authority, const Ledger& ledger,
                                           const keys::Id& student)
{
    std::map<keys::Id, std::vector<Action>> bySheet;
    for (const auto& [id, feed] : ledger.feeds()) {
        if (id.stream != student) {
            continue;
        }
        const trust::Holder* writer = authority.holder(id.device);
        journal::eachTrunkEntry(feed, authority.limit(id), journal::isAct, [&](const journal::Decoded& entry) {
            if (authority.judge(entry).standing == Standing::Counts) {
                bySheet[journal::actOf(entry.payload)->sheet].push_back(
                    {entry, writer->role, writer->person, writer->epoch});
            }
        });
    }
    std::map<keys::Id, SheetActions> result;
    for (auto& [sheet, actions] : bySheet) {
        result.emplace(sheet, walkOf(std::move(actions)));
    }
    return result;
}

bool initialedOnlyByAttester(const trust::Authority& authority, const Ledger& ledger, const keys::Id& student,
                             const keys::Id& sheet)
{
    const auto actions = actionsOf(authority, ledger, student);
    const auto found = actions.find(sheet);
    if (found == actions.end() || found->second.inForce.empty() ||
        found->second.inForce.back().entry.kind != static_cast<std::uint16_t>(Kind::Initial)) {
        return false;
    }
    const keys::Id initialer = found->second.inForce.back().person;
    bool any = false;
    bool onlyTheirs = true;
    const auto isAttestation = journal::ofKind({Kind::Attestation});
    for (const auto& [id, feed] : ledger.feeds()) {
        if (id.stream != student) {
            continue;
        }
        journal::eachTrunkEntry(feed, authority.limit(id), isAttestation, [&](const journal::Decoded& entry) {
            const auto statement = journal::decodeStatement(std::get<journal::Attestation>(entry.payload).statement);
            if (statement && statement.value().sheet == sheet && authority.judge(entry).standing == Standing::Counts) {
                any = true;
                onlyTheirs = onlyTheirs && authority.personOf(statement.value().signer) == initialer;
            }
        });
    }
    return any && onlyTheirs;
}

} // namespace peelpack::merge
