#pragma once

#include "sync/journal/fields.h"
#include "sync/journal/payloads.h"
#include "sync/journal/statement.h"

#include <type_traits>

/// The fields of every payload in the order of FORMAT.md section 4, for reading and writing alike.
namespace peelpack::journal {

inline constexpr std::int32_t firstDayNumber = -25567; ///< 1900-01-01
inline constexpr std::int32_t lastDayNumber = 84005;   ///< 2199-12-31

template <class Archive>
void serialize(Archive& archive, FeedId& id)
{
    archive(raw(id.device), raw(id.stream));
}

template <class Archive>
void serialize(Archive& archive, Position& position)
{
    archive(position.feed, position.seq, raw(position.hash));
}

template <class Archive>
void serialize(Archive& archive, Link& link)
{
    archive(raw(link.hash), raw(link.signature));
}

template <class Archive>
void serialize(Archive& archive, Time& time)
{
    archive(time.seconds, time.zone);
    if constexpr (Archive::is_loading::value) {
        if (time.zone < -farthestZone || time.zone > farthestZone) {
            archive.fail(Reason::BadNumber);
        }
    }
}

/// A day as i32.
struct DayField {
    base::Date& value;
};
inline DayField day(base::Date& value)
{
    return {value};
}
inline void CEREAL_LOAD_FUNCTION_NAME(InputArchive& archive, DayField& field)
{
    const auto number = archive.number<std::int32_t>();
    if (number < firstDayNumber || number > lastDayNumber) {
        archive.fail(Reason::BadNumber);
    } else {
        field.value = base::Date::fromDays(number);
    }
}
inline void CEREAL_SAVE_FUNCTION_NAME(OutputArchive& archive, const DayField& field)
{
    archive(field.value.days());
}

template <class Archive>
void serialize(Archive& archive, Head& head)
{
    archive(day(head.date), text(head.surgeon), text(head.site), text(head.room), head.start, head.end);
    if constexpr (Archive::is_loading::value) {
        for (const MinuteOfDay minute : {head.start, head.end}) {
            if (minute >= minutesInDay && minute != notSaid) {
                archive.fail(Reason::BadNumber);
            }
        }
    }
}

template <class Archive>
void skillAndMark(Archive& archive, SkillMark& mark)
{
    archive(range(mark.skill, 0, sheet::skillCount - 1), range(mark.mark, 1, 3));
}

template <class Archive>
void serialize(Archive& archive, SkillMark& mark)
{
    skillAndMark(archive, mark);
    archive(text(mark.reason));
}

template <class Archive>
void serialize(Archive& archive, Draft& draft)
{
    archive(texts(draft.procedures, 1, mostProcedures), draft.head, list(draft.marks, 0, sheet::skillCount));
}

template <class Archive>
void serialize(Archive& archive, Choice& choice)
{
    archive(range(choice.procedure, 0, mostProcedures - 1), requiredText(choice.category),
            range(choice.joined, 0, mostProcedures));
}

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

template <class Archive, Kind K>
void serialize(Archive& archive, SheetVersion<K>& version)
{
    archive(raw(version.sheet), raw(version.operation), version.draft);
}

template <class Archive, Kind K>
void serialize(Archive& archive, SheetReason<K>& item)
{
    archive(raw(item.sheet), requiredText(item.reason, longText));
}

template <class Archive>
void serialize(Archive& archive, Attestation& attestation)
{
    archive(blob(attestation.statement, mostStatementBytes), raw(attestation.signature));
}

template <class Archive>
void serialize(Archive& archive, Logged& logged)
{
    archive(raw(logged.sheet), list(logged.choices, 1, mostProcedures));
}

template <class Archive>
void serialize(Archive& archive, ReviewAsked& review)
{
    archive(raw(review.sheet));
    skillAndMark(archive, review.wanted);
    archive(requiredText(review.reason, longText));
}

template <class Archive>
void serialize(Archive& archive, HandOverEnded& ended)
{
    archive(raw(ended.sheet), ended.began, ended.ended, ended.wrongTries, range(ended.cause, 1, 4));
}

template <class Archive>
void serialize(Archive& archive, Act& act)
{
    archive(raw(act.sheet), raw(act.standsOn), raw(act.about), text(act.reason, longText));
}

template <class Archive>
void serialize(Archive& archive, Initial& initial)
{
    archive(initial.act, initial.confirmed);
}

template <class Archive, Kind K>
void serialize(Archive& archive, PlainAct<K>& plain)
{
    archive(plain.act);
}

template <class Archive>
void serialize(Archive& archive, ReviewAccepted& accepted)
{
    archive(accepted.act, raw(accepted.request));
    skillAndMark(archive, accepted.granted);
}

template <class Archive>
void serialize(Archive& archive, Amend& amend)
{
    archive(amend.act, list(amend.marks, 0, sheet::skillCount), maybe(amend.head),
            texts(amend.procedures, 0, mostProcedures));
}

template <class Archive>
void serialize(Archive& archive, Refile& refile)
{
    archive(refile.act, list(refile.choices, 1, mostProcedures));
}

template <class Archive>
void serialize(Archive& archive, Complete& complete)
{
    archive(requiredText(complete.requirementSet), raw(complete.setDigest), complete.studentHead);
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

template <class Archive>
void serialize(Archive& archive, Signer& signer)
{
    archive(range(signer.kind, 1, 4), raw(signer.key), raw(signer.card), signer.epoch, requiredText(signer.name),
            text(signer.credential), blob(signer.strokes, mostStrokeBytes), text(signer.stub));
}

template <class Archive>
void serialize(Archive& archive, Statement& statement)
{
    constexpr std::size_t localeCharacters = 35;
    archive(raw(statement.program), raw(statement.student), raw(statement.operation), raw(statement.sheet),
            texts(statement.procedures, 1, mostProcedures), statement.head, list(statement.marks, 0, sheet::skillCount),
            text(statement.feedback, longText), requiredText(statement.locale, localeCharacters), statement.wording,
            requiredText(statement.meaning, longText), statement.signer, statement.time);
}

} // namespace peelpack::journal
