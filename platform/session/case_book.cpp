#include "platform/session/case_book.h"

#include "core/sheet/row_writer.h"
#include "platform/files/text_file.h"

namespace peelpack::session {

base::Result<CaseBook> caseBook(const Session& session, const catalogue::Catalogue& catalogue,
                                const std::vector<record::StudentRecord>& students)
{
    const record::RowRules rules = rowRules(session, catalogue);
    std::vector<std::string> notLogged;
    sheet::SheetReader reader(catalogue, files::normalized);
    reader.feed(sheet::headerLine());
    for (record::StudentRecord student : students) {
        if (student.name.empty()) {
            student.name = "student " + student.student.hex(8);
        }
        for (const sheet::CaseRow& row : record::caseRows(student, rules)) {
            if (row.categories.empty()) {
                notLogged.push_back(row.sheet);
            } else {
                reader.feed(sheet::rowLine(row));
            }
        }
    }
    base::Result<sheet::SheetReader::Reading> reading = reader.finish();
    if (!reading) {
        return reading.error();
    }
    return CaseBook{std::move(reading).value(), std::move(notLogged)};
}

} // namespace peelpack::session
