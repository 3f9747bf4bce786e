#include "platform/cli/commands.h"

#include "core/base/text.h"
#include "platform/cli/answer.h"
#include "platform/cli/sheet_options.h"
#include "platform/cli/short_id.h"
#include "platform/cli/student_choice.h"
#include "platform/session/acts.h"
#include "platform/session/aside.h"

#include <algorithm>

namespace peelpack::cli {
namespace {

/// Opens the vault, finds every sheet named, and lets `act` write about each.
template <class Act>
base::Result<Answer> onSheets(const Arguments& arguments, const std::string& done, const Act& act)
{
    base::Result<OpenedVault> opened = openVault(arguments);
    if (!opened) {
        return opened.error();
    }
    session::Session& session = *opened.value().session;
    const std::string reason = typed(arguments, "reason");
    if (const base::Result<bool> clean = screened(arguments, {reason}); !clean) {
        return clean.error();
    }
    std::vector<session::SheetPlace> places;
    for (const std::string& name : arguments.operands) {
        const base::Result<session::SheetPlace> place = chosenSheet(session, arguments, name);
        if (!place) {
            return place.error();
        }
        places.push_back(place.value());
    }
    Answer answer;
    answer.json["sheets"] = nlohmann::ordered_json::array();
    for (const session::SheetPlace& place : places) {
        const base::Result<journal::Position> written = act(session, place, reason);
        if (!written) {
            return base::Error{written.error().code, "Sheet " + shortId(place.sheet) + ": " + written.error().sentence};
        }
        answer.json["sheets"].push_back(
            {{"sheet", shortId(place.sheet)}, {"entry", keys::hex(written.value().hash.view())}});
        answer.text += done + " sheet " + shortId(place.sheet) + ".\n";
    }
    return answer;
}

const session::SharedSheets& sharedIn(const session::Session& session, std::optional<session::SharedSheets>& known)
{
    if (!known) {
        known.emplace(session::SharedSheets::of(session));
    }
    return *known;
}

base::Result<Answer> initial(const Arguments& arguments)
{
    std::optional<session::SharedSheets> shared; // over everybody's sheets, once for all that are named
    return onSheets(arguments, "Initialed",
                    [&](session::Session& session, const session::SheetPlace& place, const std::string& reason) {
                        return session::initialSheet(session, place, arguments.has("confirmed"), reason,
                                                     sharedIn(session, shared));
                    });
}

base::Result<Answer> returnSheets(const Arguments& arguments)
{
    return onSheets(arguments, "Returned",
                    [&](session::Session& session, const session::SheetPlace& place, const std::string& reason) {
                        return session::returnSheet(session, place, reason);
                    });
}

base::Result<Answer> voidSheets(const Arguments& arguments)
{
    return onSheets(arguments, "Voided",
                    [&](session::Session& session, const session::SheetPlace& place, const std::string& reason) {
                        return session::voidSheet(session, place, reason);
                    });
}

base::Result<Answer> refile(const Arguments& arguments)
{
    return onSheets(arguments, "Re-filed",
                    [&](session::Session& session, const session::SheetPlace& place,
                        const std::string& reason) -> base::Result<journal::Position> {
                        const auto choices = choicesFrom(arguments, place.record.content.procedures.size());
                        return choices ? session::refileSheet(session, place, choices.value(), reason)
                                       : base::Result<journal::Position>(choices.error());
                    });
}

base::Result<Answer> amend(const Arguments& arguments)
{
    return onSheets(arguments, "Amended",
                    [&](session::Session& session, const session::SheetPlace& place,
                        const std::string& reason) -> base::Result<journal::Position> {
                        session::SheetChange change;
                        auto marks = marksFrom(arguments);
                        const auto head = headFrom(arguments, session::headOf(place.record.content.head));
                        if (!marks || !head) {
                            return marks ? head.error() : marks.error();
                        }
                        change.marks = std::move(marks).value();
                        change.procedures = proceduresFrom(arguments, {});
                        if (changesHead(arguments)) {
                            change.head = head.value();
                        }
                        return session::amendSheet(session, place, change, reason);
                    });
}

base::Result<Answer> acceptReview(const Arguments& arguments)
{
    std::optional<sheet::Skill> skill;
    if (const auto name = arguments.value("skill")) {
        skill = sheet::skillFromColumn(*name);
        if (!skill) {
            return base::Error{base::ErrorCode::BadUsage, "There is no skill of that name."};
        }
    }
    std::optional<session::SharedSheets> shared;
    return onSheets(arguments, "Accepted the review of",
                    [&](session::Session& session, const session::SheetPlace& place, const std::string& reason) {
                        return session::acceptReview(session, place, skill, reason, sharedIn(session, shared));
                    });
}

/// The entry whose hash begins so, in the students' streams.
base::Result<journal::Position> entryNamed(const session::Session& session, const std::string& digits)
{
    std::optional<journal::Position> found;
    std::size_t count = 0;
    for (const auto& [id, feed] : session.ledger().feeds()) {
        journal::eachEntry(feed, nullptr, [&](const journal::Decoded& entry) {
            if (keys::hex(entry.position.hash.view()).starts_with(digits)) {
                found = entry.position;
                ++count;
            }
        });
    }
    constexpr std::size_t leastDigits = 8;
    if (count != 1 || digits.size() < leastDigits) {
        return base::Error{base::ErrorCode::NotFound,
                           "Name one entry by at least 8 digits of its hash; \"sheet show --json\" lists them."};
    }
    return *found;
}

base::Result<Answer> admit(const Arguments& arguments)
{
    const base::Result<std::string> reason = requiredReason(arguments);
    if (!reason) {
        return reason.error();
    }
    base::Result<OpenedVault> opened = openVault(arguments);
    if (!opened) {
        return opened.error();
    }
    session::Session& session = *opened.value().session;
    const base::Result<journal::Position> entry = entryNamed(session, arguments.operands.front());
    if (!entry) {
        return entry.error();
    }
    const base::Result<journal::Position> written = session::admitEntry(session, entry.value(), reason.value());
    if (!written) {
        return written.error();
    }
    Answer answer;
    answer.json = {{"admitted", keys::hex(entry.value().hash.view())}};
    answer.text = "Admitted: it counts from now on.\n";
    return answer;
}

std::vector<OptionSpec> actOptions(std::vector<OptionSpec> options)
{
    options.push_back({"reason", "TEXT", "why; it stays beside the sheet"});
    options.push_back(checkedOption());
    const std::vector<OptionSpec> students = studentOptions();
    options.insert(options.end(), students.begin(), students.end());
    return withVaultOptions(std::move(options));
}

std::vector<OptionSpec> amendOptions()
{
    std::vector<OptionSpec> options = markOptions();
    const std::vector<OptionSpec> head = headOptions();
    options.insert(options.end(), head.begin(), head.end());
    return actOptions(std::move(options));
}

} // namespace

std::vector<Command> instructorCommands()
{
    return {
        {{"initial",
          "Initial sheets after checking them. With a reason it also answers a review that is not accepted.",
          {"SHEET..."},
          actOptions({{"confirmed", "", "the signature was confirmed with the preceptor"}}),
          "peelpack initial 3f2a90c1 88b1d0e2\n  initials two sheets"},
         [](const Arguments& arguments) { return give(arguments, initial(arguments)); }},
        {{"return",
          "Give sheets back to the student with a question.",
          {"SHEET..."},
          actOptions({}),
          "peelpack return 3f2a90c1 --reason \"which hernia, and with mesh?\"\n  it counts again once it is answered"},
         [](const Arguments& arguments) { return give(arguments, returnSheets(arguments)); }},
        {{"accept",
          "Accept a student's request for a review of a mark; with a reason where it raises the role.",
          {"SHEET..."},
          actOptions({{"skill", "SKILL", "which mark, when several were asked for"}}),
          "peelpack accept 3f2a90c1 --skill pass --reason \"confirmed with the preceptor\"\n  the mark is changed; the "
          "preceptor's stays visible"},
         [](const Arguments& arguments) { return give(arguments, acceptReview(arguments)); }},
        {{"amend",
          "Change marks, head or procedures of a sheet. What was signed stays visible beside it.",
          {"SHEET..."},
          amendOptions(),
          "peelpack amend 3f2a90c1 --mark technique=N --reason \"break in technique, told by the "
          "preceptor\"\n  initial it afterwards"},
         [](const Arguments& arguments) { return give(arguments, amend(arguments)); }},
        {{"refile",
          "File a sheet's procedures under other categories.",
          {"SHEET..."},
          actOptions(choiceOptions()),
          "peelpack refile 3f2a90c1 --under general --reason \"hernia, not plastics\"\n  the student's choice stays "
          "visible"},
         [](const Arguments& arguments) { return give(arguments, refile(arguments)); }},
        {{"void",
          "Take a sheet out of the count for good. It stays visible.",
          {"SHEET..."},
          actOptions({}),
          "peelpack void 3f2a90c1 --reason \"the preceptor did not sign this\"\n  nothing more can be done with it"},
         [](const Arguments& arguments) { return give(arguments, voidSheets(arguments)); }},
        {{"admit",
          "Let one entry count that is aside (after a split, or from a device that was ended).",
          {"ENTRY"},
          withVaultOptions({{"reason", "TEXT", "why"}}),
          "peelpack admit 7be01c44 --reason \"checked with the student\"\n  one entry at a time"},
         [](const Arguments& arguments) { return give(arguments, admit(arguments)); }},
    };
}

} // namespace peelpack::cli
