#pragma once

#include "sync/journal/content_fields.h"
#include "sync/journal/rule_payloads.h"

/// The fields of the program's rules, in the order of FORMAT.md section 4, for reading and writing alike.
namespace peelpack::journal {

inline constexpr std::size_t mostClinicalDays = 512;
inline constexpr std::size_t mostSites = 128;
inline constexpr std::size_t mostCredentials = 32;
inline constexpr std::size_t mostOverlayBytes = 49152;
inline constexpr std::size_t noteText = 400; ///< characters

/// A day that may be missing.
struct MaybeDayField {
    std::optional<base::Date>& value;
};
inline MaybeDayField maybeDay(std::optional<base::Date>& value)
{
    return {value};
}
inline void CEREAL_LOAD_FUNCTION_NAME(InputArchive& archive, MaybeDayField& field)
{
    bool present = false;
    archive(present);
    field.value.reset();
    if (present && !archive.failed()) {
        archive(day(field.value.emplace()));
    }
}
inline void CEREAL_SAVE_FUNCTION_NAME(OutputArchive& archive, const MaybeDayField& field)
{
    archive(field.value.has_value());
    if (field.value) {
        archive(day(*field.value));
    }
}

template <class Archive>
void serialize(Archive& archive, RequirementsChange& change)
{
    archive(raw(change.standsOn), text(change.className), day(change.from), requiredText(change.requirementSet),
            raw(change.setDigest), requiredText(change.reason, longText));
}

template <class Archive>
void serialize(Archive& archive, ClinicalDay& one)
{
    archive(day(one.date), requiredText(one.site), one.start, one.end);
    if constexpr (Archive::is_loading::value) {
        for (const MinuteOfDay minute : {one.start, one.end}) {
            if (minute >= minutesInDay && minute != notSaid) {
                archive.fail(Reason::BadNumber);
            }
        }
    }
}

template <class Archive>
void serialize(Archive& archive, ClinicalDays& days)
{
    archive(raw(days.standsOn), text(days.className), list(days.days, 0, mostClinicalDays));
}

template <class Archive>
void serialize(Archive& archive, Site& site)
{
    archive(requiredText(site.name), range(site.phones, 0, 3), text(site.note, noteText));
}

template <class Archive>
void serialize(Archive& archive, Sites& sites)
{
    archive(raw(sites.standsOn), list(sites.sites, 0, mostSites));
}

template <class Archive>
void serialize(Archive& archive, MaySign& signer)
{
    archive(requiredText(signer.credential), range(signer.roles, 1, signsEveryRole));
}

template <class Archive>
void serialize(Archive& archive, WhoMaySign& who)
{
    archive(raw(who.standsOn), list(who.signers, 0, mostCredentials));
}

template <class Archive>
void serialize(Archive& archive, PreceptorStanding& standing)
{
    archive(raw(standing.standsOn), raw(standing.person), maybeDay(standing.oriented), standing.active);
}

template <class Archive>
void serialize(Archive& archive, CatalogueOverlay& overlay)
{
    archive(raw(overlay.standsOn), blob(overlay.table, mostOverlayBytes));
}

} // namespace peelpack::journal
