#include "platform/print/papers.h"

#include "core/base/text.h"
#include "core/record/sheet_role.h"
#include "platform/english/english.h"
#include "platform/english/history.h"
#include "platform/print/text.h"

namespace peelpack::print {
namespace {

/// The hash of the newest thing that was written about the sheet, in fours so that it can be read out.
QString inFours(const std::string& hex)
{
    constexpr std::size_t four = 4;
    QStringList groups;
    for (std::size_t i = 0; i < hex.size(); i += four) {
        groups.push_back(text(std::string_view(hex).substr(i, four)));
    }
    return groups.join(QLatin1Char(' '));
}

void addMarks(Document& document, const record::SheetRecord& sheet)
{
    Table table{{{QStringLiteral("Skill"), 6, false}, {QStringLiteral("Mark"), 2, false}}, {}};
    if (sheet.original) {
        table.columns.push_back({QStringLiteral("As signed"), 2, false});
    }
    table.columns.push_back({QStringLiteral("Why N/A"), 6, false});
    for (const sheet::Skill skill : sheet::allSkills) {
        const record::ReasonedMarks& marks = sheet.content.marks;
        std::vector<QString> row{text(sheet::label(skill)), text(sheet::inWords(marks.marks.of(skill)))};
        if (sheet.original) {
            row.push_back(text(sheet::inWords(sheet.original->marks.marks.of(skill))));
        }
        row.push_back(text(marks.reason(skill)));
        table.rows.push_back(std::move(row));
    }
    document.add(Style::Heading, QStringLiteral("Ten marks"));
    document.blocks.emplace_back(std::move(table));
}

void addSigners(Document& document, const record::SheetRecord& sheet)
{
    document.add(Style::Heading, QStringLiteral("Signed by"));
    if (sheet.signers.empty()) {
        document.add(Style::Body, QStringLiteral("Nobody has signed this sheet."));
    }
    for (const record::Signer& signer : sheet.signers) {
        const record::Attested& said = signer.statement;
        std::string line = said.name + (said.credential.empty() ? "" : ", " + said.credential) + ": " +
                           std::string(said.strength == sheet::Strength::None ? "cannot be told who it was"
                                                                              : sheet::id(said.strength)) +
                           ", " + english::timeInWords(said.signedAt);
        line += signer.confirmed ? ", confirmed with the preceptor" : "";
        line += signer.afterInitial ? ", after the initial: without effect" : "";
        document.add(Style::Body, text(line));
    }
    for (const record::FeedbackText& feedback : sheet.feedback) {
        document.add(Style::Body, text("Feedback from " + feedback.from + ": " + feedback.text));
    }
}

/// In the place of marks and signatures, of which there are none.
void addImport(Document& document, const record::SheetRecord& sheet)
{
    document.add(Style::Heading, QStringLiteral("Imported, not attested"));
    document.add(Style::Body, text(english::importInWords(*sheet.imported)));
    document.add(Style::Body,
                 QStringLiteral("No preceptor has signed this sheet and it has no marks. It counts once an "
                                "instructor has initialed it."));
    if (sheet.original) {
        document.add(Style::Body, text("As it was imported: " + base::listed(sheet.original->procedures, "and") + "; " +
                                       english::headInWords(sheet.original->head) + "."));
    }
}

void addHistory(Document& document, const record::SheetRecord& sheet)
{
    Table table{{{QStringLiteral("When (as claimed)"), 4, false},
                 {QStringLiteral("Who"), 4, false},
                 {QStringLiteral("What, and why"), 10, false}},
                {}};
    for (const record::HistoryLine& line : sheet.history) {
        std::string what = english::inWords(line.what) + (line.why.empty() ? "" : " Reason: " + line.why);
        if (line.weight != record::Weight::Counts) {
            what += " [" + std::string(english::inWords(line.weight)) +
                    (line.whyNot.empty() ? "" : ": " + line.whyNot) + "]";
        }
        table.rows.push_back(
            {text(english::timeInWords(line.claimed)), text(english::writerName(line.who)), text(what)});
    }
    document.add(Style::Heading, QStringLiteral("History"));
    document.blocks.emplace_back(std::move(table));
}

} // namespace

Document caseSheet(const CountedClass& counted, std::size_t student, const record::SheetRecord& sheet)
{
    const CountedStudent& whose = counted.students.at(student);
    const record::Content& content = sheet.content;
    const std::string& name = whose.names.sheets.at(sheet.id);
    Document document{text("Case sheet " + name), {}};
    document.add(Style::Title, text("Case sheet " + name + ": " + whose.name));
    document.add(Style::Subheading, text(base::listed(content.procedures, "and")));
    document.add(Style::Body, text(english::headInWords(content.head)));
    document.add(Style::Body, text("It stands: " + english::standingInWords(sheet) +
                                   ". Counts under: " + english::choicesInWords(content) + "."));
    const role::RoleRules rules{counted.setOf(whose).notApplicable};
    document.add(Style::Body, text("Role: " + std::string(role::label(record::outcomeOf(sheet, rules))) + ". " +
                                   record::whyOf(sheet, rules)));
    if (sheet.imported) {
        addImport(document, sheet);
    } else {
        addMarks(document, sheet);
        addSigners(document, sheet);
    }
    addHistory(document, sheet);
    if (!sheet.history.empty()) {
        const std::string hash = sheet.history.back().entry.hex();
        document.blocks.emplace_back(Code{
            text("sheet " + sheet.id.hex() + "\nentry " + hash).toUtf8(),
            text("The code holds the sheet's id and the hash of the newest entry about it, which signs everything that "
                 "its writer recorded before. Whoever holds the journal finds the entry by its hash.\n") +
                inFours(hash)});
    }
    return document;
}

Document pocketStubs(std::uint64_t first, std::size_t count)
{
    Document document{QStringLiteral("Pocket stubs"), {}};
    for (std::size_t i = 0; i < count; ++i) {
        document.blocks.emplace_back(NewPage{});
        document.add(Style::Title, QStringLiteral("Pocket stub %1").arg(first + i));
        document.add(
            Style::Quiet,
            QStringLiteral("For a site where phones are not allowed. Filled in after degowning and hand "
                           "washing, never at the field; entered later as a paper signature, which counts once "
                           "an instructor has confirmed it. No name, number or birth date of a patient."));
        for (const char* label : {"Student", "Date", "Procedures performed", "Surgeon", "Site and room"}) {
            document.blocks.emplace_back(Blank{QString::fromLatin1(label)});
        }
        Table table{{{QStringLiteral("Skill"), 8, false},
                     {QStringLiteral("Yes"), 2, false},
                     {QStringLiteral("No"), 2, false},
                     {QStringLiteral("N/A, and why"), 6, false}},
                    {}};
        for (const sheet::Skill skill : sheet::allSkills) {
            table.rows.push_back(
                {text(sheet::label(skill)), QStringLiteral("[   ]"), QStringLiteral("[   ]"), QStringLiteral("[   ]")});
        }
        document.blocks.emplace_back(std::move(table));
        for (const char* label :
             {"Feedback", "Preceptor's name and credential", "Preceptor's signature", "Date and time"}) {
            document.blocks.emplace_back(Blank{QString::fromLatin1(label)});
        }
    }
    return document;
}

} // namespace peelpack::print
