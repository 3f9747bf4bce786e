#include "platform/cli/commands.h"

#include "core/base/text.h"
#include "platform/cli/answer.h"
#include "platform/cli/sheet_options.h"
#include "platform/cli/sheet_text.h"
#include "platform/cli/short_id.h"
#include "platform/cli/student_choice.h"
#include "platform/files/text_file.h"
#include "platform/session/checks.h"

namespace peelpack::cli {
namespace {

std::vector<std::string> textsOf(const journal::Draft& draft)
{
    std::vector<std::string> texts = draft.procedures;
    texts.insert(texts.end(), {draft.head.site, draft.head.room});
    return texts;
}

/// The student's own open vault; an error for anybody else.
base::Result<OpenedVault> openAsStudent(const Arguments& arguments)
{
    base::Result<OpenedVault> opened = openVault(arguments);
    if (opened && opened.value().session->role() != journal::Role::Student) {
        return base::Error{base::ErrorCode::BadValue, "Only a student writes case sheets; this is a vault of staff."};
    }
    return opened;
}

base::Result<Answer> openSheets(const Arguments& arguments)
{
    std::vector<journal::Draft> drafts;
    if (const auto csv = arguments.value("csv")) {
        base::Result<std::vector<journal::Draft>> read = draftsFromCsv(*csv);
        if (!read) {
            return read.error();
        }
        drafts = std::move(read).value();
    } else {
        const base::Result<journal::Head> head = headFrom(arguments, {});
        const base::Result<std::vector<journal::SkillMark>> marks = marksFrom(arguments);
        if (!head || !marks) {
            return head ? marks.error() : head.error();
        }
        drafts.push_back({proceduresFrom(arguments, {}), head.value(), marks.value()});
        if (drafts.back().procedures.empty() || !arguments.has("date")) {
            return base::Error{base::ErrorCode::BadUsage, "Give --procedure and --date, or --csv FILE."};
        }
    }
    base::Result<OpenedVault> opened = openAsStudent(arguments);
    if (!opened) {
        return opened.error();
    }
    session::Session& session = *opened.value().session;
    for (const journal::Draft& draft : drafts) {
        if (const base::Result<bool> clean = screened(arguments, textsOf(draft)); !clean) {
            return clean.error();
        }
    }
    base::Result<std::vector<keys::Id>> sheets = std::vector<keys::Id>();
    if (const auto other = arguments.value("same-operation-as")) {
        const base::Result<session::SheetPlace> place = session::findSheet(session, session.person(), *other);
        if (!place) {
            return place.error();
        }
        const base::Result<keys::Id> made =
            session::openSheet(session, drafts.front(), session::idOf(place.value().record.operation));
        sheets = made ? base::Result<std::vector<keys::Id>>({made.value()}) : made.error();
    } else {
        sheets = session::openSheets(session, drafts);
    }
    if (!sheets) {
        return sheets.error();
    }
    Answer answer;
    answer.json["sheets"] = nlohmann::ordered_json::array();
    for (const keys::Id& sheet : sheets.value()) {
        answer.json["sheets"].push_back(shortId(sheet));
        answer.text += "Opened sheet " + shortId(sheet) + ".\n";
    }
    return answer;
}

/// One writing about one sheet of the student's, of which an imported one only takes a withdrawal.
template <class Write>
base::Result<Answer> aboutSheet(const Arguments& arguments, const std::string& done, const Write& write,
                                bool alsoImported = false)
{
    base::Result<OpenedVault> opened = openAsStudent(arguments);
    if (!opened) {
        return opened.error();
    }
    session::Session& session = *opened.value().session;
    const base::Result<session::SheetPlace> place =
        session::findSheet(session, session.person(), arguments.operands.front());
    if (!place) {
        return place.error();
    }
    if (place.value().record.imported && !alsoImported) {
        return base::Error{base::ErrorCode::BadValue,
                           "The sheet was imported from a paper log; you can only withdraw it, with a reason."};
    }
    const base::Result<journal::Payload> payload = write(place.value());
    if (!payload) {
        return payload.error();
    }
    const base::Result<journal::Position> written = session.append(session.person(), payload.value());
    if (!written) {
        return written.error();
    }
    Answer answer;
    answer.json = {{"sheet", shortId(place.value().sheet)}, {"entry", keys::hex(written.value().hash.view())}};
    answer.text = done + "\n";
    return answer;
}

/// What the student wrote last: a version that nobody has signed yet, else the sheet as it stands.
journal::Draft newestDraft(const record::SheetRecord& sheet)
{
    if (!sheet.unsignedVersion) {
        return session::draftOf(sheet.content);
    }
    const record::Draft& draft = sheet.unsignedVersion->draft;
    return session::draftOf({draft.procedures, draft.head, draft.marks, {}});
}

base::Result<Answer> changeSheet(const Arguments& arguments)
{
    return aboutSheet(arguments, "Changed. A sheet that is signed stays as it was signed; the change shows beside it.",
                      [&](const session::SheetPlace& place) -> base::Result<journal::Payload> {
                          journal::Draft draft = newestDraft(place.record);
                          const base::Result<journal::Head> head = headFrom(arguments, draft.head);
                          const base::Result<std::vector<journal::SkillMark>> marks = marksFrom(arguments);
                          if (!head || !marks) {
                              return head ? marks.error() : head.error();
                          }
                          draft.head = head.value();
                          draft.procedures = proceduresFrom(arguments, draft.procedures);
                          for (const journal::SkillMark& mark : marks.value()) {
                              setMark(draft.marks, mark);
                          }
                          if (const base::Result<bool> clean = screened(arguments, textsOf(draft)); !clean) {
                              return clean.error();
                          }
                          return journal::Payload(journal::HeadChanged{
                              place.sheet, session::idOf(place.record.operation), std::move(draft)});
                      });
}

base::Result<Answer> logSheet(const Arguments& arguments)
{
    return aboutSheet(arguments, "Logged.", [&](const session::SheetPlace& place) -> base::Result<journal::Payload> {
        const auto choices = choicesFrom(arguments, place.record.content.procedures.size());
        if (!choices) {
            return choices.error();
        }
        return journal::Payload(journal::Logged{place.sheet, choices.value()});
    });
}

base::Result<std::string> reasonFrom(const Arguments& arguments)
{
    base::Result<std::string> reason = requiredReason(arguments);
    if (!reason) {
        return reason;
    }
    if (const base::Result<bool> clean = screened(arguments, {reason.value()}); !clean) {
        return clean.error();
    }
    return reason;
}

base::Result<Answer> withdrawSheet(const Arguments& arguments)
{
    const base::Result<std::string> reason = reasonFrom(arguments);
    if (!reason) {
        return reason.error();
    }
    return aboutSheet(
        arguments, "Withdrawn. A sheet that is initialed already needs your instructor.",
        [&](const session::SheetPlace& place) -> base::Result<journal::Payload> {
            return journal::Payload(journal::Withdrawn{place.sheet, reason.value()});
        },
        true);
}

base::Result<Answer> declineSheet(const Arguments& arguments)
{
    const base::Result<std::string> reason = reasonFrom(arguments);
    if (!reason) {
        return reason.error();
    }
    return aboutSheet(arguments, "Kept: the preceptor declined to sign.",
                      [&](const session::SheetPlace& place) -> base::Result<journal::Payload> {
                          return journal::Payload(journal::Declined{place.sheet, reason.value()});
                      });
}

base::Result<Answer> askForReview(const Arguments& arguments)
{
    const base::Result<std::string> reason = reasonFrom(arguments);
    const base::Result<std::vector<journal::SkillMark>> wanted = marksFrom(arguments);
    if (!reason || !wanted) {
        return reason ? wanted.error() : reason.error();
    }
    if (wanted.value().size() != 1) {
        return base::Error{base::ErrorCode::BadUsage, "Ask for one mark at a time: --mark SKILL=MARK."};
    }
    return aboutSheet(
        arguments, "Asked. Your instructor sees it with the next parcel.",
        [&](const session::SheetPlace& place) -> base::Result<journal::Payload> {
            const journal::SkillMark& mark = wanted.value().front();
            return journal::Payload(journal::ReviewAsked{place.sheet, {mark.skill, mark.mark, {}}, reason.value()});
        });
}

base::Result<Answer> listSheets(const Arguments& arguments)
{
    const base::Result<ChosenVault> chosen = openChosen(arguments);
    if (!chosen) {
        return chosen.error();
    }
    const session::Session& session = chosen.value().session();
    Answer answer;
    answer.json["students"] = nlohmann::ordered_json::array();
    for (const record::StudentRecord& student : chosen.value().records()) {
        const record::ShortNames names = record::shortNames(student);
        nlohmann::ordered_json list = nlohmann::ordered_json::array();
        answer.text += nameOf(session, student) + "\n";
        std::vector<const record::SheetRecord*> sheets;
        sheets.reserve(student.sheets.size());
        for (const record::SheetRecord& sheet : student.sheets) {
            sheets.push_back(&sheet);
        }
        std::stable_sort(sheets.begin(), sheets.end(),
                         [](const auto* a, const auto* b) { return a->content.head.date < b->content.head.date; });
        for (const record::SheetRecord* sheet : sheets) {
            answer.text += sheetLine(*sheet, names.sheets.at(sheet->id));
            list.push_back(sheetJson(*sheet, names.sheets.at(sheet->id), false));
        }
        answer.json["students"].push_back(
            {{"student", nameOf(session, student)}, {"id", student.student.hex()}, {"sheets", list}});
    }
    if (session.role() == journal::Role::Student) {
        const std::size_t waiting = session::onlyHere(session);
        answer.json["onlyHere"] = waiting;
        answer.text += waiting == 0 ? "Everything is with your instructor.\n"
                                    : base::counted(waiting, "entry", "entries") +
                                          " only on this device: lost with it until your instructor has them.\n";
    }
    return answer;
}

base::Result<Answer> showSheet(const Arguments& arguments)
{
    base::Result<OpenedVault> opened = openVault(arguments);
    if (!opened) {
        return opened.error();
    }
    const session::Session& session = *opened.value().session;
    const base::Result<session::SheetPlace> place = chosenSheet(session, arguments, arguments.operands.front());
    if (!place) {
        return place.error();
    }
    const std::string name =
        record::shortNames(session.recordOf(place.value().student)).sheets.at(place.value().record.id);
    Answer answer;
    answer.json = sheetJson(place.value().record, name, true);
    answer.text = sheetText(place.value().record, name);
    return answer;
}

std::vector<OptionSpec> joined(std::vector<OptionSpec> first, const std::vector<OptionSpec>& rest)
{
    first.insert(first.end(), rest.begin(), rest.end());
    first.push_back(checkedOption());
    return withVaultOptions(std::move(first));
}

} // namespace

std::vector<Command> sheetCommands()
{
    const std::vector<OptionSpec> reason{{"reason", "TEXT", "why; it stays in the journal"}};
    std::vector<OptionSpec> all = headOptions();
    const std::vector<OptionSpec> marks = markOptions();
    all.insert(all.end(), marks.begin(), marks.end());
    return {
        {{"sheet open",
          "Open a case sheet, or all sheets of a file.",
          {},
          joined({{"csv", "FILE", "a case-sheet file; each sheet of it is opened"},
                  {"same-operation-as", "SHEET", "another team's part of the same operation"}},
                 all),
          "peelpack sheet open --procedure \"Laparoscopic cholecystectomy\" --date 2026-03-12 --site \"North Campus\"\n"
          "  answers the sheet's short id"},
         [](const Arguments& arguments) { return give(arguments, openSheets(arguments)); }},
        {{"sheet change",
          "Change what you wrote on a sheet. What is signed stays as it was signed.",
          {"SHEET"},
          joined({}, all),
          "peelpack sheet change 3f2a90c1 --room \"Room 4\"\n  changes the room"},
         [](const Arguments& arguments) { return give(arguments, changeSheet(arguments)); }},
        {{"sheet log",
          "Say where the procedures of a sheet count.",
          {"SHEET"},
          joined({}, choiceOptions()),
          "peelpack sheet log 3f2a90c1 --under peripheral-vascular\n  until it is initialed you may log it anew"},
         [](const Arguments& arguments) { return give(arguments, logSheet(arguments)); }},
        {{"sheet review",
          "Ask your instructor to look at one mark again.",
          {"SHEET"},
          joined(reason, markOptions()),
          "peelpack sheet review 3f2a90c1 --mark pass=Y --reason \"I passed from the second count on\"\n  the "
          "instructor "
          "accepts it, or declines with a reason"},
         [](const Arguments& arguments) { return give(arguments, askForReview(arguments)); }},
        {{"sheet withdraw",
          "Withdraw a sheet. It stays visible and does not count.",
          {"SHEET"},
          joined(reason, {}),
          "peelpack sheet withdraw 3f2a90c1 --reason \"entered twice\"\n  stands at once unless it is initialed"},
         [](const Arguments& arguments) { return give(arguments, withdrawSheet(arguments)); }},
        {{"sheet decline",
          "Keep that the preceptor declined to sign, and why.",
          {"SHEET"},
          joined(reason, {}),
          "peelpack sheet decline 3f2a90c1 --reason \"was called away before the count\"\n  the sheet stays open"},
         [](const Arguments& arguments) { return give(arguments, declineSheet(arguments)); }},
        {{"sheet list",
          "List case sheets: your own, or those of the students.",
          {},
          joined({}, studentOptions()),
          "peelpack sheet list --vault ines.peelvault\n  one line a sheet"},
         [](const Arguments& arguments) { return give(arguments, listSheets(arguments)); }},
        {{"sheet show",
          "Show one sheet with its whole history.",
          {"SHEET"},
          joined({}, studentOptions()),
          "peelpack sheet show 3f2a90c1 --student \"Ines Duarte\"\n  who did what, when and why"},
         [](const Arguments& arguments) { return give(arguments, showSheet(arguments)); }},
    };
}

} // namespace peelpack::cli
