#include "platform/cli/signer_questions.h"

#include "core/record/case_rows.h"
#include "platform/cli/student_choice.h"

#include <algorithm>
#include <set>

namespace peelpack::cli {
namespace {

constexpr std::size_t mostShown = 10;

} // namespace

std::vector<questions::Signing> signingsIn(const session::Session& session, const std::vector<keys::Id>& students)
{
    std::vector<questions::Signing> signings;
    for (const keys::Id& id : students) {
        const record::StudentRecord student = session.recordOf(id);
        const record::ShortNames names = record::shortNames(student);
        const std::string name = nameOf(session, student);
        for (const record::SheetRecord& sheet : student.sheets) {
            for (questions::Signing& signing : questions::signingsOf(sheet, name, names.sheets.at(sheet.id))) {
                signings.push_back(std::move(signing));
            }
        }
    }
    return signings;
}

std::vector<questions::SignerQuestion> signerQuestionsOf(const session::Session& session,
                                                         const std::vector<keys::Id>& students,
                                                         const questions::Plausible& plausible)
{
    const base::Result<std::vector<keys::Id>> everybody = chosenStudents(session, {});
    if (!session.isStaff() || !everybody) {
        return {};
    }
    std::vector<questions::Signing> signings = signingsIn(session, everybody.value());
    std::set<base::EntryHash> wanted;
    for (const questions::Signing& signing : students == everybody.value() ? signings : signingsIn(session, students)) {
        wanted.insert(signing.entry);
    }
    std::vector<questions::SignerQuestion> asked = questions::signerQuestions(std::move(signings), plausible);
    std::erase_if(asked, [&](const questions::SignerQuestion& question) {
        return std::none_of(question.sheets.begin(), question.sheets.end(),
                            [&](const questions::Signing& sheet) { return wanted.contains(sheet.entry); });
    });
    return asked;
}

nlohmann::ordered_json signerQuestionsJson(const std::vector<questions::SignerQuestion>& asked)
{
    nlohmann::ordered_json list = nlohmann::ordered_json::array();
    for (const questions::SignerQuestion& question : asked) {
        nlohmann::ordered_json sheets = nlohmann::ordered_json::array();
        for (const questions::Signing& sheet : question.sheets) {
            sheets.push_back({{"student", sheet.student},
                              {"sheet", sheet.sheet},
                              {"date", sheet.date.iso()},
                              {"site", sheet.site},
                              {"room", sheet.room}});
        }
        list.push_back({{"kind", id(question.kind)},
                        {"preceptor", question.name},
                        {"sheets", std::move(sheets)},
                        {"question", question.sentence}});
    }
    return list;
}

std::string signerQuestionsText(const std::vector<questions::SignerQuestion>& asked)
{
    std::string lines;
    for (const questions::SignerQuestion& question : asked) {
        lines += "Signed by " + question.name + "\n      to check: " + question.sentence + "\n";
        for (std::size_t i = 0; i < question.sheets.size() && i < mostShown; ++i) {
            const questions::Signing& sheet = question.sheets[i];
            lines += "  " + sheet.sheet + "  " + sheet.date.iso() + "  " + sheet.student;
            lines += (sheet.site.empty() ? "" : ", " + sheet.site) + (sheet.room.empty() ? "" : ", " + sheet.room);
            lines += "\n";
        }
        if (question.sheets.size() > mostShown) {
            lines += "  and " + std::to_string(question.sheets.size() - mostShown) + " more\n";
        }
    }
    return lines;
}

} // namespace peelpack::cli
