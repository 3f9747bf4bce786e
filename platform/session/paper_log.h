#pragma once

#include "core/catalogue/catalogue.h"
#include "core/sheet/sheet_reader.h"
#include "platform/session/importing.h"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace peelpack::session {

/// A paper log as a case-sheet file says it.
struct PaperLog {
    std::vector<PaperLogSheet> sheets; ///< by student, date and id
    sheet::ReadReport report;
    bool suspected = false; ///< something was refused because it looks like a patient identifier
};

/// Reads a paper log piece by piece: a case-sheet file of which every row has a role and is imported, none with marks,
/// a signature, an initial or feedback. Where the columns of the marks are away, that of `imported` may be away too. A
/// row that is refused takes its whole sheet with it: what is imported stays.
class PaperLogReader {
public:
    /// `checked`: what looks like a patient identifier is none. The catalogue must outlive the reader.
    PaperLogReader(const catalogue::Catalogue& catalogue, bool checked);
    PaperLogReader(const PaperLogReader&) = delete;
    PaperLogReader& operator=(const PaperLogReader&) = delete;
    PaperLogReader(PaperLogReader&&) = delete;
    PaperLogReader& operator=(PaperLogReader&&) = delete;
    ~PaperLogReader() = default;

    /// False: nothing that follows can be used.
    bool feed(std::string_view piece) { return m_reader.feed(piece); }
    /// Once, after the last piece. `source`: where the rows come from. BadInput: the file cannot be read at all.
    base::Result<PaperLog> finish(const std::string& source);

private:
    struct PlacedRow {
        std::size_t line = 0;
        sheet::CaseRow row;
    };

    static std::optional<sheet::Finding> identifierIn(const PlacedRow& placed);
    static std::optional<sheet::Finding> notImported(const PlacedRow& placed);
    static PaperSheet paperSheet(const std::vector<PlacedRow>& rows, std::span<const sheet::BookRow> filed);

    bool m_checked;
    std::map<std::pair<std::string, std::string>, std::vector<PlacedRow>>
        m_rows; ///< that were taken, by student and id
    sheet::SheetReader m_reader;
};

/// A whole log that is in memory.
base::Result<PaperLog> paperLogFrom(std::string_view text, const catalogue::Catalogue& catalogue,
                                    const std::string& source, bool checked);

/// A paper log, by whose it is. What is nobody's is refused beside what could not be read.
struct ImportPlan {
    std::vector<ImportFor> students; ///< by name
    sheet::ReadReport report;
    bool suspected = false; ///< as in a PaperLog
    bool sameName = false;  ///< something was refused because more than one student has its name

    /// Sheets that are imported, and that are here already.
    [[nodiscard]] std::size_t sheets() const;
    [[nodiscard]] std::size_t alreadyHere() const;
};
/// `only`: the log is of this student alone; null: of whoever is named in each row.
ImportPlan planImport(const Session& session, PaperLog log, const std::string& source, const keys::Id* only = nullptr);

} // namespace peelpack::session
