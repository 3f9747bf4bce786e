#include "platform/cli/commands.h"

#include "core/base/text.h"
#include "platform/cli/answer.h"
#include "platform/cli/case_file.h"
#include "platform/cli/sheet_questions.h"
#include "platform/cli/sheet_text.h"
#include "platform/cli/signer_questions.h"
#include "platform/cli/student_choice.h"
#include "platform/cli/vault_access.h"
#include "platform/session/checks.h"
#include "platform/session/repudiations.h"
#include "platform/session/sets_in_force.h"
#include "platform/session/sheet_rules.h"

namespace peelpack::cli {
namespace {

base::Result<Answer> queue(const Arguments& arguments)
{
    const base::Result<ChosenVault> chosen = openChosen(arguments);
    if (!chosen) {
        return chosen.error();
    }
    const session::Session& session = chosen.value().session();
    const base::Result<catalogue::Catalogue> catalogue = catalogueFor(arguments, session);
    if (!catalogue) {
        return catalogue.error();
    }
    Answer answer;
    answer.json["students"] = nlohmann::ordered_json::array();
    std::size_t count = 0;
    const std::vector<keys::Id>& students = chosen.value().students;
    const std::vector<record::StudentRecord> records = chosen.value().records();
    const std::vector<role::RoleRules> roles = session::roleRulesInForce(session, students);
    for (std::size_t i = 0; i < records.size(); ++i) {
        const record::StudentRecord& student = records[i];
        const keys::Id& id = students[i];
        const record::ShortNames names = record::shortNames(student);
        const std::set<base::EntryHash> notTheirs = session::repudiatedIn(session, id);
        const questions::SheetRules rules = session::sheetRules(session, id, roles[i]);
        nlohmann::ordered_json list = nlohmann::ordered_json::array();
        std::string lines;
        for (const record::SheetRecord& sheet : student.sheets) {
            const bool repudiated = questions::isRepudiated(sheet, notTheirs);
            if (!questions::waits(sheet, repudiated)) {
                continue;
            }
            ++count;
            const std::vector<std::string> questions =
                sentencesOf(session::sheetQuestions(student, sheet, repudiated, catalogue.value(), rules));
            const std::string& name = names.sheets.at(sheet.id);
            lines += sheetLine(sheet, name);
            if (sheet.imported) {
                lines += "      from: " + sheet.imported->said.source + "\n";
            }
            for (const std::string& question : questions) {
                lines += "      to check: " + question + "\n";
            }
            nlohmann::ordered_json json = sheetJson(sheet, name, false);
            json["questions"] = questions;
            list.push_back(std::move(json));
        }
        nlohmann::ordered_json times = nlohmann::ordered_json::array();
        askAboutTimes(session, id, times, lines);
        if (!lines.empty()) {
            answer.text += nameOf(session, student) + "\n" + lines;
            answer.json["students"].push_back(
                {{"student", nameOf(session, student)}, {"sheets", list}, {"times", times}});
        }
    }
    const std::vector<questions::SignerQuestion> asked =
        session::signerQuestionsOf(session, chosen.value().students, {});
    answer.json["signers"] = signerQuestionsJson(asked);
    answer.text += signerQuestionsText(asked);
    answer.text += count == 0 ? "No sheet waits.\n" : base::counted(count, "sheet waits", "sheets wait") + ".\n";
    return answer;
}

} // namespace

Command queueCommand()
{
    return {{"queue",
             "What waits for an instructor, with what to check about each sheet.",
             {},
             withVaultOptions(studentOptions()),
             "peelpack queue --class \"Spring class\"\n  sheets to check, questions below each"},
            [](const Arguments& arguments) { return give(arguments, queue(arguments)); }};
}

} // namespace peelpack::cli
