#pragma once

#include "core/base/date.h"
#include "sync/journal/feed_id.h"
#include "sync/journal/kind.h"
#include "sync/journal/sheet_content.h"

#include <optional>
#include <string>
#include <vector>

/// The program's rules besides its policy (FORMAT.md section 4, kinds 5 to 10). Each stands on the entry before it in
/// its chain; zero for the first.
namespace peelpack::journal {

/// Another requirement set from a day on. What was in force before stays in force for the days before.
struct RequirementsChange {
    static constexpr Kind kind = Kind::RequirementsChange;
    keys::Hash standsOn;
    std::string className; ///< empty: every class
    base::Date from;
    std::string requirementSet;
    keys::Hash setDigest;
    std::string reason; ///< never empty
    bool operator==(const RequirementsChange&) const = default;
};

/// A day at a site, in the site's own time.
struct ClinicalDay {
    base::Date date;
    std::string site; ///< never empty
    MinuteOfDay start = notSaid;
    MinuteOfDay end = notSaid; ///< not after the start: on the next day
    bool operator==(const ClinicalDay&) const = default;
};
/// All clinical days of a class, in place of those before.
struct ClinicalDays {
    static constexpr Kind kind = Kind::ClinicalDays;
    keys::Hash standsOn;
    std::string className;         ///< empty: of every class, besides those of its own
    std::vector<ClinicalDay> days; ///< ascending by day, start and site, each once
    bool operator==(const ClinicalDays&) const = default;
};

/// Where at a site a phone may be used.
enum class PhoneRule : std::uint8_t { NotSaid = 0, Core = 1, LoungeOnly = 2, NotAtAll = 3 };

struct Site {
    std::string name; ///< never empty
    PhoneRule phones = PhoneRule::NotSaid;
    std::string note; ///< may be empty
    bool operator==(const Site&) const = default;
};
/// All sites of the program, in place of those before.
struct Sites {
    static constexpr Kind kind = Kind::Sites;
    keys::Hash standsOn;
    std::vector<Site> sites; ///< ascending by name, each once
    bool operator==(const Sites&) const = default;
};

/// The roles of a sheet as bits.
inline constexpr std::uint8_t signsObservation = 1;
inline constexpr std::uint8_t signsSecondScrub = 2;
inline constexpr std::uint8_t signsFirstScrub = 4;
inline constexpr std::uint8_t signsEveryRole = 7;

struct MaySign {
    std::string credential; ///< never empty
    std::uint8_t roles = 0; ///< at least one of the bits above
    bool operator==(const MaySign&) const = default;
};
/// Whose signature the program expects on a sheet of which role; in place of what was before.
struct WhoMaySign {
    static constexpr Kind kind = Kind::WhoMaySign;
    keys::Hash standsOn;
    std::vector<MaySign> signers; ///< ascending by credential, each once; empty: anybody who is vouched for
    bool operator==(const WhoMaySign&) const = default;
};

/// How a preceptor stands with the program.
struct PreceptorStanding {
    static constexpr Kind kind = Kind::PreceptorStanding;
    keys::Hash standsOn;
    keys::Id person;                    ///< as in the vouch
    std::optional<base::Date> oriented; ///< empty: not yet
    bool active = true;
    bool operator==(const PreceptorStanding&) const = default;
};

/// The program's own table of procedures over the shipped catalogue, in place of the one before.
struct CatalogueOverlay {
    static constexpr Kind kind = Kind::CatalogueOverlay;
    keys::Hash standsOn;
    keys::Bytes table; ///< text of the form that core/catalogue says; empty: the shipped catalogue as it is
    bool operator==(const CatalogueOverlay&) const = default;
};

} // namespace peelpack::journal
