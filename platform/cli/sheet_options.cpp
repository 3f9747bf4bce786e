#include "platform/cli/sheet_options.h"

#include "core/base/text.h"
#include "core/sheet/csv.h"
#include "core/sheet/identifiers.h"
#include "core/sheet/row_parser.h"
#include "platform/cli/output.h"
#include "platform/files/text_file.h"
#include "platform/files/time_of_day.h"
#include "platform/session/sheets.h"

#include <algorithm>
#include <array>

namespace peelpack::cli {
namespace {

base::Error usage(std::string sentence)
{
    return {base::ErrorCode::BadUsage, std::move(sentence)};
}

/// "Y", "N", "A" or "NA".
std::optional<sheet::Mark> markOf(std::string_view text)
{
    if (text == "A") {
        return sheet::Mark::NotApplicable;
    }
    const std::optional<sheet::Mark> mark = sheet::markFromCell(text);
    return mark == sheet::Mark::Unmarked ? std::nullopt : mark;
}

base::Result<journal::SkillMark> oneMark(const std::string& text)
{
    const std::size_t equals = std::min(text.find('='), text.size());
    const std::size_t colon = std::min(text.find(':', equals), text.size());
    const auto skill = sheet::skillFromColumn(text.substr(0, equals));
    const auto mark = markOf(std::string_view(text).substr(std::min(equals + 1, text.size()), colon - equals - 1));
    std::string why = colon == text.size() ? std::string() : files::normalized(text.substr(colon + 1));
    if (!skill || !mark || (!why.empty() && *mark != sheet::Mark::NotApplicable)) {
        return usage(
            "--mark takes a skill and Y, N or NA, such as counts=NA:\"no count sheet for this case\"; the skills "
            "are verify, setup, counts, pass, technique, sponge, suction, cut, retract and camera.");
    }
    return journal::SkillMark{*skill, *mark, std::move(why)};
}

journal::Draft draftOf(const sheet::CaseRow& row)
{
    journal::Draft draft;
    draft.procedures = {row.procedure};
    draft.head = session::headOfRow(row);
    for (const sheet::Skill skill : sheet::allSkills) {
        if (row.marks.of(skill) != sheet::Mark::Unmarked) {
            draft.marks.push_back({skill, row.marks.of(skill), {}});
        }
    }
    return draft;
}

std::string placeOf(const std::string& file, std::size_t line, const std::string& column = {})
{
    return file + ", line " + std::to_string(line) + (column.empty() ? "" : ", column " + column) + ": ";
}

} // namespace

void setMark(std::vector<journal::SkillMark>& marks, journal::SkillMark mark)
{
    std::erase_if(marks, [&](const journal::SkillMark& other) { return other.skill == mark.skill; });
    const auto place = std::find_if(marks.begin(), marks.end(),
                                    [&](const journal::SkillMark& other) { return other.skill > mark.skill; });
    marks.insert(place, std::move(mark));
}

std::vector<OptionSpec> headOptions()
{
    return {{"procedure", "TEXT", "as performed; again for a second procedure", true},
            {"date", "DATE", "day of the operation"},
            {"surgeon", "NAME", "who operated"},
            {"site", "NAME", "where"},
            {"room", "TEXT", "which room"},
            {"start", "HH:MM", "when it began"},
            {"end", "HH:MM", "when it ended"},
            {"canceled", "", "canceled before incision"}};
}

std::vector<OptionSpec> markOptions()
{
    return {{"marks", "LETTERS", "ten marks in the order of the skills: Y, N, A (N/A) or - (not seen)"},
            {"mark", "SKILL=MARK", "one mark: Y, N, or NA:why", true}};
}

std::vector<OptionSpec> choiceOptions()
{
    return {{"under", "CATEGORY", "where the first procedure counts; again for the second and so on", true},
            {"one-pathology", "", "all procedures are one case (biopsy and excision of the same tumor)"}};
}

bool changesHead(const Arguments& arguments)
{
    constexpr std::array options{"date", "surgeon", "site", "room", "start", "end", "canceled"};
    return std::any_of(options.begin(), options.end(), [&](const char* option) { return arguments.has(option); });
}

base::Result<journal::Head> headFrom(const Arguments& arguments, const journal::Head& before)
{
    journal::Head head = before;
    const base::Result<std::optional<base::Date>> date = dateOption(arguments, "date");
    if (!date) {
        return date.error();
    }
    head.date = date.value().value_or(head.date);
    const std::array<std::pair<const char*, std::string*>, 3> texts{
        {{"surgeon", &head.surgeon}, {"site", &head.site}, {"room", &head.room}}};
    for (const auto& [option, text] : texts) {
        if (arguments.has(option)) {
            *text = typed(arguments, option);
        }
    }
    const std::array<std::pair<const char*, journal::MinuteOfDay*>, 2> times{
        {{"start", &head.start}, {"end", &head.end}}};
    for (const auto& [option, minute] : times) {
        if (const auto given = arguments.value(option)) {
            const auto read = files::minuteOf(*given);
            if (!read) {
                return usage("--" + std::string(option) + " takes a time of day such as 07:30.");
            }
            *minute = *read;
        }
    }
    head.canceled = head.canceled || arguments.has("canceled");
    return head;
}

std::vector<std::string> proceduresFrom(const Arguments& arguments, const std::vector<std::string>& before)
{
    std::vector<std::string> procedures;
    procedures.reserve(arguments.list("procedure").size());
    for (const std::string& procedure : arguments.list("procedure")) {
        procedures.push_back(files::normalized(procedure));
    }
    return procedures.empty() ? before : procedures;
}

base::Result<std::vector<journal::SkillMark>> marksFrom(const Arguments& arguments)
{
    std::vector<journal::SkillMark> marks;
    if (const auto letters = arguments.value("marks")) {
        const base::Error wrong = usage("--marks takes ten letters, one a skill: Y, N, A for N/A, - for not seen.");
        if (letters->size() != sheet::skillCount) {
            return wrong;
        }
        for (std::size_t i = 0; i < letters->size(); ++i) {
            const auto mark = markOf(std::string_view(*letters).substr(i, 1));
            if (!mark && (*letters)[i] != '-') {
                return wrong;
            }
            if (mark) {
                setMark(marks, {sheet::allSkills.at(i), *mark, {}});
            }
        }
    }
    for (const std::string& text : arguments.list("mark")) {
        const base::Result<journal::SkillMark> mark = oneMark(text);
        if (!mark) {
            return mark.error();
        }
        setMark(marks, mark.value());
    }
    return marks;
}

base::Result<std::vector<journal::Choice>> choicesFrom(const Arguments& arguments, std::size_t procedures)
{
    const std::vector<std::string>& under = arguments.list("under");
    if (under.empty() || under.size() > procedures) {
        return usage("Give --under once for each procedure of the sheet, in their order.");
    }
    std::vector<journal::Choice> choices;
    for (const std::string& category : under) {
        if (!catalogue::categoryFromId(category)) {
            return usage(
                "--under takes a category's id, such as general, eye or ear-nose-throat; \"find\" shows where a "
                "procedure is filed.");
        }
        const auto joined = static_cast<std::uint8_t>(arguments.has("one-pathology") ? 1 : 0);
        choices.push_back({static_cast<std::uint8_t>(choices.size()), category, joined});
    }
    return choices;
}

OptionSpec checkedOption()
{
    return {"checked", "", "what looks like a patient identifier was looked at and is none"};
}

base::Result<bool> screened(const Arguments& arguments, const std::vector<std::string>& texts)
{
    for (const std::string& text : texts) {
        const std::vector<sheet::IdentifierHit> hits = sheet::findIdentifiers(text);
        if (!hits.empty() && !arguments.has("checked")) {
            return base::Error{base::ErrorCode::BadInput,
                               "This looks like " + std::string(sheet::inWords(hits.front().kind)) +
                                   ". No patient identifiers belong here, and what is written stays; nothing was "
                                   "written. If it is none, say so with --checked."};
        }
    }
    return true;
}

std::string marksInLetters(const sheet::Marks& marks)
{
    std::string letters;
    for (const sheet::Skill skill : sheet::allSkills) {
        letters += "-YNA"[static_cast<std::size_t>(marks.of(skill))];
    }
    return letters;
}

base::Result<std::vector<journal::Draft>> draftsFromCsv(const std::string& file)
{
    sheet::RowParser parser(files::normalized);
    std::vector<std::pair<std::string, journal::Draft>> drafts;
    std::optional<base::Error> wrong;
    bool headerSeen = false;
    sheet::CsvReader csv([&](std::size_t line, std::span<const std::string_view> fields) {
        if (wrong) {
            return;
        }
        sheet::CaseRow row;
        const std::optional<sheet::Finding> finding =
            headerSeen ? parser.readRow(line, fields, row) : parser.readHeader(line, fields);
        if (finding) {
            wrong = base::Error{base::ErrorCode::BadInput,
                                placeOf(file, line, finding->column) + finding->reason + "; " + finding->mend + "."};
        } else if (headerSeen) {
            const auto same =
                std::find_if(drafts.begin(), drafts.end(), [&](const auto& item) { return item.first == row.sheet; });
            const journal::Draft draft = draftOf(row);
            if (same == drafts.end()) {
                drafts.emplace_back(row.sheet, draft);
            } else if (same->second.head != draft.head || same->second.marks != draft.marks) {
                wrong = base::Error{base::ErrorCode::BadInput,
                                    placeOf(file, line) + "head or marks differ from the sheet's first row."};
            } else {
                same->second.procedures.push_back(row.procedure);
            }
        }
        headerSeen = true;
    });
    std::optional<sheet::CsvReader::Fault> fault;
    const base::Result<std::size_t> read = files::readPieces(file, [&](std::string_view piece) {
        fault = csv.feed(piece);
        return !fault && !wrong;
    });
    if (!read) {
        return read.error();
    }
    if (!fault && !wrong) {
        fault = csv.finish();
    }
    if (fault) {
        return base::Error{base::ErrorCode::BadInput,
                           placeOf(file, fault->line) + fault->reason + "; " + fault->mend + "."};
    }
    if (wrong) {
        return *wrong;
    }
    std::vector<journal::Draft> result;
    result.reserve(drafts.size());
    for (auto& [sheet, draft] : drafts) {
        result.push_back(std::move(draft));
    }
    return result;
}

} // namespace peelpack::cli
