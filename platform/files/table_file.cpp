#include "platform/files/table_file.h"

#include "core/base/text.h"
#include "core/sheet/csv.h"
#include "platform/files/text_file.h"

#include <algorithm>

namespace peelpack::files {
namespace {

constexpr std::size_t none = SIZE_MAX;

std::string cellOf(std::span<const std::string_view> fields, std::size_t column)
{
    const std::string_view plain = column < fields.size() ? sheet::undefused(fields[column]) : std::string_view();
    return normalized(base::trimmed(plain));
}

} // namespace

base::Error TableRow::error(const std::string& file, const std::string& sentence) const
{
    return {base::ErrorCode::BadInput, file + ", line " + std::to_string(line) + ": " + sentence};
}

base::Result<std::vector<TableRow>> readTable(const std::string& file, std::string_view text,
                                              const std::vector<TableColumn>& columns)
{
    std::vector<TableRow> rows;
    std::vector<std::size_t> places; // of the columns; empty before the header row
    sheet::CsvReader csv([&](std::size_t line, std::span<const std::string_view> fields) {
        if (fields.size() == 1 && fields.front().empty()) {
            return;
        }
        if (places.empty()) {
            for (const TableColumn& column : columns) {
                std::size_t place = 0;
                while (place < fields.size() && cellOf(fields, place) != column.name) {
                    ++place;
                }
                places.push_back(place < fields.size() ? place : none);
            }
            return;
        }
        TableRow row{line, {}};
        std::transform(places.begin(), places.end(), std::back_inserter(row.cells),
                       [&](std::size_t place) { return cellOf(fields, place); });
        rows.push_back(std::move(row));
    });
    std::optional<sheet::CsvReader::Fault> fault = csv.feed(text);
    if (!fault) {
        fault = csv.finish();
    }
    if (fault) {
        return TableRow{fault->line, {}}.error(file, fault->reason + "; " + fault->mend + ".");
    }
    for (std::size_t i = 0; i < columns.size(); ++i) {
        if (columns[i].required && (places.empty() || places[i] == none)) {
            return TableRow{1, {}}.error(file, "the table needs a header row with the column " + columns[i].name + ".");
        }
    }
    return rows;
}

} // namespace peelpack::files
