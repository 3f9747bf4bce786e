#include "platform/cli/commands.h"

#include "core/base/text.h"
#include "core/sheet/row_writer.h"
#include "platform/cli/exit_code.h"
#include "platform/cli/output.h"
#include "platform/demo/demo_program.h"
#include "platform/files/resources.h"
#include "platform/files/text_file.h"

#include <QDir>

#include <nlohmann/json.hpp>

#include <set>

namespace peelpack::cli {
namespace {

constexpr const char* about =
    "An invented program for trying Peelpack. People, sites and cases are made up; the files prove nothing.\n"
    "\n"
    "spring-class.csv   a class near the end of its term\n"
    "fall-class.csv     a class whose term is over\n"
    "own-procedures.tsv a table that the program lays over the catalogue: peelpack find --catalogue FILE ...\n"
    "own-set.json       a requirement set to change by hand: peelpack tally --set FILE ...\n";

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
    for (const base::Error* error : {catalogue ? nullptr : &catalogue.error(), set ? nullptr : &set.error()}) {
        if (error != nullptr) {
            return *error;
        }
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

int run(const Arguments& arguments)
{
    const std::string& folder = arguments.operands.front();
    QDir dir(QString::fromStdString(folder));
    if (!dir.mkpath(QStringLiteral("."))) {
        complain("Cannot make the folder " + folder + ".");
        return CannotReadOrWrite;
    }
    const base::Result<std::vector<DemoFile>> files = demoFiles();
    if (!files) {
        complain(files.error().sentence);
        return exitCodeOf(files.error().code);
    }
    std::set<QString> ours;
    for (const DemoFile& file : files.value()) {
        ours.insert(QString::fromStdString(file.name));
    }
    for (const QString& entry : dir.entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot)) {
        if (!ours.contains(entry)) {
            complain("The folder " + folder + " holds something else (" + entry.toStdString() +
                     "); name an empty or a new folder.");
            return BadUsageOrInput;
        }
    }
    for (const DemoFile& file : files.value()) {
        const std::string path = folder + "/" + file.name;
        const base::Result<std::string> there = files::readWholeFile(path, 64U << 20U);
        if (there && there.value() != file.text) {
            complain(path + " has been changed since it was made; name an empty or a new folder.");
            return BadUsageOrInput;
        }
    }
    for (const DemoFile& file : files.value()) {
        const base::Result<std::size_t> written = files::writeWholeFile(folder + "/" + file.name, file.text);
        if (!written) {
            complain(written.error().sentence);
            return CannotReadOrWrite;
        }
    }
    Output out;
    if (arguments.has("json")) {
        nlohmann::ordered_json names = nlohmann::ordered_json::array();
        for (const DemoFile& file : files.value()) {
            names.push_back(file.name);
        }
        out << nlohmann::ordered_json{{"folder", folder}, {"files", std::move(names)}}.dump() << "\n";
    } else {
        out << "Made an invented program in " << folder << ":\n\n"
            << about << "\nTry: peelpack tally " << folder << "/spring-class.csv --brief\n";
    }
    return written(out) ? Done : CannotReadOrWrite;
}

} // namespace

Command demoCommand()
{
    return {
        {"demo",
         "Make an invented program to try the tool on.",
         {"DIR"},
         {{"json", "", "for machines"}},
         "peelpack demo try-it\n  makes the folder try-it with two classes of invented students and a term of cases"},
        run};
}

} // namespace peelpack::cli
