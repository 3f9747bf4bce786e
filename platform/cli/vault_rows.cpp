#include "platform/cli/vault_rows.h"

#include "platform/cli/output.h"
#include "platform/cli/student_choice.h"
#include "platform/cli/vault_access.h"
#include "platform/files/requirement_json.h"
#include "platform/session/case_book.h"
#include "platform/session/program_rules.h"

#include <QFile>

namespace peelpack::cli {

bool isVaultFile(const std::string& file)
{
    constexpr std::string_view start = "SQLite format 3";
    QFile opened(QString::fromStdString(file));
    return file != "-" && opened.open(QIODevice::ReadOnly) &&
           opened.read(static_cast<qint64>(start.size())).toStdString() == start;
}

void complainOfNotLogged(const session::CaseBook& book)
{
    for (const std::string& name : book.notLogged) {
        complain("Sheet " + name +
                 ": a procedure that is not in the catalogue is not logged yet and not counted; log it with "
                 "\"sheet log\".");
    }
}

base::Result<CaseInput> readVaultCases(const Arguments& arguments, const catalogue::Catalogue& catalogue)
{
    const std::string& file = arguments.operands.front();
    // --student is a name here and may name a student that has no sheet yet; the tally looks it up itself.
    Arguments everybody = arguments;
    everybody.values.erase("student");
    const base::Result<ChosenVault> chosen = openChosen(everybody, file);
    if (!chosen) {
        return chosen.error();
    }
    const session::Session& session = chosen.value().session();
    const std::optional<std::string> named = arguments.value("set");
    base::Result<requirement::RequirementSet> set =
        named ? files::requirementSet(*named) : session::setInForce(session);
    if (!set) {
        return set.error();
    }
    base::Result<session::CaseBook> book = session::caseBook(session, catalogue, chosen.value().records());
    if (!book) {
        return book.error();
    }
    complainOfNotLogged(book.value());
    return CaseInput{file, std::move(set).value(), std::move(book).value().reading, tally::everyStrength};
}

} // namespace peelpack::cli
