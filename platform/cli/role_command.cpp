#include "platform/cli/commands.h"

#include "core/tally/candidate.h"
#include "platform/cli/case_file.h"
#include "platform/cli/exit_code.h"
#include "platform/cli/output.h"
#include "platform/cli/secrets.h"

#include <algorithm>

namespace peelpack::cli {
namespace {

struct SheetRole {
    role::Outcome outcome;
    std::string why;
    std::vector<role::Question> questions;
};

SheetRole roleOfSheet(const sheet::SheetBook& book, const sheet::BookSheet& sheet,
                      const requirement::RequirementSet& set)
{
    const role::RoleRules rules{set.notApplicable};
    SheetRole out{tally::outcomeOf(sheet, set), {}, {}};
    if (sheet.importedRole) {
        out.why = role::reasonOnPaper(sheet.canceled);
        return out;
    }
    const auto rows = book.rowsOf(sheet);
    const bool countsOftenNotNeeded =
        std::all_of(rows.begin(), rows.end(), [](const sheet::BookRow& row) { return row.countsOftenNotNeeded; });
    out.why = role::reason(sheet.marks, sheet.canceled, rules);
    out.questions = role::questions(sheet.marks, sheet.canceled, countsOftenNotNeeded);
    return out;
}

void printText(Output& out, const CaseInput& input)
{
    const sheet::SheetBook& book = input.reading.book;
    for (const sheet::BookStudent& student : book.students()) {
        out << student.name << "\n";
        for (const sheet::BookSheet& sheet : book.sheetsOf(student)) {
            const SheetRole role = roleOfSheet(book, sheet, input.setFor(student.name));
            out << "  " << sheet.date.iso() << "  " << sheet.id << "  " << label(role.outcome) << "\n";
            for (const sheet::BookRow& row : book.rowsOf(sheet)) {
                out << "      " << book.procedure(row) << "\n";
            }
            out << "      " << role.why << "\n";
            for (const role::Question& question : role.questions) {
                out << "      To check: " << question.sentence << "\n";
            }
        }
    }
}

void printJson(Output& out, const CaseInput& input)
{
    const sheet::SheetReader::Reading& reading = input.reading;
    out << "{\"set\": " << nlohmann::json(input.set.id).dump()
        << ", \"refused\": " << findingsJson(reading.report.refused).dump()
        << ", \"warnings\": " << findingsJson(reading.report.warnings).dump() << ",\n \"sheets\": [";
    bool first = true;
    for (const sheet::BookStudent& student : reading.book.students()) {
        for (const sheet::BookSheet& sheet : reading.book.sheetsOf(student)) {
            const SheetRole role = roleOfSheet(reading.book, sheet, input.setFor(student.name));
            nlohmann::ordered_json questions = nlohmann::ordered_json::array();
            for (const role::Question& question : role.questions) {
                questions.push_back({{"skill", column(question.skill)}, {"question", question.sentence}});
            }
            const nlohmann::ordered_json line{{"student", student.name},  {"sheet", sheet.id},
                                              {"date", sheet.date.iso()}, {"role", id(role.outcome)},
                                              {"why", role.why},          {"questions", std::move(questions)}};
            out << (first ? "\n  " : ",\n  ") << line.dump();
            first = false;
        }
    }
    out << "]}\n";
}

int run(const Arguments& arguments)
{
    const base::Result<CaseInput> input = readCaseInput(arguments);
    if (!input) {
        complain(input.error().sentence);
        return exitCodeOf(input.error().code);
    }
    const std::string& file = input.value().file;
    const sheet::SheetReader::Reading& reading = input.value().reading;
    Output out;
    if (arguments.has("json")) {
        printJson(out, input.value());
    } else {
        printText(out, input.value());
    }
    const bool done = written(out);
    if (!arguments.has("json")) {
        complainOf(file, reading.report);
    }
    if (!done) {
        return CannotReadOrWrite;
    }
    return reading.report.refused.empty() ? Done : BadUsageOrInput;
}

} // namespace

Command roleCommand()
{
    return {{"role",
             "Say the role of each case sheet, and why.",
             {"SHEETS.csv|VAULT"},
             {{"set", "ID|FILE", "requirement set, for the skills whose N/A stands for Yes (spread10)"},
              catalogueOption(),
              secretsOption(),
              {"progress", "", "show progress also when nobody watches"},
              {"json", "", "for machines"}},
             "peelpack role sheets.csv\n  prints each sheet with first scrub, second scrub or observation and the "
             "marks that decide it"},
            run};
}

} // namespace peelpack::cli
