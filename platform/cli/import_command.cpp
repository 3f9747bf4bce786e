#include "platform/cli/commands.h"

#include "core/base/text.h"
#include "platform/cli/answer.h"
#include "platform/cli/case_file.h"
#include "platform/cli/output.h"
#include "platform/cli/paper_log.h"
#include "platform/cli/sheet_options.h"
#include "platform/cli/short_id.h"
#include "platform/cli/vault_access.h"
#include "platform/session/directory.h"

#include <QString>

#include <algorithm>
#include <map>

namespace peelpack::cli {
namespace {

constexpr qsizetype mostSource = 400; // characters, of the journal

/// Whose rows are meant: the student of --student, or everybody by the name in the row.
class Whose {
public:
    Whose(const session::Directory& directory, const session::Person* only) : m_directory(directory), m_only(only) {}

    /// The student, or why nobody is; with an empty line.
    [[nodiscard]] std::pair<const session::Person*, sheet::Finding> of(const std::string& written) const
    {
        const std::string folded = base::foldCaseAndSpaces(written);
        const auto bears = [&](const session::Person& person) {
            return base::foldCaseAndSpaces(person.name) == folded;
        };
        const auto refused = [&](std::string reason, std::string mend) {
            return std::pair<const session::Person*, sheet::Finding>{
                nullptr, {0, std::string(sheet::name(sheet::Column::Student)), std::move(reason), std::move(mend)}};
        };
        if (m_only != nullptr) {
            return bears(*m_only) ? std::pair<const session::Person*, sheet::Finding>{m_only, {}}
                                  : refused("this is not the student of --student",
                                            "write the name as it was enrolled, or leave --student out");
        }
        const session::Person* found = nullptr;
        for (const session::Person& person : m_directory.people()) {
            if (person.role != journal::Role::Student || !bears(person)) {
                continue;
            }
            if (found != nullptr) {
                return refused("more than one student has this name",
                               "give the rows of each a file of their own, with --student and the first digits of the "
                               "id that \"program show\" lists");
            }
            found = &person;
        }
        return found != nullptr ? std::pair<const session::Person*, sheet::Finding>{found, {}}
                                : refused("no student of this name is enrolled",
                                          "write the name as it was enrolled; \"program show\" lists them");
    }

private:
    const session::Directory& m_directory;
    const session::Person* m_only;
};

using SheetsOf = std::map<keys::Id, std::vector<PaperLogSheet>>;

nlohmann::ordered_json sheetJson(const std::string& student, const PaperLogSheet& one)
{
    return {{"student", student},
            {"line", one.line},
            {"date", one.sheet.head.date.iso()},
            {"procedures", one.sheet.procedures}};
}

/// Imports what is new of one student, and says what was there already.
base::Result<std::size_t> importOf(session::Session& session, const session::Person& student,
                                   const std::vector<PaperLogSheet>& sheets, const std::string& source, Answer& answer)
{
    std::vector<session::PaperSheet> papers;
    papers.reserve(sheets.size());
    for (const PaperLogSheet& one : sheets) {
        papers.push_back(one.sheet);
    }
    const std::vector<bool> already = session::importedAlready(session.recordOf(student.id), papers, source);
    std::vector<PaperLogSheet> fresh;
    for (std::size_t i = sheets.size(); i-- > 0;) {
        if (already[i]) {
            papers.erase(papers.begin() + static_cast<std::ptrdiff_t>(i));
        }
    }
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        if (!already[i]) {
            fresh.push_back(sheets[i]);
            continue;
        }
        answer.json["alreadyHere"].push_back(sheetJson(student.name, sheets[i]));
        answer.text += "Already here and left out: line " + std::to_string(sheets[i].line) + ", " + student.name +
                       ", " + sheets[i].sheet.head.date.iso() + ", " + base::listed(sheets[i].sheet.procedures, "and") +
                       ".\n";
    }
    if (fresh.empty()) {
        return std::size_t{0};
    }
    const base::Result<std::vector<keys::Id>> ids = session::importSheets(session, student.id, papers, source);
    if (!ids) {
        return ids.error();
    }
    for (std::size_t i = 0; i < fresh.size(); ++i) {
        nlohmann::ordered_json json = sheetJson(student.name, fresh[i]);
        json["sheet"] = shortId(ids.value()[i]);
        answer.json["imported"].push_back(std::move(json));
    }
    answer.text += student.name + ": " + base::counted(fresh.size(), "sheet", "sheets") + " imported.\n";
    return fresh.size();
}

base::Result<Answer> import(const Arguments& arguments)
{
    const std::string& file = arguments.operands.back();
    const std::string source = typed(arguments, "source");
    if (source.empty()) {
        return base::Error{base::ErrorCode::BadUsage,
                           "Where do the rows come from? Give --source, such as \"paper log of spring, page 3\"."};
    }
    if (QString::fromStdString(source).toUcs4().size() > mostSource) {
        return base::Error{base::ErrorCode::BadUsage,
                           "--source takes at most " + std::to_string(mostSource) + " characters."};
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
    base::Result<PaperLog> read = readPaperLog(file, catalogue.value(), source, arguments.has("checked"));
    if (!read) {
        return read.error();
    }
    PaperLog log = std::move(read).value();
    if (!session.isStaff()) {
        return base::Error{base::ErrorCode::BadValue, "Only an instructor or the director imports a paper log."};
    }
    const session::Directory directory(session);
    const session::Person* only = nullptr;
    if (const auto name = arguments.value("student")) {
        const base::Result<const session::Person*> found = directory.findPerson(*name, journal::Role::Student);
        if (!found) {
            return found.error();
        }
        only = found.value();
    }
    SheetsOf sheets;
    const Whose whose(directory, only);
    for (PaperLogSheet& one : log.sheets) {
        auto [student, bad] = whose.of(one.student);
        if (student == nullptr) {
            bad.line = one.line;
            log.report.refused.push_back(std::move(bad));
        } else {
            sheets[student->id].push_back(std::move(one));
        }
    }
    std::stable_sort(log.report.refused.begin(), log.report.refused.end(),
                     [](const sheet::Finding& a, const sheet::Finding& b) { return a.line < b.line; });
    Answer answer;
    answer.json["source"] = source;
    answer.json["imported"] = nlohmann::ordered_json::array();
    answer.json["alreadyHere"] = nlohmann::ordered_json::array();
    std::size_t count = 0;
    for (const session::Person& student : directory.people()) {
        const auto found = sheets.find(student.id);
        if (found == sheets.end() || student.role != journal::Role::Student) {
            continue;
        }
        const base::Result<std::size_t> made = importOf(session, student, found->second, source, answer);
        if (!made) {
            return base::Error{made.error().code, student.name + ": " + made.error().sentence +
                                                      " Nothing of this student was imported, nor of those after; give "
                                                      "the file again."};
        }
        count += made.value();
    }
    answer.text += count == 0 ? "Nothing was imported.\n"
                              : "Imported, not attested: " + base::counted(count, "sheet", "sheets") +
                                    ". Each counts once an instructor has initialed it; \"queue\" shows them.\n";
    answer.json["refused"] = findingsJson(log.report.refused);
    answer.json["warnings"] = findingsJson(log.report.warnings);
    answer.code = log.report.refused.empty() ? Done : BadUsageOrInput;
    if (!arguments.has("json")) {
        complainOf(file, log.report, "the rest is imported");
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
             "marks; imported is Y and role is first, second or observed on every row"},
            [](const Arguments& arguments) { return give(arguments, import(arguments)); }};
}

} // namespace peelpack::cli
