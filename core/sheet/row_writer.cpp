#include "core/sheet/row_writer.h"

#include "core/sheet/csv.h"
#include "core/sheet/row_parser.h"

namespace peelpack::sheet {
namespace {

std::string categoryCell(const catalogue::CategoryList& categories)
{
    std::string out;
    for (const catalogue::Category category : categories) {
        out += out.empty() ? "" : "|";
        out += catalogue::id(category);
    }
    return out;
}

std::string cellOf(const CaseRow& row, Column column)
{
    switch (column) {
    case Column::Sheet:
        return row.sheet;
    case Column::Date:
        return row.date.iso();
    case Column::Student:
        return row.student;
    case Column::Procedure:
        return row.procedure;
    case Column::Categories:
        return categoryCell(row.categories);
    case Column::Operation:
        return row.operation;
    case Column::OnePathology:
        return row.onePathology ? std::to_string(*row.onePathology) : std::string();
    case Column::Surgeon:
        return row.surgeon;
    case Column::Site:
        return row.site;
    case Column::Room:
        return row.room;
    case Column::Start:
        return row.start;
    case Column::End:
        return row.end;
    case Column::Preceptor:
        return row.preceptor;
    case Column::Credential:
        return row.credential;
    case Column::Feedback:
        return row.feedback;
    case Column::Canceled:
        return row.canceled ? "Y" : "";
    case Column::Attested:
        return std::string(id(row.attested));
    case Column::Initialed:
        return row.initialed ? row.initialed->iso() : std::string();
    case Column::Imported:
        return row.importedRole ? "Y" : "";
    case Column::Role:
        return row.importedRole ? std::string(id(*row.importedRole)) : std::string();
    default:
        break;
    }
    const auto skill = static_cast<Skill>(static_cast<unsigned>(column) - static_cast<unsigned>(Column::Verify));
    return std::string(cell(row.marks.of(skill)));
}

} // namespace

std::string headerLine()
{
    std::string line;
    for (std::size_t i = 0; i < columnCount; ++i) {
        line += i == 0 ? "" : ",";
        line += name(static_cast<Column>(i));
    }
    return line + "\r\n";
}

std::string rowLine(const CaseRow& row)
{
    std::string line;
    for (std::size_t i = 0; i < columnCount; ++i) {
        line += i == 0 ? "" : ",";
        line += csvField(defused(cellOf(row, static_cast<Column>(i))));
    }
    return line + "\r\n";
}

} // namespace peelpack::sheet
