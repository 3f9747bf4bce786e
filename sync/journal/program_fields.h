#pragma once

#include "sync/journal/content_fields.h"
#include "sync/journal/program_payloads.h"

/// The fields of what staff write, in the order of FORMAT.md section 4, for reading and writing alike.
namespace peelpack::journal {

template <class Archive>
void serialize(Archive& archive, Grant& grant)
{
    constexpr std::size_t mostScopes = 64;
    archive(raw(grant.person), range(grant.role, 1, 4), raw(grant.device), raw(grant.seal), requiredText(grant.name),
            texts(grant.scopes, 0, mostScopes), maybe(grant.continues));
}

template <class Archive>
void serialize(Archive& archive, Revoke& revoke)
{
    archive(range(revoke.target, 1, 2), revoke.feed, raw(revoke.card), revoke.epoch, revoke.accepted,
            requiredText(revoke.reason, longText));
}

template <class Archive>
void serialize(Archive& archive, Vouch& vouch)
{
    archive(raw(vouch.person), requiredText(vouch.name), text(vouch.credential), text(vouch.site),
            range(vouch.keyKind, 1, 2), raw(vouch.key), raw(vouch.card), vouch.epoch);
}

template <class Archive>
void serialize(Archive& archive, Policy& policy)
{
    constexpr std::uint64_t allStrengths = 31;
    archive(raw(policy.standsOn), requiredText(policy.requirementSet), raw(policy.setDigest), text(policy.term),
            day(policy.firstDay), day(policy.lastDay), range(policy.counted, 0, allStrengths), policy.wording);
}

template <class Archive>
void serialize(Archive& archive, Complete& complete)
{
    archive(requiredText(complete.requirementSet), raw(complete.setDigest), complete.studentHead);
}

template <class Archive>
void serialize(Archive& archive, CompleteByException& complete)
{
    archive(requiredText(complete.requirementSet), raw(complete.setDigest), complete.studentHead, complete.required,
            complete.counted, requiredText(complete.reason, longText));
}

inline constexpr std::size_t mostItems = 1024;

template <class Archive>
void serialize(Archive& archive, ReceiptItem& item)
{
    archive(raw(item.device), item.seq, raw(item.hash));
}

template <class Archive>
void serialize(Archive& archive, Receipt& receipt)
{
    archive(list(receipt.items, 1, mostItems), receipt.programCount);
}

template <class Archive>
void serialize(Archive& archive, StatementItem& item)
{
    archive(raw(item.attestation), item.repudiated);
}

template <class Archive>
void serialize(Archive& archive, CardStatement& statement)
{
    archive(raw(statement.card), statement.epoch, day(statement.firstDay), day(statement.lastDay),
            list(statement.items, 1, mostItems));
}

template <class Archive>
void serialize(Archive& archive, ForkFound& found)
{
    ForkEvidence& evidence = found.evidence;
    archive(evidence.feed, evidence.seq, evidence.first, evidence.second);
}

template <class Archive>
void serialize(Archive& archive, Admit& admit)
{
    archive(admit.entry, requiredText(admit.reason, longText));
}

} // namespace peelpack::journal
