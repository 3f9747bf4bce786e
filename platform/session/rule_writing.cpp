#include "platform/session/rule_writing.h"

#include "core/base/text.h"
#include "core/catalogue/overlay.h"
#include "platform/files/text_file.h"
#include "platform/session/program_catalogue.h"
#include "sync/journal/rule_fields.h"
#include "sync/trust/rights.h"

#include <algorithm>
#include <tuple>

namespace peelpack::session {
namespace {

/// Writes a rule in place of the one in force of its chain; null: it is the first.
template <class Rule>
base::Result<journal::Position> write(Session& session, Rule rule, const trust::InForce<Rule>* before)
{
    if (!trust::mayWrite(session.role(), static_cast<std::uint16_t>(Rule::kind))) {
        const bool directors = !trust::mayWrite(journal::Role::Coordinator, static_cast<std::uint16_t>(Rule::kind));
        return base::Error{base::ErrorCode::BadValue, directors ? "Only the director changes this rule."
                                                                : "Only the director, an instructor or a coordinator "
                                                                  "changes this rule."};
    }
    if (before != nullptr) {
        rule.standsOn = before->entry.hash;
    }
    return session.append(session.programStream(), rule);
}

template <class Rule>
const trust::InForce<Rule>* pointer(const std::optional<trust::InForce<Rule>>& inForce)
{
    return inForce ? &*inForce : nullptr;
}

template <class Key, class Rule>
const trust::InForce<Rule>* find(const std::map<Key, trust::InForce<Rule>>& inForce, const Key& key)
{
    const auto found = inForce.find(key);
    return found == inForce.end() ? nullptr : &found->second;
}

/// Sorts by name; the first name that stands twice is an error.
template <class Item>
base::Result<bool> sortByName(std::vector<Item>& items, std::string Item::*name)
{
    std::sort(items.begin(), items.end(), [&](const Item& a, const Item& b) { return a.*name < b.*name; });
    const auto twice = std::adjacent_find(items.begin(), items.end(),
                                          [&](const Item& a, const Item& b) { return a.*name == b.*name; });
    if (twice != items.end()) {
        return base::Error{base::ErrorCode::BadValue, "\"" + (*twice).*name + "\" stands twice; say it once."};
    }
    return true;
}

template <class Item>
std::vector<Item> with(std::vector<Item> items, std::string Item::*name, Item item)
{
    const auto found =
        std::find_if(items.begin(), items.end(), [&](const Item& one) { return one.*name == item.*name; });
    if (found == items.end()) {
        items.push_back(std::move(item));
    } else {
        *found = std::move(item);
    }
    return items;
}

/// NotFound with this sentence.
template <class Item>
base::Result<std::vector<Item>> without(std::vector<Item> items, std::string Item::*name, const std::string& wanted,
                                        const char* sentence)
{
    if (std::erase_if(items, [&](const Item& one) { return one.*name == wanted; }) == 0) {
        return base::Error{base::ErrorCode::NotFound, sentence};
    }
    return items;
}

} // namespace

bool mayWriteRule(const Session& session, journal::Kind kind)
{
    return trust::mayWrite(session.role(), static_cast<std::uint16_t>(kind));
}

base::Result<journal::Position> changeRules(Session& session, const Rules& rules)
{
    return write(
        session,
        journal::Policy{
            {}, rules.requirementSet, rules.setDigest, rules.term, rules.firstDay, rules.lastDay, rules.counted, 1},
        session.rules().policy());
}

base::Result<journal::Position> changeRequirements(Session& session, const ToldChange& told)
{
    const auto& changes = session.rules().changes;
    return write(
        session,
        journal::RequirementsChange{{}, told.className, told.from, told.requirementSet, told.setDigest, told.reason},
        changes.empty() ? nullptr : &changes.back());
}

base::Result<journal::Position> setClinicalDays(Session& session, const std::string& className,
                                                std::vector<journal::ClinicalDay> days)
{
    const auto key = [](const journal::ClinicalDay& day) { return std::tie(day.date, day.start, day.site); };
    std::stable_sort(days.begin(), days.end(), [&](const auto& a, const auto& b) { return key(a) < key(b); });
    days.erase(std::unique(days.begin(), days.end()), days.end());
    const auto twice =
        std::adjacent_find(days.begin(), days.end(), [&](const auto& a, const auto& b) { return key(a) == key(b); });
    if (twice != days.end()) {
        return base::Error{base::ErrorCode::BadValue, "The clinical day of " + twice->date.iso() + " at " +
                                                          twice->site + " stands twice with different ends."};
    }
    return write(session, journal::ClinicalDays{{}, className, std::move(days)}, find(session.rules().days, className));
}

base::Result<journal::Position> setSites(Session& session, std::vector<journal::Site> sites)
{
    if (const base::Result<bool> sorted = sortByName(sites, &journal::Site::name); !sorted) {
        return sorted.error();
    }
    return write(session, journal::Sites{{}, std::move(sites)}, pointer(session.rules().sites));
}

std::vector<journal::Site> withSite(std::vector<journal::Site> sites, journal::Site site)
{
    return with(std::move(sites), &journal::Site::name, std::move(site));
}

base::Result<std::vector<journal::Site>> withoutSite(std::vector<journal::Site> sites, const std::string& name)
{
    return without(std::move(sites), &journal::Site::name, name, "No site of that name is listed.");
}

std::vector<journal::MaySign> withSigner(std::vector<journal::MaySign> signers, journal::MaySign signer)
{
    return with(std::move(signers), &journal::MaySign::credential, std::move(signer));
}

base::Result<std::vector<journal::MaySign>> withoutSigner(std::vector<journal::MaySign> signers,
                                                          const std::string& credential)
{
    return without(std::move(signers), &journal::MaySign::credential, credential,
                   "That credential is not on the list.");
}

base::Result<journal::Position> setWhoMaySign(Session& session, std::vector<journal::MaySign> signers)
{
    if (const base::Result<bool> sorted = sortByName(signers, &journal::MaySign::credential); !sorted) {
        return sorted.error();
    }
    return write(session, journal::WhoMaySign{{}, std::move(signers)}, pointer(session.rules().whoMaySign));
}

base::Result<journal::Position> setCatalogueOverlay(Session& session, const catalogue::Catalogue& shipped,
                                                    const std::string& typed)
{
    // Sheets are written in this form, and a name must equal theirs; what is no text is refused below.
    const bool isText = base::firstInvalidUtf8(typed) == std::string_view::npos;
    const std::string table = isText ? files::normalized(typed) : typed;
    if (table.size() > journal::mostOverlayBytes) {
        return base::Error{base::ErrorCode::BadValue, "The table has more than 48 KiB; leave out what the shipped "
                                                      "catalogue says already."};
    }
    if (table == overlayInForce(session)) {
        return base::Error{base::ErrorCode::BadValue,
                           table.empty() ? "No table of procedures is in force: there is nothing to take away."
                                         : "This table is in force already."};
    }
    if (!table.empty()) {
        if (const base::Result<catalogue::Catalogue> laid = catalogue::checkedOverlay(shipped, table); !laid) {
            return laid.error();
        }
    }
    return write(session, journal::CatalogueOverlay{{}, keys::Bytes(table.begin(), table.end())},
                 pointer(session.rules().overlay));
}

base::Result<journal::Position> setStanding(Session& session, const keys::Id& preceptor,
                                            const std::optional<base::Date>& oriented, bool active)
{
    return write(session, journal::PreceptorStanding{{}, preceptor, oriented, active},
                 find(session.rules().standings, preceptor));
}

} // namespace peelpack::session
