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

base::Result<CaseInput> readVaultCases(const Arguments& arguments, const catalogue::Catalogue& catalogue)
{
    const std::string& file = arguments.operands.front();
    const base::Result<OpenedVault> opened = openVault(arguments, file);
    if (!opened) {
        return opened.error();
    }
    const session::Session& session = *opened.value().session;
    const std::optional<std::string> named = arguments.value("set");
    base::Result<requirement::RequirementSet> set =
        named ? files::requirementSet(*named) : session::setInForce(session);
    // --student is a name here and may name a student that has no sheet yet; the tally looks it up itself.
    Arguments everybody = arguments;
    everybody.values.erase("student");
    const base::Result<std::vector<keys::Id>> students = chosenStudents(session, everybody);
    if (!set || !students) {
        return set ? students.error() : set.error();
    }
    base::Result<session::CaseBook> book = session::caseBook(session, catalogue, session.recordsOf(students.value()));
    if (!book) {
        return book.error();
    }
    for (const std::string& name : book.value().notLogged) {
        complain("Sheet " + name +
                 ": a procedure that is not in the catalogue is not logged yet and not counted; log it with "
                 "\"sheet log\".");
    }
    return CaseInput{file, std::move(set).value(), std::move(book).value().reading, tally::everyStrength};
}

} // namespace peelpack::cli
