#include "platform/session/importing.h"

#include "platform/session/refusal.h"
#include "sync/journal/payload.h"

#include <algorithm>
#include <map>

namespace peelpack::session {
namespace {

journal::ImportedRole roleOf(sheet::Role role)
{
    switch (role) {
    case sheet::Role::First:
        return journal::ImportedRole::First;
    case sheet::Role::Second:
        return journal::ImportedRole::Second;
    case sheet::Role::Observed:
        break;
    }
    return journal::ImportedRole::Observed;
}

journal::Imported importedFrom(const PaperSheet& sheet, const std::string& source)
{
    return {
        {},    {}, sheet.procedures, sheet.head, sheet.choices, roleOf(sheet.role), sheet.preceptor, sheet.credential,
        source};
}

} // namespace

base::Result<bool> importable(const PaperSheet& sheet, const std::string& source)
{
    const journal::Checked<keys::Bytes> bytes = journal::encode(importedFrom(sheet, source));
    return bytes ? base::Result<bool>(true) : refused(bytes.reason());
}

std::vector<bool> importedAlready(const record::StudentRecord& student, const std::vector<PaperSheet>& sheets,
                                  const std::string& source)
{
    std::map<std::pair<base::Date, std::vector<std::string>>, std::size_t> held;
    for (const record::SheetRecord& record : student.sheets) {
        if (record.imported && record.imported->said.source == source) {
            ++held[{record.imported->said.head.date, record.imported->said.procedures}];
        }
    }
    std::vector<bool> already;
    already.reserve(sheets.size());
    for (const PaperSheet& sheet : sheets) {
        const auto found = held.find({sheet.head.date, sheet.procedures});
        already.push_back(found != held.end() && found->second > 0);
        if (already.back()) {
            --found->second;
        }
    }
    return already;
}

ImportFor importFor(const Session& session, const Person& student, std::vector<PaperLogSheet> sheets,
                    const std::string& source)
{
    ImportFor planned{student, {}, {}};
    std::vector<PaperSheet> papers;
    papers.reserve(sheets.size());
    for (const PaperLogSheet& one : sheets) {
        papers.push_back(one.sheet);
    }
    const std::vector<bool> already = importedAlready(session.recordOf(student.id), papers, source);
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        (already[i] ? planned.alreadyHere : planned.sheets).push_back(std::move(sheets[i]));
    }
    return planned;
}

base::Result<std::vector<keys::Id>> importSheets(Session& session, const ImportFor& planned, const std::string& source)
{
    if (planned.sheets.empty()) {
        return std::vector<keys::Id>{};
    }
    std::vector<PaperSheet> papers;
    papers.reserve(planned.sheets.size());
    for (const PaperLogSheet& one : planned.sheets) {
        papers.push_back(one.sheet);
    }
    return importSheets(session, planned.student.id, papers, source);
}

base::Result<std::vector<keys::Id>> importSheets(Session& session, const keys::Id& student,
                                                 const std::vector<PaperSheet>& sheets, const std::string& source)
{
    if (!session.isStaff()) {
        return base::Error{base::ErrorCode::BadValue, "Only an instructor or the director imports a paper log."};
    }
    std::vector<Writing> writings;
    std::vector<keys::Id> ids;
    std::map<std::string, keys::Id> operations;
    for (const PaperSheet& sheet : sheets) {
        journal::Imported imported = importedFrom(sheet, source);
        imported.sheet = session.random().id();
        imported.operation = session.random().id();
        if (!sheet.operation.empty()) {
            imported.operation = operations.try_emplace(sheet.operation, imported.operation).first->second;
        }
        ids.push_back(imported.sheet);
        writings.push_back({student, std::move(imported)});
    }
    const auto written = session.append(writings);
    if (!written) {
        return written.error();
    }
    return ids;
}

} // namespace peelpack::session
