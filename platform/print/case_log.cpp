#include "platform/print/papers.h"

#include "core/tally/why_not_counted.h"
#include "platform/english/english.h"
#include "platform/print/completions.h"
#include "platform/print/text.h"

#include <algorithm>
#include <map>

namespace peelpack::print {
namespace {

using tally::Level;

/// The preceptors who signed, and how; of an imported sheet that nobody did.
QString signersOf(const record::SheetRecord& sheet)
{
    if (sheet.imported) {
        return QStringLiteral("imported, not attested");
    }
    QStringList names;
    for (const record::Signer* signer : sheet.contributors()) {
        names.push_back(
            QStringLiteral("%1 (%2)").arg(text(signer->statement.name), text(sheet::id(signer->statement.strength))));
    }
    return names.join(QStringLiteral("; "));
}

Table logTable()
{
    return {{{QStringLiteral("Date"), 4, false},
             {QStringLiteral("Procedure performed"), 8, false},
             {QStringLiteral("Role"), 4, false},
             {QStringLiteral("Site"), 4, false},
             {QStringLiteral("Signed by"), 5, false},
             {QStringLiteral("Initialed"), 4, false},
             {QStringLiteral("Sheet"), 4, false}},
            {}};
}

class StudentLog {
public:
    StudentLog(const CountedClass& counted, const CountedStudent& student, Document& document)
        : m_counted(counted), m_student(student), m_document(document),
          m_sheets(record::sheetsByName(student.record, student.names))
    {
    }

    void write()
    {
        m_document.blocks.emplace_back(NewPage{});
        m_document.add(Style::Title, QStringLiteral("Case log: %1").arg(text(m_student.name)));
        m_document.add(Style::Quiet,
                       text(setOf().title + ". Required: " + std::to_string(setOf().required()) + " cases."));
        if (m_student.decision) {
            m_document.add(Style::Body, decisionText(*m_student.decision));
        }
        writeTargets();
        writeSpecialties();
        writeNotCounted();
    }

private:
    [[nodiscard]] const requirement::RequirementSet& setOf() const { return m_counted.setOf(m_student); }

    void writeTargets()
    {
        Table table{{{QStringLiteral("Target"), 6, false},
                     {QStringLiteral("Required"), 2, true},
                     {QStringLiteral("Initialed"), 2, true},
                     {QStringLiteral("Signed"), 2, true},
                     {QStringLiteral("All sheets"), 2, true}},
                    {}};
        const std::vector<requirement::Target>& targets = setOf().targets;
        for (std::size_t i = 0; i < targets.size(); ++i) {
            table.rows.push_back({text(english::targetLabel(targets[i])), QString::number(targets[i].required),
                                  QString::number(m_student.placed(Level::Initialed, i)),
                                  QString::number(m_student.placed(Level::Attested, i)),
                                  QString::number(m_student.placed(Level::Recorded, i))});
        }
        m_document.blocks.emplace_back(std::move(table));
        for (std::size_t i = 0; i < targets.size(); ++i) {
            m_document.blocks.emplace_back(
                Strokes{text(english::targetLabel(targets[i])) + QStringLiteral(", initialed"),
                        m_student.placed(Level::Initialed, i), targets[i].required, targets[i].isFirstScrub()});
        }
    }

    std::vector<QString> rowOf(const tally::Candidate& candidate) const
    {
        const auto found = m_sheets.find(candidate.sheet->id);
        const record::SheetRecord* sheet = found == m_sheets.end() ? nullptr : found->second;
        return {text(candidate.sheet->date.iso()),
                text(m_counted.cases.reading.book.procedureText(candidate.procedure)),
                text(role::label(candidate.outcome)),
                sheet == nullptr ? QString() : text(sheet->content.head.site),
                sheet == nullptr ? QString() : signersOf(*sheet),
                candidate.sheet->initialed ? text(candidate.sheet->initialed->iso()) : QString(),
                text(candidate.sheet->id)};
    }

    void writeSpecialties()
    {
        const tally::StudentTally& tally = m_student.at(Level::Recorded);
        std::map<std::size_t, Table> tables;
        for (const tally::Candidate& candidate : tally.candidates) {
            if (!candidate.categories.empty()) {
                const std::size_t place = indexOf(candidate.categories.front());
                tables.try_emplace(place, logTable()).first->second.rows.push_back(rowOf(candidate));
            }
        }
        for (auto& [place, table] : tables) {
            m_document.add(Style::Heading, text(catalogue::label(catalogue::categoryAt(place))));
            m_document.blocks.emplace_back(std::move(table));
        }
        if (tables.empty()) {
            m_document.add(Style::Body, QStringLiteral("No case is logged yet."));
        }
    }

    void writeNotCounted()
    {
        const tally::StudentTally& tally = m_student.at(Level::Initialed);
        Table table{{{QStringLiteral("Date"), 3, false},
                     {QStringLiteral("Procedure performed"), 7, false},
                     {QStringLiteral("Sheet"), 3, false},
                     {QStringLiteral("Why it does not count as initialed"), 9, false}},
                    {}};
        for (std::size_t i = 0; i < tally.candidates.size(); ++i) {
            const tally::Candidate& candidate = tally.candidates[i];
            if (tally.best.seats[i].counts()) {
                continue;
            }
            table.rows.push_back({text(candidate.sheet->date.iso()),
                                  text(m_counted.cases.reading.book.procedureText(candidate.procedure)),
                                  text(candidate.sheet->id),
                                  text(tally::sentence(tally::whyNotCounted(setOf(), tally, tally.best, i)))});
        }
        if (!table.rows.empty()) {
            m_document.add(Style::Heading, QStringLiteral("Not counted as initialed"));
            m_document.blocks.emplace_back(std::move(table));
        }
    }

    const CountedClass& m_counted;
    const CountedStudent& m_student;
    Document& m_document;
    record::SheetsByName m_sheets;
};

} // namespace

Document caseLog(const CountedClass& counted)
{
    Document document{QStringLiteral("Case log"), {}};
    for (const CountedStudent& student : counted.students) {
        StudentLog(counted, student, document).write();
    }
    return document;
}

} // namespace peelpack::print
