#include "core/record/case_rows.h"

#include "core/base/text.h"

#include <algorithm>

namespace peelpack::record {
namespace {

constexpr std::size_t leastDigits = 8;

/// The digits that two ids have in common from the start.
std::size_t commonDigits(const base::Id& a, const base::Id& b)
{
    const std::string left = a.hex();
    const std::string right = b.hex();
    return static_cast<std::size_t>(std::mismatch(left.begin(), left.end(), right.begin()).first - left.begin());
}

/// Gives each id of an ordered map its name; only neighbors can share the most digits.
void shorten(std::map<base::Id, std::string>& names)
{
    std::size_t shared = 0; // with the id before
    for (auto at = names.begin(); at != names.end(); ++at) {
        const auto after = std::next(at);
        const std::size_t sharedAfter = after == names.end() ? 0 : commonDigits(at->first, after->first);
        at->second = at->first.hex(std::max({leastDigits, shared + 1, sharedAfter + 1}));
        shared = sharedAfter;
    }
}

/// The logged category first; one of the two categories apart stands alone.
catalogue::CategoryList categoriesFor(const std::optional<catalogue::Category>& logged,
                                      const catalogue::CategoryList& filed)
{
    if (!logged) {
        return filed;
    }
    catalogue::CategoryList categories{*logged};
    if (!catalogue::isApart(*logged)) {
        for (const catalogue::Category category : filed) {
            if (!catalogue::isApart(category)) {
                categories.add(category);
            }
        }
    }
    return categories;
}

sheet::Strength attestedAs(const SheetRecord& sheet, const RowRules& rules)
{
    const std::vector<const Signer*> contributors = sheet.contributors();
    const bool accepted = std::all_of(contributors.begin(), contributors.end(), [&](const Signer* signer) {
        return rules.counts(signer->statement.strength, signer->confirmed);
    });
    return accepted ? sheet.strength : sheet::Strength::None;
}

std::string joined(const std::vector<std::string>& texts)
{
    std::string all;
    for (const std::string& text : texts) {
        all += (all.empty() || text.empty() ? "" : "; ") + text;
    }
    return all;
}

/// What all rows of the sheet have in common.
sheet::CaseRow commonRow(const SheetRecord& sheet, std::string_view studentName, const ShortNames& names,
                         const RowRules& rules)
{
    sheet::CaseRow row;
    row.sheet = names.sheets.at(sheet.id);
    row.student = studentName;
    if (const auto operation = names.operations.find(sheet.operation); operation != names.operations.end()) {
        row.operation = operation->second;
    }
    const Head& head = sheet.content.head;
    row.date = head.date;
    row.surgeon = head.surgeon;
    row.site = head.site;
    row.room = head.room;
    row.start = timeOfDay(head.start);
    row.end = timeOfDay(head.end);
    row.canceled = head.canceled;
    row.marks = sheet.content.marks.marks;
    std::vector<std::string> preceptors;
    std::vector<std::string> credentials;
    for (const Signer& signer : sheet.signers) {
        if (!signer.afterInitial) {
            preceptors.push_back(signer.statement.name);
            credentials.push_back(signer.statement.credential);
        }
    }
    row.preceptor = joined(preceptors);
    row.credential = joined(credentials);
    std::vector<std::string> feedback;
    for (const FeedbackText& one : sheet.feedback) {
        feedback.push_back(one.text);
    }
    row.feedback = joined(feedback);
    row.attested = attestedAs(sheet, rules);
    if (sheet.imported) {
        row.importedRole = sheet.imported->said.role;
        row.preceptor = sheet.imported->said.preceptor;
        row.credential = sheet.imported->said.credential;
    }
    if (sheet.initial && !sheet.initial->onlyByAttester) {
        row.initialed = sheet.initial->claimed.day();
    }
    return row;
}

} // namespace

ShortNames shortNames(const StudentRecord& student)
{
    ShortNames names;
    std::map<base::Id, std::size_t> sharing;
    for (const SheetRecord& sheet : student.sheets) {
        names.sheets[sheet.id];
        ++sharing[sheet.operation];
    }
    for (const auto& [operation, sheets] : sharing) {
        if (sheets > 1 && !operation.isZero()) {
            names.operations[operation];
        }
    }
    shorten(names.sheets);
    shorten(names.operations);
    return names;
}

std::vector<sheet::CaseRow> caseRows(const SheetRecord& sheet, std::string_view studentName, const ShortNames& names,
                                     const RowRules& rules)
{
    std::vector<sheet::CaseRow> rows;
    if (sheet.standing == SheetStanding::Withdrawn || sheet.standing == SheetStanding::Void ||
        sheet.standing == SheetStanding::Returned || sheet.content.procedures.empty()) {
        return rows;
    }
    const sheet::CaseRow common = commonRow(sheet, studentName, names, rules);
    for (std::size_t i = 0; i < sheet.content.procedures.size(); ++i) {
        sheet::CaseRow& row = rows.emplace_back(common);
        row.procedure = sheet.content.procedures[i];
        const auto& choices = sheet.content.choices;
        const auto choice =
            std::find_if(choices.begin(), choices.end(), [&](const Choice& one) { return one.procedure == i; });
        const bool logged = choice != choices.end();
        row.categories = categoriesFor(logged ? choice->category : std::nullopt, rules.categoriesOf(row.procedure));
        if (logged && choice->joined != 0) {
            row.onePathology = choice->joined;
        }
    }
    return rows;
}

SheetsByName sheetsByName(const StudentRecord& student, const ShortNames& names)
{
    SheetsByName sheets;
    for (const SheetRecord& sheet : student.sheets) {
        sheets.emplace(names.sheets.at(sheet.id), &sheet);
    }
    return sheets;
}

std::vector<sheet::CaseRow> caseRows(const StudentRecord& student, const RowRules& rules)
{
    const ShortNames names = shortNames(student);
    std::vector<sheet::CaseRow> rows;
    for (const SheetRecord& sheet : student.sheets) {
        for (sheet::CaseRow& row : caseRows(sheet, student.name, names, rules)) {
            rows.push_back(std::move(row));
        }
    }
    return rows;
}

} // namespace peelpack::record
