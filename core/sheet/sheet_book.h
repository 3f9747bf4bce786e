#pragma once

#include "core/base/date.h"
#include "core/base/string_pool.h"
#include "core/catalogue/category.h"
#include "core/sheet/case_row.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace peelpack::sheet {

/// One procedure of a sheet, as far as counting needs it.
struct BookRow {
    std::uint32_t procedure = 0; ///< text: SheetBook::procedure()
    std::uint32_t number = 0;    ///< 1, 2, ... within its sheet, as in the file
    std::optional<std::uint32_t> onePathology;
    catalogue::CategoryList categories; ///< never empty, the logged one first
    bool countsOftenNotNeeded = false;  ///< as the catalogue says of this procedure; false when it does not know it
};

/// One case sheet, as far as counting needs it.
struct BookSheet {
    std::string_view id;       ///< lives as long as the book
    std::uint32_t student = 0; ///< index into SheetBook::students()
    base::Date date;
    Marks marks;
    bool canceled = false;
    Strength attested = Strength::None;
    std::optional<base::Date> initialed;
    std::optional<Role> importedRole;
    /// From a paper log, in a journal: no candidate at any level until an instructor initials it. A file of sheets is
    /// taken as it is and has none.
    bool importNotInitialed = false;
    std::uint32_t operation = 0; ///< equal on two sheets of a student: one operation; 0: the sheet is one
    std::uint32_t firstRow = 0;
    std::uint32_t rowCount = 0;
};

struct BookStudent {
    std::string_view name; ///< lives as long as the book
    std::uint32_t firstSheet = 0;
    std::uint32_t sheetCount = 0;
};

/// All accepted sheets of one file: students by name, each one's sheets by date and id, each one's rows in file order.
/// The same whatever the order of the sheets in the file.
class SheetBook {
public:
    [[nodiscard]] const std::vector<BookStudent>& students() const { return m_students; }
    [[nodiscard]] std::span<const BookSheet> sheetsOf(const BookStudent& student) const
    {
        return std::span(m_sheets).subspan(student.firstSheet, student.sheetCount);
    }
    [[nodiscard]] std::span<const BookRow> rowsOf(const BookSheet& sheet) const
    {
        return std::span(m_rows).subspan(sheet.firstRow, sheet.rowCount);
    }
    [[nodiscard]] std::string_view procedure(const BookRow& row) const { return m_procedures.at(row.procedure); }
    /// By number, as in BookRow::procedure.
    [[nodiscard]] std::string_view procedureText(std::uint32_t number) const { return m_procedures.at(number); }
    [[nodiscard]] std::size_t sheetCount() const { return m_sheets.size(); }

private:
    friend class SheetReader;

    base::StringPool m_studentNames;
    base::StringPool m_sheetKeys;
    base::StringPool m_procedures;
    std::vector<BookStudent> m_students;
    std::vector<BookSheet> m_sheets;
    std::vector<BookRow> m_rows;
};

} // namespace peelpack::sheet
