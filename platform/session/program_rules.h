#pragma once

#include "core/requirement/requirement_set.h"
#include "platform/session/setup.h"
#include "sync/journal/program_payloads.h"
#include "sync/journal/rule_payloads.h"

#include <array>

/// The rules of a program that are in force, as the journal says them.
namespace peelpack::session {

/// The policy in force; empty while none has come in.
std::optional<journal::Policy> policyInForce(const Session& session);
/// Every policy that was ever in force, the first first, the one in force last.
std::vector<journal::Policy> policiesSoFar(const Session& session);

/// The classes of a student: the scopes of their grants, ascending, each once.
std::vector<std::string> classesOf(const Session& session, const keys::Id& student);
/// The classes of all students and those that a rule names, ascending, each once.
std::vector<std::string> everyClass(const Session& session);
/// Today, by the clock of the session.
base::Date today(const Session& session);

/// A requirement set that is, was or will be in force, by name.
struct SetByName {
    std::string id;
    std::optional<keys::Hash> digest; ///< of the set's text; empty: nothing has come in, and the usual set is meant
    std::string className;            ///< of the change that names it; empty: every class
    std::optional<base::Date> from;   ///< of that change; empty: the policy names it
    std::string reason;               ///< of that change

    [[nodiscard]] bool isSameSet(const SetByName& other) const { return id == other.id && digest == other.digest; }
};
/// That of somebody with these classes on a day (FORMAT.md section 7); the usual set while no rule has come in.
SetByName namedSet(const Session& session, const std::vector<std::string>& classes, const base::Date& day);
SetByName namedSet(const Session& session, const keys::Id& student, const base::Date& day);

/// A set by its name, from what ships and what the vault keeps (set_files.h). NotFound: it is not at hand.
base::Result<requirement::RequirementSet> setNamed(const Session& session, const SetByName& named);
/// The set in force for a student, or for a class (empty: for who has none), on a day. Errors as above.
base::Result<requirement::RequirementSet> setInForce(const Session& session, const keys::Id& student,
                                                     const base::Date& day);
base::Result<requirement::RequirementSet> setInForce(const Session& session, const std::string& className,
                                                     const base::Date& day);
/// The one that the policy names, whatever the class.
base::Result<requirement::RequirementSet> setOfPolicy(const Session& session);

/// A set that was or will be in force for somebody for whom another is.
struct OtherSet {
    SetByName set;
    bool coming = false; ///< else it was in force before
    base::Date change;   ///< coming: its first day; else the first day on which it was not in force any more
};
/// The set in force on a day, the one before it and the next one, where there are such: different sets, so that a
/// change that changes nothing is none.
struct SetsAround {
    SetByName inForce;
    std::vector<OtherSet> others; ///< the one before, then the next
};
SetsAround setsAround(const Session& session, const keys::Id& student, const base::Date& day);

/// Every change of requirements, in the order of the walk.
std::vector<journal::RequirementsChange> requirementChanges(const Session& session);
/// The list of this class (empty: the one for every class) without those of others.
std::vector<journal::ClinicalDay> clinicalDays(const Session& session, const std::string& className);
/// Those of a student: of their classes and of every class.
std::vector<journal::ClinicalDay> clinicalDaysOf(const Session& session, const keys::Id& student);
std::vector<journal::Site> sites(const Session& session);
/// Empty: anybody for whom the program vouches.
std::vector<journal::MaySign> whoMaySign(const Session& session);
/// Empty: the program has said nothing about this preceptor.
std::optional<journal::PreceptorStanding> standingOf(const Session& session, const keys::Id& preceptor);

/// The strengths that a policy names, strongest first.
inline constexpr std::array strengths{sheet::Strength::OwnPhone, sheet::Strength::Card, sheet::Strength::CardNew,
                                      sheet::Strength::Drawn, sheet::Strength::Paper};
/// The bit of one of them in Rules::counted; 0 for None.
std::uint8_t countedBit(sheet::Strength strength);

/// How a signature counts.
enum class Acceptance : std::uint8_t { Never, OnceConfirmed, AsItIs };
/// Of a strength under a policy; without one, own phone and card count (counting rules, section 2). Drawn and paper
/// signatures never count before they are confirmed with the preceptor.
Acceptance acceptance(const std::optional<journal::Policy>& policy, sheet::Strength strength);

/// The rules that name a shipped set, with its digest and nothing else said.
base::Result<Rules> rulesOfShippedSet(const std::string& id);
/// Rules::counted of the invented programs: all but cards that nobody vouches for.
inline constexpr std::uint8_t countsAllButNewCards = 0b11011;

} // namespace peelpack::session
