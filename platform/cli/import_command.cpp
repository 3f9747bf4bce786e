#include "platform/cli/commands.h"

#include "core/base/text.h"
#include "platform/cli/answer.h"
#include "platform/cli/case_file.h"
#include "platform/cli/output.h"
#include "platform/cli/sheet_options.h"
#include "platform/cli/short_id.h"
#include "platform/cli/vault_access.h"
#include "platform/files/text_file.h"
#include "platform/session/directory.h"
#include "platform/session/paper_log.h"

#include <QString>

namespace peelpack::cli {
namespace {

nlohmann::ordered_json sheetJson(const std::string& student, const session::PaperLogSheet& one)
{
    return {{"student", student},
            {"line", one.line},
            {"date", one.sheet.head.date.iso()},
            {"procedures", one.sheet.procedures}};
}

/// Imports what is new of one student, and says what was there already.
base::Result<bool> importOf(session::Session& session, const session::ImportFor& planned, const std::string& source,
                            Answer& answer)
{
    const std::string& student = planned.student.name;
    for (const session::PaperLogSheet& one : planned.alreadyHere) {
        answer.json["alreadyHere"].push_back(sheetJson(student, one));
        answer.text += "Already here and left out: line " + std::to_string(one.line) + ", " + student + ", " +
                       one.sheet.head.date.iso() + ", " + base::listed(one.sheet.procedures, "and") + ".\n";
    }
    const base::Result<std::vector<keys::Id>> ids = session::importSheets(session, planned, source);
    if (!ids) {
        return ids.error();
    }
    for (std::size_t i = 0; i < planned.sheets.size(); ++i) {
        nlohmann::ordered_json json = sheetJson(student, planned.sheets[i]);
        json["sheet"] = shortId(ids.value()[i]);
        answer.json["imported"].push_back(std::move(json));
    }
    if (!planned.sheets.empty()) {
        answer.text += student + ": " + base::counted(planned.sheets.size(), "sheet", "sheets") + " imported.\n";
    }
    return true;
}

base::Result<session::PaperLog> readPaperLog(const std::string& file, const catalogue::Catalogue& catalogue,
                                             const std::string& source, bool checked)
{
    session::PaperLogReader reader(catalogue, checked);
    const base::Result<std::size_t> read =
        files::readPieces(file, [&](std::string_view piece) { return reader.feed(piece); });
    if (!read) {
        return read.error();
    }
    base::Result<session::PaperLog> log = reader.finish(source);
    if (!log) {
        return base::Error{log.error().code, file + ": " + log.error().sentence};
    }
    return log;
}

/// What happened to the rows that were not refused.
std::string restOf(const session::ImportPlan& plan)
{
    if (plan.sheets() > 0) {
        return "the rest is imported";
    }
    return plan.alreadyHere() > 0 ? "the rest was here already, and nothing was imported" : "nothing was imported";
}

void complainOfPlan(const std::string& file, const session::ImportPlan& plan)
{
    complainOf(file, plan.report, restOf(plan));
    if (plan.suspected) {
        complain("If what looks like a patient identifier is none, say so with --checked.");
    }
    if (plan.sameName) {
        complain("Say whose a file is with --student and the first digits of the id that \"program show\" lists.");
    }
}

base::Result<Answer> import(const Arguments& arguments)
{
    const std::string& file = arguments.operands.back();
    const std::string source = typed(arguments, "source");
    if (source.empty()) {
        return base::Error{base::ErrorCode::BadUsage,
                           "Where do the rows come from? Give --source, such as \"paper log of spring, page 3\"."};
    }
    if (QString::fromStdString(source).toUcs4().size() > qsizetype{session::mostSource}) {
        return base::Error{base::ErrorCode::BadUsage,
                           "--source takes at most " + std::to_string(session::mostSource) + " characters."};
    }
    if (const base::Result<bool> clean = screened(arguments, {source}); !clean) {
        return clean.error();
    }
    base::Result<OpenedVault> opened = openVault(arguments, arguments.operands.front());
    if (!opened) {
        return opened.error();
    }
    session::Session& session = *opened.value().session;
    const base::Result<catalogue::Catalogue> catalogue = catalogueFor(arguments, session);
    if (!catalogue) {
        return catalogue.error();
    }
    base::Result<session::PaperLog> log = readPaperLog(file, catalogue.value(), source, arguments.has("checked"));
    if (!log) {
        return log.error();
    }
    if (!session.isStaff()) {
        return base::Error{base::ErrorCode::BadValue, "Only an instructor or the director imports a paper log."};
    }
    const session::Directory directory(session);
    const keys::Id* only = nullptr;
    if (const auto name = arguments.value("student")) {
        const base::Result<const session::Person*> found = directory.findPerson(*name, journal::Role::Student);
        if (!found) {
            return found.error();
        }
        only = &found.value()->id;
    }
    const session::ImportPlan plan = session::planImport(session, std::move(log).value(), source, only);
    Answer answer;
    answer.json["source"] = source;
    answer.json["imported"] = nlohmann::ordered_json::array();
    answer.json["alreadyHere"] = nlohmann::ordered_json::array();
    for (const session::ImportFor& planned : plan.students) {
        const base::Result<bool> made = importOf(session, planned, source, answer);
        if (!made) {
            return base::Error{made.error().code, planned.student.name + ": " + made.error().sentence +
                                                      " Nothing of this student was imported, nor of those after; give "
                                                      "the file again."};
        }
    }
    answer.text += plan.sheets() == 0
                       ? "Nothing was imported.\n"
                       : "Imported, not attested: " + base::counted(plan.sheets(), "sheet", "sheets") +
                             ". Each counts once an instructor has initialed it; \"queue\" shows them.\n";
    answer.json["refused"] = findingsJson(plan.report.refused);
    answer.json["warnings"] = findingsJson(plan.report.warnings);
    answer.code = plan.report.refused.empty() ? Done : BadUsageOrInput;
    if (!arguments.has("json")) {
        complainOfPlan(file, plan);
    }
    return answer;
}

} // namespace

Command importCommand()
{
    return {{"import",
             "Import an earlier paper log. The sheets count once an instructor has initialed them.",
             {"VAULT", "FILE.csv"},
             {{"source", "TEXT", "where the rows come from; it stays with each sheet"},
              {"student", "NAME|ID", "the file is of this student alone"},
              catalogueOption(),
              checkedOption(),
              secretsOption(),
              {"json", "", "for machines"}},
             "peelpack import anna.peelvault spring.csv --source \"paper log of spring\"\n  a case-sheet file without "
             "marks: the columns sheet, date, student, procedure and role (first, second or observed) are enough"},
            [](const Arguments& arguments) { return give(arguments, import(arguments)); }};
}

} // namespace peelpack::cli
