#include "platform/print/papers.h"

#include "core/base/text.h"
#include "core/questions/shared_operations.h"
#include "core/record/sheet_role.h"
#include "platform/english/english.h"
#include "platform/print/completions.h"
#include "platform/print/text.h"

#include <algorithm>
#include <map>
#include <set>

namespace peelpack::print {
namespace {

using tally::Level;

/// Newest day on a sheet; empty when there is no sheet.
QString lastDay(const CountedStudent& student)
{
    const auto last = std::max_element(student.record.sheets.begin(), student.record.sheets.end(),
                                       [](const record::SheetRecord& a, const record::SheetRecord& b) {
                                           return a.content.head.date < b.content.head.date;
                                       });
    return last == student.record.sheets.end() ? QString() : text(last->content.head.date.iso());
}

/// The students of one set.
Table boardTable(const CountedClass& counted, std::size_t setPlace)
{
    const requirement::RequirementSet& set = counted.sets.sets[setPlace];
    Table table{{{QStringLiteral("Student"), 6, false}}, {}};
    for (const requirement::Target& target : set.targets) {
        table.columns.push_back({text(english::targetLabel(target)), 4, true});
    }
    table.columns.push_back({QStringLiteral("Counted, initialed"), 3, true});
    table.columns.push_back({QStringLiteral("Sheets"), 2, true});
    table.columns.push_back({QStringLiteral("Last sheet"), 4, true});
    for (const CountedStudent& student : counted.students) {
        if (counted.sets.ofStudent[student.place] != setPlace) {
            continue;
        }
        std::vector<QString> row{text(student.name)};
        for (std::size_t i = 0; i < set.targets.size(); ++i) {
            row.push_back(
                QStringLiteral("%1 of %2").arg(student.placed(Level::Initialed, i)).arg(set.targets[i].required));
        }
        row.push_back(QStringLiteral("%1 of %2").arg(student.placed(Level::Initialed)).arg(set.required()));
        row.push_back(QString::number(student.record.sheets.size()));
        row.push_back(lastDay(student));
        table.rows.push_back(std::move(row));
    }
    return table;
}

/// A table for each set, under its title where there are several.
void addBoards(Document& document, const CountedClass& counted)
{
    for (std::size_t i = 0; i < counted.sets.sets.size(); ++i) {
        if (counted.sets.sets.size() > 1) {
            document.add(Style::Subheading, text("Under " + counted.sets.sets[i].title));
        }
        document.blocks.emplace_back(boardTable(counted, i));
    }
}

/// The titles of the sets in force.
std::string titlesOf(const CountedClass& counted)
{
    std::vector<std::string> titles;
    for (const requirement::RequirementSet& set : counted.sets.sets) {
        titles.push_back(set.title);
    }
    return base::listed(titles, "and");
}

/// Of sites or preceptors: sheets that were signed, by student.
struct Usage {
    std::size_t sheets = 0;
    std::set<std::string_view> students;
};

Table usageTable(const QString& what, const std::map<std::string, Usage>& usages)
{
    Table table{{{what, 8, false}, {QStringLiteral("Signed sheets"), 2, true}, {QStringLiteral("Students"), 2, true}},
                {}};
    for (const auto& [name, usage] : usages) {
        table.rows.push_back({text(name), QString::number(usage.sheets), QString::number(usage.students.size())});
    }
    return table;
}

/// What was changed after it was signed; every kind has its own line.
struct Changes {
    std::size_t signedSheets = 0;
    std::size_t initialed = 0;
    std::size_t imported = 0;          ///< from a paper log, not attested
    std::size_t importedInitialed = 0; ///< of these
    std::size_t importedChanged = 0;
    std::size_t amended = 0;
    std::size_t refiled = 0;
    std::size_t voided = 0;
    std::size_t withdrawn = 0;
    std::size_t reviewsAccepted = 0;
    std::size_t reviewsRaisedRole = 0;
    std::size_t twoInstructors = 0; ///< sheets with an action beside the one in force
};

/// Operations on which more than one student counts as first scrub, as it seems from the heads of signed sheets.
std::size_t sharedFirstScrubs(const CountedClass& counted)
{
    std::vector<questions::OperationPlace> places;
    for (const CountedStudent& student : counted.students) {
        const role::RoleRules rules{counted.setOf(student).notApplicable};
        for (const record::SheetRecord& sheet : student.record.sheets) {
            const bool gone =
                sheet.standing == record::SheetStanding::Void || sheet.standing == record::SheetStanding::Withdrawn;
            if ((sheet.isSigned() || sheet.imported) && !gone &&
                record::outcomeOf(sheet, rules) == role::Outcome::First) {
                places.push_back(questions::placeOf(student.record.student, sheet));
            }
        }
    }
    return questions::sharedOperations(places).size();
}

bool raisedRole(const record::SheetRecord& sheet, const role::RoleRules& rules)
{
    if (!sheet.original) {
        return false;
    }
    const auto role = [&](const record::Content& content) {
        return role::classify(content.marks.marks, content.head.canceled, rules);
    };
    return role(sheet.content) < role(*sheet.original);
}

Changes changesIn(const CountedClass& counted)
{
    Changes changes;
    for (const CountedStudent& student : counted.students) {
        const role::RoleRules rules{counted.setOf(student).notApplicable};
        for (const record::SheetRecord& sheet : student.record.sheets) {
            changes.signedSheets += sheet.isSigned() ? 1U : 0U;
            changes.initialed += sheet.standing == record::SheetStanding::Initialed ? 1U : 0U;
            changes.voided += sheet.standing == record::SheetStanding::Void ? 1U : 0U;
            changes.withdrawn += sheet.standing == record::SheetStanding::Withdrawn ? 1U : 0U;
            changes.imported += sheet.imported ? 1U : 0U;
            changes.importedInitialed += sheet.imported && sheet.standing == record::SheetStanding::Initialed ? 1U : 0U;
            if (sheet.original) {
                const bool refiledOnly = sheet.original->marks == sheet.content.marks &&
                                         sheet.original->head == sheet.content.head &&
                                         sheet.original->procedures == sheet.content.procedures;
                ++(refiledOnly ? changes.refiled : sheet.imported ? changes.importedChanged : changes.amended);
            }
            const bool accepted =
                std::any_of(sheet.reviews.begin(), sheet.reviews.end(), [](const record::Review& review) {
                    return review.answer == record::Review::Answer::Accepted;
                });
            changes.reviewsAccepted += accepted ? 1U : 0U;
            changes.reviewsRaisedRole += accepted && raisedRole(sheet, rules) ? 1U : 0U;
            changes.twoInstructors +=
                std::any_of(sheet.history.begin(), sheet.history.end(),
                            [](const record::HistoryLine& line) { return line.weight == record::Weight::Beside; })
                    ? 1U
                    : 0U;
        }
    }
    return changes;
}

void addChanges(Document& document, const CountedClass& counted, const ProgramFacts& facts)
{
    const Changes changes = changesIn(counted);
    document.add(Style::Heading, QStringLiteral("What was changed, counted"));
    Table table{{{QStringLiteral("What"), 10, false}, {QStringLiteral("Count"), 2, true}}, {}};
    const auto row = [&](const char* what, std::size_t count) {
        table.rows.push_back({QString::fromLatin1(what), QString::number(count)});
    };
    row("Sheets signed by a preceptor", changes.signedSheets);
    row("Sheets initialed", changes.initialed);
    row("Sheets imported from a paper log, not attested", changes.imported);
    row("Imported sheets that an instructor initialed", changes.importedInitialed);
    row("Imported sheets with head or procedures changed by an instructor", changes.importedChanged);
    row("Sheets with marks, head or procedures changed by an instructor after signing", changes.amended);
    row("Sheets filed under another specialty by an instructor", changes.refiled);
    row("Sheets with an accepted mark review", changes.reviewsAccepted);
    row("Sheets whose role was raised by an accepted mark review", changes.reviewsRaisedRole);
    row("Operations on which, it seems, two students count as first scrub", sharedFirstScrubs(counted));
    row("Sheets on which two instructors acted apart; both acts are kept", changes.twoInstructors);
    row("Sheets withdrawn by the student", changes.withdrawn);
    row("Sheets taken out of the count by an instructor", changes.voided);
    row("Records that split, often after a restore", facts.splitRecords.size());
    row("Devices that were ended", facts.revokedDevices);
    document.blocks.emplace_back(std::move(table));
    for (const std::string& sentence : facts.splitRecords) {
        document.add(Style::Quiet, text(sentence));
    }
}

} // namespace

Document classBoard(const CountedClass& counted)
{
    Document document{QStringLiteral("Class board"), {}};
    document.add(Style::Title, document.title);
    document.add(Style::Quiet, text(titlesOf(counted)) + QStringLiteral(". Counted as initialed."));
    addBoards(document, counted);
    addDecisions(document, counted);
    for (const CountedStudent& student : counted.students) {
        const std::vector<requirement::Target>& targets = counted.setOf(student).targets;
        document.add(Style::Subheading, text(student.name));
        for (std::size_t i = 0; i < targets.size(); ++i) {
            const requirement::Target& target = targets[i];
            document.blocks.emplace_back(Strokes{text(english::targetLabel(target)),
                                                 student.placed(Level::Initialed, i), target.required,
                                                 target.isFirstScrub()});
        }
    }
    if (counted.students.empty()) {
        document.add(Style::Body, QStringLiteral("No student is here yet."));
    }
    return document;
}

Document programReport(const CountedClass& counted, const ProgramFacts& facts)
{
    Document document{QStringLiteral("Program report"), {}};
    document.add(Style::Title, document.title);
    document.add(Style::Quiet, text((facts.term.empty() ? "" : facts.term + ". ") + titlesOf(counted) + ". " +
                                    base::counted(counted.students.size(), "student", "students") + "."));
    document.add(Style::Heading, QStringLiteral("Cases by student and target, as initialed"));
    addBoards(document, counted);
    addDecisions(document, counted);

    std::map<std::string, Usage> sites;
    std::map<std::string, Usage> preceptors;
    for (const CountedStudent& student : counted.students) {
        for (const record::SheetRecord& sheet : student.record.sheets) {
            if (!sheet.isSigned()) {
                continue;
            }
            Usage& site = sites[sheet.content.head.site.empty() ? "(not said)" : sheet.content.head.site];
            ++site.sheets;
            site.students.insert(student.name);
            for (const record::Signer* signer : sheet.contributors()) {
                const record::Attested& said = signer->statement;
                Usage& preceptor = preceptors[said.name + (said.credential.empty() ? "" : ", " + said.credential)];
                ++preceptor.sheets;
                preceptor.students.insert(student.name);
            }
        }
    }
    document.add(Style::Heading, QStringLiteral("Sites"));
    document.blocks.emplace_back(usageTable(QStringLiteral("Site"), sites));
    document.add(Style::Heading, QStringLiteral("Preceptors"));
    document.add(Style::Quiet, text(base::counted(facts.activePreceptors, "preceptor has", "preceptors have") +
                                    " a card or phone in force. Names as they signed."));
    document.blocks.emplace_back(usageTable(QStringLiteral("Preceptor"), preceptors));
    addChanges(document, counted, facts);
    return document;
}

} // namespace peelpack::print
