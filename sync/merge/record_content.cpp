#include "sync/merge/record_content.h"

namespace peelpack::merge {

base::Id idOf(const keys::Id& id)
{
    return {id.bytes};
}

base::EntryHash hashOf(const keys::Hash& hash)
{
    return {hash.bytes};
}

record::Time timeOf(const journal::Time& time)
{
    return {time.seconds, time.zone};
}

record::Head headOf(journal::Head&& head)
{
    return {head.date,    std::move(head.surgeon), std::move(head.site), std::move(head.room), head.start, head.end,
            head.canceled};
}

record::ReasonedMarks marksOf(std::vector<journal::SkillMark>&& marks)
{
    record::ReasonedMarks result;
    for (journal::SkillMark& mark : marks) {
        result.set(mark.skill, mark.mark, std::move(mark.reason));
    }
    return result;
}

std::vector<record::Choice> choicesOf(const std::vector<journal::Choice>& choices)
{
    std::vector<record::Choice> result;
    result.reserve(choices.size());
    for (const journal::Choice& choice : choices) {
        result.push_back({choice.procedure, catalogue::categoryFromId(choice.category), choice.joined});
    }
    return result;
}

record::Draft draftOf(const keys::Id& operation, journal::Draft&& draft)
{
    return {idOf(operation), std::move(draft.procedures), headOf(std::move(draft.head)),
            marksOf(std::move(draft.marks))};
}

record::Imported importedOf(journal::Imported&& imported)
{
    const auto role = [&] {
        switch (imported.role) {
        case journal::ImportedRole::First:
            return sheet::Role::First;
        case journal::ImportedRole::Second:
            return sheet::Role::Second;
        case journal::ImportedRole::Observed:
            break;
        }
        return sheet::Role::Observed;
    }();
    return {idOf(imported.operation),
            std::move(imported.procedures),
            headOf(std::move(imported.head)),
            choicesOf(imported.choices),
            role,
            std::move(imported.preceptor),
            std::move(imported.credential),
            std::move(imported.source),
            false};
}

record::HandOverEnded handOverOf(const journal::HandOverEnded& ended)
{
    const auto cause = [&] {
        switch (ended.cause) {
        case journal::HandOverCause::WrongPin:
            return record::HandOverCause::WrongPin;
        case journal::HandOverCause::WrongCard:
            return record::HandOverCause::WrongCard;
        case journal::HandOverCause::TimedOut:
            return record::HandOverCause::TimedOut;
        case journal::HandOverCause::Canceled:
            break;
        }
        return record::HandOverCause::Canceled;
    }();
    return {timeOf(ended.began), timeOf(ended.ended), ended.wrongTries, cause};
}

record::Attested attestedOf(journal::Statement&& statement)
{
    record::Attested attested;
    attested.operation = idOf(statement.operation);
    attested.procedures = std::move(statement.procedures);
    attested.head = headOf(std::move(statement.head));
    attested.marks = marksOf(std::move(statement.marks));
    attested.feedback = std::move(statement.feedback);
    attested.name = std::move(statement.signer.name);
    attested.credential = std::move(statement.signer.credential);
    attested.key = {statement.signer.key.bytes};
    attested.signedAt = timeOf(statement.time);
    return attested;
}

} // namespace peelpack::merge
