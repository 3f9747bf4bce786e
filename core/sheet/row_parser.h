#pragma once

#include "core/sheet/case_row.h"

#include <array>
#include <cstddef>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace peelpack::sheet {

/// The columns of a case-sheet file, in the order in which they are written.
enum class Column : std::uint8_t {
    Sheet,
    Date,
    Student,
    Procedure,
    Categories,
    Verify,
    Setup,
    Counts,
    Pass,
    Technique,
    Sponge,
    Suction,
    Cut,
    Retract,
    Camera,
    Operation,
    OnePathology,
    Surgeon,
    Site,
    Room,
    Start,
    End,
    Preceptor,
    Credential,
    Feedback,
    Canceled,
    Attested,
    Initialed,
    Imported,
    Role,
};
inline constexpr std::size_t columnCount = 30;

/// The header cell ("one_pathology").
std::string_view name(Column column);
/// The column of a skill's mark.
constexpr Column columnOf(Skill skill)
{
    return static_cast<Column>(static_cast<unsigned>(Column::Verify) + static_cast<unsigned>(skill));
}

/// Something about one place of a file: what is wrong and how to mend it. `column` is empty when it concerns the line.
struct Finding {
    std::size_t line = 0;
    std::string column;
    std::string reason;
    std::string mend;
    bool operator==(const Finding&) const = default;
};

/// Reads the records of one case-sheet file: first the header, then row after row. Pure; a text normalizer (NFC) may be
/// given and is then applied to every free text that is not plain ASCII.
class RowParser {
public:
    using Normalize = std::function<std::string(std::string_view)>;

    explicit RowParser(Normalize normalize = {}) : m_normalize(std::move(normalize)) {}

    /// From now on the file is said to be a paper log: where the ten mark columns are away and `role` is there,
    /// `imported` may be away too, and every row is one from a paper log.
    void expectPaperLog() { m_expectsPaperLog = true; }

    /// Takes the header record. The finding says why the file cannot be read at all.
    std::optional<Finding> readHeader(std::size_t line, std::span<const std::string_view> fields);
    /// Cells of the header row.
    [[nodiscard]] std::size_t width() const { return m_width; }
    /// Header cells that no column has; their values are not read.
    [[nodiscard]] const std::vector<std::string>& unknownColumns() const { return m_unknown; }

    /// Fills `row` from one record. On a finding the row is refused; then the cells before the bad one are filled, and
    /// sheet, student and onePathology too as far as they can be read.
    std::optional<Finding> readRow(std::size_t line, std::span<const std::string_view> fields, CaseRow& row) const;

private:
    [[nodiscard]] bool has(Column column) const { return m_place[static_cast<std::size_t>(column)] != absent; }
    /// What of the columns a file must have it lacks.
    [[nodiscard]] std::optional<Finding> lackingColumns(std::size_t line);
    [[nodiscard]] std::string_view cell(std::span<const std::string_view> fields, Column column) const;
    void assignText(std::string& target, std::string_view value) const;
    std::optional<Finding> readKeys(std::size_t line, std::span<const std::string_view> fields, CaseRow& row) const;
    std::optional<Finding> readMarks(std::size_t line, std::span<const std::string_view> fields, CaseRow& row) const;
    std::optional<Finding> readCategories(std::size_t line, std::string_view value, CaseRow& row) const;
    std::optional<Finding> readStanding(std::size_t line, std::span<const std::string_view> fields, CaseRow& row) const;
    std::optional<Finding> readImport(std::size_t line, std::span<const std::string_view> fields, CaseRow& row) const;

    static constexpr std::size_t absent = SIZE_MAX;

    Normalize m_normalize;
    std::array<std::size_t, columnCount> m_place{};
    std::size_t m_width = 0;
    bool m_expectsPaperLog = false;
    bool m_everyRowImported = false; ///< although no column says so
    std::vector<std::string> m_unknown;
};

} // namespace peelpack::sheet
