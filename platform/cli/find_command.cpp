#include "platform/cli/commands.h"

#include "core/base/text.h"
#include "core/catalogue/search.h"
#include "platform/cli/case_file.h"
#include "platform/cli/exit_code.h"
#include "platform/cli/output.h"

namespace peelpack::cli {
namespace {

constexpr std::size_t usualMost = 10;

std::string labels(const catalogue::Procedure& procedure)
{
    std::string text;
    for (const catalogue::Category category : procedure.categories) {
        text += (text.empty() ? "" : " or ") + std::string(label(category));
    }
    return text;
}

nlohmann::ordered_json json(const catalogue::Hit& hit)
{
    nlohmann::ordered_json categories = nlohmann::ordered_json::array();
    for (const catalogue::Category category : hit.procedure->categories) {
        categories.push_back(id(category));
    }
    return {{"id", hit.procedure->id},
            {"name", hit.procedure->name},
            {"categories", std::move(categories)},
            {"matched", hit.matched}};
}

int run(const Arguments& arguments)
{
    const base::Result<std::uint64_t> most = wholeNumber(arguments, "most", 1, 1000, usualMost);
    const base::Result<catalogue::Catalogue> catalogue = catalogueFor(arguments);
    if (const base::Error* error = base::firstError(most, catalogue)) {
        complain(error->sentence);
        return exitCodeOf(error->code);
    }
    std::string text;
    for (const std::string& word : arguments.operands) {
        text += (text.empty() ? "" : " ") + word;
    }
    if (base::firstInvalidUtf8(text) != std::string::npos) {
        complain("The text is not UTF-8.");
        return BadUsageOrInput;
    }
    const std::vector<catalogue::Hit> hits = catalogue::Search(catalogue.value()).find(text, most.value());
    Output out;
    if (arguments.has("json")) {
        nlohmann::ordered_json list = nlohmann::ordered_json::array();
        for (const catalogue::Hit& hit : hits) {
            list.push_back(json(hit));
        }
        out << list.dump(1) << "\n";
    } else {
        for (const catalogue::Hit& hit : hits) {
            out << hit.procedure->name << "  (" << labels(*hit.procedure) << ")";
            if (hit.matched != hit.procedure->name) {
                out << "  matched: " << hit.matched;
            }
            out << "\n";
        }
        if (hits.empty()) {
            complain("Nothing in the catalogue fits \"" + text + "\". Try fewer words, or another name for it.");
        }
    }
    if (!written(out)) {
        return CannotReadOrWrite;
    }
    return hits.empty() ? AnswerIsNo : Done;
}

} // namespace

Command findCommand()
{
    return {{"find",
             "Find a procedure by what people call it.",
             {"TEXT..."},
             {{"json", "", "for machines"}, {"most", "N", "how many to show (10)"}, catalogueOption()},
             "peelpack find lap chole\n  lists the procedures that \"lap chole\" may mean, the likeliest first, with "
             "their categories"},
            run};
}

} // namespace peelpack::cli
