#include "platform/cli/commands.h"

#include "core/base/text.h"
#include "platform/cli/answer.h"
#include "platform/cli/bytes_file.h"
#include "platform/cli/case_file.h"
#include "platform/cli/output.h"
#include "platform/cli/student_choice.h"
#include "platform/cli/vault_access.h"
#include "platform/session/counting_rules.h"

namespace peelpack::cli {
namespace {

base::Result<Answer> rows(const Arguments& arguments)
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
    const auto [text, count] =
        session::caseRowsFile(session::rowRules(session, catalogue.value()), chosen.value().records());
    const auto out = arguments.value("out");
    if (!out) {
        Answer answer{{{"rows", count}, {"csv", text}}, text};
        std::erase(answer.text, '\r'); // lines of a terminal
        return answer;
    }
    const base::Result<bool> written = writeNewFile(*out, keys::bytesOf(text));
    if (!written) {
        return written.error();
    }
    Answer answer;
    answer.json = {{"file", *out}, {"rows", count}};
    answer.text = "Written: " + *out + ", " + base::counted(count, "row", "rows") +
                  ". Not de-identified: keep it as an education record.\n";
    return answer;
}

} // namespace

Command rowsCommand()
{
    std::vector<OptionSpec> options = studentOptions();
    options.insert(options.begin(), {"out", "FILE", "where they go; a file that is there already is not overwritten"});
    return {
        {"rows",
         "Write the case sheets of a vault as a case-sheet file, a row for each procedure, as the tally reads them.",
         {},
         withVaultOptions(std::move(options)),
         "peelpack rows --class \"Spring class\" --out spring.csv\n  for a spreadsheet, or for peelpack tally"},
        [](const Arguments& arguments) { return give(arguments, rows(arguments)); }};
}

} // namespace peelpack::cli
