#include "platform/session/checks.h"

#include "core/record/case_rows.h"
#include "platform/session/directory.h"
#include "platform/session/sheets.h"

#include <algorithm>
#include <set>

namespace peelpack::session {
namespace {

constexpr std::size_t nameDigits = 8;

/// The sheet that an entry is about; empty when it is about none.
std::optional<keys::Id> sheetOf(const Session& session, const journal::Position& position)
{
    const journal::Feed* feed = session.ledger().feed(position.feed);
    const journal::KeptEntry* kept = feed == nullptr ? nullptr : feed->find(position.seq, position.hash);
    if (kept == nullptr) {
        return std::nullopt;
    }
    return std::visit(
        [](const auto& value) -> std::optional<keys::Id> {
            if constexpr (requires { value.sheet; }) {
                return value.sheet;
            } else {
                return std::nullopt;
            }
        },
        journal::decode(position.feed, position.seq, *kept).payload);
}

} // namespace

std::vector<keys::Id> studentsOf(const Session& session, const std::optional<std::string>& className)
{
    if (session.role() == journal::Role::Student) {
        return {session.person()};
    }
    const Directory directory(session);
    std::vector<keys::Id> students;
    for (const Person& person : directory.people()) {
        const bool wanted =
            person.role == journal::Role::Student &&
            (!className || std::find(person.scopes.begin(), person.scopes.end(), *className) != person.scopes.end());
        if (wanted) {
            students.push_back(person.id);
        }
    }
    return students;
}

std::string nameOf(const Session& session, const record::StudentRecord& student)
{
    if (!student.name.empty()) {
        return student.name;
    }
    const auto own =
        session.person() == idOf(student.student) ? session.note(notes::name) : std::optional<keys::Bytes>();
    return own && !own->empty() ? std::string(own->begin(), own->end()) : student.student.hex(nameDigits);
}

bool countsOftenNotNeeded(const std::vector<std::string>& procedures, const catalogue::Catalogue& catalogue)
{
    return std::all_of(procedures.begin(), procedures.end(), [&](const std::string& procedure) {
        const std::vector<const catalogue::Procedure*> found = catalogue.byExactName(procedure);
        return found.size() == 1 && found.front()->countsOftenNotNeeded;
    });
}

std::vector<questions::SheetQuestion> sheetQuestions(const record::StudentRecord& student,
                                                     const record::SheetRecord& sheet, bool repudiated,
                                                     const catalogue::Catalogue& catalogue,
                                                     const questions::SheetRules& rules)
{
    std::vector<std::string> same;
    if (const std::vector<base::Id> ids = questions::sameCases(student, sheet); !ids.empty()) {
        const record::ShortNames names = record::shortNames(student);
        std::transform(ids.begin(), ids.end(), std::back_inserter(same),
                       [&](const base::Id& id) { return names.sheets.at(id); });
    }
    std::vector<questions::SheetQuestion> asked =
        questions::sheetQuestions(sheet, repudiated, countsOftenNotNeeded(sheet.content.procedures, catalogue), same);
    for (questions::SheetQuestion& question : questions::ruleQuestions(sheet, rules)) {
        asked.push_back(std::move(question));
    }
    return asked;
}

std::vector<TimeQuestion> timeQuestions(const Session& session, const keys::Id& student)
{
    std::vector<TimeQuestion> questions;
    for (const auto& [id, feed] : session.ledger().feeds()) {
        if (id.stream != student) {
            continue;
        }
        for (const merge::TimeQuestion& asked : merge::timeQuestions(session.authority(), session.ledger(), id)) {
            const std::optional<keys::Id> sheet = sheetOf(session, asked.entry);
            questions.push_back({asked, sheet});
        }
    }
    return questions;
}

std::vector<questions::Signing> signingsIn(const Session& session, const std::vector<keys::Id>& students)
{
    std::vector<questions::Signing> signings;
    for (const record::StudentRecord& student : session.recordsOf(students)) {
        const record::ShortNames names = record::shortNames(student);
        const std::string name = nameOf(session, student);
        for (const record::SheetRecord& sheet : student.sheets) {
            for (questions::Signing& signing : questions::signingsOf(sheet, name, names.sheets.at(sheet.id))) {
                signings.push_back(std::move(signing));
            }
        }
    }
    return signings;
}

std::vector<questions::SignerQuestion> signerQuestionsOf(const Session& session, const std::vector<keys::Id>& students,
                                                         const questions::Plausible& plausible)
{
    if (!session.isStaff()) {
        return {};
    }
    const std::vector<keys::Id> everybody = studentsOf(session);
    std::vector<questions::Signing> signings = signingsIn(session, everybody);
    std::set<base::EntryHash> wanted;
    for (const questions::Signing& signing : students == everybody ? signings : signingsIn(session, students)) {
        wanted.insert(signing.entry);
    }
    std::vector<questions::SignerQuestion> asked = questions::signerQuestions(std::move(signings), plausible);
    std::erase_if(asked, [&](const questions::SignerQuestion& question) {
        return std::none_of(question.sheets.begin(), question.sheets.end(),
                            [&](const questions::Signing& sheet) { return wanted.contains(sheet.entry); });
    });
    return asked;
}

} // namespace peelpack::session
