#include "core/sheet/sheet_reader.h"

#include "core/base/text.h"
#include "core/sheet/identifiers.h"

#include <algorithm>
#include <cstring>
#include <utility>

namespace peelpack::sheet {
namespace {

/// A key of a pool: the student's number in four bytes, then the text.
void makeKey(std::string& key, std::uint32_t student, std::string_view text)
{
    key.resize(sizeof student);
    std::memcpy(key.data(), &student, sizeof student);
    key += text;
}

/// The first column in which the row differs from its sheet, or empty.
std::optional<Column> disagreement(const BookSheet& sheet, std::uint32_t sheetOperation, const CaseRow& row,
                                   std::uint32_t rowOperation)
{
    if (sheet.date != row.date) {
        return Column::Date;
    }
    for (const Skill skill : allSkills) {
        if (sheet.marks.of(skill) != row.marks.of(skill)) {
            return columnOf(skill);
        }
    }
    if (sheet.canceled != row.canceled) {
        return Column::Canceled;
    }
    if (sheet.attested != row.attested) {
        return Column::Attested;
    }
    if (sheet.initialed != row.initialed) {
        return Column::Initialed;
    }
    if (sheet.importedRole != row.importedRole) {
        return Column::Role;
    }
    if (sheetOperation != 0 && rowOperation != 0 && sheetOperation != rowOperation) {
        return Column::Operation;
    }
    return std::nullopt;
}

} // namespace

SheetReader::SheetReader(const catalogue::Catalogue& catalogue, RowParser::Normalize normalize)
    : m_catalogue(catalogue), m_parser(std::move(normalize)),
      m_csv([this](std::size_t line, std::span<const std::string_view> fields) { onRecord(line, fields); })
{
}

bool SheetReader::feed(std::string_view piece)
{
    if (m_fatal) {
        return false;
    }
    if (const std::optional<CsvReader::Fault>& fault = m_csv.feed(piece); fault && !m_fatal) {
        m_fatal = Finding{fault->line, "", fault->reason, fault->mend};
    }
    return !m_fatal;
}

void SheetReader::onRecord(std::size_t line, std::span<const std::string_view> fields)
{
    if (m_fatal) {
        return;
    }
    if (!m_headerSeen) {
        m_headerSeen = true;
        m_fatal = m_parser.readHeader(line, fields);
        for (const std::string& column : m_parser.unknownColumns()) {
            warn({line, column, "no such column is known, and it was not read", "check its spelling"});
        }
        return;
    }
    if (fields.size() == 1 && fields[0].empty() && m_parser.width() > 1) {
        return; // a blank line
    }
    ++m_report.rows;
    std::optional<Finding> bad = m_parser.readRow(line, fields, m_row);
    if (!bad) {
        takeRow(line, m_row);
        return;
    }
    if (!m_row.sheet.empty() && !m_row.student.empty()) {
        Draft* draft = draftOf(m_row);
        ++draft->rowsSeen;
        refuseSheetOf(m_row, *draft, *bad);
    }
    refuse(std::move(*bad));
}

void SheetReader::takeRow(std::size_t line, CaseRow& row)
{
    Draft* draft = draftOf(row);
    ++draft->rowsSeen;
    std::uint32_t operation = 0;
    if (!row.operation.empty()) {
        makeKey(m_key, draft->facts.student, row.operation);
        operation = m_operations.intern(m_key) + 1;
    }
    const std::uint32_t procedure = m_procedures.intern(row.procedure);
    const Filing& filing = filingOf(procedure);
    if (row.categories.empty() && !filing.usable) {
        Finding fault = filing.fault;
        fault.line = line;
        refuseSheetOf(row, *draft, fault);
        refuse(std::move(fault));
        return;
    }
    if (!draft->begun) {
        draft->begun = true;
        draft->operation = operation;
        draft->facts.date = row.date;
        draft->facts.marks = row.marks;
        draft->facts.canceled = row.canceled;
        draft->facts.attested = row.attested;
        draft->facts.initialed = row.initialed;
        draft->facts.importedRole = row.importedRole;
        draft->facts.importNotInitialed = m_holdImports && row.importedRole && !row.initialed;
    } else if (const std::optional<Column> column = disagreement(draft->facts, draft->operation, row, operation)) {
        if (!draft->refused) {
            draft->refused = true;
            refuse({line, std::string(name(*column)),
                    "sheet \"" + row.sheet + "\" of " + row.student + " has another " + std::string(name(*column)) +
                        " on another row, so all of it is refused",
                    "make the rows of a sheet equal, or give the second sheet an id of its own"});
        }
        return;
    }
    draft->operation = draft->operation == 0 ? operation : draft->operation;
    if (m_onRow) {
        m_onRow(line, row);
    }
    BookRow bookRow;
    bookRow.procedure = procedure;
    bookRow.number = draft->rowsSeen;
    bookRow.onePathology = row.onePathology;
    bookRow.categories = row.categories.empty() ? filing.categories : row.categories;
    bookRow.countsOftenNotNeeded = filing.countsOftenNotNeeded;
    m_draftRows.push_back({static_cast<std::uint32_t>(draft - m_drafts.data()), bookRow});
    screen(line, row);
}

SheetReader::Draft* SheetReader::draftOf(const CaseRow& row)
{
    const std::uint32_t student = m_studentNames.intern(row.student);
    makeKey(m_key, student, row.sheet);
    const std::uint32_t number = m_sheetKeys.intern(m_key);
    if (number == m_drafts.size()) {
        m_drafts.emplace_back();
        m_drafts.back().facts.student = student;
        m_drafts.back().facts.id = m_sheetKeys.at(number).substr(sizeof student);
    }
    return &m_drafts[number];
}

const SheetReader::Filing& SheetReader::filingOf(std::uint32_t procedure)
{
    if (procedure >= m_filings.size()) {
        m_filings.resize(procedure + 1);
    }
    Filing& filing = m_filings[procedure];
    if (filing.known) {
        return filing;
    }
    filing.known = true;
    const std::vector<const catalogue::Procedure*> found = m_catalogue.byExactName(m_procedures.at(procedure));
    if (found.size() == 1) {
        filing.usable = true;
        filing.categories = found.front()->categories;
        filing.countsOftenNotNeeded = found.front()->countsOftenNotNeeded;
        return filing;
    }
    filing.fault.column = std::string(name(Column::Procedure));
    const std::string text(m_procedures.at(procedure).substr(0, 60));
    if (found.empty()) {
        filing.fault.reason = "the catalogue has no procedure \"" + text + "\"";
        const std::vector<const catalogue::Procedure*> meant = m_catalogue.byShorthand(m_procedures.at(procedure));
        std::vector<std::string> names;
        names.reserve(meant.size());
        for (const catalogue::Procedure* one : meant) {
            names.push_back('"' + one->name + '"');
        }
        filing.fault.mend = meant.empty() ? "write a name from the catalogue, or name its specialty under categories"
                                          : "shorthand is not enough here: write what was done, such as " +
                                                base::listed(names, "or") + ", or name its specialty under categories";
        return filing;
    }
    std::vector<std::string> ids;
    ids.reserve(found.size());
    for (const catalogue::Procedure* candidate : found) {
        ids.push_back(candidate->id);
    }
    filing.fault.reason = '"' + text + "\" is the name of " + base::listed(ids, "and");
    filing.fault.mend = "write one of these ids";
    return filing;
}

void SheetReader::screen(std::size_t line, const CaseRow& row)
{
    screenText(line, Column::Procedure, row.procedure, false);
    screenText(line, Column::Surgeon, row.surgeon, true);
    screenText(line, Column::Site, row.site, false);
    screenText(line, Column::Room, row.room, false);
    screenText(line, Column::Preceptor, row.preceptor, true);
    screenText(line, Column::Credential, row.credential, true);
    screenText(line, Column::Feedback, row.feedback, false);
    screenTime(line, Column::Start, row.start);
    screenTime(line, Column::End, row.end);
}

void SheetReader::screenTime(std::size_t line, Column column, const std::string& time)
{
    const auto digit = [&](std::size_t i) { return time[i] >= '0' && time[i] <= '9'; };
    const bool clock = time.size() == 5 && digit(0) && digit(1) && time[2] == ':' && digit(3) && digit(4) &&
                       time.substr(0, 2) < "24" && time.substr(3) < "60";
    if (!time.empty() && !clock) {
        warn({line, std::string(name(column)), "this is no time of day", "write it as 07:30, 24 hours"});
    }
}

void SheetReader::screenText(std::size_t line, Column column, std::string_view text, bool personColumn)
{
    if (text.empty()) {
        return;
    }
    for (const IdentifierHit& hit : findIdentifiers(text)) {
        if (personColumn && hit.kind == IdentifierKind::Name) {
            continue; // a surgeon or preceptor is named here
        }
        warn({line, std::string(name(column)),
              "character " + std::to_string(hit.offset + 1) + " begins what looks like " +
                  std::string(inWords(hit.kind)),
              "take out everything that can point at a patient"});
    }
}

void SheetReader::refuseSheetOf(const CaseRow& row, Draft& draft, Finding& finding) const
{
    if (row.onePathology || m_wholeSheets) {
        draft.refused = true;
        finding.reason += std::string(row.onePathology ? "; the row is joined, so" : ";") + " all of sheet \"" +
                          row.sheet + "\" is refused";
    }
}

void SheetReader::refuse(Finding finding)
{
    if (m_report.refused.size() == mostRefusals) {
        m_fatal = Finding{finding.line, "", "more than " + std::to_string(mostRefusals) + " rows cannot be used",
                          "check that this is a case-sheet file"};
        return;
    }
    m_report.refused.push_back(std::move(finding));
}

void SheetReader::warn(Finding finding)
{
    if (m_report.warnings.size() == mostWarnings) {
        ++m_report.moreWarnings;
        return;
    }
    m_report.warnings.push_back(std::move(finding));
}

base::Error SheetReader::fileError(const Finding& finding) const
{
    std::string sentence = "Line " + std::to_string(finding.line);
    if (!finding.column.empty()) {
        sentence += ", column " + finding.column;
    }
    return {base::ErrorCode::BadInput, sentence + ": " + finding.reason + "; " + finding.mend + "."};
}

base::Result<SheetReader::Reading> SheetReader::finish()
{
    if (const std::optional<CsvReader::Fault>& fault = m_csv.finish(); fault && !m_fatal) {
        m_fatal = Finding{fault->line, "", fault->reason, fault->mend};
    }
    if (!m_fatal && !m_headerSeen) {
        m_fatal = Finding{1, "", "the file is empty", "begin it with a header row"};
    }
    if (m_fatal) {
        return fileError(*m_fatal);
    }
    std::stable_sort(m_report.refused.begin(), m_report.refused.end(),
                     [](const Finding& a, const Finding& b) { return a.line < b.line; });
    Reading reading;
    reading.report = std::move(m_report);
    arrange(reading.book);
    return reading;
}

void SheetReader::arrange(SheetBook& book)
{
    // Students by name; a student without an accepted sheet is not there.
    std::vector<std::uint32_t> sheetsOfStudent(m_studentNames.size(), 0);
    std::vector<std::uint32_t> rowsOfDraft(m_drafts.size(), 0);
    for (const DraftRow& row : m_draftRows) {
        rowsOfDraft[row.sheet] += m_drafts[row.sheet].refused ? 0 : 1;
    }
    for (std::size_t i = 0; i < m_drafts.size(); ++i) {
        sheetsOfStudent[m_drafts[i].facts.student] += rowsOfDraft[i] > 0 ? 1 : 0;
    }
    std::vector<std::uint32_t> byName;
    for (std::uint32_t student = 0; student < m_studentNames.size(); ++student) {
        if (sheetsOfStudent[student] > 0) {
            byName.push_back(student);
        }
    }
    std::sort(byName.begin(), byName.end(),
              [&](std::uint32_t a, std::uint32_t b) { return m_studentNames.at(a) < m_studentNames.at(b); });
    std::vector<std::uint32_t> nextSheet(m_studentNames.size(), 0);
    std::vector<std::uint32_t> rank(m_studentNames.size(), 0);
    std::uint32_t sheetTotal = 0;
    for (const std::uint32_t student : byName) {
        rank[student] = static_cast<std::uint32_t>(book.m_students.size());
        nextSheet[student] = sheetTotal;
        book.m_students.push_back({m_studentNames.at(student), sheetTotal, sheetsOfStudent[student]});
        sheetTotal += sheetsOfStudent[student];
    }

    // Each student's sheets together, then by date and id.
    std::vector<std::uint32_t> order(sheetTotal);
    for (std::uint32_t i = 0; i < m_drafts.size(); ++i) {
        if (rowsOfDraft[i] > 0) {
            order[nextSheet[m_drafts[i].facts.student]++] = i;
        }
    }
    for (const BookStudent& student : book.m_students) {
        const auto first = order.begin() + student.firstSheet;
        std::sort(first, first + student.sheetCount, [&](std::uint32_t a, std::uint32_t b) {
            const BookSheet& x = m_drafts[a].facts;
            const BookSheet& y = m_drafts[b].facts;
            return std::pair(x.date, x.id) < std::pair(y.date, y.id);
        });
    }

    // Rows behind their sheets, in file order.
    book.m_sheets.reserve(sheetTotal);
    std::vector<std::uint32_t> nextRow(m_drafts.size(), 0);
    std::uint32_t rowTotal = 0;
    for (const std::uint32_t draft : order) {
        BookSheet sheet = m_drafts[draft].facts;
        sheet.student = rank[sheet.student];
        sheet.operation = m_drafts[draft].operation;
        sheet.firstRow = rowTotal;
        sheet.rowCount = rowsOfDraft[draft];
        nextRow[draft] = rowTotal;
        rowTotal += sheet.rowCount;
        book.m_sheets.push_back(sheet);
    }
    book.m_rows.resize(rowTotal);
    for (const DraftRow& row : m_draftRows) {
        if (!m_drafts[row.sheet].refused) {
            book.m_rows[nextRow[row.sheet]++] = row.row;
        }
    }
    book.m_studentNames = std::move(m_studentNames);
    book.m_sheetKeys = std::move(m_sheetKeys);
    book.m_procedures = std::move(m_procedures);
    m_drafts = {};
    m_draftRows = {};
}

} // namespace peelpack::sheet
