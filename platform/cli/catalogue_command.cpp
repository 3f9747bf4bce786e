#include "platform/cli/commands.h"

#include "core/catalogue/overlay.h"
#include "platform/cli/answer.h"
#include "platform/cli/bytes_file.h"
#include "platform/cli/case_file.h"
#include "platform/cli/vault_access.h"
#include "platform/files/resources.h"
#include "platform/files/text_file.h"
#include "platform/session/program_catalogue.h"
#include "platform/session/rule_writing.h"

namespace peelpack::cli {
namespace {

constexpr std::size_t mostTableBytes = 1U << 20U;

std::string categoryIds(const catalogue::Procedure& procedure)
{
    std::string text;
    for (const catalogue::Category category : procedure.categories) {
        text += (text.empty() ? "" : ", ") + std::string(id(category));
    }
    return text;
}

/// "joint-x: Name (orthopedics, general)", and what it was called before where that changed.
std::string line(const catalogue::OverlayRow& row)
{
    std::string text = "  " + row.procedure->id + ": " + row.procedure->name + " (" + categoryIds(*row.procedure) + ")";
    if (row.before == nullptr) {
        return text + ", added\n";
    }
    text += ", changed";
    if (row.before->name != row.procedure->name) {
        text += "; was " + row.before->name;
    }
    if (!(row.before->categories == row.procedure->categories)) {
        text += "; was filed under " + categoryIds(*row.before);
    }
    return text + "\n";
}

nlohmann::ordered_json json(const catalogue::Procedure& procedure)
{
    nlohmann::ordered_json categories = nlohmann::ordered_json::array();
    for (const catalogue::Category category : procedure.categories) {
        categories.push_back(id(category));
    }
    return {
        {"id", procedure.id}, {"name", procedure.name}, {"synonyms", procedure.synonyms}, {"categories", categories}};
}

Answer listed(const catalogue::Catalogue& shipped, const catalogue::Catalogue& laid)
{
    Answer answer;
    answer.json["procedures"] = nlohmann::ordered_json::array();
    for (const catalogue::OverlayRow& row : overlayRows(shipped, laid)) {
        nlohmann::ordered_json one = json(*row.procedure);
        one["before"] = row.before == nullptr ? nlohmann::ordered_json() : json(*row.before);
        answer.json["procedures"].push_back(std::move(one));
        answer.text += line(row);
    }
    answer.text = answer.text.empty() ? "The catalogue is in force as it is shipped.\n"
                                      : "Procedures of the program over the shipped catalogue:\n" + answer.text;
    return answer;
}

base::Result<Answer> writeTable(const std::string& table, const std::string& out)
{
    if (table.empty()) {
        return base::Error{base::ErrorCode::NotFound, "The program has no table of its own: nothing was written."};
    }
    if (const base::Result<bool> kept = writeNewFile(out, keys::bytesOf(table)); !kept) {
        return kept.error();
    }
    return Answer{{{"file", out}}, "Written: " + out + ".\n"};
}

base::Result<Answer> programCatalogue(const Arguments& arguments)
{
    const std::optional<std::string> in = arguments.value("in");
    const bool none = arguments.has("none");
    if ((in ? 1 : 0) + (none ? 1 : 0) + (arguments.has("out") ? 1 : 0) > 1) {
        return base::Error{base::ErrorCode::BadUsage, "Use one of --in, --none and --out."};
    }
    const base::Result<std::string> table =
        in ? files::readWholeFile(*in, mostTableBytes) : base::Result<std::string>(std::string());
    const base::Result<catalogue::Catalogue> shipped = files::shippedCatalogue();
    base::Result<OpenedVault> opened = openVault(arguments);
    if (const base::Error* error = base::firstError(table, shipped, opened)) {
        return *error;
    }
    session::Session& session = *opened.value().session;
    if (in || none) {
        if (in && table.value().empty()) {
            return base::Error{base::ErrorCode::BadInput, *in + " is empty; to take the table away use --none."};
        }
        const auto written = session::setCatalogueOverlay(session, shipped.value(), table.value());
        if (!written) {
            return in ? base::Error{written.error().code, *in + ": " + written.error().sentence} : written.error();
        }
    }
    if (const auto out = arguments.value("out")) {
        return writeTable(session::overlayInForce(session), *out);
    }
    const base::Result<catalogue::Catalogue> laid = session::withOverlayInForce(session, shipped.value());
    return laid ? base::Result<Answer>(listed(shipped.value(), laid.value())) : laid.error();
}

} // namespace

Command catalogueCommand()
{
    return {{"program catalogue",
             "List the program's own procedures over the shipped catalogue, or change them, as the director.",
             {},
             withVaultOptions({{"in", "FILE", "a table laid over the shipped catalogue, in place of the one before"},
                               {"none", "", "take the table away"},
                               {"out", "FILE", "write the table that is in force"}}),
             "peelpack program catalogue --in own.tsv\n  columns id name synonyms shorthand categories flags sources, "
             "with tabs between"},
            [](const Arguments& arguments) { return give(arguments, programCatalogue(arguments)); }};
}

} // namespace peelpack::cli
