#include "platform/cli/commands.h"

#include "core/tally/tally.h"
#include "platform/cli/case_file.h"
#include "platform/cli/exit_code.h"
#include "platform/cli/output.h"
#include "platform/cli/secrets.h"
#include "platform/cli/tally_json.h"
#include "platform/cli/tally_text.h"

#include <algorithm>
#include <map>
#include <memory>
#include <optional>

namespace peelpack::cli {
namespace {

struct Options {
    tally::Level level = tally::Level::Recorded;
    tally::Wanted wanted;
    bool json = false;
    bool brief = false;
    bool requireComplete = false;
    std::optional<std::string> student; ///< only this one
};

base::Result<Options> optionsFrom(const Arguments& arguments)
{
    Options options;
    if (const std::optional<std::string> level = arguments.value("level")) {
        const std::optional<tally::Level> known = tally::levelFromId(*level);
        if (!known) {
            return base::Error{base::ErrorCode::BadUsage,
                               "There is no level \"" + *level + "\"; use recorded, attested or initialed."};
        }
        options.level = *known;
    }
    if (arguments.has("best") && arguments.has("as-logged")) {
        return base::Error{base::ErrorCode::BadUsage, "Use --best or --as-logged; without either you get both."};
    }
    options.wanted.best = !arguments.has("as-logged");
    options.wanted.asLogged = !arguments.has("best");
    options.wanted.next = options.wanted.best;
    options.json = arguments.has("json");
    options.brief = arguments.has("brief");
    if (options.brief && options.json) {
        return base::Error{base::ErrorCode::BadUsage, "Use --brief or --json."};
    }
    options.student = arguments.value("student");
    options.requireComplete = arguments.has("require-complete");
    return options;
}

/// Tallies students, each under the sets that matter to them, and prints them.
class StudentPrinter {
public:
    StudentPrinter(Output& out, const CaseInput& input, const Options& options)
        : m_out(out), m_input(input), m_options(options)
    {
    }

    /// Prints every student, or the one that is asked for; answers whether all are complete.
    bool print(bool progress)
    {
        const std::vector<sheet::BookStudent>& students = m_input.reading.book.students();
        Progress shown(progress);
        bool allComplete = true;
        for (std::size_t i = 0; i < students.size() && !m_out.failed(); ++i) {
            shown.show("students tallied:", i, students.size());
            if (!m_options.student || *m_options.student == students[i].name) {
                allComplete = printStudent(students[i]) && allComplete;
            }
        }
        return allComplete;
    }

    /// The sets that students were counted under, each once, in the order of the first of them; the input's for nobody.
    [[nodiscard]] std::vector<const requirement::RequirementSet*> sets() const
    {
        return m_sets.empty() ? std::vector{&m_input.set} : m_sets;
    }

private:
    bool printStudent(const sheet::BookStudent& student)
    {
        const sheet::SheetBook& book = m_input.reading.book;
        const requirement::RequirementSet& set = m_input.setFor(student.name);
        const session::SetsAround* around = m_input.around(student.name);
        const tally::StudentTally tally = tallier(set).tally(book, student, m_options.wanted);
        const bool isNewSet = std::find(m_sets.begin(), m_sets.end(), &set) == m_sets.end();
        if (isNewSet) {
            m_sets.push_back(&set);
        }
        if (m_options.json) {
            nlohmann::ordered_json json = studentJson(book, student, set, tally, m_options.wanted);
            if (around != nullptr) {
                addSets(json, around->inForce);
            }
            eachOther(student, [&](const auto& other, const auto* otherSet, const auto& otherTally) {
                addOtherSet(json, other, book, otherSet, otherTally, m_options.wanted);
            });
            m_out << (m_printed == 0 ? "\n  " : ",\n  ") << json.dump();
        } else if (m_options.brief) {
            if (&set != m_columns) {
                m_out << (m_columns == nullptr ? "" : "\n") << briefHeader(set);
                m_columns = &set;
            }
            m_out << briefLine(student, set, tally, m_options.wanted);
            eachOther(student, [&](const auto& other, const auto* otherSet, const auto& otherTally) {
                m_out << briefOtherLine(other, otherSet, otherTally, m_options.wanted);
            });
        } else {
            m_out << studentText(book, student, set, tally, m_options.wanted,
                                 around == nullptr ? std::string() : setInForceText(around->inForce));
            eachOther(student, [&](const auto& other, const auto* otherSet, const auto& otherTally) {
                m_out << otherTallyText(other, otherSet, otherTally, m_options.wanted);
            });
        }
        ++m_printed;
        const tally::Count& count = m_options.wanted.best ? tally.best : tally.asLogged;
        return count.value.counted == static_cast<std::int32_t>(set.required());
    }

    /// The tally under each other set of a student; without set and tally where it is not at hand.
    template <class Take>
    void eachOther(const sheet::BookStudent& student, const Take& take)
    {
        const session::SetsAround* around = m_input.around(student.name);
        if (around == nullptr) {
            return;
        }
        for (const session::OtherSet& other : around->others) {
            const requirement::RequirementSet* set = m_input.find(other.set);
            take(other, set,
                 set == nullptr ? tally::StudentTally{}
                                : tallier(*set).tally(m_input.reading.book, student, m_options.wanted));
        }
    }

    tally::Tallier& tallier(const requirement::RequirementSet& set)
    {
        auto& made = m_talliers[&set];
        if (!made) {
            made = std::make_unique<tally::Tallier>(set, m_options.level, m_input.accepted);
        }
        return *made;
    }

    Output& m_out;
    const CaseInput& m_input;
    const Options& m_options;
    std::map<const requirement::RequirementSet*, std::unique_ptr<tally::Tallier>> m_talliers; // by set, where it lies
    std::vector<const requirement::RequirementSet*> m_sets;
    const requirement::RequirementSet* m_columns = nullptr; // of the table being printed
    std::size_t m_printed = 0;
};

int run(const Arguments& arguments)
{
    const base::Result<Options> options = optionsFrom(arguments);
    if (!options) {
        complain(options.error().sentence);
        return exitCodeOf(options.error().code);
    }
    const base::Result<CaseInput> input = readCaseInput(arguments);
    if (!input) {
        complain(input.error().sentence);
        return exitCodeOf(input.error().code);
    }
    const std::string& file = input.value().file;
    const sheet::SheetReader::Reading& reading = input.value().reading;
    const sheet::ReadReport& report = reading.report;
    const std::optional<std::string>& only = options.value().student;
    if (arguments.has("strict") && !report.refused.empty()) {
        complainOf(file, report);
        complain("--strict: the file is refused.");
        return BadUsageOrInput;
    }
    const std::vector<sheet::BookStudent>& students = reading.book.students();
    if (only && std::none_of(students.begin(), students.end(),
                             [&](const sheet::BookStudent& student) { return student.name == *only; })) {
        complain("There is no student \"" + *only + "\" in " + file + ".");
        return BadUsageOrInput;
    }
    Output out;
    if (options.value().json) {
        const requirement::RequirementSet& set = only ? input.value().setFor(*only) : input.value().set;
        out << "{\"set\": " << nlohmann::json(set.id).dump() << ", \"level\": \"" << id(options.value().level)
            << "\", \"refused\": " << findingsJson(report.refused).dump()
            << ", \"warnings\": " << findingsJson(report.warnings).dump() << ",\n \"students\": [";
    }
    StudentPrinter printer(out, input.value(), options.value());
    const bool allComplete = printer.print(arguments.has("progress"));
    if (options.value().json) {
        out << "]}\n";
    } else if (reading.book.students().empty()) {
        out << "No case sheet of " << file << " could be counted.\n";
    } else {
        out << tallyFooter(printer.sets(), options.value().level);
    }
    const bool done = written(out);
    if (!options.value().json) {
        complainOf(file, report);
    }
    if (!done) {
        return CannotReadOrWrite;
    }
    if (!report.refused.empty()) {
        return BadUsageOrInput;
    }
    // Nobody is not everybody: an empty file completes no one.
    return options.value().requireComplete && (!allComplete || students.empty()) ? AnswerIsNo : Done;
}

} // namespace

Command tallyCommand()
{
    return {{"tally",
             "Tally each student: what counts, what is short, what to ask for next.",
             {"SHEETS.csv|VAULT"},
             {{"set", "ID|FILE", "requirement set: cap15, spread10, cap15-four, spread10-140, or a file (spread10)"},
              {"level", "LEVEL", "recorded, attested or initialed (recorded)"},
              {"best", "", "only the best placement"},
              {"as-logged", "", "only with every case held to its logged category"},
              {"student", "NAME", "only this student"},
              {"brief", "", "a line a student"},
              {"require-complete", "", "exit 1 unless every student is complete"},
              {"strict", "", "refuse the file when any row of it is refused"},
              catalogueOption(),
              secretsOption(),
              {"progress", "", "show progress also when nobody watches"},
              {"json", "", "for machines"}},
             "peelpack tally sheets.csv --set cap15 --level initialed\n  tallies the initialed cases of every student "
             "under the set cap15"},
            run};
}

} // namespace peelpack::cli
