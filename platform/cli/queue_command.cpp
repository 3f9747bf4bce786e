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
    eachAsked(chosen.value(), [&](const AskedStudent& student) {
        nlohmann::ordered_json list = nlohmann::ordered_json::array();
        std::string lines;
        for (const record::SheetRecord& sheet : student.record.sheets) {
            if (!questions::waits(sheet, student.isRepudiated(sheet))) {
                continue;
            }
            ++count;
            const std::vector<std::string> questions = student.questionsAbout(sheet, catalogue.value());
            const std::string& name = student.names.sheets.at(sheet.id);
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
        askAboutTimes(session, student.id, times, lines);
        if (!lines.empty()) {
            answer.text += nameOf(session, student.record) + "\n" + lines;
            answer.json["students"].push_back(
                {{"student", nameOf(session, student.record)}, {"sheets", list}, {"times", times}});
        }
    });
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
