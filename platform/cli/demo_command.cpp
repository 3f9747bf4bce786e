#include "platform/cli/commands.h"

#include "core/base/text.h"
#include "core/sheet/row_writer.h"
#include "platform/cli/exit_code.h"
#include "platform/cli/output.h"
#include "platform/demo/demo_program.h"
#include "platform/demo/journal_demo.h"
#include "platform/files/resources.h"
#include "platform/files/text_file.h"

#include <QDir>

#include <nlohmann/json.hpp>

#include <optional>
#include <set>

namespace peelpack::cli {
namespace {

constexpr const char* about =
    "An invented program for trying Peelpack. People, sites and cases are made up; the files prove nothing.\n"
    "\n"
    "spring-class.csv   a class near the end of its term\n"
    "fall-class.csv     a class whose term is over\n"
    "own-procedures.tsv a table that the program lays over the catalogue: peelpack find --catalogue FILE ...\n"
    "own-set.json       a requirement set to change by hand: peelpack tally --set FILE ...\n"
    "program            the whole program on sealed vaults, unless --csv left it out: see program/README.txt\n";

constexpr const char* ownProcedures = "id\tname\tsynonyms\tshorthand\tcategories\tflags\tsources\n"
                                      "mill-street-hand-clinic\tHand clinic, minor procedures\thand "
                                      "minors\tMSH\torthopedics|plastic-reconstructive\tcounts-often-not-needed\t\n"
                                      "total-knee-arthroplasty\tKnee replacement, total\t\t\t\t\t\n";

struct DemoFile {
    std::string name;
    std::string text;
};

base::Result<std::vector<DemoFile>> demoFiles()
{
    const base::Result<catalogue::Catalogue> catalogue = files::shippedCatalogue();
    const base::Result<std::string> set = files::shippedText("requirements/cap15-four.json");
    if (const base::Error* error = base::firstError(catalogue, set)) {
        return *error;
    }
    std::vector<DemoFile> files{
        {"README.txt", about}, {"own-procedures.tsv", ownProcedures}, {"own-set.json", set.value()}};
    for (const demo::DemoClass& demoClass : demo::demoProgram(catalogue.value())) {
        std::string text = sheet::headerLine();
        for (const sheet::CaseRow& row : demoClass.rows) {
            text += sheet::rowLine(row);
        }
        files.push_back({demoClass.name + ".csv", std::move(text)});
    }
    return files;
}

constexpr const char* programFolder = "program";
constexpr const char* unfinishedFolder = "program.unfinished"; ///< left behind when a making was interrupted

/// Why the folder cannot be used; empty: it can.
std::optional<std::string> refusal(const std::string& folder, const QDir& dir, const std::vector<DemoFile>& files)
{
    std::set<QString> ours{QString::fromLatin1(unfinishedFolder)};
    for (const DemoFile& file : files) {
        ours.insert(QString::fromStdString(file.name));
    }
    for (const QString& entry : dir.entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot)) {
        if (entry == QLatin1String(programFolder)) {
            return "The folder " + folder +
                   " holds a program already, and its vaults change when they are used; name an empty or a new folder.";
        }
        if (!ours.contains(entry)) {
            return "The folder " + folder + " holds something else (" + entry.toStdString() +
                   "); name an empty or a new folder.";
        }
    }
    for (const DemoFile& file : files) {
        const std::string path = folder + "/" + file.name;
        const base::Result<std::string> there = files::readWholeFile(path, 64U << 20U);
        if (there && there.value() != file.text) {
            return path + " has been changed since it was made; name an empty or a new folder.";
        }
    }
    return std::nullopt;
}

base::Result<std::optional<demo::JournalDemo>> journalDemo(const Arguments& arguments, const std::string& folder)
{
    if (arguments.has("csv")) {
        return std::optional<demo::JournalDemo>();
    }
    const base::Result<catalogue::Catalogue> catalogue = files::shippedCatalogue();
    if (!catalogue) {
        return catalogue.error();
    }
    Progress shown(arguments.has("progress"));
    auto made = demo::JournalDemo::make(
        folder + "/" + unfinishedFolder, vault::FolderMarkStore::usualFolder(), catalogue.value(),
        [&](std::string_view what, std::size_t done, std::size_t of) { shown.show(what, done, of); });
    if (!made) {
        return made.error();
    }
    return std::optional(std::move(made).value());
}

base::Result<bool> writeAll(const std::string& folder, const std::vector<DemoFile>& files,
                            std::optional<demo::JournalDemo>& program)
{
    for (const DemoFile& file : files) {
        const base::Result<std::size_t> written = files::writeWholeFile(folder + "/" + file.name, file.text);
        if (!written) {
            return written.error();
        }
    }
    return program ? program->keep(folder + "/" + programFolder) : base::Result<bool>(true);
}

std::string report(const Arguments& arguments, const std::string& folder, const std::vector<DemoFile>& files,
                   const std::optional<demo::JournalDemo>& program)
{
    if (arguments.has("json")) {
        nlohmann::ordered_json names = nlohmann::ordered_json::array();
        for (const DemoFile& file : files) {
            names.push_back(file.name);
        }
        nlohmann::ordered_json made{{"folder", folder}};
        if (program) {
            names.push_back(programFolder);
            const demo::JournalFigures& figures = program->figures();
            made["program"] = {{"staff", figures.staff},     {"students", figures.students}, {"sheets", figures.sheets},
                               {"entries", figures.entries}, {"files", figures.files},       {"bytes", figures.bytes}};
        }
        made["files"] = std::move(names);
        return made.dump() + "\n";
    }
    std::string text = "Made an invented program in " + folder + ":\n\n" + about + "\nTry: peelpack tally " + folder +
                       "/spring-class.csv --brief\n";
    if (program) {
        text += "     less " + folder + "/" + programFolder + "/README.txt\n";
    }
    return text;
}

int run(const Arguments& arguments)
{
    const std::string& folder = arguments.operands.front();
    const QDir dir(QString::fromStdString(folder));
    const bool isNew = !dir.exists();
    if (!dir.mkpath(QStringLiteral("."))) {
        complain("Cannot make the folder " + folder + ".");
        return CannotReadOrWrite;
    }
    const base::Result<std::vector<DemoFile>> files = demoFiles();
    if (!files) {
        complain(files.error().sentence);
        return exitCodeOf(files.error().code);
    }
    if (const std::optional<std::string> why = refusal(folder, dir, files.value())) {
        complain(*why);
        return BadUsageOrInput;
    }
    base::Result<std::optional<demo::JournalDemo>> made = journalDemo(arguments, folder);
    if (!made) {
        complain(made.error().sentence);
        if (isNew) {
            QDir().rmdir(QString::fromStdString(folder));
        }
        return exitCodeOf(made.error().code);
    }
    std::optional<demo::JournalDemo> program = std::move(made).value();
    if (const base::Result<bool> kept = writeAll(folder, files.value(), program); !kept) {
        complain(kept.error().sentence);
        return CannotReadOrWrite;
    }
    Output out;
    out << report(arguments, folder, files.value(), program);
    return written(out) ? Done : CannotReadOrWrite;
}

} // namespace

Command demoCommand()
{
    return {{"demo",
             "Make an invented program to try the tool on.",
             {"DIR"},
             {{"csv", "", "only the case-sheet files, quickly; no program on vaults"},
              {"json", "", "for machines"},
              {"progress", "", "show progress also when nobody watches"}},
             "peelpack demo try-it\n  makes the folder try-it with two classes of invented students, a term of cases, "
             "and a whole program on vaults"},
            run};
}

} // namespace peelpack::cli
