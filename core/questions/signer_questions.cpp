#include "core/questions/signer_questions.h"

#include "core/base/text.h"

#include <algorithm>
#include <functional>
#include <map>
#include <optional>
#include <span>
#include <tuple>

namespace peelpack::questions {
namespace {

constexpr std::int64_t minutesInADay = 24LL * 60;

/// A signing with what it is compared by. `first` and `last` are what a check looks at, in its own unit.
struct Compared {
    const Signing* signing = nullptr;
    std::int64_t first = 0;
    std::int64_t last = 0; ///< not before `first`
    std::string place;     ///< compared for being equal
};
using ComparedList = std::vector<Compared>;

auto inOrder(const Signing& signing)
{
    return std::tie(signing.date, signing.student, signing.sheet, signing.signedAt);
}

/// The sharpest of the sheets looked at so far, at two different places: enough to answer for any place whether there
/// is one elsewhere that reaches far enough.
class Reach {
public:
    explicit Reach(std::function<bool(std::int64_t, std::int64_t)> further) : m_further(std::move(further)) {}

    void add(const std::string& place, std::int64_t value)
    {
        if (m_best && *m_best->place != place && m_further(value, m_best->value)) {
            m_other = m_best;
        } else if (m_best && *m_best->place != place && (!m_other || m_further(value, m_other->value))) {
            m_other = Point{&place, value};
        }
        if (!m_best || m_further(value, m_best->value)) {
            m_best = Point{&place, value};
        }
    }

    /// The one that reaches furthest among those elsewhere; empty: there is none.
    [[nodiscard]] std::optional<std::int64_t> elsewhere(const std::string& place) const
    {
        const std::optional<Point>& point = m_best && *m_best->place == place ? m_other : m_best;
        return point ? std::optional(point->value) : std::nullopt;
    }

private:
    struct Point {
        const std::string* place;
        std::int64_t value;
    };
    std::function<bool(std::int64_t, std::int64_t)> m_further;
    std::optional<Point> m_best;
    std::optional<Point> m_other; ///< at another place than the best
};

/// Those that meet one at another place: it begins before this one has ended, and the other way round.
ComparedList meeting(ComparedList list)
{
    std::sort(list.begin(), list.end(), [](const Compared& a, const Compared& b) {
        return std::tuple(a.first, a.last, inOrder(*a.signing)) < std::tuple(b.first, b.last, inOrder(*b.signing));
    });
    std::vector<bool> meets(list.size(), false);
    Reach ends{std::greater<>()}; // of those that begin before
    for (std::size_t i = 0; i < list.size(); ++i) {
        const auto end = ends.elsewhere(list[i].place);
        meets[i] = end && *end > list[i].first;
        ends.add(list[i].place, list[i].last);
    }
    Reach begins{std::less<>()}; // of those that begin after
    for (std::size_t i = list.size(); i-- > 0;) {
        const auto begin = begins.elsewhere(list[i].place);
        meets[i] = meets[i] || (begin && *begin < list[i].last);
        begins.add(list[i].place, list[i].first);
    }
    ComparedList result;
    for (std::size_t i = 0; i < list.size(); ++i) {
        if (meets[i]) {
            result.push_back(list[i]);
        }
    }
    return result;
}

/// Adds those that meet in a chain as one group each; the list as meeting() answers it.
void groupInto(std::vector<std::vector<const Signing*>>& groups, const ComparedList& list)
{
    std::int64_t reached = 0;
    for (const Compared& one : list) {
        if (&one == &list.front() || one.first >= reached) {
            groups.emplace_back();
            reached = one.last;
        }
        groups.back().push_back(one.signing);
        reached = std::max(reached, one.last);
    }
}

/// Asks about the signings of one preceptor.
class Asker {
public:
    Asker(const Plausible& plausible, std::vector<SignerQuestion>& questions)
        : m_plausible(plausible), m_questions(questions)
    {
    }

    void ask(std::span<const Signing> signings)
    {
        askAboutOverlaps(signings);
        askAboutDays(signings);
        askAboutSites(signings);
    }

private:
    void askAboutOverlaps(std::span<const Signing> signings)
    {
        ComparedList atSites;
        std::map<std::string, ComparedList> inRooms; // by site
        for (const Signing& signing : signings) {
            if (signing.start == record::notSaid || signing.end == record::notSaid) {
                continue;
            }
            const std::int64_t midnight = signing.date.days() * minutesInADay;
            const std::int64_t end = signing.end + (signing.end < signing.start ? minutesInADay : 0);
            Compared compared{&signing, midnight + signing.start, midnight + end,
                              base::foldCaseAndSpaces(signing.site)};
            std::string site = compared.place;
            if (!site.empty()) {
                atSites.push_back(compared);
            }
            compared.place = base::foldCaseAndSpaces(signing.room);
            if (!compared.place.empty()) {
                inRooms[std::move(site)].push_back(std::move(compared));
            }
        }
        ComparedList all = meeting(std::move(atSites));
        for (auto& [site, list] : inRooms) {
            const ComparedList found = meeting(std::move(list));
            all.insert(all.end(), found.begin(), found.end());
        }
        std::sort(all.begin(), all.end(), [](const Compared& a, const Compared& b) {
            return std::pair(a.first, a.last) < std::pair(b.first, b.last);
        });
        std::vector<std::vector<const Signing*>> groups;
        groupInto(groups, all);
        for (auto& group : groups) {
            add(SignerQuestionKind::Overlap, std::move(group),
                " overlap in time, at different sites or in different rooms: was the preceptor at each of them?");
        }
    }

    void askAboutDays(std::span<const Signing> signings)
    {
        std::map<base::Date, std::vector<const Signing*>> days;
        for (const Signing& signing : signings) {
            days[signing.date].push_back(&signing);
        }
        for (auto& [day, sheets] : days) {
            if (sheets.size() > m_plausible.sheetsInADay) {
                add(SignerQuestionKind::ManyInADay, std::move(sheets),
                    " are of one day, and more than " + std::to_string(m_plausible.sheetsInADay) +
                        " are unusual: did the preceptor sign each of them?");
            }
        }
    }

    void askAboutSites(std::span<const Signing> signings)
    {
        ComparedList list;
        for (const Signing& signing : signings) {
            std::string site = base::foldCaseAndSpaces(signing.site);
            if (signing.signedAt && !site.empty()) {
                // A claim may be any number; one that near to the end of time is as good as another.
                const std::int64_t latest = INT64_MAX - m_plausible.secondsBetweenSites - 1;
                const std::int64_t at = std::min(*signing.signedAt, latest);
                list.push_back({&signing, at, at + m_plausible.secondsBetweenSites + 1, std::move(site)});
            }
        }
        std::vector<std::vector<const Signing*>> groups;
        groupInto(groups, meeting(std::move(list)));
        for (auto& group : groups) {
            add(SignerQuestionKind::SignedTogether, std::move(group),
                " of different sites were signed within " +
                    base::counted(static_cast<std::size_t>(m_plausible.secondsBetweenSites), "second", "seconds") +
                    " of one another: did the preceptor sign each of them?");
        }
    }

    /// `sheets` may name one several times.
    void add(SignerQuestionKind kind, std::vector<const Signing*> sheets, const std::string& sentence)
    {
        if (std::all_of(sheets.begin(), sheets.end(), [](const Signing* one) { return one->confirmed; })) {
            return;
        }
        std::sort(sheets.begin(), sheets.end(), [](const Signing* a, const Signing* b) {
            return std::tuple(inOrder(*a), a) < std::tuple(inOrder(*b), b);
        });
        sheets.erase(std::unique(sheets.begin(), sheets.end()), sheets.end());
        SignerQuestion& question = m_questions.emplace_back();
        question.kind = kind;
        question.name = sheets.front()->name;
        for (const Signing* sheet : sheets) {
            question.sheets.push_back(*sheet);
        }
        question.sentence = "These " + std::to_string(sheets.size()) + " sheets" + sentence;
    }

    const Plausible& m_plausible;
    std::vector<SignerQuestion>& m_questions;
};

} // namespace

std::string_view id(SignerQuestionKind kind)
{
    switch (kind) {
    case SignerQuestionKind::Overlap:
        return "overlap";
    case SignerQuestionKind::ManyInADay:
        return "many-in-a-day";
    case SignerQuestionKind::SignedTogether:
        return "signed-together";
    }
    return {};
}

std::vector<SignerQuestion> signerQuestions(std::vector<Signing> signings, const Plausible& plausible)
{
    const auto bySheet = [](const Signing& signing) {
        return std::tie(signing.signer, signing.student, signing.sheet);
    };
    const auto rest = [](const Signing& signing) {
        return std::tie(signing.date, signing.site, signing.room, signing.start, signing.end, signing.name,
                        signing.confirmed, signing.entry);
    };
    // The later signing of a sheet first, so that it is the one that stays.
    std::sort(signings.begin(), signings.end(), [&](const Signing& a, const Signing& b) {
        return std::tuple(bySheet(a), b.signedAt, rest(a)) < std::tuple(bySheet(b), a.signedAt, rest(b));
    });
    signings.erase(std::unique(signings.begin(), signings.end(),
                               [&](const Signing& a, const Signing& b) { return bySheet(a) == bySheet(b); }),
                   signings.end());
    std::vector<SignerQuestion> questions;
    Asker asker(plausible, questions);
    for (auto from = signings.begin(); from != signings.end();) {
        const auto to =
            std::find_if(from, signings.end(), [&](const Signing& one) { return one.signer != from->signer; });
        asker.ask({from, to});
        from = to;
    }
    std::sort(questions.begin(), questions.end(), [](const SignerQuestion& a, const SignerQuestion& b) {
        const Signing& first = a.sheets.front();
        const Signing& other = b.sheets.front();
        return std::tie(first.date, a.name, a.kind, first.student, first.sheet, first.signer) <
               std::tie(other.date, b.name, b.kind, other.student, other.sheet, other.signer);
    });
    return questions;
}

} // namespace peelpack::questions
