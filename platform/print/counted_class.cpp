#include "platform/print/counted_class.h"

#include "platform/session/program_rules.h"

#include <numeric>

namespace peelpack::print {

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
    base::Result<requirement::RequirementSet> set = session::setInForce(session);
    if (!set) {
        return set.error();
    }
    std::vector<record::StudentRecord> records = session.recordsOf(students);
    base::Result<session::CaseBook> cases = session::caseBook(session, catalogue, records);
    if (!cases) {
        return cases.error();
    }
    auto counted = std::make_unique<CountedClass>(CountedClass{std::move(set).value(), std::move(cases).value(), {}});
    for (std::size_t i = 0; i < records.size(); ++i) {
        CountedStudent student;
        student.name = counted->cases.names[i];
        student.names = record::shortNames(records[i]);
        student.record = std::move(records[i]);
        counted->students.push_back(std::move(student));
    }
    for (const tally::Level level : {tally::Level::Recorded, tally::Level::Attested, tally::Level::Initialed}) {
        tally::Tallier tallier(counted->set, level, tally::everyStrength);
        for (std::size_t i = 0; i < counted->students.size(); ++i) {
            counted->students[i].tallies[static_cast<std::size_t>(level)] =
                counted->cases.tally(tallier, i, {true, false, false});
        }
    }
    return counted;
}

} // namespace peelpack::print
