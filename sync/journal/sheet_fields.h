#pragma once

#include "sync/journal/content_fields.h"
#include "sync/journal/sheet_payloads.h"
#include "sync/journal/statement.h"

/// The fields of sheets, actions and attestations, in the order of FORMAT.md sections 4 and 5, for reading and writing
/// alike.
namespace peelpack::journal {

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

inline constexpr std::size_t sourceCharacters = 400;

template <class Archive>
void serialize(Archive& archive, Imported& imported)
{
    archive(raw(imported.sheet), raw(imported.operation), texts(imported.procedures, 1, mostProcedures), imported.head,
            list(imported.choices, 1, mostProcedures), range(imported.role, 1, 3), text(imported.preceptor),
            text(imported.credential), requiredText(imported.source, sourceCharacters));
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
    archive(raw(statement.program), raw(statement.student), raw(statement.operation), raw(statement.sheet),
            texts(statement.procedures, 1, mostProcedures), statement.head, list(statement.marks, 0, sheet::skillCount),
            text(statement.feedback, longText), requiredText(statement.locale, localeCharacters), statement.wording,
            requiredText(statement.meaning, longText), statement.signer, statement.time);
}

} // namespace peelpack::journal
