#pragma once

#include "core/catalogue/catalogue.h"
#include "platform/session/setup.h"
#include "sync/journal/rule_payloads.h"

#include <optional>
#include <string>
#include <vector>

/// Writing the program's rules: each call replaces what is in force, standing on it. BadValue: this person may not, or
/// the rule is not well formed.
namespace peelpack::session {

/// Whether a role may write rules of a kind, whatever they say.
bool mayWriteRule(const Session& session, journal::Kind kind);

/// Puts another policy in force. As the director.
base::Result<journal::Position> changeRules(Session& session, const Rules& rules);

/// Puts another requirement set in force for a class (empty: every class) from a day on. As the director.
struct ToldChange {
    std::string className;
    base::Date from;
    std::string requirementSet; ///< id
    keys::Hash setDigest;       ///< of the set's text
    std::string reason;         ///< never empty
};
base::Result<journal::Position> changeRequirements(Session& session, const ToldChange& told);

/// All clinical days of a class (empty: of every class), in any order; the same day twice is once.
base::Result<journal::Position> setClinicalDays(Session& session, const std::string& className,
                                                std::vector<journal::ClinicalDay> days);
/// All sites, in any order.
base::Result<journal::Position> setSites(Session& session, std::vector<journal::Site> sites);
/// The list with this site, in place of the one of its name.
std::vector<journal::Site> withSite(std::vector<journal::Site> sites, journal::Site site);
/// NotFound: it is not on the list.
base::Result<std::vector<journal::Site>> withoutSite(std::vector<journal::Site> sites, const std::string& name);
/// Whose signature is expected for which roles, in any order; none: anybody for whom the program vouches. As the
/// director.
base::Result<journal::Position> setWhoMaySign(Session& session, std::vector<journal::MaySign> signers);
/// The list with these roles of a credential, in place of those it had.
std::vector<journal::MaySign> withSigner(std::vector<journal::MaySign> signers, journal::MaySign signer);
/// NotFound: it is not on the list.
base::Result<std::vector<journal::MaySign>> withoutSigner(std::vector<journal::MaySign> signers,
                                                          const std::string& credential);
/// The program's own table of procedures over the shipped catalogue, in place of the one before; empty: none. As the
/// director. BadValue also: it is too long, or in force already. BadInput as catalogue::checkedOverlay.
base::Result<journal::Position> setCatalogueOverlay(Session& session, const catalogue::Catalogue& shipped,
                                                    const std::string& typed);
/// `oriented` empty: not yet.
base::Result<journal::Position> setStanding(Session& session, const keys::Id& preceptor,
                                            const std::optional<base::Date>& oriented, bool active);

} // namespace peelpack::session
