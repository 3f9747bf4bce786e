#include "platform/cli/commands.h"

#include "core/tally/tally.h"
#include "platform/cli/case_file.h"
#include "platform/cli/exit_code.h"
#include "platform/cli/output.h"
#include "platform/cli/secrets.h"
#include "platform/cli/tally_json.h"
#include "platform/cli/tally_text.h"

#include <algorithm>
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

/// Tallies and prints every student; answers whether all are complete.
bool printStudents(Output& out, const sheet::SheetBook& book, const requirement::RequirementSet& set,
                   const Options& options, bool progress, const tally::AcceptedStrengths& accepted)
{
    tally::Tallier tallier(set, options.level, accepted);
    Progress shown(progress);
    bool allComplete = true;
    std::size_t done = 0;
    if (options.brief) {
        out << briefHeader(set);
    }
    for (const sheet::BookStudent& student : book.students()) {
        shown.show("students tallied:", done, book.students().size());
        if (options.student && *options.student != student.name) {
            continue;
        }
        const tally::StudentTally tally = tallier.tally(book, student, options.wanted);
        const tally::Count& count = options.wanted.best ? tally.best : tally.asLogged;
        allComplete = allComplete && count.value.counted == static_cast<std::int32_t>(set.required());
        if (options.json) {
            out << (done == 0 ? "\n  " : ",\n  ") << studentJson(book, student, set, tally, options.wanted).dump();
        } else if (options.brief) {
            out << briefLine(student, set, tally, options.wanted);
        } else {
            out << studentText(book, student, set, tally, options.wanted);
        }
        ++done;
        if (out.failed()) {
            break;
        }
    }
    return allComplete;
}

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
    const auto& [file, set, reading, accepted] = input.value();
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
        out << "{\"set\": " << nlohmann::json(set.id).dump() << ", \"level\": \"" << id(options.value().level)
            << "\", \"refused\": " << findingsJson(report.refused).dump()
            << ", \"warnings\": " << findingsJson(report.warnings).dump() << ",\n \"students\": [";
    }
    const bool allComplete =
        printStudents(out, reading.book, set, options.value(), arguments.has("progress"), accepted);
    if (options.value().json) {
        out << "]}\n";
    } else if (reading.book.students().empty()) {
        out << "No case sheet of " << file << " could be counted.\n";
    } else {
        out << tallyFooter(set, options.value().level);
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
