#include "platform/cli/rule_words.h"

#include "core/base/text.h"
#include "core/record/sheet_content.h"
#include "core/sheet/role.h"
#include "platform/session/program_rules.h"

#include <algorithm>
#include <array>

namespace peelpack::cli {
namespace {

using nlohmann::ordered_json;

constexpr std::array phoneWords = std::to_array<std::string_view>({"not-said", "core", "lounge", "none"});
constexpr std::array phoneSentences = std::to_array<std::string_view>(
    {"phones: not said", "phones allowed in the core", "phones in the lounge only", "no phones; print stubs"});

struct RoleBit {
    std::uint8_t bit;
    sheet::Role role;
};
constexpr std::array roleBits{RoleBit{journal::signsFirstScrub, sheet::Role::First},
                              RoleBit{journal::signsSecondScrub, sheet::Role::Second},
                              RoleBit{journal::signsObservation, sheet::Role::Observed}};

std::string forWhom(const std::string& className)
{
    return className.empty() ? "every class" : className;
}

std::string times(const journal::ClinicalDay& day)
{
    const std::string start = record::timeOfDay(day.start);
    const std::string end = record::timeOfDay(day.end);
    return start.empty() ? std::string() : "  " + start + (end.empty() ? "" : " to " + end);
}

} // namespace

std::string_view word(journal::PhoneRule phones)
{
    return phoneWords.at(static_cast<std::size_t>(phones));
}

std::optional<journal::PhoneRule> phoneRuleFromWord(std::string_view text)
{
    const auto found = std::find(phoneWords.begin(), phoneWords.end(), text);
    return found == phoneWords.end() ? std::nullopt
                                     : std::optional(static_cast<journal::PhoneRule>(found - phoneWords.begin()));
}

std::optional<std::uint8_t> rolesFromWords(std::string_view text)
{
    std::uint8_t roles = 0;
    for (const std::string_view one : base::split(text, ',')) {
        const std::optional<sheet::Role> role = sheet::roleFromId(base::trimmed(one));
        if (!role) {
            return std::nullopt;
        }
        const auto found =
            std::find_if(roleBits.begin(), roleBits.end(), [&](const RoleBit& bit) { return bit.role == *role; });
        roles = static_cast<std::uint8_t>(roles | found->bit);
    }
    return roles;
}

std::vector<std::string> wordsOfRoles(std::uint8_t roles)
{
    std::vector<std::string> words;
    for (const RoleBit& bit : roleBits) {
        if ((roles & bit.bit) != 0) {
            words.emplace_back(sheet::id(bit.role));
        }
    }
    return words;
}

ordered_json daysJson(const std::vector<journal::ClinicalDay>& days)
{
    ordered_json list = ordered_json::array();
    for (const journal::ClinicalDay& day : days) {
        list.push_back({{"date", day.date.iso()},
                        {"site", day.site},
                        {"start", record::timeOfDay(day.start)},
                        {"end", record::timeOfDay(day.end)}});
    }
    return list;
}

std::string daysText(const std::vector<journal::ClinicalDay>& days)
{
    std::string text;
    for (const journal::ClinicalDay& day : days) {
        text += "  " + day.date.iso() + times(day) + "  " + day.site + "\n";
    }
    return text;
}

ordered_json sitesJson(const std::vector<journal::Site>& sites)
{
    ordered_json list = ordered_json::array();
    for (const journal::Site& site : sites) {
        list.push_back({{"name", site.name}, {"phones", word(site.phones)}, {"note", site.note}});
    }
    return list;
}

std::string sitesText(const std::vector<journal::Site>& sites)
{
    std::string text;
    for (const journal::Site& site : sites) {
        text += "  " + site.name + "  " + std::string(phoneSentences.at(static_cast<std::size_t>(site.phones))) +
                (site.note.empty() ? "" : "  (" + site.note + ")") + "\n";
    }
    return text;
}

ordered_json signersJson(const std::vector<journal::MaySign>& signers)
{
    ordered_json list = ordered_json::array();
    for (const journal::MaySign& signer : signers) {
        list.push_back({{"credential", signer.credential}, {"roles", wordsOfRoles(signer.roles)}});
    }
    return list;
}

std::string signersText(const std::vector<journal::MaySign>& signers)
{
    if (signers.empty()) {
        return "  anybody for whom the program vouches\n";
    }
    std::string text;
    for (const journal::MaySign& signer : signers) {
        text += "  " + signer.credential + "  " + base::listed(wordsOfRoles(signer.roles), "and") + "\n";
    }
    return text;
}

ordered_json changesJson(const std::vector<journal::RequirementsChange>& changes)
{
    ordered_json list = ordered_json::array();
    for (const journal::RequirementsChange& change : changes) {
        list.push_back({{"class", change.className},
                        {"from", change.from.iso()},
                        {"set", change.requirementSet},
                        {"reason", change.reason}});
    }
    return list;
}

std::string changesText(const std::vector<journal::RequirementsChange>& changes)
{
    std::string text;
    for (const journal::RequirementsChange& change : changes) {
        text += "  from " + change.from.iso() + "  " + change.requirementSet + "  for " + forWhom(change.className) +
                ": " + change.reason + "\n";
    }
    return text;
}

ordered_json standingJson(const std::optional<journal::PreceptorStanding>& standing)
{
    if (!standing) {
        return nullptr;
    }
    return {{"oriented", standing->oriented ? ordered_json(standing->oriented->iso()) : ordered_json(nullptr)},
            {"active", standing->active}};
}

std::string standingText(const std::optional<journal::PreceptorStanding>& standing)
{
    if (!standing) {
        return {};
    }
    return (standing->oriented ? "oriented since " + standing->oriented->iso() : std::string("not oriented")) +
           (standing->active ? ", active" : ", not active");
}

void addRules(const session::Session& session, ordered_json& json, std::string& text)
{
    const std::vector<journal::RequirementsChange> changes = session::requirementChanges(session);
    json["requirementChanges"] = changesJson(changes);
    text += changes.empty() ? "" : "Changes of requirements:\n" + changesText(changes);
    json["classes"] = ordered_json::array();
    std::vector<std::string> classes = session::everyClass(session);
    classes.emplace_back();
    for (const std::string& name : classes) {
        const std::vector<journal::ClinicalDay> days = session::clinicalDays(session, name);
        const std::vector<std::string> one = name.empty() ? std::vector<std::string>() : std::vector{name};
        const session::SetByName set = session::namedSet(session, one, session::today(session));
        if (!name.empty()) {
            json["classes"].push_back({{"class", name}, {"requirementSet", set.id}, {"clinicalDays", daysJson(days)}});
            text += "Class " + name + ": " + set.id + " in force, " +
                    base::counted(days.size(), "clinical day", "clinical days") + "\n";
        } else {
            json["clinicalDaysOfEveryClass"] = daysJson(days);
            text += days.empty() ? ""
                                 : "Every class: " + base::counted(days.size(), "clinical day", "clinical days") + "\n";
        }
        text += daysText(days);
    }
    const std::vector<journal::Site> sites = session::sites(session);
    json["sites"] = sitesJson(sites);
    text += sites.empty() ? "" : "Sites:\n" + sitesText(sites);
    const std::vector<journal::MaySign> signers = session::whoMaySign(session);
    json["signers"] = signersJson(signers);
    text += "Who may sign:\n" + signersText(signers);
}

} // namespace peelpack::cli
