#include "platform/session/sheet_rules.h"

#include "platform/session/program_rules.h"
#include "platform/session/sheets.h"

namespace peelpack::session {
namespace {

std::vector<questions::SheetRules::Signer> signersOf(const Session& session)
{
    std::vector<questions::SheetRules::Signer> signers;
    for (const journal::MaySign& one : whoMaySign(session)) {
        signers.push_back({one.credential, (one.roles & journal::signsFirstScrub) != 0,
                           (one.roles & journal::signsSecondScrub) != 0, (one.roles & journal::signsObservation) != 0});
    }
    return signers;
}

} // namespace

questions::SheetRules sheetRules(const Session& session, const keys::Id& student, const role::RoleRules& roles)
{
    questions::SheetRules rules;
    rules.roles = roles;
    rules.signers = signersOf(session);
    for (const auto& [person, standing] : session.rules().standings) {
        rules.standings[idOf(person)] = {standing.rule.oriented, standing.rule.active};
    }
    for (const journal::ClinicalDay& day : clinicalDaysOf(session, student)) {
        rules.days.push_back({day.date, day.site, day.start, day.end});
    }
    return rules;
}

MaySignHere maySign(const Session& session, const std::string& credential, const std::optional<keys::Id>& preceptor)
{
    MaySignHere may;
    const std::vector<questions::SheetRules::Signer> signers = signersOf(session);
    may.anybody = signers.empty();
    const questions::SheetRules::Signer* listed = questions::listedSigner(signers, credential);
    may.first = may.anybody || (listed != nullptr && listed->first);
    may.second = may.anybody || (listed != nullptr && listed->second);
    may.observation = may.anybody || (listed != nullptr && listed->observation);
    if (const auto standing = preceptor ? standingOf(session, *preceptor) : std::nullopt) {
        may.standing = questions::SheetRules::Standing{standing->oriented, standing->active};
    }
    return may;
}

MaySignHere maySign(const Session& session, const Preceptor& preceptor)
{
    return maySign(session, preceptor.credential, preceptor.id);
}

} // namespace peelpack::session
