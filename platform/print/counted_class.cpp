#include "platform/print/counted_class.h"

#include "platform/session/program_rules.h"

#include <algorithm>
#include <numeric>

namespace peelpack::print {
namespace {

/// The sets in force for students, each read once.
class SetsInForce {
public:
    explicit SetsInForce(const session::Session& session) : m_session(session), m_today(session::today(session)) {}

    base::Result<std::size_t> placeOf(const keys::Id& student)
    {
        const session::SetByName named = session::namedSet(m_session, student, m_today);
        const auto found = std::find_if(m_names.begin(), m_names.end(),
                                        [&](const session::SetByName& one) { return one.isSameSet(named); });
        if (found != m_names.end()) {
            return static_cast<std::size_t>(found - m_names.begin());
        }
        base::Result<requirement::RequirementSet> set = session::setNamed(named);
        if (!set) {
            return set.error();
        }
        m_names.push_back(named);
        m_sets.push_back(std::move(set).value());
        return m_sets.size() - 1;
    }

    base::Result<std::vector<requirement::RequirementSet>> take() &&
    {
        if (m_sets.empty()) {
            base::Result<requirement::RequirementSet> set = session::setOfPolicy(m_session);
            if (!set) {
                return set.error();
            }
            m_sets.push_back(std::move(set).value());
        }
        return std::move(m_sets);
    }

private:
    const session::Session& m_session;
    base::Date m_today;
    std::vector<session::SetByName> m_names;
    std::vector<requirement::RequirementSet> m_sets;
};

} // namespace

std::uint32_t CountedStudent::placed(tally::Level level, std::size_t target) const
{
    const std::vector<tally::TargetCount>& targets = at(level).best.targets;
    return target < targets.size() ? targets[target].placed : 0;
}

std::uint32_t CountedStudent::placed(tally::Level level) const
{
    const std::vector<tally::TargetCount>& targets = at(level).best.targets;
    return std::accumulate(targets.begin(), targets.end(), std::uint32_t{0},
                           [](std::uint32_t sum, const tally::TargetCount& target) { return sum + target.placed; });
}

base::Result<std::unique_ptr<CountedClass>> countClass(const session::Session& session,
                                                       const std::vector<keys::Id>& students,
                                                       const catalogue::Catalogue& catalogue)
{
    std::vector<record::StudentRecord> records = session.recordsOf(students);
    base::Result<session::CaseBook> cases = session::caseBook(session, catalogue, records);
    if (!cases) {
        return cases.error();
    }
    auto counted = std::make_unique<CountedClass>(CountedClass{{}, std::move(cases).value(), {}});
    SetsInForce sets(session);
    for (std::size_t i = 0; i < records.size(); ++i) {
        CountedStudent student;
        student.name = counted->cases.names[i];
        student.names = record::shortNames(records[i]);
        student.record = std::move(records[i]);
        const base::Result<std::size_t> set = sets.placeOf(students[i]);
        if (!set) {
            return set.error();
        }
        student.set = set.value();
        counted->students.push_back(std::move(student));
    }
    base::Result<std::vector<requirement::RequirementSet>> loaded = std::move(sets).take();
    if (!loaded) {
        return loaded.error();
    }
    counted->sets = std::move(loaded).value();
    for (std::size_t set = 0; set < counted->sets.size(); ++set) {
        for (const tally::Level level : {tally::Level::Recorded, tally::Level::Attested, tally::Level::Initialed}) {
            tally::Tallier tallier(counted->sets[set], level, tally::everyStrength);
            for (std::size_t i = 0; i < counted->students.size(); ++i) {
                if (counted->students[i].set == set) {
                    counted->students[i].tallies[static_cast<std::size_t>(level)] =
                        counted->cases.tally(tallier, i, {true, false, false});
                }
            }
        }
    }
    return counted;
}

} // namespace peelpack::print
