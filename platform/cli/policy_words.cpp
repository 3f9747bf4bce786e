#include "platform/cli/policy_words.h"

#include "core/base/text.h"
#include "core/sheet/case_row.h"
#include "platform/cli/vault_access.h"
#include "platform/files/requirement_json.h"
#include "platform/files/resources.h"
#include "platform/files/text_file.h"
#include "platform/session/program_rules.h"
#include "platform/session/set_files.h"
#include "sync/keys/hash.h"

#include <algorithm>

namespace peelpack::cli {
namespace {

base::Result<std::uint8_t> countedFrom(const std::string& text)
{
    std::uint8_t counted = 0;
    for (const std::string_view word : base::split(text, ',')) {
        const auto strength = sheet::strengthFromId(base::trimmed(word));
        if (!strength || session::countedBit(*strength) == 0) {
            return base::Error{
                base::ErrorCode::BadUsage,
                "--counted takes some of own-phone, card, card-new, drawn and paper, with commas between."};
        }
        counted = static_cast<std::uint8_t>(counted | session::countedBit(*strength));
    }
    return counted;
}

/// The text of a set, by the id of a shipped one or from a file.
base::Result<std::string> textOfSet(const std::string& idOrFile)
{
    const std::vector<std::string>& shipped = files::shippedSetIds();
    return std::find(shipped.begin(), shipped.end(), idOrFile) != shipped.end()
               ? files::shippedText("requirements/" + idOrFile + ".json")
               : files::readWholeFile(idOrFile, session::mostSetBytes);
}

} // namespace

std::vector<OptionSpec> ruleOptions()
{
    return {{"set", "ID|FILE", "requirement set in force (spread10)"},
            {"term", "TEXT", "what the term is called"},
            {"from", "DATE", "first day of the term"},
            {"to", "DATE", "last day of the term"},
            {"counted", "LIST", "signatures that count, with commas between (own-phone,card)"}};
}

base::Result<session::Rules> rulesFrom(const Arguments& arguments)
{
    session::Rules rules;
    const std::string set = arguments.value("set").value_or(files::usualSetId);
    const base::Result<requirement::RequirementSet> checked = files::requirementSet(set);
    const base::Result<std::string> text = textOfSet(set);
    const base::Result<std::optional<base::Date>> from = dateOption(arguments, "from");
    const base::Result<std::optional<base::Date>> to = dateOption(arguments, "to");
    const base::Result<std::uint8_t> counted = countedFrom(arguments.value("counted").value_or("own-phone,card"));
    if (const base::Error* error = base::firstError(checked, text, from, to, counted)) {
        return *error;
    }
    rules.requirementSet = checked.value().id;
    rules.setDigest = keys::hash({}, {keys::bytesOf(text.value())});
    const std::vector<std::string>& shipped = files::shippedSetIds();
    if (std::find(shipped.begin(), shipped.end(), set) == shipped.end()) {
        rules.setText = text.value();
    }
    rules.term = typed(arguments, "term");
    rules.firstDay = from.value().value_or(base::Date());
    rules.lastDay = to.value().value_or(rules.firstDay);
    rules.counted = counted.value();
    return rules;
}

std::vector<std::string> wordsOfCounted(std::uint8_t counted)
{
    std::vector<std::string> words;
    for (const sheet::Strength strength : session::strengths) {
        if ((counted & session::countedBit(strength)) != 0) {
            words.emplace_back(sheet::id(strength));
        }
    }
    return words;
}

} // namespace peelpack::cli
