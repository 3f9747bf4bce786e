#include "platform/cli/commands.h"

#include "core/base/text.h"
#include "core/role/classifier.h"
#include "platform/cli/answer.h"
#include "platform/cli/case_file.h"
#include "platform/cli/output.h"
#include "platform/cli/sheet_questions.h"
#include "platform/cli/signer_questions.h"
#include "platform/cli/student_choice.h"
#include "platform/cli/vault_access.h"
#include "platform/cli/vault_rows.h"
#include "platform/session/checks.h"

#include <algorithm>
#include <map>

namespace peelpack::cli {
namespace {

constexpr std::uint64_t mostSheets = 1000;
constexpr std::uint64_t mostSeconds = 24ULL * 60 * 60;

/// Collects what is asked, for machines and for people.
class Collected {
public:
    void sheet(const std::string& name, const base::Date& date, const std::vector<std::string>& questions)
    {
        if (questions.empty()) {
            return;
        }
        m_sheets.push_back({{"sheet", name}, {"date", date.iso()}, {"questions", questions}});
        m_lines += "  " + date.iso() + "  " + name + "\n";
        for (const std::string& question : questions) {
            m_lines += "      to check: " + question + "\n";
        }
        m_count += questions.size();
    }

    void times(const session::Session& session, const keys::Id& student)
    {
        askAboutTimes(session, student, m_times, m_lines);
        m_count += m_times.size();
    }

    /// All of one student's sheets were named.
    void student(const std::string& name)
    {
        if (!m_lines.empty()) {
            m_students.push_back({{"student", name}, {"sheets", std::move(m_sheets)}, {"times", std::move(m_times)}});
            m_text += name + "\n" + m_lines;
        }
        m_sheets = nlohmann::ordered_json::array();
        m_times = nlohmann::ordered_json::array();
        m_lines.clear();
    }

    Answer answer(const std::vector<questions::SignerQuestion>& signers)
    {
        Answer answer;
        answer.json["students"] = std::move(m_students);
        answer.json["signers"] = signerQuestionsJson(signers);
        m_count += signers.size();
        answer.text = m_text + signerQuestionsText(signers);
        answer.text += m_count == 0 ? "Nothing to check.\n" : base::counted(m_count, "question", "questions") + ".\n";
        return answer;
    }

private:
    nlohmann::ordered_json m_students = nlohmann::ordered_json::array();
    nlohmann::ordered_json m_sheets = nlohmann::ordered_json::array(); // of the student at hand
    nlohmann::ordered_json m_times = nlohmann::ordered_json::array();
    std::string m_lines;
    std::string m_text;
    std::size_t m_count = 0;
};

base::Result<questions::Plausible> plausibleFrom(const Arguments& arguments)
{
    questions::Plausible plausible;
    const auto sheets = wholeNumber(arguments, "day-limit", 1, mostSheets, plausible.sheetsInADay);
    const auto seconds =
        wholeNumber(arguments, "seconds", 0, mostSeconds, static_cast<std::uint64_t>(plausible.secondsBetweenSites));
    if (const base::Error* error = base::firstError(sheets, seconds)) {
        return *error;
    }
    plausible.sheetsInADay = static_cast<std::size_t>(sheets.value());
    plausible.secondsBetweenSites = static_cast<std::int64_t>(seconds.value());
    return plausible;
}

base::Result<Answer> askAboutVault(const Arguments& arguments, const questions::Plausible& plausible)
{
    const base::Result<ChosenVault> chosen = openChosen(arguments, arguments.operands.front());
    if (!chosen) {
        return chosen.error();
    }
    const session::Session& session = chosen.value().session();
    const base::Result<catalogue::Catalogue> catalogue = catalogueFor(arguments, session);
    if (!catalogue) {
        return catalogue.error();
    }
    Collected collected;
    eachAsked(chosen.value(), [&](const AskedStudent& student) {
        for (const record::SheetRecord& sheet : student.record.sheets) {
            if (sheet.standing != record::SheetStanding::Withdrawn && sheet.standing != record::SheetStanding::Void) {
                collected.sheet(student.names.sheets.at(sheet.id), sheet.content.head.date,
                                student.questionsAbout(sheet, catalogue.value()));
            }
        }
        collected.times(session, student.id);
        collected.student(nameOf(session, student.record));
    });
    return collected.answer(session::signerQuestionsOf(session, chosen.value().students, plausible));
}

/// The signings of the sheets that are in the book; `seen` holds them of every row that was taken, by student and
/// sheet.
using SeenSignings = std::map<std::pair<std::string, std::string>, std::vector<questions::Signing>, std::less<>>;

base::Result<Answer> askAboutFile(const Arguments& arguments, const questions::Plausible& plausible)
{
    if (arguments.has("student") || arguments.has("class")) {
        return base::Error{base::ErrorCode::BadUsage, "--student and --class are for a vault."};
    }
    SeenSignings seen;
    const base::Result<CaseInput> input = readCaseInput(arguments, [&](const sheet::CaseRow& row) {
        std::vector<questions::Signing> signings = questions::signingsOf(row);
        if (!signings.empty()) {
            seen.try_emplace({row.student, row.sheet}, std::move(signings));
        }
    });
    if (!input) {
        return input.error();
    }
    const sheet::SheetBook& book = input.value().reading.book;
    Collected collected;
    std::vector<questions::Signing> signings;
    for (const sheet::BookStudent& student : book.students()) {
        for (const sheet::BookSheet& sheet : book.sheetsOf(student)) {
            const std::string name(sheet.id);
            if (const auto found = seen.find(std::pair(std::string(student.name), name)); found != seen.end()) {
                signings.insert(signings.end(), found->second.begin(), found->second.end());
            }
            if (sheet.importedRole) {
                continue; // a paper log carries no marks
            }
            const auto rows = book.rowsOf(sheet);
            const bool countsOftenNotNeeded = std::all_of(
                rows.begin(), rows.end(), [](const sheet::BookRow& row) { return row.countsOftenNotNeeded; });
            std::vector<std::string> sentences;
            for (const role::Question& question : role::questions(sheet.marks, sheet.canceled, countsOftenNotNeeded)) {
                sentences.push_back(question.sentence);
            }
            collected.sheet(name, sheet.date, sentences);
        }
        collected.student(std::string(student.name));
    }
    Answer answer = collected.answer(questions::signerQuestions(std::move(signings), plausible));
    const sheet::ReadReport& report = input.value().reading.report;
    answer.json["refused"] = findingsJson(report.refused);
    answer.json["warnings"] = findingsJson(report.warnings);
    answer.code = report.refused.empty() ? Done : BadUsageOrInput;
    if (!arguments.has("json")) {
        complainOf(input.value().file, report);
    }
    return answer;
}

base::Result<Answer> ask(const Arguments& arguments)
{
    const base::Result<questions::Plausible> plausible = plausibleFrom(arguments);
    if (!plausible) {
        return plausible.error();
    }
    return isVaultFile(arguments.operands.front()) ? askAboutVault(arguments, plausible.value())
                                                   : askAboutFile(arguments, plausible.value());
}

} // namespace

Command questionsCommand()
{
    std::vector<OptionSpec> options{
        {"day-limit", "N", "sheets of one day that a preceptor may sign without a question (12)"},
        {"seconds", "N", "seconds between signatures for different sites that need no question (60)"},
        catalogueOption(),
        secretsOption(),
        {"progress", "", "show progress also when nobody watches"},
        {"json", "", "for machines"}};
    const std::vector<OptionSpec> students = studentOptions();
    options.insert(options.begin(), students.begin(), students.end());
    return {
        {"questions",
         "What an instructor should check: about single sheets, and about one preceptor's signatures on all of "
         "them.",
         {"SHEETS.csv|VAULT"},
         std::move(options),
         "peelpack questions instructor.peelvault\n  such as operations of one preceptor that overlap in two rooms"},
        [](const Arguments& arguments) { return give(arguments, ask(arguments)); }};
}

} // namespace peelpack::cli
