#include "platform/session/paper_log.h"

#include "core/base/text.h"
#include "core/sheet/identifiers.h"
#include "platform/files/text_file.h"
#include "platform/session/directory.h"

#include <algorithm>
#include <numeric>

namespace peelpack::session {
namespace {

using sheet::CaseRow;
using sheet::Column;
using sheet::Finding;

Finding finding(std::size_t line, Column column, std::string reason, std::string mend)
{
    return {line, std::string(sheet::name(column)), std::move(reason), std::move(mend)};
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

/// Students by the name that a row writes.
class Named {
public:
    Named(const Directory& directory, const keys::Id* only) : m_only(only)
    {
        for (const Person& person : directory.people()) {
            if (person.role == journal::Role::Student) {
                m_students.push_back(&person);
            }
        }
    }

    [[nodiscard]] const std::vector<const Person*>& students() const { return m_students; }

    struct Found {
        const Person* student = nullptr;
        Finding bad; ///< why it is nobody
        bool several = false;
    };
    [[nodiscard]] Found of(const PaperLogSheet& sheet) const
    {
        const std::string folded = base::foldCaseAndSpaces(sheet.student);
        Found found;
        for (const Person* student : m_students) {
            if (base::foldCaseAndSpaces(student->name) == folded && (m_only == nullptr || student->id == *m_only)) {
                found.several = found.student != nullptr;
                found.student = student;
                if (found.several) {
                    break;
                }
            }
        }
        if (found.several) {
            found.student = nullptr;
            found.bad = finding(sheet.line, Column::Student, "more than one student has this name",
                                "give the rows of each a file of their own, and say whose it is");
        } else if (found.student == nullptr) {
            found.bad = m_only == nullptr
                            ? finding(sheet.line, Column::Student, "no student of this name is enrolled",
                                      "write the name as it was enrolled")
                            : finding(sheet.line, Column::Student, "this is not the student whose log it is",
                                      "write the name as it was enrolled, or take the rows out");
        }
        return found;
    }

private:
    const keys::Id* m_only;
    std::vector<const Person*> m_students;
};

std::size_t sum(const std::vector<ImportFor>& students, std::vector<PaperLogSheet> ImportFor::*which)
{
    return std::accumulate(students.begin(), students.end(), std::size_t{0},
                           [&](std::size_t before, const ImportFor& one) { return before + (one.*which).size(); });
}

} // namespace

PaperLogReader::PaperLogReader(const catalogue::Catalogue& catalogue, bool checked)
    : m_checked(checked), m_reader(catalogue, files::normalized)
{
    m_reader.expectPaperLog();
    m_reader.wholeSheetsOnly();
    m_reader.watch([this](std::size_t line, const CaseRow& row) {
        m_rows[{row.student, row.sheet}].push_back({line, row});
    });
}

/// What looks like a patient identifier; surgeon and preceptor are named here.
std::optional<Finding> PaperLogReader::identifierIn(const PlacedRow& placed)
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
                               "take it out; what is imported stays");
            }
        }
    }
    return std::nullopt;
}

/// Why a row that is well formed is not imported.
std::optional<Finding> PaperLogReader::notImported(const PlacedRow& placed)
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
    return std::nullopt;
}

PaperSheet PaperLogReader::paperSheet(const std::vector<PlacedRow>& rows, std::span<const sheet::BookRow> filed)
{
    const CaseRow& first = rows.front().row;
    PaperSheet paper;
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

base::Result<PaperLog> PaperLogReader::finish(const std::string& source)
{
    base::Result<sheet::SheetReader::Reading> finished = m_reader.finish();
    if (!finished) {
        return finished.error();
    }
    sheet::SheetReader::Reading reading = std::move(finished).value();
    PaperLog log{{}, std::move(reading.report), false};
    const auto refuse = [&](Finding found) {
        std::erase_if(log.report.warnings, [&](const Finding& warning) {
            return warning.line == found.line && warning.column == found.column;
        });
        log.report.refused.push_back(std::move(found));
    };
    for (const sheet::BookStudent& student : reading.book.students()) {
        for (const sheet::BookSheet& sheet : reading.book.sheetsOf(student)) {
            const std::vector<PlacedRow>& placed = m_rows.at({std::string(student.name), std::string(sheet.id)});
            std::optional<Finding> bad;
            for (const PlacedRow& row : placed) {
                bad = bad ? bad : notImported(row);
                if (!bad && !m_checked) {
                    bad = identifierIn(row);
                    log.suspected = log.suspected || bad;
                }
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
            if (const base::Result<bool> fits = importable(one.sheet, source); !fits) {
                refuse({one.line, "", fits.error().sentence, "shorten or correct the texts of this sheet"});
                continue;
            }
            log.sheets.push_back(std::move(one));
        }
    }
    return log;
}

base::Result<PaperLog> paperLogFrom(std::string_view text, const catalogue::Catalogue& catalogue,
                                    const std::string& source, bool checked)
{
    PaperLogReader reader(catalogue, checked);
    reader.feed(text);
    return reader.finish(source);
}

std::size_t ImportPlan::sheets() const
{
    return sum(students, &ImportFor::sheets);
}

std::size_t ImportPlan::alreadyHere() const
{
    return sum(students, &ImportFor::alreadyHere);
}

ImportPlan planImport(const Session& session, PaperLog log, const std::string& source, const keys::Id* only)
{
    const Directory directory(session);
    const Named named(directory, only);
    ImportPlan plan{{}, std::move(log.report), log.suspected, false};
    std::map<keys::Id, std::vector<PaperLogSheet>> sheets;
    for (PaperLogSheet& one : log.sheets) {
        Named::Found found = named.of(one);
        if (found.student == nullptr) {
            plan.sameName = plan.sameName || found.several;
            plan.report.refused.push_back(std::move(found.bad));
        } else {
            sheets[found.student->id].push_back(std::move(one));
        }
    }
    std::stable_sort(plan.report.refused.begin(), plan.report.refused.end(),
                     [](const Finding& a, const Finding& b) { return a.line < b.line; });
    for (const Person* student : named.students()) {
        if (const auto found = sheets.find(student->id); found != sheets.end()) {
            plan.students.push_back(importFor(session, *student, std::move(found->second), source));
        }
    }
    return plan;
}

} // namespace peelpack::session
