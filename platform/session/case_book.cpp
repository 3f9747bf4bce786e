#include "platform/session/case_book.h"

#include "core/sheet/row_writer.h"
#include "platform/files/text_file.h"

#include <span>

namespace peelpack::session {

namespace {

base::Result<CaseBook> bookOf(const Session& session, const catalogue::Catalogue& catalogue,
                              std::span<const record::StudentRecord> students)
{
    const record::RowRules rules = rowRules(session, catalogue);
    std::vector<std::string> notLogged;
    sheet::SheetReader reader(catalogue, files::normalized);
    reader.feed(sheet::headerLine());
    for (const record::StudentRecord& student : students) {
        const std::string name = student.name.empty() ? "student " + student.student.hex(8) : student.name;
        const record::ShortNames names = record::shortNames(student);
        for (const record::SheetRecord& sheet : student.sheets) {
            for (const sheet::CaseRow& row : record::caseRows(sheet, name, names, rules)) {
                if (row.categories.empty()) {
                    notLogged.push_back(row.sheet);
                } else {
                    reader.feed(sheet::rowLine(row));
                }
            }
        }
    }
    base::Result<sheet::SheetReader::Reading> reading = reader.finish();
    if (!reading) {
        return reading.error();
    }
    return CaseBook{std::move(reading).value(), std::move(notLogged)};
}

} // namespace

base::Result<CaseBook> caseBook(const Session& session, const catalogue::Catalogue& catalogue,
                                const std::vector<record::StudentRecord>& students)
{
    return bookOf(session, catalogue, students);
}

base::Result<CaseBook> caseBook(const Session& session, const catalogue::Catalogue& catalogue,
                                const record::StudentRecord& student)
{
    return bookOf(session, catalogue, {&student, 1});
}

} // namespace peelpack::session
