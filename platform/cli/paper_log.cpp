#include "platform/cli/paper_log.h"

#include "core/sheet/identifiers.h"
#include "platform/cli/sheet_options.h"
#include "platform/files/text_file.h"

#include <algorithm>
#include <map>

namespace peelpack::cli {
namespace {

using sheet::CaseRow;
using sheet::Column;
using sheet::Finding;

struct PlacedRow {
    std::size_t line = 0;
    CaseRow row;
};
/// Rows that were taken, by student and sheet.
using RowsBySheet = std::map<std::pair<std::string, std::string>, std::vector<PlacedRow>>;

Finding finding(std::size_t line, Column column, std::string reason, std::string mend)
{
    return {line, std::string(sheet::name(column)), std::move(reason), std::move(mend)};
}

/// What looks like a patient identifier; surgeon and preceptor are named here.
std::optional<Finding> identifierIn(const PlacedRow& placed)
{
    const CaseRow& row = placed.row;
    const auto texts = {std::tuple(Column::Procedure, &row.procedure, false),
                        {Column::Surgeon, &row.surgeon, true},
                        {Column::Site, &row.site, false},
                        {Column::Room, &row.room, false},
                        {Column::Preceptor, &row.preceptor, true},
                        {Column::Credential, &row.credential, true}};
    for (const auto& [column, text, person] : texts) {
        for (const sheet::IdentifierHit& hit : sheet::findIdentifiers(*text)) {
            if (!person || hit.kind != sheet::IdentifierKind::Name) {
                return finding(placed.line, column, "this looks like " + std::string(sheet::inWords(hit.kind)),
                               "take it out; what is imported stays, and if it is none, say so with --checked");
            }
        }
    }
    return std::nullopt;
}

/// Why a row that is well formed is not imported.
std::optional<Finding> notImported(const PlacedRow& placed, bool checked)
{
    const CaseRow& row = placed.row;
    if (!row.importedRole) {
        return finding(placed.line, Column::Imported, "only rows from a paper log are imported",
                       "write Y here and first, second or observed under role, and empty the marks");
    }
    if (row.attested != sheet::Strength::None) {
        return finding(placed.line, Column::Attested, "nobody attests a row from a paper log",
                       "empty the cell; name the preceptor under preceptor");
    }
    if (row.initialed) {
        return finding(placed.line, Column::Initialed, "an initial is not imported",
                       "empty the cell; an instructor initials the sheet once it is here");
    }
    if (!row.feedback.empty()) {
        return finding(placed.line, Column::Feedback, "feedback is not imported", "empty the cell");
    }
    return checked ? std::nullopt : identifierIn(placed);
}

/// The journal's numbers of joined rows, 1 and up, for those of the file.
class Joints {
public:
    std::uint8_t of(const std::optional<std::uint32_t>& pathology)
    {
        return pathology
                   ? m_numbers.try_emplace(*pathology, static_cast<std::uint8_t>(m_numbers.size() + 1)).first->second
                   : std::uint8_t{0};
    }

private:
    std::map<std::uint32_t, std::uint8_t> m_numbers;
};

session::PaperSheet paperSheet(const std::vector<PlacedRow>& rows, std::span<const sheet::BookRow> filed)
{
    const CaseRow& first = rows.front().row;
    session::PaperSheet paper;
    paper.head = headOfRow(first);
    paper.role = *first.importedRole;
    paper.preceptor = first.preceptor;
    paper.credential = first.credential;
    paper.operation = first.operation;
    Joints joints;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        paper.procedures.push_back(rows[i].row.procedure);
        paper.choices.push_back({static_cast<std::uint8_t>(i), std::string(catalogue::id(filed[i].categories.front())),
                                 joints.of(rows[i].row.onePathology)});
    }
    return paper;
}

} // namespace

base::Result<PaperLog> readPaperLog(const std::string& file, const catalogue::Catalogue& catalogue,
                                    const std::string& source, bool checked)
{
    RowsBySheet rows;
    sheet::SheetReader reader(catalogue, files::normalized);
    reader.wholeSheetsOnly();
    reader.watch([&](std::size_t line, const CaseRow& row) { rows[{row.student, row.sheet}].push_back({line, row}); });
    const base::Result<std::size_t> read =
        files::readPieces(file, [&](std::string_view piece) { return reader.feed(piece); });
    if (!read) {
        return read.error();
    }
    base::Result<sheet::SheetReader::Reading> finished = reader.finish();
    if (!finished) {
        return base::Error{finished.error().code, file + ": " + finished.error().sentence};
    }
    sheet::SheetReader::Reading reading = std::move(finished).value();
    PaperLog log{{}, std::move(reading.report)};
    const auto refuse = [&](Finding found) {
        std::erase_if(log.report.warnings, [&](const Finding& warning) {
            return warning.line == found.line && warning.column == found.column;
        });
        log.report.refused.push_back(std::move(found));
    };
    for (const sheet::BookStudent& student : reading.book.students()) {
        for (const sheet::BookSheet& sheet : reading.book.sheetsOf(student)) {
            const std::vector<PlacedRow>& placed = rows.at({std::string(student.name), std::string(sheet.id)});
            std::optional<Finding> bad;
            for (const PlacedRow& row : placed) {
                bad = bad ? bad : notImported(row, checked);
            }
            if (!bad && placed.size() > journal::mostProcedures) {
                bad = finding(placed[journal::mostProcedures].line, Column::Procedure,
                              "a sheet has at most " + std::to_string(journal::mostProcedures) + " procedures",
                              "give the rest a sheet of its own, with the same operation");
            }
            if (bad) {
                refuse(std::move(*bad));
                continue;
            }
            PaperLogSheet one{placed.front().line, std::string(student.name),
                              paperSheet(placed, reading.book.rowsOf(sheet))};
            if (const base::Result<bool> fits = session::importable(one.sheet, source); !fits) {
                refuse({one.line, "", fits.error().sentence, "shorten or correct the texts of this sheet"});
                continue;
            }
            log.sheets.push_back(std::move(one));
        }
    }
    return log;
}

} // namespace peelpack::cli
