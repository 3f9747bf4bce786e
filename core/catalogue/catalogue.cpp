#include "core/catalogue/catalogue.h"

#include "core/base/text.h"

#include <algorithm>
#include <array>
#include <optional>

namespace peelpack::catalogue {
namespace {

enum Column : std::size_t { Id, Name, Synonyms, Shorthand, Categories, Flags, Sources, ColumnCount };

constexpr std::array<std::string_view, ColumnCount> columnNames{"id",         "name",  "synonyms", "shorthand",
                                                                "categories", "flags", "sources"};
constexpr std::string_view emptied = "-";

base::Error fault(std::size_t line, Column column, const std::string& what)
{
    return {base::ErrorCode::BadInput,
            "Line " + std::to_string(line) + ", column " + std::string(columnNames[column]) + ": " + what};
}

std::vector<std::string> listCell(std::string_view cell)
{
    std::vector<std::string> items;
    for (const std::string_view piece : base::split(cell, '|')) {
        if (const std::string_view item = base::trimmed(piece); !item.empty()) {
            items.emplace_back(item);
        }
    }
    return items;
}

bool isId(std::string_view text)
{
    return !text.empty() && text.size() <= 64 && std::all_of(text.begin(), text.end(), [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
    });
}

struct FlagCells {
    bool endoscopy = false;
    bool delivery = false;
    bool counts = false;
};

base::Result<FlagCells> readFlags(std::string_view cell, std::size_t line)
{
    FlagCells flags;
    for (const std::string& flag : listCell(cell)) {
        if (flag == "diagnostic-endoscopy") {
            flags.endoscopy = true;
        } else if (flag == "vaginal-delivery") {
            flags.delivery = true;
        } else if (flag == "counts-often-not-needed") {
            flags.counts = true;
        } else {
            return fault(line, Flags,
                         '"' + flag +
                             "\" is no flag; use diagnostic-endoscopy, vaginal-delivery or "
                             "counts-often-not-needed.");
        }
    }
    return flags;
}

base::Result<CategoryList> readCategories(std::string_view cell, std::size_t line)
{
    CategoryList list;
    for (const std::string& item : listCell(cell)) {
        const std::optional<Category> category = categoryFromId(item);
        if (!category) {
            return fault(line, Categories, '"' + item + "\" is no category; use an id such as general or orthopedics.");
        }
        if (list.contains(*category)) {
            return fault(line, Categories, '"' + item + "\" is listed twice; list it once.");
        }
        list.add(*category);
    }
    if (list.empty()) {
        return fault(line, Categories, "a procedure needs at least one category; add its id.");
    }
    for (const Category category : list) {
        if (isApart(category) && list.size() > 1) {
            return fault(line, Categories,
                         '"' + std::string(id(category)) + "\" stands alone; remove the other categories.");
        }
    }
    return list;
}

/// Flags and categories must tell the same story.
std::optional<base::Error> flagsAgainstCategories(const FlagCells& flags, const CategoryList& categories,
                                                  std::size_t line)
{
    if (flags.endoscopy != categories.contains(Category::DiagnosticEndoscopy)) {
        return fault(line, Flags, "the flag and the category diagnostic-endoscopy go together; set both or neither.");
    }
    if (flags.delivery != categories.contains(Category::LaborDelivery)) {
        return fault(line, Flags,
                     "the flag vaginal-delivery and the category labor-delivery go together; set both or neither.");
    }
    return std::nullopt;
}

/// The cell that holds: the row's own, or for an overlay row whose cell is empty, nothing (keep).
struct Cells {
    std::array<std::string_view, ColumnCount> cell;
    bool keepEmpty = false;

    [[nodiscard]] bool given(Column column) const { return !keepEmpty || !cell[column].empty(); }
    [[nodiscard]] std::string_view value(Column column) const
    {
        return keepEmpty && cell[column] == emptied ? std::string_view() : cell[column];
    }
};

std::string flagText(const Procedure& procedure)
{
    std::string text;
    if (procedure.isDiagnosticEndoscopy()) {
        text += "diagnostic-endoscopy|";
    }
    if (procedure.isVaginalDelivery()) {
        text += "vaginal-delivery|";
    }
    return procedure.countsOftenNotNeeded ? text + "counts-often-not-needed" : text;
}

/// Writes the row's cells into the procedure.
std::optional<base::Error> apply(const Cells& cells, std::size_t line, Procedure& procedure)
{
    const std::string flagsBefore = flagText(procedure);
    if (cells.given(Name)) {
        procedure.name = cells.value(Name);
        if (procedure.name.empty()) {
            return fault(line, Name, "a procedure needs a name; write it as people say it.");
        }
    }
    if (cells.given(Synonyms)) {
        procedure.synonyms = listCell(cells.value(Synonyms));
    }
    if (cells.given(Shorthand)) {
        procedure.shorthand = listCell(cells.value(Shorthand));
    }
    if (cells.given(Sources)) {
        procedure.sources = listCell(cells.value(Sources));
    }
    if (cells.given(Categories)) {
        base::Result<CategoryList> categories = readCategories(cells.value(Categories), line);
        if (!categories) {
            return categories.error();
        }
        procedure.categories = categories.value();
    }
    const base::Result<FlagCells> flags =
        readFlags(cells.given(Flags) ? cells.value(Flags) : std::string_view(flagsBefore), line);
    if (!flags) {
        return flags.error();
    }
    procedure.countsOftenNotNeeded = flags.value().counts;
    return flagsAgainstCategories(flags.value(), procedure.categories, line);
}

/// Where each known column stands in the header.
base::Result<std::array<std::size_t, ColumnCount>> readHeader(std::string_view header)
{
    std::array<std::size_t, ColumnCount> places{};
    const std::vector<std::string_view> names = base::split(header, '\t');
    for (std::size_t column = 0; column < ColumnCount; ++column) {
        const auto found = std::find(names.begin(), names.end(), columnNames[column]);
        if (found == names.end()) {
            return base::Error{
                base::ErrorCode::BadInput,
                "Line 1: the column " + std::string(columnNames[column]) +
                    " is missing; the header row is: id name synonyms shorthand categories flags sources, "
                    "separated by tabs."};
        }
        places[column] = static_cast<std::size_t>(found - names.begin());
    }
    return places;
}

} // namespace

base::Result<Catalogue> Catalogue::fromTsv(std::string_view text)
{
    return Catalogue().readRows(text, false);
}

base::Result<Catalogue> Catalogue::withOverlay(std::string_view text) const
{
    return Catalogue(*this).readRows(text, true);
}

base::Result<Catalogue> Catalogue::readRows(std::string_view text, bool overlay)
{
    if (base::firstInvalidUtf8(text) != std::string_view::npos) {
        return base::Error{base::ErrorCode::BadInput, "The table is not UTF-8; save it as UTF-8 text."};
    }
    constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";
    if (text.starts_with(byteOrderMark)) {
        text.remove_prefix(byteOrderMark.size());
    }
    std::vector<std::string_view> lines = base::split(text, '\n');
    for (std::string_view& line : lines) {
        if (line.ends_with('\r')) {
            line.remove_suffix(1);
        }
    }
    const base::Result<std::array<std::size_t, ColumnCount>> header = readHeader(lines.front());
    if (!header) {
        return header.error();
    }
    const std::array<std::size_t, ColumnCount>& places = header.value();
    const std::size_t width = base::split(lines.front(), '\t').size();
    std::unordered_map<std::string, std::size_t> lineOfId;
    for (std::size_t number = 2; number <= lines.size(); ++number) {
        const std::string_view line = lines[number - 1];
        if (line.empty()) {
            continue;
        }
        const std::vector<std::string_view> pieces = base::split(line, '\t');
        if (pieces.size() != width) {
            return base::Error{base::ErrorCode::BadInput, "Line " + std::to_string(number) + ": there are " +
                                                              base::counted(pieces.size(), "cell", "cells") +
                                                              " and the header has " + std::to_string(width) +
                                                              "; add or remove tabs."};
        }
        Cells cells;
        for (std::size_t column = 0; column < ColumnCount; ++column) {
            cells.cell[column] = base::trimmed(pieces[places[column]]);
        }
        const std::string rowId(cells.cell[Id]);
        if (!isId(rowId)) {
            return fault(number, Id, "an id has 1 to 64 of a-z, 0-9 and '-'; this is \"" + rowId + "\".");
        }
        if (const auto [at, fresh] = lineOfId.emplace(rowId, number); !fresh) {
            return fault(number, Id,
                         '"' + rowId + "\" is already on line " + std::to_string(at->second) + "; choose another id.");
        }
        const auto known = m_byId.find(rowId);
        cells.keepEmpty = overlay && known != m_byId.end();
        Procedure fresh;
        fresh.id = rowId;
        Procedure& target = cells.keepEmpty ? m_procedures[known->second] : fresh;
        if (std::optional<base::Error> error = apply(cells, number, target)) {
            return *error;
        }
        if (!cells.keepEmpty) {
            m_procedures.push_back(std::move(fresh));
        }
    }
    index();
    return std::move(*this);
}

void Catalogue::index()
{
    m_byId.clear();
    m_byFoldedName.clear();
    m_byFoldedShorthand.clear();
    for (std::size_t i = 0; i < m_procedures.size(); ++i) {
        const Procedure& procedure = m_procedures[i];
        m_byId.emplace(procedure.id, i);
        const auto add = [&](PlacesByText& byText, std::string_view text) {
            std::vector<std::size_t>& places = byText[base::foldCaseAndSpaces(text)];
            if (places.empty() || places.back() != i) {
                places.push_back(i);
            }
        };
        add(m_byFoldedName, procedure.id);
        add(m_byFoldedName, procedure.name);
        for (const std::string& synonym : procedure.synonyms) {
            add(m_byFoldedName, synonym);
        }
        for (const std::string& shorthand : procedure.shorthand) {
            add(m_byFoldedShorthand, shorthand);
        }
    }
}

const Procedure* Catalogue::byId(std::string_view id) const
{
    const auto found = m_byId.find(std::string(id));
    return found == m_byId.end() ? nullptr : &m_procedures[found->second];
}

std::vector<const Procedure*> Catalogue::byExactName(std::string_view text) const
{
    return lookUp(m_byFoldedName, text);
}

std::vector<const Procedure*> Catalogue::byShorthand(std::string_view text) const
{
    return lookUp(m_byFoldedShorthand, text);
}

std::vector<const Procedure*> Catalogue::lookUp(const PlacesByText& places, std::string_view text) const
{
    std::vector<const Procedure*> out;
    if (const auto found = places.find(base::foldCaseAndSpaces(text)); found != places.end()) {
        for (const std::size_t place : found->second) {
            out.push_back(&m_procedures[place]);
        }
    }
    return out;
}

} // namespace peelpack::catalogue
