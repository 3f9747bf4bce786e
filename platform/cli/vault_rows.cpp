#include "platform/cli/vault_rows.h"

#include "core/record/case_rows.h"
#include "core/sheet/row_writer.h"
#include "core/tally/tally.h"
#include "platform/cli/output.h"
#include "platform/cli/student_choice.h"
#include "platform/cli/vault_access.h"
#include "platform/files/requirement_json.h"
#include "platform/files/resources.h"
#include "platform/files/text_file.h"

#include "sync/trust/policy.h"

#include <QFile>

namespace peelpack::cli {

bool isVaultFile(const std::string& file)
{
    constexpr std::string_view start = "SQLite format 3";
    QFile opened(QString::fromStdString(file));
    return file != "-" && opened.open(QIODevice::ReadOnly) &&
           opened.read(static_cast<qint64>(start.size())).toStdString() == start;
}

CaseSheetText caseSheetText(const session::Session& session, const catalogue::Catalogue& catalogue,
                            const std::vector<keys::Id>& students)
{
    const record::RowRules rules = session::rowRules(session, catalogue);
    CaseSheetText result{sheet::headerLine(), {}};
    for (const keys::Id& id : students) {
        record::StudentRecord student = session.recordOf(id);
        if (student.name.empty()) {
            student.name = "student " + student.student.hex(8);
        }
        for (const sheet::CaseRow& row : record::caseRows(student, rules)) {
            if (row.categories.empty()) {
                result.notLogged.push_back(row.sheet);
            } else {
                result.text += sheet::rowLine(row);
            }
        }
    }
    return result;
}

base::Result<CaseInput> readVaultCases(const Arguments& arguments, const catalogue::Catalogue& catalogue)
{
    const std::string& file = arguments.operands.front();
    const base::Result<OpenedVault> opened = openVault(arguments, file);
    if (!opened) {
        return opened.error();
    }
    const session::Session& session = *opened.value().session;
    const auto policy = trust::policyInForce(session.authority(), session.ledger().feeds());
    base::Result<requirement::RequirementSet> set = files::requirementSet(
        arguments.value("set").value_or(policy ? policy->policy.requirementSet : files::usualSetId));
    // --student is a name here and may name a student that has no sheet yet; the tally looks it up itself.
    Arguments everybody = arguments;
    everybody.values.erase("student");
    const base::Result<std::vector<keys::Id>> students = chosenStudents(session, everybody);
    if (!set || !students) {
        return set ? students.error() : set.error();
    }
    const CaseSheetText sheets = caseSheetText(session, catalogue, students.value());
    for (const std::string& name : sheets.notLogged) {
        complain("Sheet " + name +
                 ": a procedure that is not in the catalogue is not logged yet and not counted; log it with "
                 "\"sheet log\".");
    }
    sheet::SheetReader reader(catalogue, files::normalized);
    reader.feed(sheets.text);
    base::Result<sheet::SheetReader::Reading> reading = reader.finish();
    if (!reading) {
        return reading.error();
    }
    return CaseInput{file, std::move(set).value(), std::move(reading).value(), tally::everyStrength};
}

base::Result<bool> initialedTallyIsComplete(const session::Session& session, const keys::Id& student,
                                            const journal::Policy& policy, const Arguments& arguments)
{
    const base::Result<catalogue::Catalogue> catalogue = catalogueFor(arguments);
    const base::Result<requirement::RequirementSet> set = files::requirementSet(policy.requirementSet);
    if (!catalogue || !set) {
        return catalogue ? set.error() : catalogue.error();
    }
    sheet::SheetReader reader(catalogue.value(), files::normalized);
    reader.feed(caseSheetText(session, catalogue.value(), {student}).text);
    const base::Result<sheet::SheetReader::Reading> reading = reader.finish();
    if (!reading) {
        return reading.error();
    }
    const sheet::SheetBook& book = reading.value().book;
    if (book.students().size() != 1) {
        return false;
    }
    tally::Tallier tallier(set.value(), tally::Level::Initialed, tally::everyStrength);
    const tally::StudentTally result = tallier.tally(book, book.students().front(), {true, false, false});
    return result.best.value.counted == static_cast<std::int32_t>(set.value().required());
}

} // namespace peelpack::cli
