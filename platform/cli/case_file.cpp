#include "platform/cli/case_file.h"

#include "core/base/text.h"
#include "platform/cli/output.h"
#include "platform/cli/vault_rows.h"
#include "platform/files/requirement_json.h"
#include "platform/files/resources.h"
#include "platform/files/text_file.h"
#include "platform/session/program_catalogue.h"

#include <utility>

namespace peelpack::cli {
namespace {

constexpr std::size_t mostShown = 20;
constexpr std::size_t mostCatalogueBytes = 16U << 20U;

void complainOfEach(const std::string& file, const std::vector<sheet::Finding>& findings, std::string_view verdict,
                    std::size_t more)
{
    for (std::size_t i = 0; i < findings.size() && i < mostShown; ++i) {
        const sheet::Finding& finding = findings[i];
        complain(file + ", line " + std::to_string(finding.line) +
                 (finding.column.empty() ? "" : ", column " + finding.column) + ": " + std::string(verdict) +
                 finding.reason + "; " + finding.mend + ".");
    }
    if (findings.size() + more > mostShown) {
        complain("... and " + std::to_string(findings.size() + more - mostShown) + " more; --json lists them.");
    }
}

} // namespace

const requirement::RequirementSet& CaseInput::setFor(std::string_view student) const
{
    const session::SetsAround* named = around(student);
    return named == nullptr ? set : *find(named->inForce); // read with them
}

const requirement::RequirementSet* CaseInput::find(const session::SetByName& named) const
{
    const auto found = sets.find({named.id, named.digest});
    return found == sets.end() ? nullptr : &found->second;
}

const session::SetsAround* CaseInput::around(std::string_view student) const
{
    const auto found = setsAround.find(student);
    return found == setsAround.end() ? nullptr : &found->second;
}

OptionSpec catalogueOption()
{
    return {"catalogue", "FILE", "a table of procedures laid over the shipped catalogue"};
}

base::Result<catalogue::Catalogue> catalogueFor(const Arguments& arguments)
{
    base::Result<catalogue::Catalogue> shipped = files::shippedCatalogue();
    const std::optional<std::string> file = arguments.value("catalogue");
    if (!shipped || !file) {
        return shipped;
    }
    const base::Result<std::string> text = files::readWholeFile(*file, mostCatalogueBytes);
    if (!text) {
        return text.error();
    }
    base::Result<catalogue::Catalogue> laid = shipped.value().withOverlay(text.value());
    return laid ? std::move(laid)
                : base::Result<catalogue::Catalogue>(
                      base::Error{laid.error().code, *file + ": " + laid.error().sentence});
}

base::Result<catalogue::Catalogue> catalogueFor(const Arguments& arguments, const session::Session& session)
{
    base::Result<catalogue::Catalogue> given = catalogueFor(arguments);
    if (!given || arguments.has("catalogue")) {
        return given;
    }
    base::Result<catalogue::Catalogue> laid = session::withOverlayInForce(session, given.value());
    if (!laid) {
        complain("The program's own procedures do not fit this version of Peelpack and are left out: " +
                 laid.error().sentence + " The director mends it with \"program catalogue\".");
        return given;
    }
    return laid;
}

base::Result<CaseInput> readCaseInput(const Arguments& arguments,
                                      const std::function<void(const sheet::CaseRow&)>& onRow)
{
    const std::string& file = arguments.operands.front();
    if (isVaultFile(file)) {
        return readVaultCases(arguments);
    }
    const base::Result<catalogue::Catalogue> catalogue = catalogueFor(arguments);
    if (!catalogue) {
        return catalogue.error();
    }
    base::Result<requirement::RequirementSet> set =
        files::requirementSet(arguments.value("set").value_or(files::usualSetId));
    if (!set) {
        return set.error();
    }
    Progress shown(arguments.has("progress"));
    sheet::SheetReader reader(catalogue.value(), files::normalized);
    if (onRow) {
        reader.watch([&](std::size_t /*line*/, const sheet::CaseRow& row) { onRow(row); });
    }
    const base::Result<std::size_t> read = files::readPieces(file, [&](std::string_view piece) {
        shown.show("rows read:", reader.rowsSeen());
        return reader.feed(piece);
    });
    if (!read) {
        return read.error();
    }
    base::Result<sheet::SheetReader::Reading> reading = reader.finish();
    if (!reading) {
        return base::Error{reading.error().code, file + ": " + reading.error().sentence};
    }
    return CaseInput{file, std::move(set).value(), std::move(reading).value(), tally::usualStrengths, {}, {}};
}

void complainOf(const std::string& file, const sheet::ReadReport& report, std::string_view rest)
{
    complainOfEach(file, report.refused, "refused: ", 0);
    complainOfEach(file, report.warnings, "warning: ", report.moreWarnings);
    if (!report.refused.empty()) {
        complain(base::counted(report.refused.size(), "refusal", "refusals") + " of " +
                 base::counted(report.rows, "row", "rows") + "; " + std::string(rest) + ".");
    }
}

nlohmann::ordered_json findingsJson(const std::vector<sheet::Finding>& findings)
{
    nlohmann::ordered_json list = nlohmann::ordered_json::array();
    for (const sheet::Finding& finding : findings) {
        list.push_back(
            {{"line", finding.line}, {"column", finding.column}, {"reason", finding.reason}, {"mend", finding.mend}});
    }
    return list;
}

} // namespace peelpack::cli
