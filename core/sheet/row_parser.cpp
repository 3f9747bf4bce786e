#include "core/sheet/row_parser.h"

#include "core/base/text.h"
#include "core/catalogue/slips.h"
#include "core/sheet/csv.h"

#include <algorithm>
#include <charconv>

namespace peelpack::sheet {
namespace {

constexpr std::array<std::string_view, columnCount> columnNames{
    "sheet",         "date",      "student",  "procedure", "categories", "verify",  "setup",     "counts",
    "pass",          "technique", "sponge",   "suction",   "cut",        "retract", "camera",    "operation",
    "one_pathology", "surgeon",   "site",     "room",      "start",      "end",     "preceptor", "credential",
    "feedback",      "canceled",  "attested", "initialed", "imported",   "role"};

std::string quoted(std::string_view text)
{
    constexpr std::size_t most = 40;
    return '"' + std::string(text.substr(0, most)) + (text.size() > most ? "...\"" : "\"");
}

Finding finding(std::size_t line, Column column, std::string reason, std::string mend)
{
    return {line, std::string(name(column)), std::move(reason), std::move(mend)};
}

bool isAscii(std::string_view text)
{
    return std::all_of(text.begin(), text.end(), [](char c) { return static_cast<unsigned char>(c) < 0x80; });
}

std::optional<std::uint32_t> wholeNumber(std::string_view text)
{
    std::uint32_t value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    const bool all = error == std::errc() && end == text.data() + text.size();
    return all ? std::optional(value) : std::nullopt;
}

/// "Y" is yes, "N" and the empty cell are no.
std::optional<bool> yesCell(std::string_view text)
{
    if (text == "Y") {
        return true;
    }
    return text.empty() || text == "N" ? std::optional(false) : std::nullopt;
}

/// The column that was likely meant: one that differs in case only, or by a slip of typing in a long word. A column
/// that is passed over for a slip would change what counts ("cancelled").
std::string_view almostAColumn(std::string_view heading)
{
    const std::string folded = base::foldCaseAndSpaces(heading);
    for (const std::string_view column : columnNames) {
        if (catalogue::slipsBetween(folded, column, false, catalogue::slipsAllowed(column.size())) <=
            catalogue::slipsAllowed(column.size())) {
            return column;
        }
    }
    return {};
}

std::string joinedNames(const std::vector<std::string_view>& names)
{
    return base::listed(std::vector<std::string>(names.begin(), names.end()), "and");
}

} // namespace

std::string_view name(Column column)
{
    return columnNames[static_cast<std::size_t>(column)];
}

std::optional<Finding> RowParser::readHeader(std::size_t line, std::span<const std::string_view> fields)
{
    m_place.fill(absent);
    m_width = fields.size();
    for (std::size_t i = 0; i < fields.size(); ++i) {
        const std::string_view heading = base::trimmed(fields[i]);
        const auto found = std::find(columnNames.begin(), columnNames.end(), heading);
        if (found == columnNames.end()) {
            if (const std::string_view meant = almostAColumn(heading); !meant.empty()) {
                return Finding{line, std::string(heading), "this is almost the column " + std::string(meant),
                               "write it as " + std::string(meant) + ", or rename it if it is something else"};
            }
            m_unknown.emplace_back(heading);
            continue;
        }
        std::size_t& place = m_place[static_cast<std::size_t>(found - columnNames.begin())];
        if (place != absent) {
            return Finding{line, std::string(heading), "the column is there twice", "keep one of the two"};
        }
        place = i;
    }
    if (fields.size() == 1) {
        for (const auto& [separator, word] :
             {std::pair{';', "semicolons"}, std::pair{'\t', "tabs"}, std::pair{'|', "vertical bars"}}) {
            if (fields[0].find(separator) != std::string_view::npos) {
                return Finding{line, "", std::string("the columns are separated by ") + word,
                               "save the file with commas between the columns"};
            }
        }
    }
    return lackingColumns(line);
}

std::optional<Finding> RowParser::lackingColumns(std::size_t line)
{
    std::vector<std::string_view> missing;
    for (const Column column : {Column::Sheet, Column::Date, Column::Student, Column::Procedure}) {
        if (!has(column)) {
            missing.push_back(name(column));
        }
    }
    std::vector<std::string_view> missingMarks;
    for (const Skill skill : allSkills) {
        if (!has(columnOf(skill))) {
            missingMarks.push_back(name(columnOf(skill)));
        }
    }
    // A paper log carries no marks: then all ten columns may be away.
    std::string_view mend = "begin the file with a header row that names every column";
    const bool marksAway = missingMarks.size() == skillCount;
    m_everyRowImported = m_expectsPaperLog && marksAway && has(Column::Role) && !has(Column::Imported);
    if (marksAway && !m_everyRowImported && !has(Column::Imported) && (m_expectsPaperLog || has(Column::Role))) {
        missing.push_back(name(m_expectsPaperLog ? Column::Role : Column::Imported));
        mend = m_expectsPaperLog
                   ? "a paper log needs no marks: write first, second or observed on every row under role"
                   : "a paper log needs no marks: write Y on every row under imported, and its role under role";
    } else if (!marksAway || !(m_everyRowImported || has(Column::Imported))) {
        missing.insert(missing.end(), missingMarks.begin(), missingMarks.end());
    }
    if (missing.empty()) {
        return std::nullopt;
    }
    return Finding{line, std::string(missing.front()),
                   "the header row lacks " + std::string(missing.size() == 1 ? "the column " : "the columns ") +
                       joinedNames(missing),
                   std::string(mend)};
}

std::string_view RowParser::cell(std::span<const std::string_view> fields, Column column) const
{
    const std::size_t place = m_place[static_cast<std::size_t>(column)];
    return place == absent ? std::string_view() : base::trimmed(undefused(fields[place]));
}

void RowParser::assignText(std::string& target, std::string_view value) const
{
    if (m_normalize && !isAscii(value)) {
        target = m_normalize(value);
    } else {
        target.assign(value);
    }
}

std::optional<Finding> RowParser::readRow(std::size_t line, std::span<const std::string_view> fields,
                                          CaseRow& row) const
{
    row.sheet.clear();
    row.student.clear();
    row.onePathology.reset();
    if (fields.size() != m_width) {
        return Finding{line, "",
                       "the row has " + base::counted(fields.size(), "cell", "cells") + " and the header has " +
                           std::to_string(m_width),
                       "add or remove commas; quote a text that contains one"};
    }
    if (std::optional<Finding> bad = readKeys(line, fields, row)) {
        return bad;
    }
    if (std::optional<Finding> bad = readMarks(line, fields, row)) {
        return bad;
    }
    if (std::optional<Finding> bad = readCategories(line, cell(fields, Column::Categories), row)) {
        return bad;
    }
    assignText(row.operation, cell(fields, Column::Operation));
    assignText(row.surgeon, cell(fields, Column::Surgeon));
    assignText(row.site, cell(fields, Column::Site));
    assignText(row.room, cell(fields, Column::Room));
    assignText(row.start, cell(fields, Column::Start));
    assignText(row.end, cell(fields, Column::End));
    assignText(row.preceptor, cell(fields, Column::Preceptor));
    assignText(row.credential, cell(fields, Column::Credential));
    assignText(row.feedback, cell(fields, Column::Feedback));
    return readStanding(line, fields, row);
}

std::optional<Finding> RowParser::readKeys(std::size_t line, std::span<const std::string_view> fields,
                                           CaseRow& row) const
{
    assignText(row.sheet, cell(fields, Column::Sheet));
    assignText(row.student, cell(fields, Column::Student));
    const std::string_view pathology = cell(fields, Column::OnePathology);
    if (!pathology.empty()) {
        row.onePathology = wholeNumber(pathology).value_or(0);
    }
    if (row.sheet.empty()) {
        return finding(line, Column::Sheet, "the sheet has no id", "give every sheet of the student an id of its own");
    }
    if (row.student.empty()) {
        return finding(line, Column::Student, "the row names no student", "write the student's name or number");
    }
    if (!pathology.empty() && !wholeNumber(pathology)) {
        return finding(line, Column::OnePathology, quoted(pathology) + " is no whole number",
                       "give the rows that are one pathology the same number, such as 1");
    }
    const std::string_view date = cell(fields, Column::Date);
    const std::optional<base::Date> day = base::Date::fromIso(date);
    if (!day) {
        return finding(line, Column::Date,
                       date.empty()
                           ? "there is no date"
                           : quoted(date) + " is no date as 2026-03-12 is, or no day of the years 1900 to 2199",
                       "write year, month and day of the case, as in 2026-03-12");
    }
    row.date = *day;
    assignText(row.procedure, cell(fields, Column::Procedure));
    if (row.procedure.empty()) {
        return finding(line, Column::Procedure, "there is no procedure", "write the procedure performed");
    }
    return std::nullopt;
}

std::optional<Finding> RowParser::readMarks(std::size_t line, std::span<const std::string_view> fields,
                                            CaseRow& row) const
{
    row.marks = Marks();
    for (const Skill skill : allSkills) {
        const std::string_view text = cell(fields, columnOf(skill));
        const std::optional<Mark> mark = markFromCell(text);
        if (!mark) {
            return finding(line, columnOf(skill), quoted(text) + " is no mark", "write Y, N or NA, or leave it empty");
        }
        row.marks.set(skill, *mark);
    }
    return std::nullopt;
}

std::optional<Finding> RowParser::readCategories(std::size_t line, std::string_view value, CaseRow& row) const
{
    row.categories = {};
    if (value.empty()) {
        return std::nullopt;
    }
    for (std::size_t start = 0; start <= value.size();) {
        const std::size_t bar = std::min(value.find('|', start), value.size());
        const std::string_view piece = base::trimmed(value.substr(start, bar - start));
        start = bar + 1;
        const std::optional<catalogue::Category> category = catalogue::categoryFromId(piece);
        if (!category) {
            return finding(line, Column::Categories, quoted(piece) + " is no category",
                           "write ids such as general or eye, the logged one first, with | between");
        }
        if (row.categories.contains(*category)) {
            return finding(line, Column::Categories, quoted(piece) + " is listed twice", "list each category once");
        }
        row.categories.add(*category);
    }
    for (const catalogue::Category category : row.categories) {
        if (catalogue::isApart(category) && row.categories.size() > 1) {
            return finding(line, Column::Categories, quoted(catalogue::id(category)) + " stands alone",
                           "log the procedure under " + std::string(catalogue::id(category)) +
                               " only, or under the specialties only");
        }
    }
    return std::nullopt;
}

std::optional<Finding> RowParser::readStanding(std::size_t line, std::span<const std::string_view> fields,
                                               CaseRow& row) const
{
    const std::string_view canceled = cell(fields, Column::Canceled);
    if (const std::optional<bool> yes = yesCell(canceled)) {
        row.canceled = *yes;
    } else {
        return finding(line, Column::Canceled, quoted(canceled) + " is neither Y nor empty",
                       "write Y for a case canceled before incision, else leave it empty");
    }
    const std::string_view attested = cell(fields, Column::Attested);
    if (const std::optional<Strength> strength = strengthFromId(attested)) {
        row.attested = *strength;
    } else {
        return finding(line, Column::Attested, quoted(attested) + " is no way of signing",
                       "write own-phone, card, card-new, drawn or paper, or leave it empty");
    }
    const std::string_view initialed = cell(fields, Column::Initialed);
    row.initialed.reset();
    if (!initialed.empty()) {
        row.initialed = base::Date::fromIso(initialed);
        if (!row.initialed) {
            return finding(line, Column::Initialed, quoted(initialed) + " is no day of the calendar",
                           "write the date as 2026-03-12, or leave it empty");
        }
    }
    return readImport(line, fields, row);
}

std::optional<Finding> RowParser::readImport(std::size_t line, std::span<const std::string_view> fields,
                                             CaseRow& row) const
{
    const std::string_view importedCell = m_everyRowImported ? "Y" : cell(fields, Column::Imported);
    const std::optional<bool> imported = yesCell(importedCell);
    if (!imported) {
        return finding(line, Column::Imported, quoted(importedCell) + " is neither Y nor empty",
                       "write Y for a row from a paper log, else leave it empty");
    }
    const std::string_view role = cell(fields, Column::Role);
    row.importedRole.reset();
    if (!*imported) {
        if (!role.empty()) {
            return finding(line, Column::Role, "the role follows from the marks and is not written",
                           "leave it empty, or write Y under imported for a row from a paper log");
        }
        return std::nullopt;
    }
    row.importedRole = roleFromId(role);
    if (!row.importedRole) {
        return finding(line, Column::Role,
                       role.empty() ? "a row from a paper log needs its role" : quoted(role) + " is no role",
                       "write first, second or observed");
    }
    if (!row.marks.none()) {
        return finding(line, Column::Imported, "a row from a paper log carries no marks",
                       "empty the ten marks, or empty imported and role");
    }
    return std::nullopt;
}

} // namespace peelpack::sheet
