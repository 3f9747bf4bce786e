#include "platform/cli/sheet_questions.h"

#include "platform/cli/short_id.h"
#include "platform/english/english.h"
#include "platform/session/checks.h"
#include "platform/session/repudiations.h"
#include "platform/session/sets_in_force.h"
#include "platform/session/sheet_rules.h"

namespace peelpack::cli {
namespace {

std::string timeOf(const journal::Time& time)
{
    return english::timeInWords({time.seconds, time.zone});
}

} // namespace

std::vector<std::string> sentencesOf(const std::vector<questions::SheetQuestion>& asked)
{
    std::vector<std::string> sentences;
    sentences.reserve(asked.size());
    for (const questions::SheetQuestion& question : asked) {
        sentences.push_back(question.sentence);
    }
    return sentences;
}

std::vector<std::string> AskedStudent::questionsAbout(const record::SheetRecord& sheet,
                                                      const catalogue::Catalogue& catalogue) const
{
    return sentencesOf(session::sheetQuestions(record, sheet, isRepudiated(sheet), catalogue, rules));
}

void eachAsked(const ChosenVault& chosen, const std::function<void(const AskedStudent&)>& ask)
{
    const session::Session& session = chosen.session();
    const std::vector<record::StudentRecord> records = chosen.records();
    const std::vector<role::RoleRules> roles = session::roleRulesInForce(session, chosen.students);
    for (std::size_t i = 0; i < records.size(); ++i) {
        const keys::Id& id = chosen.students[i];
        ask({records[i], id, record::shortNames(records[i]), session::repudiatedIn(session, id),
             session::sheetRules(session, id, roles[i])});
    }
}

void askAboutTimes(const session::Session& session, const keys::Id& student, nlohmann::ordered_json& list,
                   std::string& lines)
{
    for (const session::TimeQuestion& about : session::timeQuestions(session, student)) {
        const merge::TimeQuestion& question = about.asked;
        const std::string name = about.sheet ? shortId(*about.sheet) : std::string();
        const auto bound = [](const std::optional<trust::ReceiptRecord>& receipt) {
            return receipt ? timeOf(receipt->time) : std::string();
        };
        const std::string after = bound(question.bounds.after);
        const std::string before = bound(question.bounds.before);
        list.push_back({{"sheet", name},
                        {"entry", keys::hex(question.entry.hash.view())},
                        {"claimed", timeOf(question.claimed)},
                        {"after", after},
                        {"before", before},
                        {"question", merge::sentence(question.sort)}});
        lines += "  " + (name.empty() ? "entry " + std::to_string(question.entry.seq) : "sheet " + name) +
                 ", said to be written " + timeOf(question.claimed) +
                 "\n      to check: " + std::string(merge::sentence(question.sort));
        lines += after.empty() ? "" : " It came after a receipt of " + after + ".";
        lines += before.empty() ? "\n" : " It was received by " + before + ".\n";
    }
}

} // namespace peelpack::cli
