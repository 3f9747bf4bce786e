#pragma once

#include "sync/trust/chain.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace peelpack::trust {

/// All rules of a program that are in force, each at the end of its walk (FORMAT.md section 7). A value; make a new one
/// when the set of entries has grown.
struct ProgramRules {
    std::vector<InForce<journal::Policy>> policies; ///< in the order of the walk; the last is in force
    /// In the order of the walk; each is in force from its day on.
    std::vector<InForce<journal::RequirementsChange>> changes;
    std::map<std::string, InForce<journal::ClinicalDays>> days; ///< by class
    std::optional<InForce<journal::Sites>> sites;
    std::optional<InForce<journal::WhoMaySign>> whoMaySign;
    std::map<keys::Id, InForce<journal::PreceptorStanding>> standings; ///< by person
    std::optional<InForce<journal::CatalogueOverlay>> overlay;

    /// Null: the director has not made one.
    [[nodiscard]] const InForce<journal::Policy>* policy() const
    {
        return policies.empty() ? nullptr : &policies.back();
    }
};

ProgramRules rulesInForce(const Authority& authority, const Feeds& feeds);

/// A requirement set as the rules name it.
struct NamedSet {
    std::string id;
    keys::Hash digest; ///< of the text of its file
    /// The change that put it in force; null: the policy did. Lives as long as the rules.
    const InForce<journal::RequirementsChange>* change = nullptr;

    [[nodiscard]] bool isSameSet(const NamedSet& other) const { return id == other.id && digest == other.digest; }
};

/// The set of somebody with these classes on a day: of the changes for the class or for every class that are not after
/// the day the one with the latest `from`, then the later on the walk; of several classes the first that has one; else
/// the policy's. Empty when no policy is in force either.
std::optional<NamedSet> setOn(const ProgramRules& rules, const std::vector<std::string>& classes,
                              const base::Date& day);

/// The days on which somebody with these classes changes to another set, ascending, each once: those of every change
/// that names one of the classes or every class. Without classes: of those for every class.
std::vector<base::Date> changeDays(const ProgramRules& rules, const std::vector<std::string>& classes);

/// The clinical days of somebody with these classes: of each class and of every class, ascending, each once.
std::vector<journal::ClinicalDay> clinicalDaysOf(const ProgramRules& rules, const std::vector<std::string>& classes);

} // namespace peelpack::trust
