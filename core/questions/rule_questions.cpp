#include "core/questions/rule_questions.h"

#include "core/base/text.h"

#include <algorithm>

namespace peelpack::questions {
namespace {

using Kind = SheetQuestionKind;

bool sameName(std::string_view a, std::string_view b)
{
    return base::foldCaseAndSpaces(a) == base::foldCaseAndSpaces(b);
}

bool isOvernight(const SheetRules::ClinicalDay& day)
{
    return day.start != record::notSaid && day.end != record::notSaid && day.end <= day.start;
}

bool covers(const SheetRules::ClinicalDay& day, const base::Date& date)
{
    return day.date == date || (isOvernight(day) && day.date.days() + 1 == date.days());
}

class Asker {
public:
    Asker(const record::SheetRecord& sheet, const SheetRules& rules) : m_sheet(sheet), m_rules(rules) {}

    std::vector<SheetQuestion> ask()
    {
        const auto role =
            role::roleOf(role::classify(m_sheet.content.marks.marks, m_sheet.content.head.canceled, m_rules.roles));
        for (const record::Signer* signer : m_sheet.contributors()) {
            if (role) {
                askAboutCredential(signer->statement, *role);
            }
            askAboutStanding(signer->statement);
        }
        if (!m_sheet.imported) { // an earlier log knows nothing of these days
            askAboutDay();
        }
        return std::move(m_asked);
    }

private:
    void add(Kind kind, const std::string& name, std::string sentence)
    {
        SheetQuestion question{kind, std::nullopt, 0, {}, std::move(sentence), name};
        if (std::find(m_asked.begin(), m_asked.end(), question) == m_asked.end()) {
            m_asked.push_back(std::move(question));
        }
    }

    void askAboutCredential(const record::Attested& said, sheet::Role role)
    {
        if (m_rules.signers.empty()) {
            return;
        }
        const SheetRules::Signer* listed = listedSigner(m_rules.signers, said.credential);
        if (listed == nullptr || !listed->signs(role)) {
            const std::string what = said.credential.empty() ? "no credential" : "\"" + said.credential + "\"";
            add(Kind::CredentialNotListed, said.name,
                "Signed by " + said.name + " with " + what + ", which the program does not list for " +
                    std::string(sheet::inWords(role)) + ".");
        }
    }

    void askAboutStanding(const record::Attested& said)
    {
        const auto found = said.person ? m_rules.standings.find(*said.person) : m_rules.standings.end();
        if (found == m_rules.standings.end()) {
            return;
        }
        const SheetRules::Standing& standing = found->second;
        if (!standing.oriented || *standing.oriented > m_sheet.content.head.date) {
            add(Kind::NotOriented, said.name,
                "By the day of the case the program had not oriented " + said.name +
                    (standing.oriented ? "; it did on " + standing.oriented->iso() : std::string()) + ".");
        }
        if (!standing.active) {
            add(Kind::NotActive, said.name, said.name + " is not active as a preceptor of the program.");
        }
    }

    void askAboutDay()
    {
        const record::Head& head = m_sheet.content.head;
        if (m_rules.days.empty()) {
            return;
        }
        std::vector<std::string> places;
        for (const SheetRules::ClinicalDay& day : m_rules.days) {
            if (!covers(day, head.date)) {
                continue;
            }
            if (head.site.empty() || sameName(day.site, head.site)) {
                return;
            }
            if (std::find(places.begin(), places.end(), day.site) == places.end()) {
                places.push_back(day.site);
            }
        }
        if (places.empty()) {
            add(Kind::NoClinicalDay, {}, head.date.iso() + " is no clinical day of the class.");
        } else {
            add(Kind::OtherSite, base::listed(places, "and"),
                "On " + head.date.iso() + " the class was at " + base::listed(places, "and") + ", the case at " +
                    head.site + ".");
        }
    }

    const record::SheetRecord& m_sheet;
    const SheetRules& m_rules;
    std::vector<SheetQuestion> m_asked;
};

} // namespace

bool SheetRules::Signer::signs(sheet::Role role) const
{
    switch (role) {
    case sheet::Role::First:
        return first;
    case sheet::Role::Second:
        return second;
    case sheet::Role::Observed:
        return observation;
    }
    return false;
}

const SheetRules::Signer* listedSigner(const std::vector<SheetRules::Signer>& signers, std::string_view credential)
{
    const auto found = std::find_if(signers.begin(), signers.end(), [&](const SheetRules::Signer& signer) {
        return sameName(signer.credential, credential);
    });
    return found == signers.end() ? nullptr : &*found;
}

std::vector<SheetQuestion> ruleQuestions(const record::SheetRecord& sheet, const SheetRules& rules)
{
    switch (sheet.standing) {
    case record::SheetStanding::Initialed:
    case record::SheetStanding::Withdrawn:
    case record::SheetStanding::Void:
        return {};
    default:
        return Asker(sheet, rules).ask();
    }
}

} // namespace peelpack::questions
