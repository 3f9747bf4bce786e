#pragma once

#include "sync/journal/feed_id.h"
#include "sync/journal/fields.h"
#include "sync/journal/sheet_content.h"

/// The fields of what payloads share, in the order of FORMAT.md section 4, for reading and writing alike.
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

/// A language tag (RFC 5646 calls 35 enough).
inline constexpr std::size_t localeCharacters = 35;

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
    archive(day(head.date), text(head.surgeon), text(head.site), text(head.room), head.start, head.end, head.canceled);
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

} // namespace peelpack::journal
