#pragma once

#include "core/base/result.h"
#include "core/catalogue/catalogue.h"
#include "core/sheet/csv.h"
#include "core/sheet/row_parser.h"
#include "core/sheet/sheet_book.h"

#include <functional>
#include <string_view>
#include <vector>

namespace peelpack::sheet {

/// What was not taken and what should be looked at. Sorted by line.
struct ReadReport {
    std::size_t rows = 0;          ///< rows after the header, taken or not
    std::vector<Finding> refused;  ///< rows or whole sheets that are not in the book
    std::vector<Finding> warnings; ///< taken as they are; at most `mostWarnings`, the rest only counted
    std::size_t moreWarnings = 0;
};

/// Turns the bytes of a case-sheet file into a book of sheets, piece by piece, in bounded memory.
///
/// A bad cell refuses its row; unequal marks, dates or standing within a sheet and a bad row that is joined refuse the
/// whole sheet; a file that is no CSV, has no header or more than `mostRefusals` refusals is refused as a whole.
class SheetReader {
public:
    static constexpr std::size_t mostRefusals = 100'000;
    static constexpr std::size_t mostWarnings = 10'000;

    /// The catalogue must outlive the reader.
    explicit SheetReader(const catalogue::Catalogue& catalogue, RowParser::Normalize normalize = {});

    /// From now on tells of each row that is taken with its line, its sheet may still be refused: for what the book has
    /// no room for.
    void watch(std::function<void(std::size_t line, const CaseRow&)> onRow) { m_onRow = std::move(onRow); }

    /// From now on a row that is refused takes its whole sheet with it.
    void wholeSheetsOnly() { m_wholeSheets = true; }

    /// The file is said to be a paper log: see RowParser.
    void expectPaperLog() { m_parser.expectPaperLog(); }

    /// From now on a sheet from a paper log that is not initialed is marked as BookSheet::importNotInitialed.
    void holdImports() { m_holdImports = true; }

    /// False once the file is refused as a whole: there is no point in going on.
    bool feed(std::string_view piece);
    [[nodiscard]] std::size_t rowsSeen() const { return m_report.rows; }

    struct Reading {
        SheetBook book;
        ReadReport report;
    };
    /// The input is over. The error is the sentence for a file that is refused as a whole. Call once.
    base::Result<Reading> finish();

private:
    struct Draft {
        BookSheet facts;
        std::uint32_t operation = 0;
        std::uint32_t rowsSeen = 0;
        bool begun = false;
        bool refused = false;
    };
    struct DraftRow {
        std::uint32_t sheet;
        BookRow row;
    };
    struct Filing {
        bool known = false;
        bool usable = false;
        catalogue::CategoryList categories;
        bool countsOftenNotNeeded = false;
        Finding fault;
    };

    void onRecord(std::size_t line, std::span<const std::string_view> fields);
    void takeRow(std::size_t line, CaseRow& row);
    Draft* draftOf(const CaseRow& row);
    const Filing& filingOf(std::uint32_t procedure);
    void screen(std::size_t line, const CaseRow& row);
    void screenTime(std::size_t line, Column column, const std::string& time);
    void screenText(std::size_t line, Column column, std::string_view text, bool personColumn);
    /// Refuses the whole sheet of a row that is refused, where that has to be; the finding says so.
    void refuseSheetOf(const CaseRow& row, Draft& draft, Finding& finding) const;
    void refuse(Finding finding);
    void warn(Finding finding);
    void arrange(SheetBook& book);
    [[nodiscard]] base::Error fileError(const Finding& finding) const;

    const catalogue::Catalogue& m_catalogue;
    RowParser m_parser;
    CsvReader m_csv;
    std::function<void(std::size_t line, const CaseRow&)> m_onRow;
    bool m_wholeSheets = false;
    bool m_holdImports = false;
    bool m_headerSeen = false;
    std::optional<Finding> m_fatal;
    ReadReport m_report;
    CaseRow m_row;
    std::string m_key;
    base::StringPool m_studentNames;
    base::StringPool m_sheetKeys; // student number, then sheet id
    base::StringPool m_procedures;
    base::StringPool m_operations; // student number, then operation
    std::vector<Draft> m_drafts;   // by number in m_sheetKeys
    std::vector<DraftRow> m_draftRows;
    std::vector<Filing> m_filings; // by number in m_procedures
};

} // namespace peelpack::sheet
