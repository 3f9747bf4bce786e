#include "platform/session/case_book.h"

#include "core/sheet/row_writer.h"
#include "platform/files/text_file.h"

#include <algorithm>
#include <map>

namespace peelpack::session {
namespace {

constexpr std::size_t idDigits = 8;

/// Two students of one name are two students.
std::vector<std::string> namesInBook(std::span<const record::StudentRecord> students)
{
    std::map<std::string_view, std::size_t> times;
    for (const record::StudentRecord& student : students) {
        ++times[student.name];
    }
    std::vector<std::string> names;
    names.reserve(students.size());
    for (const record::StudentRecord& student : students) {
        const std::string digits = student.student.hex(idDigits);
        if (student.name.empty()) {
            names.push_back("student " + digits);
        } else {
            names.push_back(times[student.name] == 1 ? student.name : student.name + " (" + digits + ")");
        }
    }
    return names;
}

} // namespace

tally::StudentTally CaseBook::tally(tally::Tallier& tallier, std::size_t student, const tally::Wanted& wanted) const
{
    const std::vector<sheet::BookStudent>& known = reading.book.students();
    const auto found = std::find_if(known.begin(), known.end(),
                                    [&](const sheet::BookStudent& one) { return one.name == names.at(student); });
    return tallier.tally(reading.book, found == known.end() ? sheet::BookStudent{} : *found, wanted);
}

void eachCaseRow(const Session& session, const catalogue::Catalogue& catalogue,
                 std::span<const record::StudentRecord> students,
                 const std::function<void(const sheet::CaseRow&)>& onRow)
{
    eachCaseRow(rowRules(session, catalogue), students, onRow);
}

void eachCaseRow(const record::RowRules& rules, std::span<const record::StudentRecord> students,
                 const std::function<void(const sheet::CaseRow&)>& onRow)
{
    const std::vector<std::string> names = namesInBook(students);
    for (std::size_t i = 0; i < students.size(); ++i) {
        const record::ShortNames shortNames = record::shortNames(students[i]);
        for (const record::SheetRecord& sheet : students[i].sheets) {
            for (const sheet::CaseRow& row : record::caseRows(sheet, names[i], shortNames, rules)) {
                onRow(row);
            }
        }
    }
}

base::Result<CaseBook> caseBook(const Session& session, const catalogue::Catalogue& catalogue,
                                std::span<const record::StudentRecord> students)
{
    return caseBook(rowRules(session, catalogue), catalogue, students);
}

base::Result<CaseBook> caseBook(const record::RowRules& rules, const catalogue::Catalogue& catalogue,
                                std::span<const record::StudentRecord> students)
{
    std::vector<std::string> notLogged;
    sheet::SheetReader reader(catalogue, files::normalized);
    reader.holdImports();
    reader.feed(sheet::headerLine());
    eachCaseRow(rules, students, [&](const sheet::CaseRow& row) {
        if (row.categories.empty()) {
            notLogged.push_back(row.sheet);
        } else {
            reader.feed(sheet::rowLine(row));
        }
    });
    base::Result<sheet::SheetReader::Reading> reading = reader.finish();
    if (!reading) {
        return reading.error();
    }
    return CaseBook{std::move(reading).value(), namesInBook(students), std::move(notLogged)};
}

base::Result<CaseBook> caseBook(const Session& session, const catalogue::Catalogue& catalogue,
                                const record::StudentRecord& student)
{
    return caseBook(session, catalogue, std::span(&student, 1));
}

} // namespace peelpack::session
