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

base::Result<ClassToCount> classToCount(const session::Session& session, std::vector<record::StudentRecord> records,
                                        const catalogue::Catalogue& catalogue)
{
    base::Result<session::CountingRules> rules = session::countingRules(session, catalogue, records);
    if (!rules) {
        return rules.error();
    }
    ClassToCount input{std::move(rules).value(), std::move(records), {}};
    for (const record::StudentRecord& student : input.records) {
        std::vector<session::CompletionDecision> decisions =
            session::decisionsAbout(session, session::idOf(student.student));
        input.decisions.push_back(decisions.empty() ? std::nullopt : std::optional(std::move(decisions.back())));
    }
    return input;
}

base::Result<std::unique_ptr<CountedClass>> countClass(ClassToCount&& input, const catalogue::Catalogue& catalogue)
{
    base::Result<session::CaseBook> cases = session::caseBook(input.rules.rows, catalogue, input.records);
    if (!cases) {
        return cases.error();
    }
    auto counted =
        std::make_unique<CountedClass>(CountedClass{std::move(input.rules.sets), std::move(cases).value(), {}});
    for (std::size_t i = 0; i < input.records.size(); ++i) {
        CountedStudent student;
        student.place = i;
        student.name = counted->cases.names[i];
        student.names = record::shortNames(input.records[i]);
        student.record = std::move(input.records[i]);
        student.decision = std::move(input.decisions[i]);
        counted->students.push_back(std::move(student));
    }
    for (const requirement::RequirementSet& set : counted->sets.sets) {
        for (const tally::Level level : {tally::Level::Recorded, tally::Level::Attested, tally::Level::Initialed}) {
            tally::Tallier tallier(set, level, tally::everyStrength);
            for (CountedStudent& student : counted->students) {
                if (&counted->setOf(student) == &set) {
                    student.tallies[static_cast<std::size_t>(level)] =
                        counted->cases.tally(tallier, student.place, {true, false, false});
                }
            }
        }
    }
    return counted;
}

base::Result<std::unique_ptr<CountedClass>> countClass(const session::Session& session,
                                                       const std::vector<keys::Id>& students,
                                                       const catalogue::Catalogue& catalogue)
{
    base::Result<ClassToCount> input = classToCount(session, session.recordsOf(students), catalogue);
    if (!input) {
        return input.error();
    }
    return countClass(std::move(input).value(), catalogue);
}

} // namespace peelpack::print
