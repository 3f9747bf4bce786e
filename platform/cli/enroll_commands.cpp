#include "platform/cli/commands.h"

#include "core/base/text.h"
#include "platform/cli/answer.h"
#include "platform/cli/bytes_file.h"
#include "platform/cli/ended_devices.h"
#include "platform/cli/vault_access.h"
#include "platform/files/text_file.h"
#include "platform/session/class_list.h"
#include "platform/session/enrolling.h"
#include "sync/merge/record_content.h"

namespace peelpack::cli {
namespace {

using session::usualInvitationDays;
constexpr std::size_t mostCodeBytes = 4096;

base::Result<Answer> invite(const Arguments& arguments)
{
    const auto out = arguments.value("out");
    if (!out) {
        return base::Error{base::ErrorCode::BadUsage, "Where shall the invitation go? Give --out FILE."};
    }
    base::Result<OpenedVault> opened = openVault(arguments);
    if (!opened) {
        return opened.error();
    }
    session::Session& session = *opened.value().session;
    const session::Directory directory(session);
    const auto made = [&]() -> base::Result<session::OpenInvitation> {
        if (const auto again = arguments.value("again")) {
            const base::Result<const session::Person*> known = directory.findPerson(*again);
            return known ? session::inviteAgain(session, *known.value(), usualInvitationDays) : known.error();
        }
        const std::optional<journal::Role> role = session::roleFromWord(arguments.value("role").value_or("student"));
        if (!role) {
            return base::Error{base::ErrorCode::BadUsage,
                               "--role is one of instructor, coordinator, contact and student."};
        }
        return session::invite(session, typed(arguments, "name"), *role, arguments.list("for"), std::nullopt,
                               usualInvitationDays);
    }();
    if (!made) {
        return made.error();
    }
    if (const base::Result<bool> kept = writeNewFile(*out, made.value().code); !kept) {
        return kept.error();
    }
    Answer answer;
    answer.json = {{"invitation", *out},
                   {"person", keys::hex(keys::Invitation::fromCode(made.value().code).value().person.view())},
                   {"days", usualInvitationDays}};
    answer.text = "The invitation is in " + *out + ", good for " + std::to_string(usualInvitationDays) +
                  " days and one answer. Hand it over yourself: whoever has it can join in their name.\n";
    return answer;
}

/// The students of a class list that is good from the first line to the last.
base::Result<std::vector<session::ListedStudent>> readClassList(const std::string& file)
{
    session::ClassListReader reader;
    const base::Result<std::size_t> read =
        files::readPieces(file, [&](std::string_view piece) { return reader.feed(piece); });
    if (!read) {
        return read.error();
    }
    session::ClassList list = reader.finish();
    if (!list.refused.empty()) {
        const session::RefusedLine& first = list.refused.front();
        return base::Error{base::ErrorCode::BadInput,
                           file + ", line " + std::to_string(first.line) + ": " + first.sentence};
    }
    return std::move(list.students);
}

/// Invites everybody on a class list.
base::Result<Answer> inviteClass(const Arguments& arguments)
{
    const auto folder = arguments.value("into");
    if (!folder) {
        return base::Error{base::ErrorCode::BadUsage, "Where shall the invitations go? Give --into FOLDER."};
    }
    const base::Result<std::vector<session::ListedStudent>> students = readClassList(arguments.operands.front());
    if (!students) {
        return students.error();
    }
    base::Result<OpenedVault> opened = openVault(arguments);
    if (!opened) {
        return opened.error();
    }
    session::Session& session = *opened.value().session;
    std::vector<std::string> people;
    for (const session::ListedStudent& student : students.value()) {
        people.push_back(student.name);
    }
    const std::vector<std::string> names = session::invitationNames(people);
    Answer answer;
    answer.json["invitations"] = nlohmann::ordered_json::array();
    for (std::size_t i = 0; i < names.size(); ++i) {
        const session::ListedStudent& student = students.value()[i];
        const auto made = session::invite(session, student.name, journal::Role::Student, {student.className},
                                          std::nullopt, usualInvitationDays);
        const base::Result<bool> kept =
            made ? writeNewFile(*folder + "/" + names[i], made.value().code) : base::Result<bool>(made.error());
        if (!kept) {
            return base::Error{kept.error().code, kept.error().sentence + " The invitations before it are written: " +
                                                      std::to_string(i) + " of " + std::to_string(names.size()) + "."};
        }
        answer.json["invitations"].push_back(
            {{"name", student.name}, {"class", student.className}, {"invitation", *folder + "/" + names[i]}});
    }
    answer.text = base::counted(names.size(), "invitation is", "invitations are") + " in " + *folder + ", good for " +
                  std::to_string(usualInvitationDays) +
                  " days and one answer each. Print them (peelpack print invitations) or hand over the files yourself: "
                  "whoever has one can join in that name.\n";
    return answer;
}

base::Result<Answer> join(const Arguments& arguments)
{
    const base::Result<std::string> file = vaultFile(arguments);
    const auto out = arguments.value("out");
    base::Result<Secrets> secrets = Secrets::from(arguments);
    if (!file || !secrets) {
        return file ? secrets.error() : file.error();
    }
    if (!out) {
        return base::Error{base::ErrorCode::BadUsage, "Where shall the reply go? Give --out FILE."};
    }
    const base::Result<keys::Secret> code = readSecretFile(arguments.operands.front());
    if (!code) {
        return code.error();
    }
    const base::Result<keys::Invitation> invitation = keys::Invitation::fromCode(code.value().view());
    if (!invitation) {
        return invitation.error();
    }
    Secrets source = std::move(secrets).value();
    const base::Result<OldOrNewVault> opened = unlockOrMakeVault(file.value(), arguments.has("pin"), source);
    if (!opened) {
        return opened.error();
    }
    const std::string& codeText = opened.value().codeText;
    const base::Result<keys::InvitationReply> reply =
        session::join(*opened.value().vault, invitation.value(), typed(arguments, "name"));
    if (!reply) {
        return reply.error();
    }
    if (const base::Result<bool> kept = writeNewFile(*out, reply.value().code()); !kept) {
        return kept.error();
    }
    const std::string digits = keys::comparisonDigits(invitation.value(), reply.value());
    Answer answer;
    answer.json = {{"reply", *out}, {"digits", digits}, {"program", keys::hex(invitation.value().program.view())}};
    if (!codeText.empty()) {
        answer.json["vaultCode"] = codeText;
    }
    answer.text = vaultCodeLines(codeText) + "The reply is in " + *out +
                  "; bring it to whoever invited you, and read them these digits: " + digits +
                  "\nYou can begin to write case sheets now; they count once you are granted.\n";
    return answer;
}

base::Result<Answer> grant(const Arguments& arguments)
{
    const base::Result<keys::Bytes> code = readBytes(arguments.operands.front(), mostCodeBytes);
    base::Result<OpenedVault> opened = openVault(arguments);
    if (!code || !opened) {
        return code ? opened.error() : code.error();
    }
    OpenedVault parts = std::move(opened).value();
    const base::Result<keys::InvitationReply> reply = keys::InvitationReply::fromCode(code.value());
    if (!reply) {
        return reply.error();
    }
    const base::Result<session::Answered> answered = session::matchReply(*parts.session, reply.value());
    if (!answered) {
        return answered.error();
    }
    const std::string& name = answered.value().invitation.name;
    const auto given = arguments.value("digits");
    const base::Result<std::string> digits =
        given ? base::Result<std::string>(*given) : parts.secrets.line("The six digits that " + name + " reads to you");
    if (!digits) {
        return digits.error();
    }
    if (digits.value() != answered.value().digits) {
        return base::Error{base::ErrorCode::BadValue, "The digits differ: somebody else may have answered. Nothing was "
                                                      "granted; invite again."};
    }
    const base::Result<journal::Position> granted = session::grant(*parts.session, reply.value());
    if (!granted) {
        return granted.error();
    }
    Answer answer;
    answer.json = {{"person", keys::hex(reply.value().person.view())}, {"name", name}};
    answer.text = "Granted: " + name + ". Send them a parcel next: peelpack send --to \"" + name + "\"\n";
    return answer;
}

/// Ends every device of a person at the last receipted position, or cards.
base::Result<Answer> end(const Arguments& arguments)
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
    const session::Directory directory(session);
    const base::Result<const session::Person*> person = directory.findPerson(arguments.operands.front());
    if (!person) {
        return person.error();
    }
    const auto ended = session::endDevices(session, *person.value(), reason.value());
    if (!ended) {
        return ended.error();
    }
    Answer answer = endedDevices(person.value()->name, ended.value());
    answer.text += "A new phone: peelpack enroll invite --again \"" + person.value()->name + "\" --out FILE\n";
    return answer;
}

/// "Ines Duarte, student, Spring class, until 2026-03-12"
std::string describe(const session::OpenInvitation& open, const keys::Invitation& invitation)
{
    std::string text = open.name + ", " + std::string(session::word(static_cast<journal::Role>(invitation.role)));
    for (const std::string& scope : open.scopes) {
        text += ", " + scope;
    }
    return text + ", until " + merge::timeOf({invitation.expiry, 0}).day().iso();
}

base::Result<Answer> listInvitations(const Arguments& arguments)
{
    const base::Result<OpenedVault> opened = openVault(arguments);
    if (!opened) {
        return opened.error();
    }
    Answer answer;
    answer.json["invitations"] = nlohmann::ordered_json::array();
    for (const session::OpenInvitation& open : session::openInvitations(*opened.value().session)) {
        const base::Result<keys::Invitation> invitation = keys::Invitation::fromCode(open.code);
        if (invitation) {
            answer.json["invitations"].push_back(
                {{"name", open.name},
                 {"person", keys::hex(invitation.value().person.view())},
                 {"role", session::word(static_cast<journal::Role>(invitation.value().role))},
                 {"for", open.scopes}});
            answer.text += describe(open, invitation.value()) + "\n";
        }
    }
    if (answer.text.empty()) {
        answer.text = "No invitation made here waits for an answer.\n";
    }
    return answer;
}

base::Result<Answer> withdraw(const Arguments& arguments)
{
    base::Result<OpenedVault> opened = openVault(arguments);
    if (!opened) {
        return opened.error();
    }
    session::Session& session = *opened.value().session;
    const std::string& name = arguments.operands.front();
    std::vector<session::OpenInvitation> found = session::openInvitations(session);
    std::erase_if(found, [&](const session::OpenInvitation& open) { return open.name != name; });
    if (found.size() != 1) {
        return base::Error{found.empty() ? base::ErrorCode::NotFound : base::ErrorCode::BadValue,
                           (found.empty() ? "No invitation for \"" : "More than one invitation for \"") + name +
                               "\" is open here; \"enroll invitations\" lists them."};
    }
    if (const base::Result<bool> done = session::withdrawInvitation(session, found.front().code); !done) {
        return done.error();
    }
    Answer answer;
    answer.json = {{"withdrawn", name}};
    answer.text = "Taken back: whoever answers the invitation of " + name + " is not let in.\n";
    return answer;
}

} // namespace

std::vector<Command> enrollCommands()
{
    return {
        {{"enroll invite",
          "Invite somebody into the program. Secret: the vault's passphrase.",
          {},
          withVaultOptions({{"name", "NAME", "who is invited"},
                            {"role", "ROLE", "instructor, coordinator, contact or student (student)"},
                            {"for", "CLASS|SITE", "the class of a student, the classes or sites of staff", true},
                            {"again", "NAME|ID", "somebody who is known, for another phone"},
                            {"out", "FILE", "where the invitation goes"}}),
          "peelpack enroll invite --name \"Ines Duarte\" --for \"Spring class\" --out ines.invitation\n  for the "
          "student's phone"},
         [](const Arguments& arguments) { return give(arguments, invite(arguments)); }},
        {{"enroll class",
          "Invite all students of a class list: CSV with the columns name and class. Secret: the vault's passphrase.",
          {"LIST.csv"},
          withVaultOptions({{"into", "FOLDER", "where the invitations go, a file for each student"}}),
          "peelpack enroll class spring.csv --into invitations\n  then: peelpack print invitations "
          "invitations/*.invitation --out spring.pdf"},
         [](const Arguments& arguments) { return give(arguments, inviteClass(arguments)); }},
        {{"enroll join",
          "Join a program from an invitation, in a new vault; in an old one of the same person after its record split. "
          "Secret: a new passphrase.",
          {"INVITATION"},
          withVaultOptions({{"name", "NAME", "how you want to be named on this device"},
                            {"out", "FILE", "where the reply goes"},
                            {"pin", "", "a PIN instead of a passphrase (weaker)"}}),
          "peelpack enroll join ines.invitation --vault ines.peelvault --out ines.reply\n  shows six digits to "
          "compare"},
         [](const Arguments& arguments) { return give(arguments, join(arguments)); }},
        {{"enroll grant",
          "Grant the role once the six digits were compared. Secrets: passphrase, the digits.",
          {"REPLY"},
          withVaultOptions({{"digits", "N", "the six digits that the other person read to you"}}),
          "peelpack enroll grant ines.reply --digits 468302\n  Ines is in the class from now on"},
         [](const Arguments& arguments) { return give(arguments, grant(arguments)); }},
        {{"enroll invitations",
          "The invitations made with this vault that nobody has answered.",
          {},
          withVaultOptions({}),
          "peelpack enroll invitations\n  who has not joined yet"},
         [](const Arguments& arguments) { return give(arguments, listInvitations(arguments)); }},
        {{"enroll withdraw",
          "Take an invitation back that was not answered yet.",
          {"NAME"},
          withVaultOptions({}),
          "peelpack enroll withdraw \"Ines Duarte\"\n  whoever has the invitation cannot join with it any more"},
         [](const Arguments& arguments) { return give(arguments, withdraw(arguments)); }},
        {{"enroll end",
          "End the devices of somebody: a lost phone, or somebody who has left. What was received before stays good.",
          {"NAME|ID"},
          withVaultOptions({{"reason", "TEXT", "why"}}),
          "peelpack enroll end \"Ines Duarte\" --reason \"phone lost on Mar 12\"\n  then: enroll invite --again"},
         [](const Arguments& arguments) { return give(arguments, end(arguments)); }},
    };
}

} // namespace peelpack::cli
