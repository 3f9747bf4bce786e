#include "platform/cli/signer_questions.h"

namespace peelpack::cli {
namespace {

constexpr std::size_t mostShown = 10;

} // namespace

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
