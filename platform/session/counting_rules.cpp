#include "platform/session/counting_rules.h"

#include "core/sheet/row_writer.h"

#include <algorithm>
#include <iterator>

namespace peelpack::session {

base::Result<CountingRules> countingRules(const Session& session, const catalogue::Catalogue& catalogue,
                                          std::span<const record::StudentRecord> students)
{
    std::vector<keys::Id> ids;
    std::transform(students.begin(), students.end(), std::back_inserter(ids),
                   [](const record::StudentRecord& student) { return idOf(student.student); });
    base::Result<SetsInForce> sets = setsInForce(session, ids);
    if (!sets) {
        return sets.error();
    }
    return CountingRules{std::move(sets).value(), rowRules(session, catalogue)};
}

RowsFile caseRowsFile(const record::RowRules& rules, std::span<const record::StudentRecord> students)
{
    RowsFile file{sheet::headerLine(), 0};
    eachCaseRow(rules, students, [&](const sheet::CaseRow& row) {
        file.text += sheet::rowLine(row);
        ++file.rows;
    });
    return file;
}

} // namespace peelpack::session
